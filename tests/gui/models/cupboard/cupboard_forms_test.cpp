#include <doctest/doctest.h>

#include "domain/decisions/records.h"
#include "gui/models/cupboard/cupboard_place.h"
#include "gui/models/cupboard/shelf_forms.h"
#include "gui/models/cupboard/supply_forms.h"
#include "gui/models/form/field_values.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

namespace {

using test::Desk;

std::string key_text(auto key) {
    return KeyCodes{}.code_of(key);
}

struct Shelf : Desk {
    Key<Material> olive;
    Key<Lot> can;
    Shelf() : Desk{day_of(2026, 7, 4)} {
        builder.add<About>().currency = "GBP";
        olive = builder.oil("Olive oil", {188, 1'000});
        can = builder.delivery(day_of(2026, 6, 1), olive, test::grams(4'000), Money::units(32));
        open();
    }
    std::int64_t left(Key<Lot> lot) const { return Records{shop, ledger}.state(lot)->left; }
};

}  // namespace

TEST_CASE("an oil begins with what is published of it, until the maker types the supplier's own value") {
    Shelf desk;
    Form form = material_form(desk.writing());
    form.type("name", "Coconut oil, virgin", desk.writing());
    CHECK(form.text("saponification").empty());
    form.type("purpose", "oil", desk.writing());
    CHECK(form.text("saponification") == "248");
    CHECK(form.field("saponification").origin ==
          "the lowest published, 248 to 265 (Codex CXS 210); your supplier's own value wins");
    CHECK(form.text("density") == "0.9145");
    CHECK(form.summary.starts_with("Lye is worked out with 248 mg KOH per g, the lowest published for it"));
    form.type("saponification", "257", desk.writing());
    CHECK(form.summary.empty());
    form.type("name", "Walnut oil", desk.writing());
    CHECK(form.text("saponification") == "257");
    CHECK(form.text("density").empty());
    form.type("saponification", "-", desk.writing());
    CHECK_FALSE(desk.keep(form).empty());
    CHECK_FALSE(desk.shop.all<Material>().back().saponification);
}

TEST_CASE("a delivery with one known and one new thing, from a new supplier; postage is shared and said back") {
    Shelf desk;
    Form form = delivery_form(desk.writing());
    form.type("from", "The mill", desk.writing());
    form.type("carriage", "6,90", desk.writing());
    form.lines_of("lines").rows = {{key_text(desk.olive), "5 kg", "34.50", "", "", "", ""},
                                   {"Paper band", "100", "7.50", "", "L-7", "", "wrapping"}};
    form.look(form, desk.writing());
    CHECK(form.summary == "£42.00 for the goods and £6.90 postage and delivery: £48.90.");
    CHECK(form.lines_of("lines").notes[0] == "£6.90 a kg");
    CHECK(form.lines_of("lines").notes[1] == "new: Paper band");
    const std::string said = desk.keep(form);
    // 34.50 and its share of the postage, 34.50 / 42 of 6.90, over 5 kg
    CHECK(said == "Entered. With delivery Olive oil is £8.03 a kg; the lot before was £8.00 a kg.");
    CHECK(desk.shop.all<Supplier>().size() == 2);
    const auto& band = desk.shop.all<Material>().back();
    CHECK(band.name == "Paper band");
    CHECK(band.held_as == HeldAs::count);
    CHECK(band.purpose == Purpose::wrapping);
    REQUIRE(desk.shop.all<DeliveryLine>().size() == 3);
    CHECK(desk.ledger.findings.empty());

    // Corrected: the lots stay, a line taken out is gone.
    Form again = delivery_form(desk.writing(), desk.shop.all<Delivery>().back().key);
    REQUIRE(again.lines_of("lines").rows.size() == 2);
    CHECK(again.lines_of("lines").rows[0][0] == key_text(desk.olive));
    again.lines_of("lines").rows.pop_back();
    const auto lot = desk.shop.all<DeliveryLine>()[1].lot;
    REQUIRE_FALSE(desk.keep(again).empty());
    CHECK(desk.shop.all<DeliveryLine>().size() == 2);
    CHECK(desk.shop.all<DeliveryLine>()[1].lot == lot);
}

TEST_CASE("a delivery with mistakes: each is named where it stands, and nothing is kept") {
    Shelf desk;
    Form form = delivery_form(desk.writing());
    CHECK(desk.keep(form).empty());
    form.type("from", "The mill", desk.writing());
    form.lines_of("lines").rows = {{key_text(desk.olive), "3 pieces", "34.50", "", "", "", ""}};
    form.look(form, desk.writing());
    CHECK_FALSE(form.lines_of("lines").notes[0].empty());
    CHECK(desk.keep(form).empty());
    form.lines_of("lines").rows = {{"", "3 kg", "34.50", "", "", "", ""}};
    CHECK(desk.keep(form).empty());
    CHECK(desk.shop.all<Delivery>().size() == 1);
}

TEST_CASE("already here, lost, a price, a measure, a supplier and a thing: kept and said") {
    Shelf desk;
    Form here = already_here_form(desk.writing());
    here.type("what", "Soda ash", desk.writing());
    here.type("amount", "~2 kg", desk.writing());
    here.type("cost", "5", desk.writing());
    here.type("kind", "alkali", desk.writing());
    CHECK(desk.keep(here) == "Soda ash: 2 kg in hand.");
    CHECK(desk.shop.all<Material>().back().caution == Caution::dust);

    Form loss = loss_form(desk.writing(), std::nullopt, desk.olive);
    loss.type("amount", "half a litre", desk.writing());
    CHECK(desk.keep(loss).empty());  // no density is known
    CHECK_FALSE(loss.field("amount").trouble.empty());
    loss.type("amount", "500 g", desk.writing());
    loss.type("reason", "spilled", desk.writing());
    CHECK(desk.keep(loss) == "Noted: £4.00 gone without your own hours, £4.00 with them.");
    CHECK(desk.left(desk.can) == Quantity::grams(3'500).in_base());

    Form price = offer_form(desk.writing(), std::nullopt, desk.olive);
    price.type("supplier", key_text(desk.shop.all<Supplier>().front().key), desk.writing());
    price.type("pack", "5 kg", desk.writing());
    price.type("price", "41.50", desk.writing());
    CHECK(desk.keep(price).find("£8.30 a kg") != std::string::npos);
    // The next one starts from the last.
    const Form next = offer_form(desk.writing(), std::nullopt, desk.olive);
    CHECK(next.text("pack") == "5 kg");
    CHECK(next.text("price").empty());
    CHECK(next.field("pack").origin == "from the last price");

    Form measure = own_measure_form(desk.writing());
    measure.type("name", "scoop", desk.writing());
    measure.type("amount", "30 g", desk.writing());
    CHECK_FALSE(desk.keep(measure).empty());
    Form supplier = supplier_form(desk.writing());
    supplier.type("name", "Harbour wrappings", desk.writing());
    CHECK_FALSE(desk.keep(supplier).empty());
    Form thing = material_form(desk.writing());
    CHECK(desk.keep(thing).empty());
    thing.type("name", "Beeswax", desk.writing());
    CHECK_FALSE(desk.keep(thing).empty());
}

TEST_CASE("a stock-take: down the list, blank is not counted, and what it found is said") {
    Shelf desk;
    Form form = count_form(desk.writing());
    auto& rows = form.lines_of("lines").rows;
    REQUIRE(rows.size() == 1);
    form.look(form, desk.writing());
    CHECK(form.lines_of("lines").notes[0] == "the books say 4 kg; not counted");
    rows[0][1] = "3.5 kg";
    form.look(form, desk.writing());
    CHECK(form.lines_of("lines").notes[0] == "the books say 4 kg: 500 g less");
    CHECK(desk.keep(form) == "1 of 1 counted. £4.00 less than the books said.");
    CHECK(desk.left(desk.can) == Quantity::grams(3'500).in_base());

    Form blank = count_form(desk.writing());
    CHECK(desk.keep(blank) == "0 of 1 counted; the books were right.");
    CHECK(desk.left(desk.can) == Quantity::grams(3'500).in_base());
}

TEST_CASE("every list of the Cupboard has its rows, its words for none, and a form for each row") {
    Shelf desk;
    const auto place = cupboard_place();
    for (const Listing& list : place->listings({desk.shop, desk.ledger}, "")) {
        CHECK_FALSE(list.empty.empty());
        CHECK(list.rows.size() == list.table.rows.size());
        CHECK(list.table.columns.size() <= 6);
        for (const FactRef row : list.rows) CHECK(place->correct(desk.writing(), row));
    }
    for (std::size_t list = 0; list < 6; ++list) CHECK_FALSE(place->doings(list).empty());
}

}  // namespace dyestead::gui
