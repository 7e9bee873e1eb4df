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
