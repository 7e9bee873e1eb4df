#include <doctest/doctest.h>

#include "domain/decisions/records.h"
#include "gui/models/form/field_values.h"
#include "gui/models/garden/cut_form.h"
#include "gui/models/garden/garden_place.h"
#include "gui/models/garden/ground_forms.h"
#include "gui/models/garden/planting_forms.h"
#include "gui/models/garden/planting_story.h"
#include "gui/models/garden/seed_forms.h"
#include "gui/models/garden/sowing_form.h"
#include "gui/models/garden/tending_form.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

namespace {

using test::Desk;

std::string key_text(auto key) {
    return KeyCodes{}.code_of(key);
}

// A shop with seed in the cupboard, a person and a colour; nothing sown yet.
struct Ground : Desk {
    Key<Material> seed;
    Key<Person> mia;
    Ground() : Desk{day_of(2026, 4, 2)} {
        builder.add<About>().currency = "GBP";
        mia = builder.person(day_of(2026, 1, 1), Money::units(10));
        seed = builder.made("Indigo seed", MaterialKind::seed);
        builder.delivery(day_of(2026, 3, 1), seed, test::grams(4), Money::units(3));
        open();
    }
    Form sown() {
        Form form = sowing_form(writing());
        form.type("plant", "Japanese indigo", writing());
        form.type("bed", "long bed", writing());
        form.type("area", "5 m2", writing());
        return form;
    }
    Key<Planting> planting() const { return shop.all<Planting>().front().key; }
};

}  // namespace

TEST_CASE("a sowing puts down plant and bed by their names, and half the packet is what is there, halved") {
    Ground desk;
    Form form = desk.sown();
    form.lines_of("used").rows = {{key_text(desk.seed), "half", ""}};
    form.look(form, desk.writing());
    const std::string said = desk.keep(form);
    REQUIRE_MESSAGE(!said.empty(), form.field("plant").trouble, form.field("bed").trouble, form.field("area").trouble,
                    form.lines_of("used").notes.front());
    CHECK(said.starts_with("Sown."));
    REQUIRE(desk.shop.all<Planting>().size() == 1);
    CHECK(desk.shop.all<Plant>().front().name == "Japanese indigo");
    CHECK(desk.shop.all<Bed>().front().area.quantity == Quantity::square_centimetres(50'000));
    REQUIRE(desk.shop.all<PlantingUse>().size() == 1);
    CHECK(desk.shop.all<PlantingUse>().front().amount.quantity == Quantity::grams(2));
    CHECK(desk.ledger.findings.empty());
}

TEST_CASE("a new bed without its size is asked for it, and nothing is kept") {
    Ground desk;
    Form form = desk.sown();
    form.type("area", "", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK(form.field("area").trouble.find("How large") != std::string::npos);
    CHECK(desk.shop.all<Bed>().empty());
}

TEST_CASE("from sowing to the cut: time, buckets, a cut too early, a cut corrected, and the bed dug up") {
    Ground desk;
    Form sowing = desk.sown();
    REQUIRE_FALSE(desk.keep(sowing).empty());
    auto& measure = desk.shop.all<OwnMeasure>().emplace_back();
    measure.key.number = 77;
    measure.code = measure.name = "bucket";
    measure.amount = {Quantity::grams(1'100), Unit::g, Mark::about};

    desk.day = day_of(2026, 6, 1);
    desk.take(desk.shop);
    Form time = tending_form(desk.writing(), desk.planting());
    time.type("time", "1,5 h", desk.writing());
    time.type("what", "weeding", desk.writing());
    REQUIRE_FALSE(desk.keep(time).empty());
    CHECK(desk.shop.all<Tending>().front().time->time == Minutes::whole(90));

    desk.day = day_of(2026, 7, 3);
    desk.take(desk.shop);
    Form cut = cut_form(desk.writing(), desk.planting());
    cut.type("amount", "2 buckets", desk.writing());
    CHECK(cut.field("amount").understood.find("2.2 kg") != std::string::npos);
    const std::string said = desk.keep(cut);
    REQUIRE_MESSAGE(!said.empty(), cut.field("amount").trouble, cut.field("what").trouble);
    CHECK(said.starts_with("Cut: about 2.2 kg"));
    REQUIRE(desk.shop.all<Harvest>().size() == 1);
    const Records records{desk.shop, desk.ledger};
    const LotState* lot = records.state(desk.shop.all<Harvest>().front().lot);
    REQUIRE(lot != nullptr);
    CHECK(lot->left == Quantity::grams(2'200).in_base());
    // 10 kg are expected of the 5 m2, so this cut bears 2.2 tenths of the time so far.
    CHECK(lot->cost.hands_on == Minutes::millionths(19'800'000));

    // Too early, and not a weight: named at the field, nothing kept.
    Form early = cut_form(desk.writing(), desk.planting());
    early.type("date", "1 March 2026", desk.writing());
    early.type("amount", "3 kg", desk.writing());
    CHECK(desk.keep(early).empty());
    CHECK_FALSE(early.field("date").trouble.empty());

    Form corrected = cut_form(desk.writing(), std::nullopt, desk.shop.all<Harvest>().front().key);
    corrected.type("amount", "2.4 kg", desk.writing());
    REQUIRE_FALSE(desk.keep(corrected).empty());
    CHECK(desk.shop.all<Harvest>().size() == 1);
    CHECK(desk.shop.all<Lot>().size() == 2);  // seed and leaf: the correction made no lot of its own

    const Planting& planting = desk.shop.all<Planting>().front();
    CHECK(planting_figures({desk.shop, desk.ledger}, planting).cut == Quantity::grams(2'400).in_base());

    Form end = planting_end_form(desk.writing(), desk.planting());
    end.type("note", "frost", desk.writing());
    REQUIRE_FALSE(desk.keep(end).empty());
    CHECK(desk.shop.all<PlantingEnd>().size() == 1);
}

TEST_CASE("seed kept, part lost, more expected, seed that comes up, a bed and a plant of their own") {
    Ground desk;
    Form sowing = desk.sown();
    REQUIRE_FALSE(desk.keep(sowing).empty());
    desk.day = day_of(2026, 9, 20);
    desk.take(desk.shop);

    Form lost = bed_lost_form(desk.writing(), desk.planting());
    lost.type("area", "1 m2", desk.writing());
    CHECK_FALSE(desk.keep(lost).empty());

    Form more = expected_total_form(desk.writing(), desk.planting());
    more.type("amount", "much", desk.writing());
    CHECK(desk.keep(more).empty());
    CHECK_FALSE(more.field("amount").trouble.empty());
    more.type("amount", "12 kg", desk.writing());
    CHECK_FALSE(desk.keep(more).empty());

    Form kept = seed_kept_form(desk.writing(), desk.planting());
    kept.type("seed", key_text(desk.seed), desk.writing());
    kept.type("amount", "5 g", desk.writing());
    CHECK_FALSE(desk.keep(kept).empty());
    CHECK(desk.shop.all<SeedKept>().size() == 1);

    Form tried = germination_form(desk.writing());
    tried.type("lot", key_text(desk.shop.all<SeedKept>().front().lot), desk.writing());
    tried.type("tried", "10", desk.writing());
    tried.type("came_up", "7", desk.writing());
    CHECK_FALSE(desk.keep(tried).empty());

    Form bed = bed_form(desk.writing());
    bed.type("name", "east strip", desk.writing());
    bed.type("area", "3 m2", desk.writing());
    CHECK_FALSE(desk.keep(bed).empty());
    CHECK(desk.shop.all<Bed>().size() == 2);
}

TEST_CASE("the Garden's lists, what is told of a planting, and the season line") {
    Ground desk;
    const auto place = garden_place();
    CHECK(place->state({desk.shop, desk.ledger}) == "No bed is planted.");
    CHECK_FALSE(place->listings({desk.shop, desk.ledger}, "").front().empty.empty());
    CHECK_FALSE(place->picture({desk.shop, desk.ledger}, 0, std::nullopt));

    Form sowing = desk.sown();
    REQUIRE_FALSE(desk.keep(sowing).empty());
    const Books books{desk.shop, desk.ledger};
    const auto lists = place->listings(books, "");
    REQUIRE(lists.size() == 6);
    REQUIRE(lists[0].rows.size() == 1);
    CHECK(lists[0].table.rows[0][0].shown == "Japanese indigo");
    CHECK(lists[0].table.rows[0][2].number == 5.0);
    CHECK(place->listings(books, "madder")[0].rows.empty());
    CHECK(place->detail(books, 0, lists[0].rows[0]).sentence.starts_with("Sown 2 April 2026"));
    CHECK(place->state(books).starts_with("One bed planted, 5 m²"));
    const auto picture = place->picture(books, 0, std::nullopt);
    REQUIRE(picture);
    CHECK(picture->sentence.starts_with("One planting stands."));
    // Every row can be corrected, and the form holds what is on record.
    const auto form = place->correct(desk.writing(), lists[0].rows[0]);
    REQUIRE(form);
    CHECK(form->text("sown") == "2 April 2026");
}

}  // namespace dyestead::gui
