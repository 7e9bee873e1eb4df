#include "reports/words/finding_words.h"

#include <doctest/doctest.h>

#include <set>

#include "reports/words/verdict_finding_words.h"

namespace dyestead::reports {
namespace {

constexpr auto kLast = FindingCode::no_powder;
constexpr auto kLastOfVerdict = VerdictFindingCode::allowed_waiting;

Shop shop_with_a_delivery() {
    Shop shop;
    Delivery delivery;
    delivery.key = {1};
    delivery.code = "oils-march";
    shop.all<Delivery>().push_back(delivery);
    DeliveryLine line;
    line.key = {2};
    line.head = {1};
    line.position = 3;
    shop.all<DeliveryLine>().push_back(line);
    Recipe recipe;
    recipe.key = {3};
    recipe.code = "r1";
    recipe.name = "Olive loaf";
    shop.all<Recipe>().push_back(recipe);
    return shop;
}

Finding finding(FindingCode code, std::vector<std::string> args = {"600 g", "shea butter"}) {
    return {code, {kKindOf<DeliveryLine>, 2}, day_of(2026, 7, 3), std::move(args)};
}

void is_a_sentence(const std::string& text) {
    CAPTURE(text);
    CHECK(text.size() > 20);
    CHECK((text.ends_with('.')));
    CHECK(text.find_first_of("{}") == std::string::npos);
}

}  // namespace

TEST_CASE("every finding has a sentence and a code of its own, alone and counted") {
    const Shop shop = shop_with_a_delivery();
    std::set<std::string> texts;
    std::set<std::string> codes;
    for (int code = 0; code <= static_cast<int>(kLast); ++code) {
        const auto id = static_cast<FindingCode>(code);
        const auto alone = finding_lines(shop, {finding(id)});
        const auto often = finding_lines(shop, std::vector<Finding>(7, finding(id)));
        REQUIRE(alone.size() == 1);
        REQUIRE(often.size() == 1);
        is_a_sentence(alone[0].text);
        is_a_sentence(often[0].text);
        CHECK(often[0].text.find('7') != std::string::npos);
        CHECK(texts.insert(alone[0].text).second);
        CHECK(texts.insert(often[0].text).second);
        CHECK(codes.insert(alone[0].code).second);
        CHECK(alone[0].code == code_of(id));
        CHECK(alone[0].fact == "oils-march:3");
    }
}

TEST_CASE("one line for each cause, however often it happened") {
    const Shop shop = shop_with_a_delivery();
    const auto lines = finding_lines(shop, {finding(FindingCode::more_used_than_there, {"600 g", "shea butter"}),
                                            finding(FindingCode::more_used_than_there, {"20 g", "shea butter"}),
                                            finding(FindingCode::more_used_than_there, {"20 g", "olive oil"}),
                                            finding(FindingCode::no_cost_known, {"shea butter"})});
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].text ==
          "2 times more shea butter was used than there was, first on 3 July 2026 at oils-march, line 3: enter the "
          "delivery that is missing, or what was already here.");
    CHECK(
        lines[1].text ==
        "On 3 July 2026 more olive oil was used than there was (20 g short, at oils-march, line 3): enter the delivery "
        "that is missing, or what was already here.");
}

TEST_CASE("an amount is shown as people read it") {
    const auto lines = finding_lines(
        shop_with_a_delivery(), {finding(FindingCode::expected_harvest_guessed, {"weld-2024", "~1000 g"})});
    CHECK(lines[0].text.find("the plant's usual, about 1 kg, is taken") != std::string::npos);
}

TEST_CASE("every finding of the verdict has a sentence and a code of its own") {
    const Shop shop = shop_with_a_delivery();
    std::set<std::string> texts;
    std::set<std::string> codes;
    for (int code = 0; code <= static_cast<int>(kLastOfVerdict); ++code) {
        const auto id = static_cast<VerdictFindingCode>(code);
        for (const char* detail : {"own", "bought", "plain"}) {
            const auto lines = verdict_finding_lines(shop, {{id, {kKindOf<Recipe>, 3}, {detail}}});
            REQUIRE(lines.size() == 1);
            is_a_sentence(lines[0].text);
            texts.insert(lines[0].text);
            codes.insert(lines[0].code);
            CHECK(lines[0].code == code_of(id));
        }
    }
    const auto codes_there = static_cast<std::size_t>(kLastOfVerdict) + 1;
    CHECK(codes.size() == codes_there);
    CHECK(texts.size() >= codes_there);
}

TEST_CASE("a finding of the verdict names its fact and reads its share") {
    const Shop shop = shop_with_a_delivery();
    const auto lines =
        verdict_finding_lines(shop, {{VerdictFindingCode::strength_partly_tested, {kKindOf<Recipe>, 3}, {"0.75"}},
                                     {VerdictFindingCode::no_price, {kKindOf<Recipe>, 3}, {"own"}}});
    CHECK(lines[0].text.find("75 %") != std::string::npos);
    CHECK(lines[1].text == "Nothing says what Olive loaf with your own colour sells at: enter its price.");
}

}  // namespace dyestead::reports
