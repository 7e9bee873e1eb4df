#include "gui/models/stall/sale_form.h"

#include <doctest/doctest.h>

#include "gui/models/stall/price_forms.h"
#include "gui/models/stall/shop_forms.h"
#include "tests/gui/models/stall/stall_desk.h"

namespace dyestead::gui {

using test::StallDesk;

TEST_CASE("an order is priced by the list, and told beside a fair") {
    StallDesk desk;
    desk.open();
    Form form = order_form(desk.writing());
    form.type("number", "1042", desk.writing());
    CHECK(desk.keep(form).empty());  // no bars yet
    form.type("paid", "3.50", desk.writing());
    form.type("postage", "4.10", desk.writing());
    form.lines_of("bars").rows = {{StallDesk::code(desk.plain), "2", "", ""}};
    form.look(form, desk.writing());
    CHECK(form.lines_of("bars").notes[0] == "\u00a35.50 by the list");
    CHECK(form.summary == "2 bars, \u00a314.50 with postage.");
    // 14.50 less 4.10 and 2 bars at 0.50. The fair kept 94 - 38 of 94: 11.00 x 56/94 less 1.00.
    CHECK(desk.keep(form) ==
          "This order earned \u00a39.40 after post, box and what the bars cost to make; at a fair it would have been "
          "\u00a35.55.");
    REQUIRE(desk.shop.all<SaleLine>().size() == 1);
    CHECK(desk.shop.all<SaleLine>()[0].price == Money::hundredths(550));
    CHECK(desk.shop.all<Sale>()[0].channel == Channel::online);

    Form next = order_form(desk.writing());
    CHECK(next.text("postage") == "4.10");
    CHECK(next.field("postage").origin == "from your last");

    Form again = correct_sale(desk.writing(), desk.shop.all<Sale>()[0].key);
    CHECK(again.code == "order");
    again.lines_of("bars").rows[0] = {StallDesk::code(desk.plain), "1", "5.00", ""};
    CHECK(desk.keep(again).starts_with("This order earned \u00a33.90"));
    CHECK(desk.shop.all<Sale>().size() == 1);
    CHECK(desk.shop.all<SaleLine>()[0].price == Money::units(5));
}

TEST_CASE("more than is ready is said, a lot of another bar and a bar without a price are not kept") {
    StallDesk desk;
    const auto rose = desk.builder.made("rose bar", MaterialKind::bar);
    desk.open();
    Form form = sale_form(desk.writing());
    form.lines_of("bars").rows = {{StallDesk::code(desk.blue), "30", "", ""}};
    form.look(form, desk.writing());
    CHECK(form.lines_of("bars").notes[0] == "only 18 ready");
    form.lines_of("bars").rows = {{StallDesk::code(desk.blue), "3", "", StallDesk::code(desk.plain_lot)}};
    CHECK(desk.keep(form).empty());
    CHECK(form.lines_of("bars").notes[0].find("is of plain bar") != std::string::npos);
    form.lines_of("bars").rows = {{StallDesk::code(rose), "3", "", ""}};
    CHECK(desk.keep(form).empty());
    CHECK(form.lines_of("bars").notes[0].starts_with("The list has no price"));
    form.lines_of("bars").rows = {{StallDesk::code(desk.blue), "3", "6", StallDesk::code(desk.blue_lot)}};
    CHECK(desk.keep(form).starts_with("This sale earned \u00a316.50"));
    CHECK(correct_sale(desk.writing(), desk.shop.all<Sale>()[0].key).code == "sale");
    // Held and curing lots are no choice.
    for (const FormField& field : form.lines_of("bars").fields) {
        if (field.id != "lot") continue;
        for (const Choice& choice : field.choices) {
            CHECK(choice.code != StallDesk::code(desk.held_lot));
            CHECK(choice.code != StallDesk::code(desk.curing_lot));
        }
    }
}

TEST_CASE("bars are out at a shop, settled in parts, and never more than are out") {
    StallDesk desk;
    desk.open();
    Form out = out_form(desk.writing());
    out.type("where", "Corner room", desk.writing());
    out.type("bar", StallDesk::code(desk.plain), desk.writing());
    CHECK(out.text("price") == "5.50");
    CHECK(out.field("price").origin == "from the price list");
    out.type("bars", "0", desk.writing());
    CHECK(desk.keep(out).empty());
    out.type("bars", "10", desk.writing());
    out.type("share", "30 %", desk.writing());
    CHECK(desk.keep(out) == "10 bars are out, and yours until they are sold: \u00a338.50 comes back to you then.");
    const auto key = desk.shop.all<OutAtShop>()[0].key;

    Form settled = settled_form(desk.writing(), key);
    CHECK(desk.keep(settled).empty());
    settled.type("sold", "8", desk.writing());
    settled.type("back", "3", desk.writing());
    CHECK(desk.keep(settled).empty());
    CHECK(settled.field("sold").trouble.starts_with("10 are out there"));
    settled.type("sold", "4", desk.writing());
    settled.type("back", "2", desk.writing());
    CHECK(desk.keep(settled) == "\u00a315.40 comes to you for what was sold; 4 still out.");
    Form again = settled_form(desk.writing(), std::nullopt, desk.shop.all<OutSettled>()[0].key);
    again.type("sold", "8", desk.writing());
    CHECK(desk.keep(again) == "\u00a330.80 comes to you for what was sold; 0 still out.");
    Form corrected = out_form(desk.writing(), key);
    CHECK(corrected.text("share") == "30 %");
    corrected.type("share", "25 %", desk.writing());
    CHECK_FALSE(desk.keep(corrected).empty());
    CHECK(desk.shop.all<OutAtShop>()[0].share == Ratio{1, 4});
}

TEST_CASE("bars brought back are of a lot that was sold") {
    StallDesk desk;
    desk.open();
    Form form = returned_form(desk.writing());
    form.type("lot", StallDesk::code(desk.blue_lot), desk.writing());
    form.type("bars", "0", desk.writing());
    form.type("refund", "6.50", desk.writing());
    CHECK(desk.keep(form).empty());
    form.type("bars", "1", desk.writing());
    CHECK(desk.keep(form).starts_with("Back among the bars"));
    Form again = returned_form(desk.writing(), desk.shop.all<Returned>()[0].key);
    again.type("fit", "spoiled", desk.writing());
    CHECK(desk.keep(again).starts_with("Their cost counts as lost"));
    again = returned_form(desk.writing(), desk.shop.all<Returned>()[0].key);
    again.type("lot", StallDesk::code(desk.curing_lot), desk.writing());
    CHECK(desk.keep(again).starts_with("Fewer bars of that lot were sold"));
}

TEST_CASE("a price is put down from a day on and told with what it leaves; a belief needs one figure") {
    StallDesk desk;
    desk.open();
    Form form = price_form(desk.writing(), desk.plain);
    CHECK(form.summary == "Today it sells for \u00a35.50.");
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("price").trouble.empty());
    form.type("price", "6", desk.writing());
    const std::string told = desk.keep(form);
    CHECK(told.starts_with("plain bar sells for \u00a36.00: "));
    const Prices answer = prices(desk.shop, desk.ledger);
    REQUIRE(answer.bars.size() == 2);
    const auto left = left_over(answer, answer.bars[1]);
    REQUIRE(left);
    // 6.00 less oils, lye and band of a twelfth of a loaf, and the stall of 38.00 over the 16 bars sold.
    CHECK(*left == doctest::Approx(6.00 - 8.33 / 12 - 0.075 - 38.0 / 16).epsilon(0.001));
    Form again = price_form(desk.writing(), std::nullopt, desk.shop.all<Price>().back().key);
    again.type("from", "1 August", desk.writing());
    CHECK(desk.keep(again) == "plain bar sells for \u00a36.00 from 1 August 2026 on.");

    Form belief = belief_form(desk.writing());
    belief.type("colour", StallDesk::code(desk.indigo), desk.writing());
    CHECK(desk.keep(belief).empty());
    belief.type("own", "7.50", desk.writing());
    CHECK_FALSE(desk.keep(belief).empty());
    Form corrected = belief_form(desk.writing(), desk.shop.all<PriceBelief>()[0].key);
    corrected.type("own", "7", desk.writing());
    CHECK_FALSE(desk.keep(corrected).empty());
    REQUIRE(desk.shop.all<PriceBelief>().size() == 1);
    CHECK(desk.shop.all<PriceBelief>()[0].own == Money::units(7));
}

}  // namespace dyestead::gui
