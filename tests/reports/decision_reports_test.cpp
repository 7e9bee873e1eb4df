// The two reports on what to sow and what to make: every figure has its key, what is missing is said in a sentence, and
// nothing that is not a number is shown.
#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "reports/registry.h"
#include "reports/write/text.h"
#include "tests/domain/decisions/blue_shop.h"
#include "tests/domain/decisions/soap_shop.h"

namespace dyestead::reports {
namespace {

using namespace dyestead::test;

std::string shown(const Shop& shop, const Ledger& ledger, std::string_view report,
                  std::optional<int> bars = std::nullopt) {
    const auto found = report_named(report);
    const Reply reply =
        std::get<Report>(found).make({.shop = shop, .ledger = ledger, .bars = bars, .hours = {}, .months = {}});
    REQUIRE(std::holds_alternative<Document>(reply));
    const auto& document = std::get<Document>(reply);
    CHECK_FALSE(document.figures.empty());
    std::string text = write_text(document);
    for (const char* wrong : {"nan", "inf ", "{", "}", "-0 "}) CHECK_MESSAGE(text.find(wrong) == text.npos, wrong);
    for (const Format& format : all_formats())
        if (can_be_written(format, document)) CHECK_FALSE(format.write(document).empty());
    return text;
}

bool says(const std::string& text, std::string_view what) {
    // The text writer breaks lines, and begins those of a caution with a mark.
    std::string flat;
    for (const char c : text) {
        const char plain = c == '\n' || c == '!' ? ' ' : c;
        if (plain != ' ' || flat.empty() || flat.back() != ' ') flat += plain;
    }
    return flat.find(what) != flat.npos;
}

}  // namespace

TEST_CASE("sowing: the sentence, the table back to the bed, and what to ask first") {
    BlueShop s;
    s.add<About>().currency = "GBP";
    s.all<Plant>().front().name = "Indigo";
    const std::string text = shown(s.shop(), s.ledger(), "sowing", 200);
    CHECK(says(text, "For 200 blue bars sow Indigo by 1 April 2027: 36 m²"));
    CHECK(says(text, "It runs out before the next powder is dry: about"));
    CHECK(says(text, "from the bars back to the bed"));
    CHECK(says(shown(s.shop(), s.ledger(), "sowing", 20), "Nothing has to be sown this time"));
    CHECK(says(text, "Frost dates are not on record"));
    auto& rule = s.add<SowingRule>();
    rule.from = day_of(2026, 1, 1);
    rule.last_frost = day_of(2026, 5, 12);
    rule.first_frost = day_of(2026, 10, 20);
    rule.reserve = Ratio{13, 10};
    s.all<Plant>().front().seed_rate = grams(1);
    s.all<Plant>().front().days_to_harvest = 150;
    const std::string frosty = shown(s.shop(), s.ledger(), "sowing", 200);
    CHECK(says(frosty, "before 12 May 2027, when your last frost is usually over: sow under cover"));
    CHECK(says(frosty, "Frosts are taken as you set them"));
    CHECK(says(frosty, "30 % more for slugs and gaps, as you set it"));
    CHECK(says(text, "ask the safety assessor before sowing"));
    CHECK(says(text, "Several plants give this colour"));
}

TEST_CASE("sowing: an empty shop and one without records are answered in words") {
    const ShopBuilder empty;
    CHECK(says(shown(empty.shop(), replay(empty.shop(), day_of(2026, 6, 1)), "sowing"), "There is nothing to sow for"));
    BlueShop s;
    s.as_of = day_of(2025, 1, 1);
    const std::string text = shown(s.shop(), s.ledger(), "sowing");
    CHECK(says(text, "How much to sow cannot be said yet"));
    CHECK(says(text, "No bar with your own blue was sold in the last 12 months"));
    CHECK(says(text, "No vat of the blue is finished"));
    CHECK(says(text, "not known"));
}

TEST_CASE("prices: what shops pay and what a bundle brings, held against what a bar costs") {
    SoapShop s;
    s.add<About>().currency = "GBP";
    s.at(s.bar).name = "Plain bar";
    s.stock_all(3);
    s.offer(s.oil_, grams(1'000), Money::units(8), 5);
    s.offer(s.lye, grams(1'000), Money::units(10), 5);
    s.offer(s.water, {Quantity::microlitres(5'000'000), Unit::l, Mark::measured}, Money::units(2), 1);
    s.offer(s.band, pieces(100), Money::units(10), 5);
    const auto fair = [&](Money price) {
        auto& fact = s.add<Fair>();
        fact.date = day_of(2026, 5, 1);
        const auto key = fact.key;
        s.add<FairLine>(key).bar = s.bar;
        auto& bundle = s.add<FairBundle>(key);
        bundle.what = "Three bars";
        bundle.bars = 3;
        bundle.price = price;
    };
    fair(Money::units(1));
    auto& shops = s.add<WholesalePrice>();
    shops.from = day_of(2026, 1, 1);
    shops.bar = s.bar;
    shops.price = Money::hundredths(50);
    std::string text = shown(s.shop(), s.ledger(), "prices");
    CHECK_MESSAGE(says(text, "For shops that sell on, GBP a bar"), text);
    CHECK(says(text, "Three bars, 3 bars for £1.00: £0.33 a bar is under the floor of Plain bar"));
    s.all<FairBundle>().back().price = Money::units(60);
    text = shown(s.shop(), s.ledger(), "prices");
    CHECK(says(text, "£20.00 a bar pays for every kind on the table, your hours too."));
}

TEST_CASE("reorder: a colour that runs short has two ways out, and a thing got in two ways is asked about") {
    BlueShop s;
    s.add<About>().currency = "GBP";
    auto& plan = s.add<Plan>();
    plan.noted = day_of(2026, 10, 1);
    plan.date = day_of(2026, 12, 1);
    plan.recipe = s.loaf;
    plan.bar = s.own_bar;
    plan.loaves = 20;
    s.at(s.oil).name = "Olive oil";
    const auto again = s.material("oil (olive)", Purpose::oil);
    s.delivery(day_of(2026, 2, 1), again, grams(1'000), Money::units(5));
    const std::string text = shown(s.shop(), s.ledger(), "reorder");
    CHECK(says(text, "powder, your own, does not last for the batch planned for 1 December 2026"));
    CHECK(says(text, "of bought blue for the same shade"));
    CHECK(says(text, "Or pour 10 loaves fewer"));
    CHECK(says(text, "These look like one thing, put down more than once: Olive oil, oil (olive)"));
}

TEST_CASE("verdict: a price of the powder is held against pouring it, with what to ask first") {
    BlueShop s;
    s.add<About>().currency = "GBP";
    auto& price = s.add<PowderPrice>();
    price.from = day_of(2026, 1, 1);
    price.colour = s.blue;
    price.pack = grams(1);
    price.price = Money::units(5);
    std::string text = shown(s.shop(), s.ledger(), "verdict");
    CHECK(says(text, "Rather sell it as powder: at £5.00 a gram it leaves"));
    CHECK(says(text, "Powder sold as such may fall under rules of its own"));
    s.all<PowderPrice>().back().price = Money::hundredths(5);
    text = shown(s.shop(), s.ledger(), "verdict");
    CHECK(says(text, "Rather pour it into soap than sell it as powder"));
    CHECK(says(text, "as powder it would have to fetch £"));
    s.all<ShadeTest>().clear();
    CHECK(says(shown(s.shop(), s.ledger(), "verdict"), "if a third as strong."));
    s.all<PowderPrice>().clear();
    CHECK_FALSE(says(shown(s.shop(), s.ledger(), "verdict"), "Powder sold as such"));
}

TEST_CASE("earns-best: what is missing is said, for an empty shop too") {
    const ShopBuilder empty;
    CHECK(says(shown(empty.shop(), replay(empty.shop(), day_of(2026, 6, 1)), "earns-best"), "Nothing can be said yet"));
    SoapShop s;
    const std::string text = shown(s.shop(), s.ledger(), "earns-best");
    CHECK(says(text, "Nothing can be said yet"));
    CHECK(says(text, "bar: no shelf price is on record"));
    CHECK(says(text, "No hours at the bench are on record"));
}

TEST_CASE("earns-best: a material that is scarce is named by its code, and a code nobody knows is refused") {
    SoapShop s;
    const auto report = std::get<Report>(report_named("earns-best"));
    const Ledger ledger = s.ledger();
    const auto ask = [&](const std::string& code) {
        return report.make({.shop = s.shop(), .ledger = ledger, .of = code, .bars = {}, .hours = {}, .months = {}});
    };
    CHECK(std::holds_alternative<Trouble>(ask("nothing of the kind")));
    const auto scarce = ask(s.at(s.oil_).code);
    REQUIRE(std::holds_alternative<Document>(scarce));
    CHECK(says(write_text(std::get<Document>(scarce)), "of oil brings"));
}

}  // namespace dyestead::reports
