// Goods at somebody else's shop, a machine wearing out, overhead spread over what is made: against published
// examples.
#include <doctest/doctest.h>

#include <cstdlib>

#include "domain/ledger/earned.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

// Source: OpenStax, Principles of Accounting, Volume 1: Financial Accounting, section 10.1: a shop sells goods on
// consignment for 15,000 and keeps a third; the owner gets 10,000, the shop 5,000, and until they are sold the goods
// stay on the owner's books.
TEST_CASE("goods on consignment are the owner's until sold, and the shop keeps its third") {
    ShopBuilder b;
    const Day day = day_of(2019, 1, 2);
    const auto goods = b.made("goods", MaterialKind::bar);
    b.already_here(day, goods, pieces(100), Money::units(4'000));
    auto& out = b.add<OutAtShop>();
    out.date = day;
    out.bar = goods;
    out.bars = 100;
    out.price = Money::units(150);
    out.share = Ratio{1, 3};
    const auto key = out.key;
    CHECK(cost_partition(b.shop(), replay(b.shop(), day), day).stock.materials == Money::units(4'000));

    auto& settled = b.add<OutSettled>();
    settled.date = day + Days{30};
    settled.out = key;
    settled.sold = 100;
    const Ledger ledger = replay(b.shop(), settled.date);
    const Earned earned = dyestead::earned(b.shop(), ledger, {day, settled.date});
    CHECK(earned.gross == Money::units(15'000));
    CHECK(earned.payment_fees == Money::units(5'000));
    CHECK(earned.gross - earned.selling.overhead == Money::units(10'000));
    CHECK(cost_partition(b.shop(), ledger, settled.date).stock.is_zero());
}

namespace {

// Source: OpenStax, the same volume, section 11.3, Kenzie: 54,000 with 1,500 and 2,500 to get it in place, worth 10,000
// at the end of five years. 48,000 wear out.
Equipment press(Day bought) {
    Equipment tool;
    tool.bought = bought;
    tool.price = Money::units(54'000 + 1'500 + 2'500 - 10'000);
    tool.years = 5;
    return tool;
}

bool about(Money is, Money published, Money apart) {
    return std::abs((is - published).in_millionths()) <= apart.in_millionths();
}

}  // namespace

// Published by months; here by days, of which a leap year has one more: apart by no more than a day's wear of 26.29 in
// a year, and by two of them in nine months.
TEST_CASE("a machine wears out in a straight line, and a part of a year by its part") {
    const Equipment tool = press(day_of(2021, 1, 1));
    for (int year = 2021; year <= 2025; ++year) {
        const Money worn = wear_accrued(tool, day_of(year, 12, 31)) - wear_accrued(tool, day_of(year - 1, 12, 31));
        CHECK(about(worn, Money::units(9'600), Money::hundredths(2'629)));
    }
    CHECK(wear_accrued(tool, day_of(2025, 12, 31)) == Money::units(48'000));
    const Equipment later = press(day_of(2021, 4, 1));
    CHECK(about(wear_accrued(later, day_of(2021, 12, 31)), Money::units(7'200), Money::hundredths(2 * 2'629)));
    const Money last = wear_accrued(later, day_of(2026, 12, 31)) - wear_accrued(later, day_of(2025, 12, 31));
    CHECK(about(last, Money::units(2'400), Money::hundredths(2 * 2'629)));
}

// Source: OpenStax, Principles of Accounting, Volume 2: Managerial Accounting, sections 4.2 to 4.4, Dinosaur Vinyl:
// 250,000 of overhead over 100,000 of the base is 2.50; the job MAC001 takes 700 of material, 66 of labour and 66 of
// the base: 165 of overhead, 931 in all. The base there is labour cost, here it is bars.
TEST_CASE("a job carries its material, its labour and its share of the overhead") {
    ShopBuilder b;
    const Day day = day_of(2019, 1, 2);
    b.person(day, Money::units(66));
    auto& overhead = b.add<Overhead>();
    overhead.from = day;
    overhead.per_year = Money::units(250'000);
    overhead.normal_bars = 100'000;
    const auto vinyl = b.material("vinyl", Purpose::other);
    b.delivery(day, vinyl, grams(700), Money::units(700));
    const auto job = b.batch(day, b.recipe(66), b.made("sign", MaterialKind::bar));
    b.uses<BatchUse>(job, vinyl, grams(700));
    b.add<BatchTime>(job).time = minutes(60);
    const auto lot = b.cut(day, job, 66, 0, day);
    const Ledger ledger = replay(b.shop(), day);
    const auto place = static_cast<std::size_t>(b.shop().find(lot) - b.shop().all<Lot>().data());
    CHECK(ledger.lots[place].cost.overhead == Money::units(165));
    CHECK(ledger.lots[place].cost.full() == Money::units(931));
}

// Source: the same, year's end: 256,500 came up and 250,000 were applied; 6,500 too little.
TEST_CASE("what bars did not absorb of the year's overhead is under-absorbed") {
    ShopBuilder b;
    auto& overhead = b.add<Overhead>();
    overhead.from = day_of(2019, 1, 1);
    overhead.per_year = Money::units(256'500);
    overhead.normal_bars = 102'600;  // 2.50 a bar
    const auto job = b.batch(day_of(2019, 5, 1), b.recipe(100'000), b.made("sign", MaterialKind::bar));
    b.cut(day_of(2019, 5, 2), job, 100'000, 0, day_of(2019, 5, 2));
    const Day end = day_of(2019, 12, 31);
    const Earned year = earned(b.shop(), replay(b.shop(), end), Period::year_to(end));
    CHECK(year.overhead_absorbed == Money::units(250'000));
    CHECK(year.under_absorbed() == Money::units(6'500));
}
