#include "domain/text/amounts.h"

#include <doctest/doctest.h>

#include <random>
#include <string>

using namespace dyestead;

namespace {

template <class T>
void refuses(Read<T> (*read)(std::string_view), std::string_view text, TroubleId trouble) {
    CAPTURE(text);
    const auto got = read(text);
    REQUIRE_FALSE(got);
    CHECK(*got.trouble == trouble);
}

template <class T>
T value(const Read<T>& read) {
    REQUIRE(read);
    return *read;
}

}  // namespace

// --- money ---------------------------------------------------------------------------------------------------

TEST_CASE("money is read to the millionth and rounded half up beyond it") {
    CHECK(value(read_money("38.4")) == Money::hundredths(3'840));
    CHECK(value(read_money(" 0.000001 ")) == Money::millionths(1));
    CHECK(value(read_money("0.0000005")) == Money::millionths(1));
    CHECK(value(read_money("0.00000049")) == Money{});
    CHECK(value(read_money("-0")) == Money{});
    CHECK(value(read_money("1000000000000")) == kLargestStatedMoney);
}

TEST_CASE("money says what is wrong with it") {
    refuses(read_money, "", TroubleId::blank);
    refuses(read_money, "3,84", TroubleId::not_a_number);
    refuses(read_money, "3.84 EUR", TroubleId::not_a_number);
    refuses(read_money, "-0.01", TroubleId::below_zero);
    refuses(read_money, "1000000000000.01", TroubleId::too_large);
    refuses(read_money, "1000000000000.00001", TroubleId::too_large);
    refuses(read_money, "999999999999999999", TroubleId::too_large);
    refuses(read_money, "1000000000000000000", TroubleId::too_large);
}

TEST_CASE("half a millionth over the largest amount is too large as well") {
    refuses(read_amount, "1000000000000.5 mg", TroubleId::too_large);
    CHECK(value(read_amount("1000000000000.4 mg")).quantity.in_base() == kLargestStatedBase);
}

TEST_CASE("any money comes back from its print") {
    std::mt19937_64 random{1};
    for (int round = 0; round < 20'000; ++round) {
        const Money money =
            Money::millionths(static_cast<std::int64_t>(random() % 1'000'000'000'000'000'000) >> (random() % 60));
        CHECK(value(read_money(print(money))) == money);
    }
    CHECK(print(Money::millionths(-1'500'000)) == "-1.5");
    CHECK(print(Money::millionths(INT64_MIN)) == "-9223372036854.775808");
}

// --- times by the clock --------------------------------------------------------------------------------------

TEST_CASE("a time by the clock comes back from its print, with its distance from UTC") {
    for (const auto* text : {"2026-07-03T14:10+01:00", "2026-12-31T00:00+00:00", "2026-03-29T23:59-09:30"})
        CHECK(print(value(read_moment(text))) == text);
    const Moment moment = value(read_moment(" 2026-07-03 14:10-01:00 "));
    CHECK(moment.minute == 850);
    CHECK(moment.utc_offset == -60);
    CHECK(value(read_moment("2026-07-03T14:10Z")).utc_offset == 0);
    refuses(read_moment, "", TroubleId::blank);
    refuses(read_moment, "2026-02-30T14:10+01:00", TroubleId::no_such_day);
    for (const auto* text :
         {"2026-07-03", "14:10", "2026-07-03T14:10", "2026-07-03T24:00+01:00", "2026-07-03T14:60Z",
          "2026-07-03T14:10+15:00", "2026-07-03T14:10+0100", "2026-07-03T1a:10Z", "2026-07-03x14:10Z"})
        refuses(read_moment, text, TroubleId::not_a_moment);
}

// --- quantities ----------------------------------------------------------------------------------------------

TEST_CASE("a quantity keeps the unit and the mark it was stated in") {
    const Amount amount = value(read_amount("~2 us tsp"));
    CHECK(amount.unit == Unit::us_tsp);
    CHECK(amount.mark == Mark::about);
    CHECK(amount.quantity == Quantity::microlitres(9'858));  // 9857.84...
    CHECK(value(read_amount("method: 3 g")).mark == Mark::from_method);
    CHECK(value(read_amount("method:3 g")).mark == Mark::from_method);
    CHECK(value(read_amount("3 g")).mark == Mark::measured);
    CHECK(value(read_amount("12")).unit == Unit::piece);
    CHECK(value(read_amount("12")).quantity == Quantity::pieces(12));
}

TEST_CASE("blanks around mark, number and unit do not matter") {
    const Amount amount = value(read_amount("~750 g"));
    for (const auto* text : {"~ 750 g", " ~750g ", "\t~  750   g\t", "~750.0 g", "~0750 g"})
        CHECK(value(read_amount(text)) == amount);
}

TEST_CASE("a quantity says what is wrong with it") {
    for (const auto* text : {"", "  ", "~", "~ ", "method: "}) refuses(read_amount, text, TroubleId::blank);
    for (const auto* text : {"g", "~g", "about 3 g", "~~3 g", "~method: 3 g", "1,5 kg", "1-2 kg", "- g", ". g", "+3 g"})
        refuses(read_amount, text, TroubleId::not_a_number);
    for (const auto* text : {"3 spoons", "3 KG", "1 000 g", "3 g g", "3 us  tsp", "2 x 5 l", "3 g."})
        refuses(read_amount, text, TroubleId::no_such_unit);
    refuses(read_amount, "-3 g", TroubleId::below_zero);
    refuses(read_amount, "1000001 kg", TroubleId::too_large);
    refuses(read_amount, "9999999999999999999 g", TroubleId::too_large);
}

TEST_CASE("in every unit any quantity comes back from its print, in the shortest form") {
    std::mt19937_64 random{2};
    for (const UnitInfo& unit : kUnits) {
        CAPTURE(unit.code);
        for (int round = 0; round < 2'000; ++round) {
            const auto base = static_cast<std::int64_t>(random() % (kLargestStatedBase + 1)) >> (random() % 40);
            const Amount amount{Quantity{unit.kind, base}, unit.unit, static_cast<Mark>(random() % 3)};
            const std::string text = print(amount);
            CAPTURE(text);
            REQUIRE(value(read_amount(text)) == amount);
            CHECK(print(value(read_amount(text))) == text);
            // One place less no longer reads back.
            const auto digits = text.find_first_of("0123456789");
            const auto after = std::min(text.size(), text.find_first_not_of("0123456789.", digits));
            const auto point = text.find('.', digits);
            if (point >= after) continue;
            const int places = static_cast<int>(after - point) - 1;
            std::int64_t power = 1;
            for (int i = 1; i < places; ++i) power *= 10;
            const std::int64_t fewer = scaled(static_cast<Wide>(base) * power, unit.base.bottom, unit.base.top);
            CHECK(scaled(fewer, unit.base.top, static_cast<Wide>(unit.base.bottom) * power) != base);
        }
    }
}

TEST_CASE("what a maker types with few places is printed just so") {
    for (const UnitInfo& unit : kUnits) {
        for (const auto* number : {"1", "2.5", "0.25", "12", "7.75"}) {
            // Half a milligram cannot be kept.
            if (unit.base == Ratio{1, 1}) continue;
            const std::string text = std::string{number} + (unit.code.empty() ? "" : " ") + std::string{unit.code};
            CHECK(print(value(read_amount(text))) == text);
        }
    }
}

// --- times ---------------------------------------------------------------------------------------------------

TEST_CASE("a length of time is read in minutes, in hours or in both") {
    const auto minutes_in = [](std::string_view text) { return value(read_span(text)).time; };
    CHECK(minutes_in("90 min") == Minutes::whole(90));
    CHECK(minutes_in("1.5 h") == Minutes::whole(90));
    CHECK(minutes_in("1 h 30") == Minutes::whole(90));
    CHECK(minutes_in("1h30") == Minutes::whole(90));
    CHECK(minutes_in("1 h 30 min") == Minutes::whole(90));
    CHECK(minutes_in("1h30min") == Minutes::whole(90));
    CHECK(minutes_in("0.5 min") == Minutes::millionths(500'000));
    CHECK(minutes_in("0 min") == Minutes{});
    CHECK(value(read_span("1.5 h")).unit == TimeUnit::h);
    CHECK(value(read_span("1 h 30")).unit == TimeUnit::min);
    CHECK(value(read_span("~2 h")).mark == Mark::about);
    CHECK(value(read_span("method: 20 min")).mark == Mark::from_method);
}

TEST_CASE("a length of time says what is wrong with it") {
    for (const auto* text : {"", " ", "~", "method: "}) refuses(read_span, text, TroubleId::blank);
    for (const auto* text :
         {"90", "min", "h", "30 1 h", "1 h 2 h", "30 min 1 h", "30 min 20 min", "1 hour", "90 minutes", "1,5 h", "1:30",
          "1 d", "90 m", "90 s", "an hour", "1 h 30 x", "1 h h", "~~1 h"})
        refuses(read_span, text, TroubleId::not_a_time);
    refuses(read_span, "-5 min", TroubleId::below_zero);
    refuses(read_span, "1 h -5", TroubleId::below_zero);
    refuses(read_span, "9999999 h", TroubleId::too_large);
    refuses(read_span, "878400 h 1 min", TroubleId::too_large);
    CHECK(value(read_span("878400 h")).time == kLongestStatedTime);
}

TEST_CASE("any length of time comes back from its print, in minutes and in hours") {
    std::mt19937_64 random{3};
    for (int round = 0; round < 20'000; ++round) {
        const auto most = static_cast<std::uint64_t>(kLongestStatedTime.in_millionths()) + 1;
        const Span span{Minutes::millionths(static_cast<std::int64_t>(random() % most) >> (random() % 46)),
                        random() % 2 == 0 ? TimeUnit::min : TimeUnit::h, static_cast<Mark>(random() % 3)};
        CAPTURE(print(span));
        CHECK(value(read_span(print(span))) == span);
    }
    CHECK(print(value(read_span("1 h 30"))) == "90 min");
    CHECK(print(value(read_span("1.50 h"))) == "1.5 h");
}

// --- shares --------------------------------------------------------------------------------------------------

TEST_CASE("a ratio is kept as the two numbers that were typed") {
    const auto is = [](std::string_view text, std::int64_t top, std::int64_t bottom) {
        const Ratio ratio = value(read_ratio(text));
        CHECK(ratio.top == top);
        CHECK(ratio.bottom == bottom);
    };
    is("5 %", 5, 100);
    is("5%", 5, 100);
    is("5.5 %", 55, 1'000);
    is("1/3", 1, 3);
    is(" 1 / 3 ", 1, 3);
    is("0.918", 918, 1'000);
    is("3", 3, 1);
    is("0", 0, 1);
    is("0/7", 0, 7);
}

TEST_CASE("a ratio says what is wrong with it") {
    refuses(read_ratio, "", TroubleId::blank);
    for (const auto* text : {"%", "1/0", "1/", "/3", "1/-3", "1.5/3", "1/1.5", "1/3 %", "1/3/4", "0,918", "a third",
                             "0.1234567891", "5 % %"})
        refuses(read_ratio, text, TroubleId::not_a_ratio);
    refuses(read_ratio, "-5 %", TroubleId::below_zero);
    refuses(read_ratio, "-1/3", TroubleId::below_zero);
    refuses(read_ratio, "100000000001", TroubleId::too_large);
    refuses(read_ratio, "1/100000000001", TroubleId::too_large);
}

TEST_CASE("any ratio comes back from its print as the same number, and prints the same again") {
    std::mt19937_64 random{4};
    const auto some = [&] { return static_cast<std::int64_t>(random() % 100'000'000'001) >> (random() % 37); };
    for (int round = 0; round < 20'000; ++round) {
        std::int64_t bottom = 1 + some() % 99'999'999'999;
        if (round % 2 == 0)
            for (bottom = 1; random() % 4 != 0 && bottom < 1'000'000'000;) bottom *= 10;
        const Ratio ratio{some(), bottom};
        const std::string text = print(ratio);
        CAPTURE(text);
        CHECK(value(read_ratio(text)) == ratio);
        CHECK(print(value(read_ratio(text))) == text);
    }
}

// --- days and readings ---------------------------------------------------------------------------------------

TEST_CASE("a date is year, month and day, and must be a real one") {
    CHECK(value(read_day("2026-07-03")) == day_of(2026, 7, 3));
    CHECK(value(read_day(" 2024-02-29 ")) == day_of(2024, 2, 29));
    refuses(read_day, "", TroubleId::blank);
    for (const auto* text :
         {"2025-02-29", "1900-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "2026-01-00", "2026-01-32"})
        refuses(read_day, text, TroubleId::no_such_day);
    for (const auto* text : {"2026-7-3", "03.07.2026", "2026/07/03", "20260703", "2026-07-03T10:00", "2026-07-3 ",
                             "2026--1-01", "-026-07-03", "+026-07-03", "2026- 7-03", "yesterday!"})
        refuses(read_day, text, TroubleId::not_a_date);
}

TEST_CASE("every day of four centuries comes back from its print") {
    for (Day day = day_of(1800, 1, 1); day < day_of(2201, 1, 1); day += Days{1}) {
        const auto read = read_day(print(day));
        if (!read || *read != day) FAIL(print(day));
    }
    CHECK(print(day_of(2026, 7, 3)) == "2026-07-03");
    CHECK(print(day_of(987, 1, 2)) == "0987-01-02");
}

TEST_CASE("a temperature has one place, of either sign; more places are refused unless they are nought") {
    CHECK(value(read_temperature("80.5")).tenths == 805);
    CHECK(value(read_temperature("80.50")).tenths == 805);
    CHECK(value(read_temperature("-3")).tenths == -30);
    refuses(read_temperature, "80.55", TroubleId::not_a_number);
    refuses(read_temperature, "80,5", TroubleId::not_a_number);
    refuses(read_temperature, "80 C", TroubleId::not_a_number);
    refuses(read_temperature, "", TroubleId::blank);
    refuses(read_temperature, "100000", TroubleId::too_large);
    for (int tenths = -500; tenths <= 2'000; ++tenths)
        CHECK(value(read_temperature(print(Temperature{tenths}))).tenths == tenths);
}

TEST_CASE("a pH has two places") {
    CHECK(value(read_acidity("9.25")).hundredths == 925);
    CHECK(value(read_acidity("10")).hundredths == 1'000);
    refuses(read_acidity, "9.255", TroubleId::not_a_number);
    refuses(read_acidity, "15.01", TroubleId::too_large);
    for (int hundredths = 0; hundredths <= 1'500; ++hundredths)
        CHECK(value(read_acidity(print(Acidity{hundredths}))).hundredths == hundredths);
}
