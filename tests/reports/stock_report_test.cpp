#include "reports/stock_report.h"

#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"

namespace dyestead::reports {
namespace {

template <class Fact>
Fact& add(Shop& shop, std::int64_t key, std::string code) {
    Fact fact;
    fact.key = {key};
    fact.code = std::move(code);
    shop.all<Fact>().push_back(std::move(fact));
    return shop.all<Fact>().back();
}

// 10 kg of oil for 50, 1 kg of it spilled, and a bed with two hours in it.
Shop small_shop() {
    Shop shop;
    add<About>(shop, 1, "shop").currency = "GBP";
    add<Person>(shop, 2, "ann").name = "Ann";
    auto& pay = add<Pay>(shop, 3, "pay");
    pay.from = day_of(2026, 1, 1);
    pay.person = {2};
    pay.per_hour = Money::units(12);
    add<Material>(shop, 4, "olive").name = "olive oil";
    add<Lot>(shop, 5, "olive-1").material = {4};
    auto& delivery = add<Delivery>(shop, 6, "d1");
    delivery.date = day_of(2026, 2, 1);
    DeliveryLine line;
    line.key = {7};
    line.head = {6};
    line.position = 1;
    line.lot = {5};
    line.amount = {Quantity::grams(10'000), Unit::kg};
    line.price = Money::units(50);
    shop.all<DeliveryLine>().push_back(line);
    auto& spilled = add<Loss>(shop, 8, "spilled");
    spilled.date = day_of(2026, 2, 2);
    spilled.material = {4};
    spilled.amount = {Quantity::grams(1'000), Unit::kg};
    spilled.reason = LossReason::spilled;
    add<Bed>(shop, 9, "bed").area = {Quantity::square_centimetres(50'000), Unit::m2};
    add<Plant>(shop, 10, "weld").name = "weld";
    auto& planting = add<Planting>(shop, 11, "weld-1");
    planting.sown = day_of(2026, 3, 1);
    planting.plant = {10};
    planting.bed = {9};
    auto& tending = add<Tending>(shop, 12, "weeding");
    tending.date = day_of(2026, 4, 1);
    tending.planting = {11};
    tending.time = Span{Minutes::whole(120), TimeUnit::h};
    return shop;
}

double number(Money money) {
    return static_cast<double>(money.in_millionths()) / 1e6;
}

double figure(const Document& document, std::string_view key) {
    for (const Figure& each : document.figures)
        if (each.key == key) return each.value.value();
    FAIL("no figure " << key);
    return 0;
}

}  // namespace

TEST_CASE("stock is at cost without the maker's hours, the full cost beside it") {
    const Shop shop = small_shop();
    const Ledger ledger = replay(shop, day_of(2026, 6, 30));
    const Document document = stock_report(shop, ledger);
    CHECK(document.title == "Stock on 30 June 2026 at cost, without your own hours");
    CHECK(figure(document, "stock.raw.cash_cost") == doctest::Approx(45));
    CHECK(figure(document, "in_progress.cash_cost") == 0);
    CHECK(figure(document, "in_progress.full_cost") == doctest::Approx(24));
    CHECK(figure(document, "total.full_cost") == doctest::Approx(69));
}

TEST_CASE("its totals are those of the cost partition") {
    const Shop shop = small_shop();
    for (const Day day : {day_of(2026, 1, 15), day_of(2026, 2, 1), day_of(2026, 3, 15), day_of(2026, 6, 30)}) {
        const Ledger ledger = replay(shop, day);
        const CostPartition terms = cost_partition(shop, ledger, day);
        const Document document = stock_report(shop, ledger);
        CHECK(figure(document, "stock.cash_cost") == number(terms.stock.cash()));
        CHECK(figure(document, "stock.full_cost") == number(terms.stock.full()));
        CHECK(figure(document, "in_progress.cash_cost") == number(terms.in_progress.cash()));
        CHECK(figure(document, "in_progress.full_cost") == number(terms.in_progress.full()));
    }
}

TEST_CASE("each lot has its line, and the lines add up") {
    const Shop shop = small_shop();
    const Document document = stock_report(shop, replay(shop, day_of(2026, 6, 30)));
    for (const Block& block : document.blocks) {
        const auto* table = std::get_if<Table>(&block);
        if (table == nullptr) continue;
        double sum = 0;
        for (std::size_t row = 0; row + 1 < table->rows.size(); ++row) sum += table->rows[row][4].number.value();
        CHECK(sum == doctest::Approx(table->rows.back()[4].number.value()));
    }
    const auto& oils = std::get<Table>(document.blocks[1]);
    CHECK(oils.rows[0][1].shown == "olive-1");
    CHECK(oils.rows[0][2].shown == "9 kg");
}

}  // namespace dyestead::reports
