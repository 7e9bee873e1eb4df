#include "gui/models/garden/sowing_form.h"

#include "domain/decisions/records.h"
#include "domain/decisions/starter_plants.h"
#include "gui/models/form/used_lines.h"
#include "gui/models/garden/garden_choices.h"
#include "gui/models/garden/planting_story.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

FormField name_field(std::string id, std::string label, std::vector<Choice> choices, std::string help) {
    return {.id = std::move(id),
            .label = std::move(label),
            .entry = Entry::name,
            .help = std::move(help),
            .choices = std::move(choices)};
}

FormField plant_field(const Shop& shop) {
    return name_field("plant", say("Which &plant"), plant_choices(shop),
                      say("Choose one, or type the name of a new one; what is usual for it can be put in later."));
}

FormField bed_field(const Shop& shop) {
    return name_field("bed", say("Which &bed"), bed_choices(shop),
                      say("Choose one, or type the name of a new one together with its size."));
}

bool fill_in_plant(Plant& plant, Form& /*form*/, const Writing& /*writing*/, Kept& /*kept*/) {
    fill_in_starter(plant, plant.name);
    return true;
}

// A new bed is as large as what is sown in it.
bool fill_in_bed(Bed& bed, Form& form, const Writing& writing, Kept& /*kept*/) {
    FormField& size = form.field("area");
    const Reading reading{.writing_for = writing.day, .measuring = {.kind = Kind::area}};
    const auto area = read_typed_field<Amount>(size.text, reading);
    if (area && (*area).quantity.kind() == Kind::area && !(*area).quantity.is_zero()) {
        bed.area = *area;
        return true;
    }
    if (size.trouble.empty()) size.trouble = say("How large is the new bed? Write it like 5 m2.");
    return false;
}

std::string after_sowing(const Writing& after, Key<Planting> key) {
    const Planting* planting = after.shop().find(key);
    if (planting == nullptr) return {};
    const auto expected = expected_of(after.shop(), *planting, after.day);
    if (!expected)
        return say(
            "Sown. What a square metre of it gives is not known yet: put it in at the plant, or its first cut will "
            "carry everything that went into the bed.");
    const auto amount = arg("amount", reports::shown_grams(static_cast<double>(*expected) / 1e3));
    const auto due = first_cut_about(after.shop(), *planting);
    if (!due) return say("Sown. About {amount} may be expected of it in all.", amount);
    return say("Sown. First cut about {week}; about {amount} may be expected of it in all.", arg("week", week_of(*due)),
               amount);
}

std::vector<std::string> cautions_before_sowing() {
    return {
        say("Some dye plants may not be grown everywhere, and some colours may not be sold in soap everywhere. Ask "
            "first.")};
}

}  // namespace

Form sowing_form(const Writing& writing, std::optional<Key<Planting>> corrected) {
    FactForm<Planting> form{writing, "sowing", say("A sowing"), corrected};
    const Shop& shop = writing.shop();
    if (form.is_new()) form.fact().sown = writing.day;
    FormField plant = plant_field(shop);
    FormField bed = bed_field(shop);
    plant.text = KeyCodes{}.code_of(form.fact().plant);
    bed.text = KeyCodes{}.code_of(form.fact().bed);
    form.extra(std::move(plant));
    form.extra(std::move(bed));
    form.add("sown", say("&When"), &Planting::sown)
        .add("area", say("How &much of the bed"), &Planting::area,
             {.help = say("Blank: the whole bed. Of a new bed: its size."), .measuring = in_square_metres})
        .more("expected", say("E&xpected in all"), &Planting::expected,
              {.help = say("Harvest over its whole life. Blank: what is usual for the plant on so much ground."),
               .measuring = in_weight})
        .more("note", say("No&te"), &Planting::note)
        .lines(used_lines<PlantingUse>(writing, say("What went in"), is_garden_goods, corrected));
    form.also_read(name_reader<Planting, Plant>("plant", &Planting::plant, fill_in_plant))
        .also_read(name_reader<Planting, Bed>("bed", &Planting::bed, fill_in_bed));
    form.form().cautions = cautions_before_sowing();
    return std::move(form).done([](Planting& planting, Form&, const Writing& in, Kept& kept) {
        const Plant* of = in_change_or_shop(kept, in.shop(), planting.plant);
        const Bed* where = in_change_or_shop(kept, in.shop(), planting.bed);
        if (in.shop().find(planting.bed) == nullptr) planting.area.reset();  // it is the size of the new bed itself
        kept.title = reports::message("sowing of {plant} in {bed}");
        kept.args = {{"plant", of->name}, {"bed", where->name}};
        kept.consequence = [key = planting.key](const Writing& after) { return after_sowing(after, key); };
        return true;
    });
}

namespace {

// The planting of a bed that stands already: put down with it, for a new one.
bool read_standing(StandingBed& standing, Form& form, const Writing& writing, Kept* kept) {
    FormField& sown = form.field("sown");
    FormField& area = form.field("area");
    sown.trouble.clear();
    area.trouble.clear();
    const auto day = read_typed_field<Day>(sown.text, {.writing_for = writing.day});
    const Reading in_area{.measuring = {.kind = Kind::area}};
    const auto size = read_typed_field<std::optional<Amount>>(area.text, in_area);
    area.understood = size ? said_back(*size, in_area) : std::string{};
    if (!size) area.trouble = field_trouble(*size.trouble, area.text);
    if (size && *size) area.trouble = amount_trouble(**size, in_area).value_or(std::string{});
    const auto plant = read_name<Plant>("plant", form, writing, kept, fill_in_plant);
    const auto bed = read_name<Bed>("bed", form, writing, kept, fill_in_bed);
    if (!day && (kept != nullptr || !sown.text.empty())) sown.trouble = field_trouble(*day.trouble, sown.text);
    if (day && *day > standing.date && sown.trouble.empty())
        sown.trouble = say("It cannot have been sown after the day it stood already.");
    if (!plant || !bed || !day || !sown.trouble.empty() || !area.trouble.empty()) return false;
    if (kept == nullptr) return true;
    Planting planting;
    planting.key = writing.new_key<Planting>();
    planting.code = free_code<Planting>(writing.shop(), "planting-" + print(*day));
    planting.plant = *plant;
    planting.bed = *bed;
    planting.sown = *day;
    if (writing.shop().find(*bed) != nullptr) planting.area = *size;  // else the size of the new bed itself
    standing.planting = planting.key;
    kept->change.put.all<Planting>().push_back(planting);
    return true;
}

std::string after_standing(const Writing& after, Key<Planting> key) {
    const Planting* planting = after.shop().find(key);
    if (planting == nullptr) return {};
    const PlantingFigures figures = planting_figures(after.books, *planting);
    const std::string currency = reports::currency_of(after.shop());
    return say("It stands in the books with {money} and {hours} in it; what is cut from now on carries that.",
               arg("money", reports::shown_money(figures.spent.cash(), currency)),
               arg("hours", reports::shown_minutes(number(figures.spent.hands_on))));
}

}  // namespace

Form standing_bed_form(const Writing& writing, std::optional<Key<StandingBed>> corrected) {
    FactForm<StandingBed> form{writing, "standing_bed", say("A bed that stands already"), corrected};
    const Shop& shop = writing.shop();
    if (form.is_new()) {
        form.fact().date = writing.day;
        form.extra(plant_field(shop));
        form.extra(bed_field(shop));
        form.extra({.id = "sown", .label = say("&When it was sown"), .help = say("About is enough.")});
        form.extra({.id = "area",
                    .label = say("How &much of the bed"),
                    .help = say("Blank: the whole bed. Of a new bed: its size.")});
        form.also_read(read_standing);
    } else {
        form.add("planting", say("Which &planting"), &StandingBed::planting,
                 {.choices = plantings_to_choose(writing, planting_of(shop, corrected))});
    }
    form.more("cost", say("Money in &it so far"), &StandingBed::cost)
        .more("time", say("&Time in it so far"), &StandingBed::time)
        .more("who", say("Wh&o"), &StandingBed::who, {.choices = people_choices(shop)})
        .more("date", say("Stood a&lready on"), &StandingBed::date);
    if (form.is_new()) form.form().cautions = cautions_before_sowing();
    return std::move(form).done([](StandingBed& standing, Form&, const Writing& in, Kept& kept) {
        const Planting* planting = in_change_or_shop(kept, in.shop(), standing.planting);
        const Plant* plant = in_change_or_shop(kept, in.shop(), planting->plant);
        kept.title = reports::message("{plant} that stood already");
        kept.args = {{"plant", plant->name}};
        kept.consequence = [key = standing.planting](const Writing& after) { return after_standing(after, key); };
        return true;
    });
}

}  // namespace dyestead::gui
