#include "domain/decisions/shop_hour.h"

#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "tests/support/shop_builder.h"

namespace dyestead {

TEST_CASE("what an hour in the shop earned: takings less money out, over all hours") {
    test::ShopBuilder b;
    b.add<About>().currency = "GBP";
    auto& mia = b.add<Person>();
    mia.name = "Mia";
    const auto who = mia.key;
    auto& pay = b.add<Pay>();
    pay.from = day_of(2026, 1, 1);
    pay.person = who;
    pay.per_hour = Money::units(10);
    const auto oil = b.material("Olive oil", Purpose::oil);
    b.delivery(day_of(2026, 2, 1), oil, test::grams(5'000), Money::units(40), Money::units(5));
    auto& fair = b.add<Fair>();
    fair.date = day_of(2026, 5, 1);
    fair.name = "Green fair";
    fair.fee = Money::units(15);
    fair.change_float = Money::units(20);
    fair.cash_in_tin = Money::units(120);
    fair.card_takings = Money::units(0);
    auto& work = b.add<Work>();
    work.date = day_of(2026, 3, 1);
    work.who = who;
    work.time = test::minutes(240);
    work.what = "cleaning";
    const Ledger ledger = replay(b.shop(), day_of(2026, 6, 1));

    const ShopHour year = shop_hour(b.shop(), ledger, {day_of(2026, 1, 1), day_of(2026, 6, 1)});
    CHECK(year.taken == doctest::Approx(100));  // 120 less the float
    CHECK(year.spent == doctest::Approx(60));   // 45 delivered and 15 for the stall
    CHECK(year.hours == doctest::Approx(4));
    CHECK(year.per_hour == doctest::Approx(10));
    // Without hours there is nothing to say, and no division.
    CHECK_FALSE(shop_hour(b.shop(), ledger, {day_of(2026, 4, 1), day_of(2026, 6, 1)}).per_hour);
}

}  // namespace dyestead
