#include "domain/text/typed.h"

#include <doctest/doctest.h>

#include <random>
#include <string>

using namespace dyestead;

namespace {

// A bucket of leaf is about 1.1 kg, a scoop 4 g; 100 seeds are there.
const Measuring kSome{.there = Amount{Quantity::pieces(100), Unit::piece},
                      .own = {{"Bucket", {Quantity::grams(1'100), Unit::kg, Mark::about}},
                              {"scoop", {Quantity::grams(4), Unit::g}},
                              {"box", {Quantity::pieces(12), Unit::piece}},
                              {"jam jar", {Quantity::microlitres(330'000), Unit::ml}}}};

Measuring wanting(Kind kind) {
    return {.kind = kind};
}

void reads(std::string_view text, std::string_view printed, const Measuring& measuring = kSome) {
    CAPTURE(text);
    const auto got = read_typed_amount(text, measuring);
    if (!got)
        FAIL_CHECK("refused with trouble " << static_cast<int>(*got.trouble));
    else
        CHECK(print(*got) == printed);
}

template <class T>
void refused(const Read<T>& got, std::string_view text, TroubleId trouble) {
    CAPTURE(text);
    REQUIRE_FALSE(got);
    CHECK(static_cast<int>(*got.trouble) == static_cast<int>(trouble));
}

void refuses(std::string_view text, TroubleId trouble, const Measuring& measuring = kSome) {
    refused(read_typed_amount(text, measuring), text, trouble);
}

constexpr Day kDay = day_of(2026, 7, 20);

}  // namespace

// --- amounts -------------------------------------------------------------------------------------------------

TEST_CASE("an amount is read with a point or a comma, and its unit in any case or in full") {
    reads("750 g", "750 g");
    reads("750g", "750 g");
    reads("1.5 l", "1.5 l");
    reads("1,5 l", "1.5 l");
    reads(" 1,5\u00a0L ", "1.5 l");
    reads(".5 l", "0.5 l");
    reads("0,125 kg", "0.125 kg");
    reads("3 KG", "3 kg");
    reads("3 Kg", "3 kg");
    reads("20 ML", "20 ml");
    reads("1.2 KWH", "1.2 kWh");
    reads("3 tsp", "3 tsp");
    reads("3 tsp.", "3 tsp");
    reads("3 teaspoons", "3 tsp");
    reads("2 Tablespoons", "2 tbsp");
    reads("40 grams", "40 g");
    reads("2 kilos", "2 kg");
    reads("a kilo", "1 kg");
    reads("2 litres", "2 l");
    reads("2 liters", "2 l");
    reads("8 ounces", "8 oz");
    reads("2 lbs", "2 lb");
    reads("3 pounds", "3 lb");
    reads("4 m2", "4 m2");
    reads("4 m²", "4 m2");
    reads("40 sq ft", "40 ft2");
    reads("40 square feet", "40 ft2");
    reads("2 us pt", "2 us pt");
    reads("2 UK Pints", "2 uk pt");
    reads("1 us cup", "1 us cup");
    reads("8 us fluid ounces", "8 us fl oz");
}

TEST_CASE("the words of other languages the program speaks are read too") {
    reads("zwei Esslöffel", "2 tbsp");
    reads("3 TL", "3 tsp");
    reads("etwa 2 kg", "~2 kg");
    reads("2 mal 5 Liter", "10 l");
    reads("ein halbes Kilo", "0.5 kg");
    reads("12 Stück", "12");
}

TEST_CASE("about, and the way the method's amounts are printed, are marks") {
    reads("~750 g", "~750 g");
    reads("~ 750 g", "~750 g");
    reads("about 750 g", "~750 g");
    reads("About 100 seeds", "~100");
    reads("method: 3 g", "method: 3 g");
}

TEST_CASE("sums, packs and shares are reckoned, and the first unit typed is kept") {
    reads("2 lb 4 oz", "2.25 lb");
    reads("2lb4oz", "2.25 lb");
    reads("2 lb and 4 oz", "2.25 lb");
    reads("1 kg 200 g", "1.2 kg");
    reads("2 x 5 l", "10 l");
    reads("2x5l", "10 l");
    reads("2 × 1,5 l", "3 l");
    reads("2 * 5 l", "10 l");
    reads("3 x 2 lb 4 oz", "6.75 lb");
    reads("2 x 6 bars", "12");
    reads("3.2 kg - 380 g", "2.82 kg");
    reads("3,2 kg − 380 g", "2.82 kg");
    reads("3.2kg-380g", "2.82 kg");
    reads("5 lb 8 oz - 8 oz", "5 lb");
    reads("380 g - 380 g", "0 g");
    reads("~3.2 kg - 380 g", "~2.82 kg");
    reads("318 g / 3", "106 g");
    reads("100 g/3", "33.333 g");
    reads("1/2 tsp", "0.5 tsp");
    reads("1 1/2 tsp", "1.5 tsp");
    reads("½ tsp", "0.5 tsp");
    reads("1½ tsp", "1.5 tsp");
    reads("half a kilo", "0.5 kg");
    reads("two and a half kilos", "2.5 kg");
    reads("three quarters of a pound", "0.75 lb");
    reads("a dozen", "12");
    reads("half a dozen", "6");
}

TEST_CASE("own measures are counted in, with their mark, and come before the units") {
    reads("2 buckets", "~2.2 kg");
    reads("two BUCKETS", "~2.2 kg");
    reads("a bucket", "~1.1 kg");
    reads("1,5 bucket", "~1.65 kg");
    reads("half a bucket", "~0.55 kg");
    reads("2 buckets - 200 g", "~2 kg");
    reads("3 scoops", "12 g");
    reads("~3 scoops", "~12 g");
    reads("2 boxes", "24");
    reads("2 jam jars", "660 ml");
    reads("2 cups", "400 ml", {.own = {{"cup", {Quantity::microlitres(200'000), Unit::ml}}}});
    refuses("2 barrels", TroubleId::no_such_unit);
    refuses("2 bucketses", TroubleId::no_such_unit);
}

TEST_CASE("half, a third and all are of what is there") {
    reads("=", "100");  // as in the books
    reads("half", "50");
    reads("Half of it", "50");
    reads("half a packet", "50");
    reads("half the packet", "50");
    reads("a quarter", "25");
    reads("a third", "33.333");
    reads("two thirds", "66.667");
    reads("three quarters of it", "75");
    reads("~half", "~50");
    reads("about a third", "~33.333");
    reads("all", "100");
    reads("all of it", "100");
    reads("half", "~0.75 l", {.there = Amount{Quantity::microlitres(1'500'000), Unit::l, Mark::about}});
    // A packet that is a measure of the maker's own is not what is there.
    reads("half a packet", "100",
          {.there = Amount{Quantity::pieces(30), Unit::piece},
           .own = {{"packet", {Quantity::pieces(200), Unit::piece}}}});
    refuses("half", TroubleId::part_of_what, {});
    refuses("all", TroubleId::part_of_what, {});
    refuses("half a packet", TroubleId::part_of_what, {});
    refuses("half a barrel", TroubleId::no_such_unit);
    refuses("all but 3 g", TroubleId::not_an_amount);
}

TEST_CASE("a number alone is pieces where pieces are wanted, and else asked about") {
    reads("12", "12", wanting(Kind::count));
    reads("twelve", "12", wanting(Kind::count));
    reads("12", "12", {});
    reads("60/4", "15", wanting(Kind::count));
    for (const Kind kind : {Kind::mass, Kind::volume, Kind::area, Kind::energy}) {
        refuses("5", TroubleId::unit_missing, wanting(kind));
        refuses("2 x 5", TroubleId::unit_missing, wanting(kind));
    }
    refuses("1 kg 200", TroubleId::unit_missing);
    refuses("3 - 4 kg", TroubleId::unit_missing);
    refuses("12 - 3", TroubleId::unit_missing);
}

TEST_CASE("which spoon and which pint is meant is a setting, and without it the pint is asked about") {
    const auto with = [](Spoons spoons) { return Measuring{.spoons = spoons}; };
    for (const auto* text : {"1 pt", "2 pints", "1 gal", "3 gallons", "8 fl oz", "8 floz", "8 fluid ounces"})
        refuses(text, TroubleId::us_or_uk, with(Spoons::metric));
    refuses("1 cup", TroubleId::which_cup, with(Spoons::metric));
    refuses("1 cup", TroubleId::which_cup, with(Spoons::uk));
    reads("1 pt", "1 us pt", with(Spoons::us));
    reads("1 pt", "1 uk pt", with(Spoons::uk));
    reads("2 gallons", "2 uk gal", with(Spoons::uk));
    reads("8 fl oz", "8 us fl oz", with(Spoons::us));
    reads("1 cup", "1 us cup", with(Spoons::us));
    reads("3 tsp", "3 us tsp", with(Spoons::us));
    reads("3 tsp", "3 tsp", with(Spoons::uk));
    reads("3 metric tsp", "3 tsp", with(Spoons::us));
    reads("3 us tsp", "3 us tsp", with(Spoons::uk));
    for (const auto* text : {"1 uk cup", "1 metric pt", "1 us g", "1 us"}) refuses(text, TroubleId::no_such_unit);
}

TEST_CASE("a decimal mark that can be read in two ways is asked about") {
    for (const auto* text : {"1.234,5 g", "1,234.5 g", "1,234,567 g", "1.2.3 g", "1,234 kg", "12,500 l", "2 x 1,500 g"})
        refuses(text, TroubleId::which_decimal_mark);
    reads("1.234 kg", "1.234 kg");
    reads("1234,500 kg", "1234.5 kg");
    reads("0,500 kg", "0.5 kg");
    reads("1,2345 kg", "1.2345 kg");
}

TEST_CASE("an amount says what is wrong with it") {
    for (const auto* text : {"", " ", "~", "about", "method: "}) refuses(text, TroubleId::blank);
    for (const auto* text : {"g", "~~3 g", "some", "- g", "+3 g", "2 x", "x 5 l"})
        refuses(text, TroubleId::not_a_number);
    for (const auto* text : {"3 flurbs", "3 g g", "3 µg", "3 Tonnes"}) refuses(text, TroubleId::no_such_unit);
    for (const auto* text : {"1 000 g", "2 x 5 kg - 380 g", "318 g / 3 g", "318 g / 0", "318 g / half",
                             "3.2 kg - 1 g - 1 g", "2 lb, 4 oz", "750 g?"})
        refuses(text, TroubleId::not_an_amount);
    refuses("-3 g", TroubleId::below_zero);
    refuses("3.2 kg - -380 g", TroubleId::below_zero);
    refuses("380 g - 3.2 kg", TroubleId::takes_off_more);
    refuses("2 lb 300 ml", TroubleId::kinds_added);
    refuses("3.2 kg - 300 ml", TroubleId::kinds_added);
    refuses("1000001 kg", TroubleId::too_large);
    refuses("1000000 kg 1 g", TroubleId::too_large);
    refuses("1000 x 1001 kg", TroubleId::too_large);
    refuses("1000001 x 1 mg", TroubleId::too_large);
    refuses("9999999999999999999 g", TroubleId::too_large);
}

TEST_CASE("any amount comes back from its print, whichever spoons are set") {
    std::mt19937_64 random{5};
    for (const UnitInfo& unit : kUnits) {
        for (int round = 0; round < 2'000; ++round) {
            const auto base = static_cast<std::int64_t>(random() % (kLargestStatedBase + 1)) >> (random() % 40);
            const Amount amount{Quantity{unit.kind, base}, unit.unit, static_cast<Mark>(random() % 3)};
            CAPTURE(print(amount));
            const auto plain = read_typed_amount(print(amount), {.kind = unit.kind});
            REQUIRE(plain);
            CHECK(*plain == amount);
            const auto spoons = static_cast<Spoons>(random() % 3);
            const auto set = read_typed_amount(print_typed(amount, spoons), {.spoons = spoons});
            REQUIRE(set);
            CHECK(*set == amount);
        }
    }
}

TEST_CASE("whatever is typed is read or refused, and what is read is never below nothing") {
    constexpr std::array<std::string_view, 26> kBits{
        "1",    "2.5", "1,5", "000", "999999999999", "g",   "kg", "lb",     "x",   "/",      "-",      "~", "a",
        "half", "and", "of",  "it",  "all",          "tsp", "pt", "bucket", "the", "thirds", "\u00bd", ".", "dozen"};
    std::mt19937_64 random{6};
    int read = 0;
    for (int round = 0; round < 100'000; ++round) {
        std::string text;
        for (auto left = 1 + random() % 6; left > 0; --left) {
            text += kBits[random() % kBits.size()];
            if (random() % 3 != 0) text += ' ';
        }
        const auto got = read_typed_amount(text, kSome);
        static_cast<void>(read_typed_span(text));
        static_cast<void>(read_typed_day(text, kDay));
        static_cast<void>(read_typed_money(text));
        if (!got) continue;
        ++read;
        CAPTURE(text);
        CHECK((*got).quantity.in_base() >= 0);
        CHECK((*got).quantity.in_base() <= kLargestStatedBase);
    }
    CHECK(read > 1'000);
}

// --- money and numbers ---------------------------------------------------------------------------------------

TEST_CASE("money is read with its sign, a comma, and blanks between the thousands") {
    const auto is = [](std::string_view text, std::int64_t hundredths, std::string_view currency = {}) {
        CAPTURE(text);
        const auto got = read_typed_money(text, currency);
        REQUIRE(got);
        CHECK(*got == Money::hundredths(hundredths));
    };
    is("34.90", 3'490);
    is("34,90", 3'490);
    is("£34.90", 3'490);
    is("£ 34.90", 3'490, "GBP");
    is("34,90 €", 3'490, "EUR");
    is("34,90 EUR", 3'490, "EUR");
    is("gbp 34.9", 3'490, "GBP");
    is("$30", 3'000, "CAD");
    is("1 234,50", 123'450);
    is("1 234 567,50", 123'456'750);
    is("1\u202f234,50 €", 123'450);
    is("12 345", 1'234'500);
}

TEST_CASE("money says what is wrong with it, and another currency is not taken for the shop's") {
    const auto is_not = [](std::string_view text, TroubleId trouble, std::string_view currency = {}) {
        refused(read_typed_money(text, currency), text, trouble);
    };
    is_not("", TroubleId::blank);
    is_not("£", TroubleId::blank);
    is_not("1,234", TroubleId::which_decimal_mark);
    is_not("1,234.50", TroubleId::which_decimal_mark);
    is_not("1.234,50", TroubleId::which_decimal_mark);
    is_not("$30", TroubleId::other_currency, "GBP");
    is_not("30 EUR", TroubleId::other_currency, "GBP");
    for (const auto* text : {"12 34", "1234 567", "1 2345", "1 234 5", "1.5 000", "12 x", "about 3", "3 quid", "£3£"})
        is_not(text, TroubleId::not_a_number);
    is_not("-3", TroubleId::below_zero);
    is_not("1 000 000 000 001", TroubleId::too_large);
}

TEST_CASE("any money comes back from its print") {
    std::mt19937_64 random{8};
    for (int round = 0; round < 20'000; ++round) {
        const Money money =
            Money::millionths(static_cast<std::int64_t>(random() % 1'000'000'000'000'000'000) >> (random() % 60));
        CAPTURE(print(money));
        const auto got = read_typed_money(print(money));
        REQUIRE(got);
        CHECK(*got == money);
    }
}

TEST_CASE("shares and whole numbers take a comma, and ask when it can be read in two ways") {
    CHECK(*read_typed_ratio("5,5 %") == Ratio{55, 1'000});
    CHECK(*read_typed_ratio("1/3") == Ratio{1, 3});
    CHECK(*read_typed_ratio("0,918") == Ratio{918, 1'000});
    refused(read_typed_ratio("1,234 %"), "1,234 %", TroubleId::which_decimal_mark);
    refused(read_typed_ratio("some"), "some", TroubleId::not_a_ratio);
    CHECK(*read_typed_count("12") == 12);
    CHECK(*read_typed_count("1 200") == 1'200);
    refused(read_typed_count("12,5"), "12,5", TroubleId::not_a_whole_number);
    refused(read_typed_count("12.0"), "12.0", TroubleId::not_a_whole_number);
    refused(read_typed_count("1,200"), "1,200", TroubleId::which_decimal_mark);
    refused(read_typed_count("-1"), "-1", TroubleId::below_zero);
    refused(read_typed_count("dozen"), "dozen", TroubleId::not_a_number);
    refused(read_typed_count("2 000 000 000"), "2 000 000 000", TroubleId::too_large);
}
