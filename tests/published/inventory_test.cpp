// Which lot leaves, and at what cost, against textbook inventories.
#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "domain/values/rate.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

// Source: OpenStax, Principles of Accounting, Volume 1: Financial Accounting, sections 10.1 to 10.3, the
// company "Spy Who Loves You": July, 150 at 21 there; 120 sold on the 5th; 225 at 27 on the 10th; 180 sold on
// the 15th; 210 at 33 on the 25th. Goods available 16,155, revenue 11,340.
struct Spy : ShopBuilder {
    Key<Material> unit = made("tracking unit", MaterialKind::bar);
    Key<Lot> first = already_here(july(1), unit, pieces(150), Money::units(150 * 21));
    Key<Sale> early = sale(july(5));
    Key<Lot> second = delivery(july(10), unit, pieces(225), Money::units(225 * 27));
    Key<Sale> late = sale(july(15));
    Key<Lot> third = delivery(july(25), unit, pieces(210), Money::units(210 * 33));

    static Day july(unsigned day) { return day_of(2019, 7, day); }

    Ledger books(Day day = july(31)) const { return replay(shop(), day); }
    Money left(const Ledger& ledger, Key<Lot> lot) const {
        const auto& lots = shop().all<Lot>();
        return ledger.lots[static_cast<std::size_t>(shop().find(lot) - lots.data())].cost.materials;
    }
};

Money revenue(const Ledger& ledger) {
    Money total;
    for (const SoldLine& line : ledger.sold)
        if (line.price) total += Rate{*line.price, Quantity::pieces(1)} * Quantity{Kind::count, line.bars};
    return total;
}

}  // namespace

TEST_CASE("named lots: 7,260 sold, 8,895 left") {
    Spy spy;
    spy.sold(spy.early, spy.unit, 120, Money::units(36), spy.first);
    spy.sold(spy.late, spy.unit, 20, Money::units(39), spy.first);
    spy.sold(spy.late, spy.unit, 160, Money::units(39), spy.second);
    const Ledger ledger = spy.books();
    const auto terms = cost_partition(spy.shop(), ledger, spy.july(31));
    CHECK(terms.in.materials == Money::units(16'155));
    CHECK(terms.sold.materials == Money::units(7'260));
    CHECK(terms.stock.materials == Money::units(8'895));
    CHECK(spy.left(ledger, spy.first) == Money::units(10 * 21));
    CHECK(spy.left(ledger, spy.second) == Money::units(65 * 27));
    CHECK(spy.left(ledger, spy.third) == Money::units(210 * 33));
    CHECK(revenue(ledger) == Money::units(11'340));
    CHECK(revenue(ledger) - terms.sold.materials == Money::units(4'080));
    CHECK(ledger.findings.empty());
}

TEST_CASE("no lot named: the oldest first, 7,200 sold, 8,955 left") {
    Spy spy;
    spy.sold(spy.early, spy.unit, 120, Money::units(36));
    spy.sold(spy.late, spy.unit, 180, Money::units(39));
    const Ledger ledger = spy.books();
    const auto terms = cost_partition(spy.shop(), ledger, spy.july(31));
    CHECK(terms.sold.materials == Money::units(7'200));
    CHECK(terms.stock.materials == Money::units(8'955));
    CHECK(spy.left(ledger, spy.first) == Money{});
    CHECK(spy.left(ledger, spy.second) == Money::units(75 * 27));
    CHECK(revenue(ledger) - terms.sold.materials == Money::units(4'140));
    CHECK(ledger.findings.empty());
}

TEST_CASE("the two sales of the oldest first: 2,520, then 630 and 4,050") {
    Spy spy;
    spy.sold(spy.early, spy.unit, 120, Money::units(36));
    spy.sold(spy.late, spy.unit, 180, Money::units(39));
    CHECK(spy.books(spy.july(5)).balance(Boundary::sold).materials == Money::units(2'520));
    std::vector<Money> drawn;
    const Ledger ledger = spy.books();
    for (const Movement& movement : ledger.movements)
        if (movement.to == account(Boundary::sold)) drawn.push_back(movement.cost.materials);
    CHECK(drawn == std::vector{Money::units(2'520), Money::units(630), Money::units(4'050)});
}

TEST_CASE("goods lost or given away leave as those sold do, into an account of their own") {
    Spy spy;
    spy.loss(spy.july(5), spy.unit, pieces(120), LossReason::given);
    spy.loss(spy.july(15), spy.unit, pieces(180), LossReason::spoiled);
    const auto terms = cost_partition(spy.shop(), spy.books(), spy.july(31));
    CHECK(terms.given.materials == Money::units(2'520));
    CHECK(terms.lost.materials == Money::units(4'680));
    CHECK(terms.stock.materials == Money::units(8'955));
}

// Source: OpenStax, the same volume, section 10.1, Harry's: 50 at 7 and 20 at 7, 18 left.
TEST_CASE("52 sold at one price: 364 sold, 126 left") {
    ShopBuilder b;
    const auto unit = b.made("unit", MaterialKind::bar);
    b.delivery(day_of(2019, 1, 2), unit, pieces(50), Money::units(350));
    b.delivery(day_of(2019, 1, 9), unit, pieces(20), Money::units(140));
    b.sold(b.sale(day_of(2019, 1, 20)), unit, 52, Money::units(10));
    const Day end = day_of(2019, 1, 31);
    const auto terms = cost_partition(b.shop(), replay(b.shop(), end), end);
    CHECK(terms.sold.materials == Money::units(364));
    CHECK(terms.stock.materials == Money::units(126));
    CHECK(quantity_partitions(b.shop(), replay(b.shop(), end), end)[0].stock == 18'000);
}

// Source: OpenStax, the same volume, exercises of chapter 10, inputs only; no answers are printed, so that the
// figures here are arithmetic: oldest first.
TEST_CASE("exercises A and B of the chapter keep every unit and every penny") {
    struct Step {
        int bought;  // below nought: sold
        int price;
    };
    const auto run = [](std::initializer_list<Step> steps, Money sold, Money left, int units_left) {
        ShopBuilder b;
        const auto unit = b.made("unit", MaterialKind::bar);
        Day day = day_of(2019, 3, 1);
        for (const Step& step : steps) {
            day += Days{1};
            if (step.bought > 0)
                b.delivery(day, unit, pieces(step.bought), Money::units(step.bought * step.price));
            else
                b.sold(b.sale(day), unit, -step.bought, Money::units(300));
        }
        const Ledger ledger = replay(b.shop(), day);
        const auto terms = cost_partition(b.shop(), ledger, day);
        CHECK(terms.sold.materials == sold);
        CHECK(terms.stock.materials == left);
        CHECK(terms.in == terms.out());
        const auto quantity = quantity_partitions(b.shop(), ledger, day)[0];
        CHECK(quantity.stock == units_left * 1'000);
        CHECK(quantity.in == quantity.out());
    };
    // A: 240@100, 520@103, 400@110, of which 230 are left, all of them at 110.
    run({{240, 100}, {-160, 0}, {520, 103}, {-400, 0}, {400, 110}, {-370, 0}},
        Money::units(240 * 100 + 520 * 103 + 170 * 110), Money::units(230 * 110), 230);
    // B: 420@200, 250@205, 200@215, of which 185 are left, all of them at 215.
    run({{420, 200}, {-150, 0}, {250, 205}, {-275, 0}, {200, 215}, {-260, 0}},
        Money::units(420 * 200 + 250 * 205 + 15 * 215), Money::units(185 * 215), 185);
}

// Source: OpenStax, the same volume, section 11.3: a drill press at 22,000 with 2,500 and 800 of costs to get it in
// place stands at 25,300. IAS 2, paragraph 11, asks the same of goods: price, duties and taxes that are not got back,
// carriage, less discounts. The figures of the second part are arithmetic.
TEST_CASE("what it costs to get goods here belongs to the goods") {
    ShopBuilder b;
    const auto press = b.material("drill press", Purpose::other, HeldAs::count);
    const Day day = day_of(2019, 1, 2);
    b.delivery(day, press, pieces(1), Money::units(22'000), Money::units(2'500));
    auto& bill = b.all<Delivery>().back();
    bill.duty = Money::units(800);
    const auto landed = [&] { return replay(b.shop(), day).lots[0].cost.materials; };
    CHECK(landed() == Money::units(25'300));
    bill.discount = Money::units(1'100);
    b.all<DeliveryLine>().back().tax = Ratio{20, 100};
    CHECK(landed() == Money::units(25'300 - 1'100 + 4'400));
    auto& registered = b.add<SalesTax>();
    registered.from = day;
    registered.rate = Ratio{20, 100};
    CHECK(landed() == Money::units(25'300 - 1'100));
}
