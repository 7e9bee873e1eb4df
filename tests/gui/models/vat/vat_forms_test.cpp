#include <doctest/doctest.h>

#include "domain/decisions/records.h"
#include "gui/models/form/field_values.h"
#include "gui/models/vat/colour_forms.h"
#include "gui/models/vat/standing.h"
#include "gui/models/vat/vat_form.h"
#include "gui/models/vat/vat_place.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

namespace {

using test::Desk;

std::string key_text(auto key) {
    return KeyCodes{}.code_of(key);
}

// Leaf of one bed, a colour, a bought powder to hold ours against; no vat yet.
struct Pan : Desk {
    Key<Material> leaf;
    Key<Colour> blue;
    Key<Material> bought;
    Pan() : Desk{day_of(2026, 7, 3)} {
        builder.add<About>().currency = "GBP";
        builder.person(day_of(2026, 1, 1), Money::units(10));
        leaf = builder.made("Indigo leaf", MaterialKind::harvest);
        const auto bed = builder.planting(day_of(2026, 4, 2), test::square_metres(5), test::grams(10'000));
        builder.harvest(day_of(2026, 7, 2), bed, leaf, test::grams(5'000));
        blue = builder.add<Colour>().key;
        builder.at(blue).name = "Blue";
        bought = builder.material("Indigo, bought", Purpose::colourant);
        open();
    }
    Form begun() {
        Form form = vat_form(writing());
        form.type("colour", key_text(blue), writing());
        form.lines_of("used").rows = {{key_text(leaf), "2 kg", ""}};
        form.look(form, writing());
        return form;
    }
};

}  // namespace

TEST_CASE("a vat told in five answers, then dried: powder as a lot of its own, with its yield said") {
    Pan desk;
    Form vat = desk.begun();
    vat.type("hands_on", "~90 min", desk.writing());
    vat.type("washes", "6", desk.writing());
    const std::string said = desk.keep(vat);
    CHECK(said == "The vat stands, with 2 kg of harvest in it. Note its steps as they are done, or dry and weigh.");
    CHECK(standing_vats(desk.shop, desk.day).size() == 1);
    CHECK(vat_place()->waiting({desk.shop, desk.ledger}) == 1);

    desk.day = day_of(2026, 7, 10);
    desk.take(desk.shop);
    Form drying = drying_form(desk.writing());
    REQUIRE(drying.lines_of("vats").rows.size() == 1);  // the one that stands
    drying.type("amount", "about 4 g", desk.writing());
    CHECK(desk.keep(drying) == "about 4 g of powder from one vat: 2 g from a kilo.");
    REQUIRE(desk.shop.all<Drying>().size() == 1);
    const auto lot = desk.shop.all<Drying>().front().lot;
    REQUIRE(lot);
    CHECK(desk.shop.find(desk.shop.find(*lot)->material)->colour == desk.blue);
    CHECK(Records{desk.shop, desk.ledger}.state(*lot)->cost.hands_on == Minutes::whole(90));
    CHECK(standing_vats(desk.shop, desk.day).empty());

    // Corrected to nothing: the lot goes, the record stays.
    Form none = drying_form(desk.writing(), desk.shop.all<Drying>().front().key);
    none.type("amount", "", desk.writing());
    CHECK(desk.keep(none).starts_with("Noted: it gave nothing."));
    CHECK_FALSE(desk.shop.all<Drying>().front().lot);
    CHECK(desk.shop.find(*lot) == nullptr);
}

TEST_CASE("a vat by its steps: the next step of the method is proposed, and what lies outside its band is said") {
    Pan desk;
    const auto starter = take_starter_method(desk.writing());
    REQUIRE(starter);
    desk.take(applied(desk.shop, starter->change));
    REQUIRE(desk.shop.all<Method>().size() == 1);
    CHECK(desk.shop.all<Material>().back().purpose == Purpose::alkali);
    Form vat = desk.begun();
    vat.type("method", key_text(desk.shop.all<Method>().front().key), desk.writing());
    REQUIRE_FALSE(desk.keep(vat).empty());

    const auto key = desk.shop.all<Vat>().front().key;
    Form steps = vat_steps_form(desk.writing(), key);
    const MethodStep first = desk.shop.all<MethodStep>().front();
    CHECK(steps.summary.find(first.what) != std::string::npos);
    std::vector<std::string> row;
    for (const FormField& field : steps.lines_of("steps").fields) row.push_back(field.text);
    CHECK(row[0] == first.what);
    CHECK(steps.lines_of("steps").fields[1].id == "begun");
    row[1] = "14:10";
    row[2] = "20 min";
    row[4] = "40";  // far below what the method says
    steps.lines_of("steps").rows.push_back(row);
    const std::string said = desk.keep(steps);
    CHECK(said.find("40") != std::string::npos);
    CHECK(said.find("method says") != std::string::npos);
    REQUIRE(desk.shop.all<VatStep>().size() == 1);
    // By the clock on the wall, an hour ahead of UTC at this desk in summer.
    CHECK(desk.shop.all<VatStep>()[0].begun == Moment{desk.day, 850, 60});
    CHECK(desk.shop.all<VatUse>().size() == 1);  // what went in is as it was

    // A step with a mistake is named beside it, and nothing is kept.
    Form again = vat_steps_form(desk.writing(), key);
    CHECK(again.summary.find(first.what) == std::string::npos);  // the next one by now
    CHECK(again.lines_of("steps").rows[0][1] == "3 July 2026 14:10");
    again.lines_of("steps").rows[0][4] = "hot";
    CHECK(desk.keep(again).empty());
    CHECK_FALSE(again.lines_of("steps").notes[0].empty());
}

TEST_CASE("heat by the meter, or by litres and temperatures; a share of more than the whole is refused") {
    Pan desk;
    auto& tariff = desk.builder.add<Tariff>();
    tariff.from = day_of(2026, 1, 1);
    tariff.per_kwh = Money::hundredths(30);
    desk.open();
    Form vat = desk.begun();
    vat.lines_of("heat").rows = {
        {"electricity", "1.5 kWh", "", "", "", ""}, {"electricity", "", "10 l", "15", "75", "90"}};
    CHECK(desk.keep(vat).empty());
    CHECK(vat.lines_of("heat").notes[1].find("more than the whole") != std::string::npos);
    vat.lines_of("heat").rows[1] = {"electricity", "", "10 l", "15", "", ""};
    CHECK(desk.keep(vat).empty());
    CHECK(vat.lines_of("heat").notes[1].find("from which temperature to which") != std::string::npos);
    vat.lines_of("heat").rows[1] = {"electricity", "", "10 l", "15", "75", "90 %"};
    CHECK_FALSE(desk.keep(vat).empty());
    REQUIRE(desk.shop.all<VatHeat>().size() == 2);
    // 1.5 kWh and 775 Wh (values/heat.h) at 0.30.
    CHECK(desk.ledger.balances[desk.ledger.accounts.vats].energy == Money::millionths(450'000 + 232'500));
    const Form again = vat_form(desk.writing(), desk.shop.all<Vat>().front().key);
    CHECK(again.lines[1].rows.size() == 2);
}

TEST_CASE("further lots of a plate share its cost by their worth; taken away again their lots go too") {
    Pan desk;
    Form vat = desk.begun();
    vat.type("hands_on", "90 min", desk.writing());
    REQUIRE_FALSE(desk.keep(vat).empty());
    Form drying = drying_form(desk.writing());
    drying.lines_of("further").rows = {{"2 g", "1/2"}};
    drying.type("amount", "", desk.writing());
    CHECK(desk.keep(drying).empty());  // further than what?
    CHECK(drying.has_trouble());
    drying.type("amount", "4 g", desk.writing());
    REQUIRE_FALSE(desk.keep(drying).empty());
    REQUIRE(desk.shop.all<DryingLot>().size() == 1);
    const Drying made = desk.shop.all<Drying>().front();
    const DryingLot further = desk.shop.all<DryingLot>().front();
    const Records records{desk.shop, desk.ledger};
    CHECK(desk.shop.find(further.lot)->material == desk.shop.find(*made.lot)->material);
    CHECK(records.state(*made.lot)->cost.hands_on == Minutes::whole(72));
    CHECK(records.state(further.lot)->cost.hands_on == Minutes::whole(18));

    // Both are corrected by way of the drying they came from.
    const auto place = vat_place();
    for (const Key<Lot> lot : {*made.lot, further.lot}) {
        const auto form = place->correct(desk.writing(), {kKindOf<Lot>, lot.number});
        REQUIRE(form);
        CHECK(form->fact == ref(made));
    }
    Form again = drying_form(desk.writing(), made.key);
    again.lines_of("further").rows.clear();
    REQUIRE_FALSE(desk.keep(again).empty());
    CHECK(desk.shop.all<DryingLot>().empty());
    CHECK(desk.shop.find(further.lot) == nullptr);
    CHECK(Records{desk.shop, desk.ledger}.state(*made.lot)->cost.hands_on == Minutes::whole(90));
}

TEST_CASE("a shade in words; without an answer it is asked for") {
    Pan desk;
    Form vat = desk.begun();
    REQUIRE_FALSE(desk.keep(vat).empty());
    Form drying = drying_form(desk.writing());
    drying.type("amount", "4 g", desk.writing());
    REQUIRE_FALSE(desk.keep(drying).empty());
    const auto lot = *desk.shop.all<Drying>().front().lot;
    Form shade = shade_test_form(desk.writing(), std::nullopt, lot);
    shade.type("against", key_text(desk.bought), desk.writing());
    CHECK(desk.keep(shade).empty());
    CHECK_FALSE(shade.field("needed").trouble.empty());
    shade.type("needed", "3", desk.writing());
    CHECK(desk.keep(shade).find("3 g of it for the shade of 1 g of Indigo, bought") != std::string::npos);
    CHECK(desk.shop.all<ShadeTest>().front().needed_for_same == Ratio{3, 1});
    Form corrected = shade_test_form(desk.writing(), desk.shop.all<ShadeTest>().front().key);
    CHECK(corrected.text("needed") == "3");
    corrected.type("needed", "other", desk.writing());
    corrected.type("times", "1.5", desk.writing());
    CHECK_FALSE(desk.keep(corrected).empty());
    corrected = shade_test_form(desk.writing(), desk.shop.all<ShadeTest>().front().key);
    corrected.type("needed", "no", desk.writing());
    CHECK_FALSE(desk.keep(corrected).empty());
    CHECK_FALSE(desk.shop.all<ShadeTest>().front().needed_for_same);
}

TEST_CASE("a colour, whether it may be sold, a method of one's own; the lists of the Vat") {
    Pan desk;
    Form colour = colour_form(desk.writing());
    colour.type("name", "Yellow", desk.writing());
    CHECK(desk.keep(colour).find("ask the assessor") != std::string::npos);
    Form asked = allowed_form(desk.writing());
    asked.type("colour", key_text(desk.blue), desk.writing());
    asked.type("where", "at home", desk.writing());
    asked.type("asked", "the assessor", desk.writing());
    CHECK_FALSE(desk.keep(asked).empty());
    Form method = method_form(desk.writing());
    method.type("name", "Slow and cold", desk.writing());
    method.type("usual", "2 g", desk.writing());
    CHECK_FALSE(desk.keep(method).empty());
    const auto place = vat_place();
    const auto lists = place->listings({desk.shop, desk.ledger}, "");
    REQUIRE(lists.size() == 7);
    for (std::size_t list = 0; list < lists.size(); ++list) {
        CHECK_FALSE(lists[list].empty.empty());
        CHECK(lists[list].rows.size() == lists[list].table.rows.size());
        CHECK_FALSE(place->doings(list).empty());
    }
    CHECK(lists[5].rows.size() == 2);
    REQUIRE(lists[6].rows.size() == 1);
    auto answer = place->correct(desk.writing(), lists[6].rows[0]);
    REQUIRE(answer);
    answer->type("answer", "yes", desk.writing());
    CHECK_FALSE(desk.keep(*answer).empty());
    REQUIRE(desk.shop.all<Allowed>().size() == 1);
    CHECK(desk.shop.all<Allowed>()[0].answer == Answer::yes);
    CHECK(place->listings({desk.shop, desk.ledger}, "yell")[5].rows.size() == 1);
    CHECK_FALSE(place->picture({desk.shop, desk.ledger}, 0, std::nullopt));
}

}  // namespace dyestead::gui
