#include "gui/models/removal.h"

#include <doctest/doctest.h>

#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

TEST_CASE("a delivery goes with its lines and lots, and comes to nothing in the books") {
    test::Desk desk{day_of(2026, 7, 4)};
    const auto oil = desk.builder.material("Olive oil", Purpose::oil);
    desk.builder.delivery(day_of(2026, 5, 1), oil, test::grams(5'000), Money::units(40));
    desk.open();
    std::string why_not;
    const auto kept = delete_fact(desk.writing(), ref(desk.shop.all<Delivery>()[0]), why_not);
    REQUIRE(kept);
    desk.take(applied(desk.shop, kept->change));
    CHECK(desk.shop.all<Delivery>().empty());
    CHECK(desk.shop.all<DeliveryLine>().empty());
    CHECK(desk.shop.all<Lot>().empty());
    CHECK(desk.ledger.movements.empty());
}

TEST_CASE("what is used elsewhere stays, and its users are named") {
    test::Desk desk{day_of(2026, 7, 4)};
    const auto oil = desk.builder.material("Olive oil", Purpose::oil);
    const auto lot = desk.builder.delivery(day_of(2026, 5, 1), oil, test::grams(5'000), Money::units(40));
    desk.builder.loss(day_of(2026, 6, 1), oil, test::grams(10), LossReason::spilled);
    desk.builder.all<Loss>()[0].lot = lot;
    desk.open();
    std::string why_not;
    CHECK_FALSE(delete_fact(desk.writing(), ref(desk.shop.all<Delivery>()[0]), why_not));
    CHECK(why_not.find("still used by") != std::string::npos);
    CHECK(why_not.find(desk.shop.all<Loss>()[0].code) != std::string::npos);
    CHECK_FALSE(delete_fact(desk.writing(), ref(*desk.shop.find(oil)), why_not));
    // The loss itself is used by nothing.
    CHECK(delete_fact(desk.writing(), ref(desk.shop.all<Loss>()[0]), why_not));
}

}  // namespace dyestead::gui
