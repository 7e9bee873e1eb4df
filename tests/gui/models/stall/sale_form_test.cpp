#include "gui/models/stall/sale_form.h"

#include <doctest/doctest.h>

#include "gui/models/stall/price_forms.h"
#include "gui/models/stall/shop_forms.h"
#include "gui/models/stall/stall_lists.h"
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

TEST_CASE("powder is weighed out below the bars, priced as it was put down, and told beside what it cost") {
    StallDesk desk;
    auto& price = desk.builder.add<PowderPrice>();
    price.from = day_of(2026, 8, 1);  // later
    price.colour = desk.indigo;
    price.pack = test::grams(10);
    price.price = Money::units(9);
    desk.open();
    Form form = sale_form(desk.writing());
    REQUIRE(form.cautions.size() == 1);
    CHECK(form.cautions[0].starts_with("To whom powder may be sold"));
    CHECK(desk.keep(form).empty());
    CHECK(form.field("date").trouble == "Nothing is sold yet; add a line with bars or with powder below.");
    FormLines& lines = form.lines_of("powder");
    lines.rows = {{StallDesk::code(desk.powder), "5 g", "", ""}};
    CHECK(desk.keep(form).empty());
    CHECK(form.lines_of("powder").notes[0].starts_with("No price of this powder"));

    desk.builder.all<PowderPrice>().front().from = day_of(2026, 1, 1);
    desk.open();
    form.look(form, desk.writing());
    CHECK(form.lines_of("powder").notes[0] == "\u00a34.50 by the price of powder");
    CHECK(form.summary == "5 g of powder, \u00a34.50 with postage.");
    // 4.50 less 5 g at 0.50.
    CHECK(
        desk.keep(form) ==
        "This sale earned \u00a32.00 after fees, post and the \u00a32.50 its powder had cost to make; your time is not "
        "paid.");
    REQUIRE(desk.shop.all<PowderLine>().size() == 1);
    CHECK(desk.shop.all<PowderLine>()[0].price == Money::hundredths(450));
    CHECK(desk.shop.all<SaleLine>().empty());
    const Key<Sale> sold = desk.shop.all<Sale>()[0].key;
    const Listing orders = order_list(desk.books(), {});
    CHECK(orders.table.rows[0][2].shown == "5 g of blue powder");
    CHECK(orders.table.rows[0][3].no_value);

    // Corrected: bars beside it, the powder's price typed, and then the powder taken away.
    Form again = correct_sale(desk.writing(), sold);
    CHECK(again.lines_of("powder").rows[0][2] == "4.50");
    again.lines_of("bars").rows = {{StallDesk::code(desk.plain), "2", "", ""}};
    again.lines_of("powder").rows[0][2] = "6";
    again.look(again, desk.writing());
    CHECK(again.summary == "2 bars and 5 g of powder, \u00a317.00 with postage.");
    CHECK(desk.keep(again) ==
          "This sale earned \u00a313.50 after fees, post and the \u00a33.50 its bars and powder had cost to make; your "
          "time is not paid.");
    Form bars_alone = correct_sale(desk.writing(), sold);
    bars_alone.lines_of("powder").rows.clear();
    CHECK(desk.keep(bars_alone).starts_with("This sale earned \u00a310.00 after what the bars cost to make"));
    CHECK(desk.shop.all<PowderLine>().empty());
}

TEST_CASE("no more powder than there is, none of it is said, and a lot of another or on hold is not sold") {
    StallDesk desk;
    const auto other = desk.builder.made("red powder", MaterialKind::pigment);
    const auto held = desk.builder.already_here(day_of(2026, 1, 5), other, test::grams(8), Money::units(4));
    auto& hold = desk.builder.add<Hold>();
    hold.date = day_of(2026, 6, 1);
    hold.lot = held;
    hold.why = "smells";
    desk.open();
    const Key<Lot> lot = std::ranges::find(desk.shop.all<Lot>(), desk.powder, &Lot::material)->key;
    Form form = powder_sale_form(desk.writing(), lot);
    FormLines& lines = form.lines_of("powder");
    REQUIRE(lines.rows.size() == 1);
    CHECK(lines.rows[0] == std::vector<std::string>{StallDesk::code(desk.powder), "20 g", "", StallDesk::code(lot)});
    const auto with = [&](std::string amount, std::string from) {
        lines.rows[0] = {StallDesk::code(desk.powder), std::move(amount), "3", std::move(from)};
        form.look(form, desk.writing());
        return lines.notes[0];
    };
    CHECK(with("25 g", "") == "only 20 g there");
    CHECK(with("0 g", "").starts_with("Write how much was sold"));
    CHECK(with("5 g", StallDesk::code(held)).find("holds red powder") != std::string::npos);
    CHECK(with("half", "").empty());
    CHECK(form.summary == "10 g of powder, \u00a33.00 with postage.");
    auto& price = desk.builder.add<PowderPrice>();
    price.from = day_of(2026, 1, 1);
    price.colour = desk.indigo;
    price.pack = test::grams(6);
    desk.open();
    CHECK(powder_sale_form(desk.writing(), lot).lines_of("powder").rows[0][1] == "6 g");
    for (const FormField& field : lines.fields)
        if (field.id == "lot")
            CHECK(std::ranges::find(field.choices, StallDesk::code(held), &Choice::code) == field.choices.end());
}

TEST_CASE("a maker who sells no powder is not asked about any") {
    StallDesk desk;
    desk.open();
    CHECK(sale_form(desk.writing()).lines.size() == 1);
    CHECK(order_form(desk.writing()).cautions.empty());
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
