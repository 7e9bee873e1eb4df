#include "gui/models/stall/price_forms.h"

#include <doctest/doctest.h>

#include "gui/models/stall/stall_place.h"
#include "tests/gui/models/stall/stall_desk.h"

namespace dyestead::gui {

TEST_CASE("a price for shops is kept, held against what the bar costs, listed and corrected") {
    test::StallDesk desk;
    desk.open();
    Form form = wholesale_price_form(desk.writing(), desk.plain);
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("price").trouble.empty());
    form.type("price", "0.40", desk.writing());
    CHECK(desk.keep(form).find("goes to shops for \u00a30.40: that is under its floor") != std::string::npos);
    Form again = wholesale_price_form(desk.writing(), std::nullopt, desk.shop.all<WholesalePrice>().front().key);
    again.type("price", "20", desk.writing());
    CHECK(desk.keep(again).find("pays for all of it") != std::string::npos);
    REQUIRE(desk.shop.all<WholesalePrice>().size() == 1);
    Form later = wholesale_price_form(desk.writing(), desk.plain);
    later.type("price", "3", desk.writing());
    later.type("from", "1 August", desk.writing());
    CHECK(desk.keep(later).starts_with("Shops are asked \u00a33.00"));
    const auto place = stall_place();
    const auto rows = place->listings(desk.books(), "for shops").back();
    REQUIRE(rows.rows.size() == 2);
    CHECK(place->correct(desk.writing(), rows.rows.front()));
    CHECK_FALSE(place->detail(desk.books(), 3, rows.rows.front()).sentence.empty());
}

TEST_CASE("a price of powder is by weight and of some weight; what it means waits until there is powder") {
    test::StallDesk desk;
    desk.open();
    Form form = powder_price_form(desk.writing());
    CHECK_FALSE(form.cautions.empty());
    form.type("colour", test::StallDesk::code(desk.indigo), desk.writing());
    form.type("price", "9", desk.writing());
    form.type("pack", "10 ml", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("pack").trouble.empty());
    form.type("pack", "0 g", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("pack").trouble.empty());
    form.type("pack", "10 g", desk.writing());
    CHECK(desk.keep(form).starts_with("The verdict holds it against pouring the powder into soap"));
    REQUIRE(desk.shop.all<PowderPrice>().size() == 1);
    CHECK(desk.shop.all<PowderPrice>()[0].pack.quantity == Quantity::grams(10));
    const auto place = stall_place();
    const auto rows = place->listings(desk.books(), "powder").back();
    REQUIRE(rows.rows.size() == 1);
    CHECK(rows.table.rows[0][1].shown.find("powder, 10 g") != std::string::npos);
    CHECK(place->correct(desk.writing(), rows.rows.front()));
}

TEST_CASE("a bar tells of the bundle that does not clear it") {
    test::StallDesk desk;
    auto& bundle = desk.builder.add<FairBundle>(desk.market);
    bundle.what = "Five bars";
    bundle.bars = 5;
    bundle.price = Money::units(2);
    desk.open();
    const Prices answer = prices(desk.shop, desk.ledger);
    CHECK(bar_told(desk.books(), answer, desk.plain).find("Five bars, 5 bars for \u00a32.00") != std::string::npos);
    CHECK(price_told(desk.books(), answer, desk.plain).find("Five bars") == std::string::npos);
}

}  // namespace dyestead::gui
