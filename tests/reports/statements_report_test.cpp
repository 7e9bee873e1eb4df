// The statements as pages: their figures are those of the ledger, their rows add up, and the last line
// says whether they tie.
#include <doctest/doctest.h>

#include <algorithm>

#include "domain/ledger/earned.h"
#include "domain/ledger/replay.h"
#include "reports/hours_report.h"
#include "reports/losses_report.h"
#include "reports/margins_report.h"
#include "reports/money_report.h"
#include "reports/registry.h"
#include "reports/statement_parts.h"
#include "reports/trace_report.h"
#include "reports/write/text.h"
#include "reports/year_report.h"
#include "tests/support/shop_builder.h"

namespace dyestead::reports {
namespace {

using namespace dyestead::test;

constexpr Period kYear{day_of(2026, 1, 1), day_of(2026, 12, 31)};

// One loaf of ten bars from 20 of oil and an hour; six sold at a fair, one spoiled.
struct SmallYear : ShopBuilder {
    SmallYear() {
        add<About>().currency = "GBP";
        person(day_of(2026, 1, 1), Money::units(12));
        const auto oil = material("oil", Purpose::oil);
        const auto bar = made("bar", MaterialKind::bar);
        delivery(day_of(2026, 2, 1), oil, grams(1'000), Money::units(20));
        const auto loaf = batch(day_of(2026, 2, 2), recipe(10), bar);
        uses<BatchUse>(loaf, oil, grams(1'000));
        add<BatchTime>(loaf).time = minutes(60);
        cut(day_of(2026, 2, 3), loaf, 10, 0, day_of(2026, 3, 3));
        auto& fair = add<Fair>();
        fair.date = day_of(2026, 5, 2);
        fair.name = "May market";
        fair.fee = Money::units(9);
        const auto key = fair.key;
        auto& line = add<FairLine>(key);
        line.bar = bar;
        line.taken = 6;
        line.price = Money::units(5);
        loss(day_of(2026, 6, 1), bar, pieces(1), LossReason::spoiled);
    }
};

double figure(const Document& document, std::string_view key) {
    for (const Figure& each : document.figures)
        if (each.key == key) return each.value.value();
    FAIL("no figure " << key);
    return 0;
}

const Table& table(const Document& document, std::size_t at) {
    std::size_t seen = 0;
    for (const Block& block : document.blocks)
        if (const auto* found = std::get_if<Table>(&block); found != nullptr && seen++ == at) return *found;
    FAIL("no such table");
    return std::get<Table>(document.blocks.front());
}

bool says(const Document& document, std::string_view words) {
    return write_text(document).find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("the year: takings less what the bars had cost, the loss and the stall") {
    const SmallYear b;
    const Ledger ledger = replay(b.shop(), kYear.last);
    const Document year = year_report(b.shop(), ledger, kYear);
    CHECK(year.title.find("without your own hours") != std::string::npos);
    CHECK(figure(year, "takings.gross") == 30);
    CHECK(figure(year, "cost_of_sales.cash_cost") == doctest::Approx(12));
    CHECK(figure(year, "cost_of_sales.full_cost") == doctest::Approx(19.2));
    CHECK(figure(year, "lost.cash_cost") == doctest::Approx(2));
    CHECK(figure(year, "selling.cash_cost") == 9);
    CHECK(figure(year, "earned.cash_cost") == doctest::Approx(30 - 12 - 2 - 9));
    CHECK(figure(year, "earned.full_cost") == doctest::Approx(30 - 19.2 - 3.2 - 9));
    CHECK(says(year, "Checked to the last unit"));
}

TEST_CASE("the rows of the year add up to what was earned, the gross margin left out") {
    const SmallYear b;
    const Document year = year_report(b.shop(), replay(b.shop(), kYear.last), kYear);
    const Table& rows = table(year, 0);
    for (const std::size_t column : {1U, 2U}) {
        double sum = 0;
        for (std::size_t row = 0; row + 1 < rows.rows.size(); ++row)
            if (rows.rows[row][0].shown != "gross margin") sum += rows.rows[row][column].number.value();
        CHECK(sum == doctest::Approx(rows.rows.back()[column].number.value()));
    }
}

TEST_CASE("powder sold as it is stands in the margins by its weight, and not among what bars left") {
    SmallYear b;
    const Document without = margins_report(b.shop(), replay(b.shop(), kYear.last), kYear);
    const auto powder = b.made("powder", MaterialKind::pigment);
    b.already_here(day_of(2026, 1, 1), powder, grams(10), Money::units(5));
    auto& line = b.add<PowderLine>(b.sale(day_of(2026, 7, 1)));
    line.pigment = powder;
    line.amount = grams(4);
    line.price = Money::units(7);
    const Ledger ledger = replay(b.shop(), kYear.last);
    const Document margins = margins_report(b.shop(), ledger, kYear);
    const std::string kind = "powder." + b.at(powder).code;
    CHECK(figure(margins, kind + ".grams") == 4);
    CHECK(figure(margins, kind + ".taken") == 7);
    CHECK(figure(margins, kind + ".left.cash_cost") == doctest::Approx(7 - 2));
    CHECK(figure(margins, "all.taken") == figure(year_report(b.shop(), ledger, kYear), "takings.net"));
    const Table& in_all = table(margins, 0);
    CHECK(std::ranges::any_of(in_all.rows, [](const auto& row) { return row[1].shown == "4 g"; }));
    CHECK(table(margins, 1).rows.size() == table(without, 1).rows.size());
    const auto headline = [](const Document& of) { return std::get<Headline>(of.blocks.front()).text; };
    CHECK(headline(margins) == headline(without));
    CHECK(says(margins, "Checked to the last unit"));
}

TEST_CASE("hours, money and losses end in their totals") {
    const SmallYear b;
    const Ledger ledger = replay(b.shop(), kYear.last);
    const Document hours = hours_report(b.shop(), ledger, kYear);
    CHECK(figure(hours, "hours.bench") == 1);
    CHECK(figure(hours, "hours.total") == 1);
    CHECK(figure(hours, "labour") == 12);
    const Document money = money_report(b.shop(), ledger, kYear);
    CHECK(figure(money, "in.fair_not_counted") == 30);
    CHECK(figure(money, "out.goods") == 20);
    CHECK(figure(money, "out.stalls") == 9);
    CHECK(figure(money, "left") == 1);
    const Document losses = losses_report(b.shop(), ledger, kYear);
    CHECK(figure(losses, "losses.spoiled.cash_cost") == doctest::Approx(2));
    CHECK(table(losses, 0).rows.size() == 2);
    CHECK(table(losses, 0).rows[0][3].shown == "1");
}

TEST_CASE("a trace names the records and ends in the sum; of a lot it says where it went") {
    const SmallYear b;
    const Ledger ledger = replay(b.shop(), kYear.last);
    const auto sold = std::get<Document>(trace_report(b.shop(), ledger, "sold", kYear));
    const Table& leaves = table(sold, 0);
    REQUIRE(leaves.rows.size() == 3);
    CHECK(leaves.rows[0][0].shown == "2026-02-01");
    CHECK(leaves.rows[0][1].shown == "oil");
    CHECK(leaves.rows[0][3].shown == "delivered");
    CHECK(leaves.rows[0][4].number.value() == doctest::Approx(12));
    CHECK(leaves.rows.back()[5].number.value() == doctest::Approx(19.2));
    const std::string oil_lot = b.shop().all<Lot>().front().code;
    const auto lot = std::get<Document>(trace_report(b.shop(), ledger, oil_lot, kYear));
    CHECK(figure(lot, "total.cash_cost") == 20);
    CHECK(table(lot, 1).rows.size() == 4);
    CHECK(table(lot, 1).rows[0][2].shown == b.shop().all<Batch>().front().code);
}

TEST_CASE("a trace of nothing, or of what is not there, says what can be traced") {
    const SmallYear b;
    const Ledger ledger = replay(b.shop(), kYear.last);
    CHECK(std::get<Trouble>(trace_report(b.shop(), ledger, std::nullopt, kYear)).id == TroubleId::nothing_to_trace);
    CHECK(std::get<Trouble>(trace_report(b.shop(), ledger, "moon", kYear)).id == TroubleId::no_such_code);
}

TEST_CASE("the period starts with the financial year unless a day is asked for, and never after its end") {
    SmallYear b;
    const Ledger ledger = replay(b.shop(), day_of(2026, 3, 15));
    CHECK(period_of(b.shop(), ledger, std::nullopt).first == day_of(2026, 1, 1));
    b.all<About>().front().year_begins = 4;
    CHECK(period_of(b.shop(), ledger, std::nullopt).first == day_of(2025, 4, 1));
    CHECK(period_of(b.shop(), ledger, day_of(2026, 2, 2)).first == day_of(2026, 2, 2));
    const Report year = std::get<Report>(report_named("year"));
    const auto reply = year.make({.shop = b.shop(), .ledger = ledger, .from = day_of(2027, 1, 1)});
    CHECK(std::get<Trouble>(reply).id == TroubleId::starts_after_end);
}

}  // namespace dyestead::reports
