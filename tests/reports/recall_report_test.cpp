// The recall as a page: three heaps with their bars, what is in it with the supplier's lot, and what to do.
#include "reports/recall_report.h"

#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "reports/registry.h"
#include "reports/words/trouble_words.h"
#include "reports/write/text.h"
#include "tests/support/shop_builder.h"

namespace dyestead::reports {
namespace {

using namespace dyestead::test;

constexpr Day may(unsigned day) {
    return day_of(2026, 5, day);
}

// Oil of two deliveries; ten bars of the first, of which some went to a shop, a fair and nobody knows where.
struct TwoOils : ShopBuilder {
    Key<Material> oil = material("Olive oil", Purpose::oil);
    Key<Material> bar = made("Plain bar", MaterialKind::bar);
    Key<Lot> first = delivery(may(1), oil, grams(1'000), Money::units(10));
    Key<Lot> unused = delivery(may(20), oil, grams(500), Money::units(10));
    Key<Lot> bars;

    TwoOils() {
        add<About>().currency = "GBP";
        all<DeliveryLine>().front().supplier_lot = "L7749";
        all<DeliveryLine>().front().best_before = day_of(2027, 6, 30);
        const auto loaf = batch(may(3), recipe(10), bar);
        uses<BatchUse>(loaf, oil, grams(1'000), first);
        bars = cut(may(4), loaf, 10, 0, may(4));
        const auto order = sale(may(6));
        at(order).buyer = "The farm shop";
        sold(order, bar, 3, Money::units(5), bars);
        auto& fair = add<Fair>();
        fair.date = may(9);
        fair.name = "May market";
        const auto key = fair.key;
        auto& line = add<FairLine>(key);
        line.bar = bar;
        line.lot = bars;
        line.taken = 4;
        line.back = 2;
    }
    Ledger ledger(Day day = may(31)) const { return replay(shop(), day); }
    Document of(const std::string& code) const {
        const Ledger books = ledger();
        return std::get<Document>(recall_report(shop(), books, code, std::nullopt));
    }
};

double figure(const Document& document, std::string_view key) {
    for (const Figure& each : document.figures)
        if (each.key == key) return each.value.value();
    FAIL("no figure " << key);
    return 0;
}

const Table& table(const Document& document, std::string_view title) {
    for (const Block& block : document.blocks)
        if (const auto* found = std::get_if<Table>(&block); found != nullptr && found->title == title) return *found;
    FAIL("no table " << title);
    return std::get<Table>(document.blocks.front());
}

std::string last_words(const Document& document) {
    return std::get<Paragraph>(document.blocks.back()).text;
}

}  // namespace

TEST_CASE("three heaps, who has the bars, and one sentence that says what to do") {
    const TwoOils b;
    const Document found = b.of("L7749");
    CHECK(std::get<Headline>(found.blocks.front()).text ==
          "10 bars hold some of it: 5 here, 3 out with somebody to ask, 2 out with nobody on record.");
    CHECK(figure(found, "bars.here.named") == 5);
    CHECK(figure(found, "bars.reachable.named") == 3);
    CHECK(figure(found, "bars.out_of_reach.named") == 2);
    CHECK(figure(found, "bars.here.by_rule") == 0);
    const Table& asked = table(found, "Out, and there is somebody to ask");
    REQUIRE(asked.rows.size() == 1);
    CHECK(asked.rows[0][2].shown == "3");
    CHECK(asked.rows[0][3].shown == "6 May 2026");
    CHECK(asked.rows[0][4].shown == "The farm shop");
    CHECK(asked.rows[0][5].shown == "named");
    CHECK(table(found, "Out, and nobody is on record").rows[0][4].shown == "May market");
    const std::string code = b.shop().find(b.bars)->code;
    CHECK(last_words(found) ==
          "Put by and hold " + code +
              ", write to those on record (The farm shop), and put up a notice for those who cannot be asked (May "
              "market); what must be "
              "called back or reported, and to whom, the rules where you sell and your licensed assessor say.");
    CHECK(write_text(found).find("Put by and hold") != std::string::npos);
}

TEST_CASE("backward from the bars: the oil with its supplier's lot, delivery and best before") {
    const TwoOils b;
    const Document found = b.of(b.shop().find(b.bars)->code);
    const Table& in = table(found, "What is in it");
    REQUIRE(in.rows.size() == 1);
    const auto& oil = in.rows[0];
    CHECK(oil[0].shown == "Olive oil");
    CHECK(oil[1].shown == b.shop().find(b.first)->code);
    CHECK(oil[2].shown == "1 kg");
    CHECK(oil[3].shown == "the supplier");
    CHECK(oil[4].shown == "L7749");
    CHECK(oil[5].shown == b.shop().all<Delivery>().front().code);
    CHECK(oil[6].shown == "30 Jun 2027");
    CHECK(oil[7].shown == "named");
}

TEST_CASE("a lot that was never used is put by, and that is all there is to do") {
    const TwoOils b;
    const std::string code = b.shop().find(b.unused)->code;
    const Document found = b.of(code);
    CHECK(std::get<Headline>(found.blocks.front()).text ==
          "By your records no bar that is here or out holds any of it.");
    const Table& here = table(found, "Still here");
    REQUIRE(here.rows.size() == 1);
    CHECK(here.rows[0][2].shown == "500 g");
    CHECK(here.rows[0][4].shown == "no");
    CHECK(last_words(found).starts_with("Put by and hold " + code + "; what must be"));
    CHECK(write_text(found).find("Nothing was made with it.") != std::string::npos);
}

TEST_CASE("a recall of nothing, of a code that is nothing, or of what has not come yet, is said in words") {
    const TwoOils b;
    const Ledger books = b.ledger();
    const auto trouble = [&](const Ledger& ledger, const std::optional<std::string>& of, std::optional<Day> from) {
        return std::get<Trouble>(recall_report(b.shop(), ledger, of, from));
    };
    CHECK(trouble(books, std::nullopt, {}).id == TroubleId::nothing_to_trace);
    CHECK(trouble(books, "", {}).id == TroubleId::nothing_to_trace);
    CHECK(trouble(books, "moon", {}).id == TroubleId::no_such_code);
    CHECK(trouble_sentence(trouble(books, "moon", {})).find("has the code \"moon\"") != std::string::npos);
    // The delivery of the 20th is not on record by the 10th, and nothing of the oil came after May.
    CHECK(trouble(b.ledger(may(10)), b.shop().all<Delivery>().back().code, {}).id == TroubleId::no_such_code);
    CHECK(trouble(books, b.shop().find(b.oil)->code, day_of(2026, 6, 1)).id == TroubleId::no_such_code);
    const Report report = std::get<Report>(report_named("recall"));
    const Reply reply = report.make({.shop = b.shop(), .ledger = books, .of = "L7749"});
    CHECK(std::get<Document>(reply).report == "recall");
}

TEST_CASE("a lot whose goods have all gone out by rule says that it is the rule that says so") {
    TwoOils b;
    b.sold(b.sale(may(12)), b.bar, 5, Money::units(5));
    const Document found = b.of("L7749");
    CHECK(figure(found, "bars.here.named") == 0);
    CHECK(figure(found, "bars.out_of_reach.by_rule") == 5);
    CHECK(write_text(found).find("Of 5 of them the lot is not named all the way") != std::string::npos);
    CHECK(last_words(found).starts_with("Write to those on record (The farm shop), and put up a notice"));
}

}  // namespace dyestead::reports
