#include "gui/models/garden/cut_form.h"

#include "gui/models/form/named.h"
#include "gui/models/garden/garden_choices.h"
#include "gui/models/garden/planting_story.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

// What was cut last of a plant; nothing when nothing was.
const Material* cut_before(const Shop& shop, Key<Plant> plant) {
    const Harvest* last = nullptr;
    for (const Harvest& harvest : shop.all<Harvest>()) {
        const Planting* planting = shop.find(harvest.planting);
        const bool same = planting != nullptr && planting->plant == plant;
        if (same && (last == nullptr || harvest.date >= last->date)) last = &harvest;
    }
    const Lot* lot = last != nullptr ? shop.find(last->lot) : nullptr;
    return lot != nullptr ? shop.find(lot->material) : nullptr;
}

struct Guess {
    std::string text;
    std::string origin;
};

Guess what_is_cut(const Shop& shop, std::optional<Key<Planting>> key) {
    const Planting* planting = key ? shop.find(*key) : nullptr;
    const Plant* plant = planting != nullptr ? shop.find(planting->plant) : nullptr;
    if (plant == nullptr) return {};
    if (const Material* before = cut_before(shop, plant->key))
        return {KeyCodes{}.code_of(before->key), say("from your last")};
    const std::string name =
        plant->part.empty() ? plant->name : say("{plant}, {part}", arg("plant", plant->name), arg("part", plant->part));
    const Material* there = named_fact<Material>(shop, name);
    return {there != nullptr ? KeyCodes{}.code_of(there->key) : name, say("from the plant")};
}

std::optional<Key<Planting>> planting_typed(const Form& form) {
    return KeyCodes{}.key_of<Planting>(form.text("planting"));
}

// What is cut follows the planting while nobody typed over it.
void guess_what(Form& form, const Writing& writing) {
    FormField& what = form.field("what");
    if (form.fact || (what.origin.empty() && !what.text.empty())) return;
    const Guess guess = what_is_cut(writing.shop(), planting_typed(form));
    what.text = guess.text;
    what.origin = guess.origin;
}

bool fill_in_harvest(Material& material, Form& /*form*/, const Writing& /*writing*/, Kept& /*kept*/) {
    material.kind = MaterialKind::harvest;
    material.held_as = HeldAs::mass;
    return true;
}

bool read_what(Harvest& cut, Form& form, const Writing& writing, Kept* kept) {
    guess_what(form, writing);
    const auto key = read_name<Material>("what", form, writing, kept, fill_in_harvest);
    if (!key) return false;
    if (kept == nullptr) return true;
    const Material* material = in_change_or_shop(*kept, writing.shop(), *key);
    if (material->kind != MaterialKind::harvest) {
        form.field("what").trouble =
            say("{what} is bought, not harvested; give what is cut a name of its own.", arg("what", material->name));
        return false;
    }
    const Lot* lot = writing.shop().find(cut.lot);
    if (lot == nullptr) {
        cut.lot = new_lot(*material, cut.date, writing, *kept);
    } else if (lot->material != *key) {
        Lot changed = *lot;
        changed.material = *key;
        kept->change.put.all<Lot>().push_back(changed);
    }
    return true;
}

bool before_sowing(const Harvest& cut, Form& form, const Writing& writing) {
    const Planting* planting = writing.shop().find(cut.planting);
    if (planting == nullptr || cut.date >= planting->sown) return false;
    form.field("date").trouble = say(
        "It was sown on {day} only; nothing can be cut of it before.", arg("day", reports::shown_date(planting->sown)));
    return true;
}

std::string after_cut(const Writing& after, Key<Harvest> key) {
    const Harvest* cut = after.shop().find(key);
    const Planting* planting = cut != nullptr ? after.shop().find(cut->planting) : nullptr;
    const Lot* lot = cut != nullptr ? after.shop().find(cut->lot) : nullptr;
    if (planting == nullptr || lot == nullptr) return {};
    const auto amount = arg("amount", said_back(cut->amount, {.material = after.shop().find(lot->material)}));
    const Plant* plant = after.shop().find(planting->plant);
    if (plant != nullptr && same_name(plant->part, "leaf"))
        return say("Cut: {amount}. Vat it today: leaf loses dye by the hour.", amount);
    const PlantingFigures figures = planting_figures(after.books, *planting);
    return say("Cut: {amount}. That makes {all} from this planting so far.", amount,
               arg("all", reports::shown_grams(static_cast<double>(figures.cut) / 1e3)));
}

void end_planting(const Harvest& cut, const Writing& writing, Kept& kept) {
    PlantingEnd end;
    end.key = writing.new_key<PlantingEnd>();
    end.code = free_code<PlantingEnd>(writing.shop(), "planting_end-" + print(cut.date));
    end.date = cut.date;
    end.planting = cut.planting;
    kept.change.put.all<PlantingEnd>().push_back(end);
}

}  // namespace

Form cut_form(const Writing& writing, std::optional<Key<Planting>> selected, std::optional<Key<Harvest>> corrected) {
    FactForm<Harvest> form{writing, "harvest", say("A cut"), corrected};
    const Shop& shop = writing.shop();
    if (form.is_new()) form.fact().date = writing.day;
    FormField what{.id = "what",
                   .label = say("What was c&ut"),
                   .entry = Entry::name,
                   .help = say("Leaf, root, whole herb: what goes into the vat or onto the drying rack."),
                   .choices = harvest_choices(shop)};
    if (const Lot* lot = shop.find(form.fact().lot)) what.text = KeyCodes{}.code_of(lot->material);
    form.add("date", say("Cut &on"), &Harvest::date)
        .add("planting", say("Of which &planting"), &Harvest::planting,
             {.choices = plantings_to_choose(writing, planting_of(shop, corrected))});
    form.extra(std::move(what));
    form.add("amount", say("How &much"), &Harvest::amount,
             {.help = say("By weight, or by a measure of your own like 2 buckets; ~ before it for about."),
              .material = material_in_field("what"),
              .measuring =
                  [](const FieldHow::Texts& texts, const Writing& in) {
                      const auto key = KeyCodes{}.key_of<Material>(texts("what"));
                      return Measuring{.kind = Kind::mass, .own = measures_for(in.shop(), key)};
                  }})
        .more("time", say("&Time it took"), &Harvest::time)
        .more("who", say("&Who"), &Harvest::who, {.choices = people_choices(shop)})
        .more("note", say("Not&e"), &Harvest::note);
    if (form.is_new())
        form.extra({.id = "last",
                    .label = say("It was the &last cut, and the bed is done with"),
                    .entry = Entry::tick,
                    .more = true});
    guess_planting(form, writing, selected);
    form.also_read(read_what);
    return std::move(form).done([](Harvest& cut, Form& filled, const Writing& in, Kept& kept) {
        if (before_sowing(cut, filled, in)) return false;
        if (!filled.fact && filled.text("last") == kYes) end_planting(cut, in, kept);
        kept.title = reports::message("cut of {amount} from {planting}");
        kept.args = {{"amount", said_back(cut.amount, {})}, {"planting", planting_in_short(in.shop(), cut.planting)}};
        kept.consequence = [key = cut.key](const Writing& after) { return after_cut(after, key); };
        return true;
    });
}

}  // namespace dyestead::gui
