#include "gui/models/garden/ground_forms.h"

#include "domain/decisions/starter_plants.h"
#include "gui/models/form/named.h"
#include "gui/models/garden/garden_choices.h"
#include "reports/words/caution_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

// Two things of one name cannot be told apart where they are chosen.
template <class Fact>
bool name_is_free(const Fact& fact, Form& form, const Shop& shop) {
    for (const Fact& each : shop.all<Fact>()) {
        if (each.key == fact.key || !same_name(each.name, fact.name)) continue;
        form.field("name").trouble =
            say("There is a {name} already; give this one another name.", arg("name", each.name));
        return false;
    }
    return true;
}

double ground(const Shop& shop) {
    std::int64_t all = 0;
    for (const Bed& bed : shop.all<Bed>()) all += bed.area.quantity.in_base();
    return square_metres(all);
}

}  // namespace

Form bed_form(const Writing& writing, std::optional<Key<Bed>> corrected) {
    FactForm<Bed> form{writing, "bed", say("A bed"), corrected};
    form.add("name", say("&Name"), &Bed::name, {.help = say("As you call it: long bed, by the wall.")})
        .add("area", say("&Size"), &Bed::area,
             {.help = say("Like 5 m2. Time at several beds is shared by it."), .measuring = in_square_metres});
    return std::move(form).done([](Bed& bed, Form& filled, const Writing& in, Kept& kept) {
        if (!name_is_free(bed, filled, in.shop())) return false;
        if (bed.area.quantity.is_zero()) {
            filled.field("area").trouble = say("A bed has some size; write it like 5 m2.");
            return false;
        }
        if (filled.fact == std::nullopt) bed.code = free_code<Bed>(in.shop(), code_from(bed.name));
        kept.title = reports::message("bed {bed}");
        kept.args = {{"bed", bed.name}};
        kept.consequence = [](const Writing& after) {
            return reports::say_count("One bed, {ground} m2 in all.", "{count} beds, {ground} m2 in all.",
                                      after.shop().all<Bed>().size(),
                                      arg("ground", reports::shown_number(ground(after.shop()))));
        };
        return true;
    });
}

namespace {

FormField weight_field(std::string id, std::string label, const Amount& amount, bool is_new, std::string help) {
    return {.id = std::move(id),
            .label = std::move(label),
            .text = is_new && amount.quantity.is_zero() ? std::string{} : field_text(amount),
            .help = std::move(help)};
}

// A weight that may be left blank; nothing where it is. `fine` turns false with the reason at the field.
std::optional<Amount> read_weight(std::string_view id, Form& form, bool& fine) {
    FormField& field = form.field(id);
    const Reading reading{.measuring = {.kind = Kind::mass}};
    field.trouble.clear();
    field.understood.clear();
    const auto value = read_typed_field<std::optional<Amount>>(field.text, reading);
    if (!value) {
        field.trouble = field_trouble(*value.trouble, field.text);
        fine = false;
        return std::nullopt;
    }
    if (*value) field.trouble = amount_trouble(**value, reading).value_or(std::string{});
    fine = fine && field.trouble.empty();
    field.understood = said_back(*value, reading);
    return *value;
}

bool in_order(const Plant& plant, Form& form) {
    const Quantity low = plant.low.quantity;
    const Quantity usual = plant.usual.quantity;
    const Quantity high = plant.high.quantity;
    if (low.in_base() <= usual.in_base() && usual.in_base() <= high.in_base()) return true;
    form.field("usual").trouble = say("A usual year lies between a bad and a good one; put the three in that order.");
    return false;
}

// Blank ones are what is usual for a plant of that name; else a bad and a good year are as the usual one.
bool read_harvest(Plant& plant, Form& form, const Writing& /*writing*/, Kept* kept) {
    plant.part = trimmed(form.text("part"));
    plant.latin = trimmed(form.text("latin"));
    bool fine = true;
    const auto low = read_weight("low", form, fine);
    const auto usual = read_weight("usual", form, fine);
    const auto high = read_weight("high", form, fine);
    if (!fine) return false;
    Plant starter;
    const bool known = fill_in_starter(starter, plant.name);
    if (!usual && !known) {
        if (kept != nullptr)
            form.field("usual").trouble = say("What does a square metre give in a usual year? About is enough: ~2 kg.");
        return false;
    }
    plant.usual = usual.value_or(starter.usual);
    plant.low = low.value_or(known && !usual ? starter.low : plant.usual);
    plant.high = high.value_or(known && !usual ? starter.high : plant.usual);
    if (!form.fact && known) {
        if (plant.latin.empty()) plant.latin = starter.latin;
        if (plant.part.empty()) plant.part = starter.part;
        if (plant.caution == Caution::none) plant.caution = starter.caution;
        if (plant.years_to_first == 0) plant.years_to_first = starter.years_to_first;
        if (!plant.seed_rate) plant.seed_rate = starter.seed_rate;
        if (!plant.days_to_harvest) plant.days_to_harvest = starter.days_to_harvest;
    }
    return in_order(plant, form);
}

std::string range_of(const Plant& plant) {
    const auto shown = [](const Amount& amount) {
        return reports::shown_grams(static_cast<double>(amount.quantity.in_base()) / 1e3);
    };
    return say("{plant}: {low} to {high} from a square metre, {usual} in a usual year.", arg("plant", plant.name),
               arg("low", shown(plant.low)), arg("high", shown(plant.high)), arg("usual", shown(plant.usual)));
}

}  // namespace

Form plant_form(const Writing& writing, std::optional<Key<Plant>> corrected) {
    FactForm<Plant> form{writing, "plant", say("A plant"), corrected};
    const bool is_new = form.is_new();
    form.add("name", say("&Name"), &Plant::name);
    form.extra(weight_field("low", say("A &bad year, from a square metre"), form.fact().low, is_new,
                            say("Blank: what is usual for it, where that is known.")));
    form.extra(weight_field("usual", say("A &usual year"), form.fact().usual, is_new, {}));
    form.extra(weight_field("high", say("A &good year"), form.fact().high, is_new, {}));
    form.add("colour", say("&Colour"), &Plant::colour, {.choices = colour_choices(writing.shop(), say("not said"))})
        .more("years_to_first", say("&Years to the first crop"), &Plant::years_to_first)
        .more("days_to_harvest", say("&Days from sowing to the first cut"), &Plant::days_to_harvest)
        .more("crops", say("C&rops in its life"), &Plant::crops, {.help = say("Cuts of one summer are one crop.")})
        .more("seed_rate", say("&Seed to a square metre"), &Plant::seed_rate)
        .more("caution", say("C&aution"), &Plant::caution,
              {.choices = word_choices<Caution>(
                   {say("none"), say("lye"), say("dust"), say("hot"), say("can make skin sensitive"), say("spreads")})})
        .more("strength_low", say("Strength of &its powder, a weak year"), &Plant::strength_low,
              {.help = say("Grams of the colour's standard in one gram of powder, like 0.3.")})
        .more("strength_usual", say("Strength in a usual y&ear"), &Plant::strength_usual)
        .more("strength_high", say("Strength in a g&ood year"), &Plant::strength_high);
    // Both may stay blank, which a member that is a plain text may not.
    form.extra({.id = "part",
                .label = say("&Part that is cut"),
                .more = true,
                .text = form.fact().part,
                .help = say("Leaf, root, whole herb.")});
    form.extra({.id = "latin",
                .label = say("&Latin name"),
                .more = true,
                .text = form.fact().latin,
                .help = say("It tells plants apart that are mistaken for each other.")});
    if (is_new) form.form().field("years_to_first").text = "0";
    form.also_read(read_harvest);
    return std::move(form).done([](Plant& plant, Form& filled, const Writing& in, Kept& kept) {
        if (!name_is_free(plant, filled, in.shop())) return false;
        if (!filled.fact) plant.code = free_code<Plant>(in.shop(), code_from(plant.name));
        kept.title = reports::message("plant {plant}");
        kept.args = {{"plant", plant.name}};
        kept.consequence = [key = plant.key](const Writing& after) {
            const Plant* found = after.shop().find(key);
            return found != nullptr ? range_of(*found) : std::string{};
        };
        return true;
    });
}

}  // namespace dyestead::gui
