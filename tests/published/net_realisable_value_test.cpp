// The lower of cost and net realisable value against textbook inventories; turnover of stock.
#include <doctest/doctest.h>

#include "domain/ledger/earned.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/write_down.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day kDay = day_of(2019, 12, 31);

struct Item {
    int pieces;
    int cost;   // of one
    int value;  // of one: net realisable, or market
};

// Each item a kind of bar, its price what it would fetch, nothing to wrap and no fees.
struct Inventory : ShopBuilder {
    explicit Inventory(std::initializer_list<Item> items) {
        for (const Item& each : items) {
            const auto bar = made("item", MaterialKind::bar);
            already_here(kDay, bar, pieces(each.pieces), Money::units(each.pieces * each.cost));
            auto& price = add<Price>();
            price.from = kDay;
            price.bar = bar;
            price.shelf = Money::units(each.value);
        }
    }
    Money cost() const { return stock_value(shop(), replay(shop(), kDay), kDay).stock().cash(); }
    Money written_down() const { return write_down(shop(), replay(shop(), kDay), kDay).total(); }
};

}  // namespace

// Source: OpenStax, Principles of Accounting, Volume 1: Financial Accounting, section 10.1, an exercise on the lower
// of cost and market; inputs as printed (10 at 36 and 35, 25 at 20 and 20, 12 at 6 and 8), no answer is printed, so
// that 922 is arithmetic. IAS 2, paragraph 29: item by item.
TEST_CASE("item by item: 932 at cost stands at 922") {
    const Inventory inventory{{10, 36, 35}, {25, 20, 20}, {12, 6, 8}};
    CHECK(inventory.cost() == Money::units(932));
    CHECK(inventory.written_down() == Money::units(10));
}

// Source: a question-and-answer page on an exercise of the Weygandt kind ("Crane"), weaker than a textbook: 117,000 and
// 119,000; 78,000 and 76,000; 151,000 and 164,000 stand at 344,000. In a lump nothing would be written down.
TEST_CASE("item by item: three groups at 346,000 stand at 344,000") {
    const Inventory inventory{{1, 117'000, 119'000}, {1, 78'000, 76'000}, {1, 151'000, 164'000}};
    CHECK(inventory.cost() - inventory.written_down() == Money::units(344'000));
}

// Five kinds of a trader in cricket gear, in thousands: 80 and 120, 100 and 110, 50 and 40, 90 and 72, 95 and 92 stand
// at 384,000. From memory of an intermediate accounting textbook's exercise.
TEST_CASE("item by item, from memory: five kinds stand at 384,000") {
    const Inventory inventory{
        {1, 80'000, 120'000}, {1, 100'000, 110'000}, {1, 50'000, 40'000}, {1, 90'000, 72'000}, {1, 95'000, 92'000}};
    CHECK(inventory.cost() - inventory.written_down() == Money::units(384'000));
}

// IAS 2, paragraphs 6 and 7: what it will fetch, less what it takes to finish and to sell it. With the figures of an
// intermediate accounting textbook, from memory: cost 950, price 1,000, 50 to finish, 200 to sell: worth 750, 200 down.
TEST_CASE("price less finishing less selling, from memory: 950 stands at 750") {
    ShopBuilder b;
    const auto bar = b.made("unit", MaterialKind::bar);
    const auto lot = b.already_here(kDay, bar, pieces(1), Money::units(950));
    auto& price = b.add<Price>();
    price.from = kDay;
    price.bar = bar;
    price.shelf = Money::units(1'000);
    const auto box = b.material("box", Purpose::wrapping, HeldAs::count);
    b.delivery(kDay - Days{1}, box, pieces(1), Money::units(50));
    const auto recipe = b.recipe(1);
    b.add<RecipeColouring>(recipe).bar = bar;
    auto& wrapping = b.add<RecipeWrapping>(recipe);
    wrapping.material = box;
    wrapping.per_bar = pieces(1);
    auto& fee = b.add<ChannelFee>();
    fee.from = kDay;
    fee.channel = Channel::card;
    fee.share = Ratio{20, 100};
    const Ledger ledger = replay(b.shop(), kDay);
    const WriteDown down = write_down(b.shop(), ledger, kDay);
    const auto place = static_cast<Account>(b.shop().find(lot) - b.shop().all<Lot>().data());
    for (const Valued& each : down.items) {
        if (each.item.account != ledger.accounts.lots + place) continue;
        CHECK(each.wrapping_to_come == Money::units(50));
        CHECK(each.fees == Money::units(200));
        CHECK(each.worth == Money::units(750));
        CHECK(each.write_down() == Money::units(200));
    }
    CHECK(down.of(StockKind::bars_ready) == Money::units(200));
}

// Source: IAS 2, paragraph 33: a later rise brings the value back, but never above what it cost.
TEST_CASE("a rise in price brings the value back up to cost and no further") {
    Inventory inventory{{1, 100, 70}};
    CHECK(inventory.written_down() == Money::units(30));
    inventory.all<Price>().front().shelf = Money::units(90);
    CHECK(inventory.written_down() == Money::units(10));
    inventory.all<Price>().front().shelf = Money::units(400);
    CHECK(inventory.written_down() == Money{});
}

// Source: OpenStax, the same volume, sections 10.1 to 10.3 and 10.5, "Spy Who Loves You": cost of sales 7,200 between
// an inventory of 3,150 and one of 8,955, which is turned over 1.19 times.
TEST_CASE("opening 3,150, bought 13,005, sold 7,200, closing 8,955: turned over 1.19 times") {
    ShopBuilder b;
    const auto july = [](unsigned day) { return day_of(2019, 7, day); };
    const auto unit = b.made("tracking unit", MaterialKind::bar);
    b.already_here(day_of(2019, 6, 30), unit, pieces(150), Money::units(3'150));
    b.sold(b.sale(july(5)), unit, 120, Money::units(36));
    b.delivery(july(10), unit, pieces(225), Money::units(225 * 27));
    b.sold(b.sale(july(15)), unit, 180, Money::units(39));
    b.delivery(july(25), unit, pieces(210), Money::units(210 * 33));
    const Ledger ledger = replay(b.shop(), july(31));
    const Earned month = earned(b.shop(), ledger, {july(1), july(31)});
    const Money opening = stock_value(b.shop(), ledger, day_of(2019, 6, 30)).stock().cash();
    const Money closing = stock_value(b.shop(), ledger, july(31)).stock().cash();
    CHECK(opening == Money::units(3'150));
    CHECK(closing == Money::units(8'955));
    CHECK(month.cost_of_sales.cash() == Money::units(7'200));
    CHECK(month.gross == Money::units(11'340));
    CHECK(month.gross_margin_without_labour() == Money::units(4'140));
    // In hundredths, rounded half away from zero.
    CHECK(scaled(month.cost_of_sales.cash().in_millionths(), 2 * 100, (opening + closing).in_millionths()) == 119);
}
