// Powder sold as it is: what leaves the books, what comes in, and that nothing told for each bar hears of it.
#include <doctest/doctest.h>

#include "domain/decisions/recall.h"
#include "domain/decisions/selling.h"
#include "domain/ledger/follow.h"
#include "domain/ledger/margins.h"
#include "domain/ledger/tie_outs.h"
#include "domain/ledger/where_used.h"
#include "domain/ledger/write_down.h"
#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

constexpr Day day(int n) {
    return day_of(2026, 3, 1) + Days{n};
}
constexpr Period kYear{day_of(2026, 1, 1), day_of(2026, 12, 31)};

// Twenty bars at 2 each; ten grams of powder at 2 a gram and ten at 5. Online a tenth of the takings, 0.20 a payment
// and 0.05 a bar are gone.
struct Powder : ShopBuilder {
    Key<Person> who = person(day(0), Money::units(12));
    Key<Material> bar = made("bar", MaterialKind::bar);
    Key<Material> blue = made("blue powder", MaterialKind::pigment);
    Key<Lot> bars = already_here(day(0), bar, pieces(20), Money::units(40));
    Key<Lot> old_lot = already_here(day(0), blue, grams(10), Money::units(20));
    Key<Lot> new_lot = already_here(day(1), blue, grams(10), Money::units(50));

    Powder() {
        auto& fee = add<ChannelFee>();
        fee.from = day(0);
        fee.channel = Channel::online;
        fee.share = Ratio{10, 100};
        fee.per_payment = Money::hundredths(20);
        fee.per_bar = Money::hundredths(5);
    }

    Key<Sale> order(int on) {
        const auto key = sale(day(on));
        at(key).channel = Channel::online;
        return key;
    }
    PowderLine& powder(Key<Sale> sale, std::int64_t weight, Money price, std::optional<Key<Lot>> lot = {}) {
        auto& line = add<PowderLine>(sale);
        line.pigment = blue;
        line.amount = grams(weight);
        line.price = price;
        line.lot = lot;
        return line;
    }
    // Two bars at 7 and 4 g of the dearer lot for 6, posted for 4 of which 3 were paid, packed in ten minutes.
    Key<Sale> both(int on) {
        const auto key = order(on);
        sold(key, bar, 2, Money::units(7));
        powder(key, 4, Money::units(6), new_lot);
        at(key).postage = Money::units(4);
        at(key).postage_paid = Money::units(3);
        at(key).time = minutes(10);
        return key;
    }
    Ledger books() const { return replay(shop(), kYear.last); }
    Selling selling_now() const {
        const Ledger ledger = books();
        return selling({shop(), ledger}, {kYear.first, kYear.last});
    }
};

bool same(const Selling& one, const Selling& other) {
    return one.bars == other.bars && one.takings == other.takings && one.fee_share == other.fee_share &&
           one.fee_per_bar == other.fee_per_bar && one.cost_per_bar == other.cost_per_bar &&
           one.minutes_per_bar == other.minutes_per_bar;
}

}  // namespace

TEST_CASE("powder leaves its lot at the lot's own cost; its money pays a share and no bag") {
    Powder b;
    b.both(5);
    const Ledger ledger = b.books();
    CHECK(ledger.findings.empty());
    CHECK(state(b.shop(), ledger, b.new_lot).left == Quantity::grams(6).in_base());
    CHECK(state(b.shop(), ledger, b.old_lot).left == Quantity::grams(10).in_base());
    CHECK(materials(ledger, Boundary::sold) == Money::units(2 * 2 + 4 * 5));
    REQUIRE(ledger.sold.size() == 1);
    REQUIRE(ledger.powder_sold.size() == 1);
    CHECK(ledger.powder_sold[0].quantity == Quantity::grams(4).in_base());

    const auto all = takings(b.shop(), ledger, kYear);
    REQUIRE(all.size() == 1);
    CHECK(all[0].bars == 2'000);
    CHECK(all[0].by_price == Money::units(14));
    CHECK(all[0].for_powder == Money::units(6));
    CHECK(all[0].gross == Money::units(23));
    CHECK(all[0].asked() == all[0].gross);
    CHECK(all[0].fees.share == Money::hundredths(230));
    CHECK(all[0].fees.payments == Money::hundredths(20));
    CHECK(all[0].fees.bags == Money::hundredths(10));
    CHECK(ledger.balance(Boundary::selling).overhead == Money::hundredths(400 + 260));
    const QuantityPartition powder = quantity_partitions(b.shop(), ledger, kYear.last)[1];
    CHECK(powder.sold == Quantity::grams(4).in_base());
    CHECK(powder.in == powder.out());
}

TEST_CASE("six of the twenty asked for were the powder's, and so is that part of postage, fees and packing") {
    Powder b;
    b.both(5);
    const Selling all = b.selling_now();
    CHECK(all.bars == 2);
    CHECK(all.takings == Approx(14));
    CHECK(all.fee_share == Approx(0.1));
    CHECK(all.fee_per_bar == Approx((0.2 * 0.7 + 0.1) / 2));
    CHECK(*all.cost_per_bar == Approx((4 - 3) * 0.7 / 2));
    CHECK(*all.minutes_per_bar == Approx(10 * 0.7 / 2));

    const Ledger ledger = b.books();
    const auto kinds = kind_margins(b.shop(), ledger, kYear);
    REQUIRE(kinds.size() == 2);
    CHECK(kinds[0].kind == b.bar);
    CHECK(kinds[0].bars == 2'000);
    CHECK(kinds[0].powder == 0);
    CHECK(kinds[0].net == Money::hundredths(1'610));
    CHECK(kinds[0].fees == Money::hundredths(161 + 14 + 10));
    CHECK(kinds[0].made.materials == Money::units(4));
    CHECK(kinds[1].kind == b.blue);
    CHECK(kinds[1].bars == 0);
    CHECK(kinds[1].powder == Quantity::grams(4).in_base());
    CHECK(kinds[1].net == Money::hundredths(690));
    CHECK(kinds[1].fees == Money::hundredths(69 + 6));
    CHECK(kinds[1].made.materials == Money::units(20));
}

TEST_CASE("a sale of powder alone moves nothing that is told for each bar, though it is posted, paid for and packed") {
    Powder b;
    const auto bars = b.order(4);
    b.sold(bars, b.bar, 3, Money::units(7));
    b.at(bars).time = minutes(9);
    const auto worth = [&] { return write_down(b.shop(), b.books(), kYear.last).items; };
    const Selling before = b.selling_now();
    const auto valued_before = worth();
    const auto sale = b.order(5);
    b.powder(sale, 3, Money::units(11), b.old_lot);
    b.at(sale).postage = Money::units(4);
    b.at(sale).postage_paid = Money::units(1);
    b.at(sale).time = minutes(30);
    auto& sitting = b.add<Sitting>();
    sitting.date = day(6);
    sitting.time = minutes(25);
    const auto sat = sitting.key;
    b.add<SittingAt>(sat).sale = sale;
    CHECK(b.books().balance(Boundary::selling).hands_on == Minutes::whole(9 + 30 + 25));
    CHECK(same(b.selling_now(), before));
    const auto valued = worth();
    REQUIRE(valued.size() == valued_before.size());
    for (std::size_t i = 0; i < valued.size(); ++i)
        if (valued[i].by == WorthBy::fetches) CHECK(valued[i].fees == valued_before[i].fees);
    // Given away for nothing, it is still powder.
    b.at(b.all<PowderLine>().front().key).price = Money{};
    b.at(sale).postage_paid.reset();
    CHECK(same(b.selling_now(), before));
}

TEST_CASE("a sitting over two sales is shared by what was packed: each bar, and each lot of powder like a bar") {
    Powder b;
    const auto bars = b.order(4);
    b.sold(bars, b.bar, 3, Money::units(7));
    const auto sale = b.order(5);
    b.powder(sale, 3, Money::units(11), b.old_lot);
    auto& sitting = b.add<Sitting>();
    sitting.date = day(6);
    sitting.time = minutes(40);
    const auto sat = sitting.key;
    b.add<SittingAt>(sat).sale = bars;
    b.add<SittingAt>(sat).sale = sale;
    CHECK(*b.selling_now().minutes_per_bar == Approx(30.0 / 3));
}

TEST_CASE("what a year earned has the powder in it, and every line of it can be followed to its records") {
    Powder b;
    auto& tax = b.add<SalesTax>();
    tax.from = day(0);
    tax.rate = {15, 100};
    b.both(5);
    b.powder(b.sale(day(7)), 2, Money::hundredths(345), b.old_lot);
    const Ledger ledger = b.books();
    const Earned year = earned(b.shop(), ledger, kYear);
    CHECK(year.gross == Money::hundredths(2'300 + 345));
    CHECK(year.tax == Money::hundredths(300 + 45));
    CHECK(year.tin_difference == Money{});
    CHECK(year.bars == 2'000);
    CHECK(year.cost_of_sales.materials == Money::units(4 + 20 + 4));
    for (const TieOut& each : tie_outs(b.shop(), ledger, kYear)) CHECK(each.ties());
    Cost leaves;
    for (const Leaf& leaf : follow(b.shop(), ledger, Term::sold, kYear)) leaves += leaf.cost;
    CHECK(leaves == year.cost_of_sales);
    Money net;
    Money fees;
    Cost made;
    for (const KindMargin& each : kind_margins(b.shop(), ledger, kYear)) {
        net += each.net;
        fees += each.fees;
        made += each.made;
    }
    CHECK(net == year.net());
    CHECK(fees == year.payment_fees);
    CHECK(made == year.cost_of_sales);
}

TEST_CASE("more than there is goes out at the last cost, is said, and is settled by the next powder") {
    Powder b;
    b.powder(b.order(5), 22, Money::units(30));
    Ledger ledger = b.books();
    CHECK(has(ledger, FindingCode::more_used_than_there));
    CHECK(materials(ledger, Boundary::sold) == Money::units(20 + 50 + 2 * 5));
    const auto later = b.already_here(day(9), b.blue, grams(5), Money::units(15));
    ledger = b.books();
    CHECK(state(b.shop(), ledger, later).left == Quantity::grams(3).in_base());
    CHECK(materials(ledger, Boundary::sold) == Money::units(80));
    for (const QuantityPartition& term : quantity_partitions(b.shop(), ledger, kYear.last))
        CHECK(term.in + term.made == term.out());
}

TEST_CASE("only powder made here is sold as powder, of its own lots, and not nothing of it for money") {
    Powder b;
    const auto sale = b.order(5);
    SUBCASE("a bar") {
        b.powder(sale, 3, Money::units(9)).pigment = b.bar;
        const Ledger ledger = b.books();
        REQUIRE(ledger.findings.size() == 1);
        CHECK(ledger.findings[0].code == FindingCode::no_powder);
        CHECK(ledger.findings[0].args == std::vector<std::string>{"bar"});
        CHECK(materials(ledger, Boundary::sold) == Money{});
        CHECK(takings(b.shop(), ledger, kYear)[0].gross == Money{});
        CHECK_FALSE(takings(b.shop(), ledger, kYear)[0].for_powder);
    }
    SUBCASE("a lot of bars") {
        b.powder(sale, 3, Money::units(9), b.bars);
        const Ledger ledger = b.books();
        CHECK(has(ledger, FindingCode::lot_of_another_material));
        CHECK(materials(ledger, Boundary::sold) == Money::units(6));
    }
    SUBCASE("nothing of it") {
        b.powder(sale, 0, Money::units(9));
        const Ledger ledger = b.books();
        CHECK(has(ledger, FindingCode::nothing_in_it));
        CHECK(ledger.powder_sold.empty());
        CHECK(takings(b.shop(), ledger, kYear)[0].gross == Money{});
    }
}

TEST_CASE("a held powder is passed over; named all the same, it goes with a finding") {
    Powder b;
    auto& hold = b.add<Hold>();
    hold.date = day(2);
    hold.lot = b.old_lot;
    hold.why = "smells wrong";
    b.powder(b.order(5), 3, Money::units(9));
    Ledger ledger = b.books();
    CHECK(ledger.findings.empty());
    CHECK(state(b.shop(), ledger, b.new_lot).left == Quantity::grams(7).in_base());
    b.powder(b.order(6), 3, Money::units(9), b.old_lot);
    ledger = b.books();
    REQUIRE(ledger.findings.size() == 1);
    CHECK(ledger.findings[0].code == FindingCode::sold_while_held);
}

TEST_CASE("a recall finds powder that was sold: with somebody who can be asked, or with nobody on record") {
    Powder b;
    const auto known = b.order(5);
    b.at(known).buyer = "the weaver";
    b.powder(known, 3, Money::units(9), b.old_lot);
    b.powder(b.order(6), 2, Money::units(6), b.old_lot);
    const Ledger ledger = b.books();
    const auto lot = static_cast<std::uint32_t>(b.shop().find(b.old_lot) - b.shop().all<Lot>().data());
    const Recall found = recall(b.shop(), ledger, {ledger.accounts.lots + lot});
    REQUIRE(found.whereabouts.size() == 3);
    CHECK(found.whereabouts[0].heap == Heap::here);
    CHECK(found.whereabouts[1].heap == Heap::reachable);
    CHECK(found.whereabouts[1].quantity == Quantity::grams(3).in_base());
    CHECK(found.whereabouts[1].fact == ref(b.all<PowderLine>()[0]));
    CHECK(found.whereabouts[2].heap == Heap::out_of_reach);
    const auto steps = where_used(ledger, lot);
    REQUIRE(steps.size() == 2);
    CHECK(steps[0].to == account(Boundary::sold));
    CHECK(steps[0].named);
}
