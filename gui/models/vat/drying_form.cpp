#include <algorithm>

#include "domain/decisions/records.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/named.h"
#include "gui/models/form/new_things.h"
#include "gui/models/removal.h"
#include "gui/models/vat/standing.h"
#include "gui/models/vat/vat_form.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

std::vector<Choice> vat_choices(const Shop& shop) {
    std::vector<Choice> choices;
    std::vector<const Vat*> vats;
    for (const Vat& vat : shop.all<Vat>()) vats.push_back(&vat);
    std::ranges::stable_sort(vats, [](const Vat* one, const Vat* other) { return one->date > other->date; });
    for (const Vat* vat : vats)
        choices.push_back(
            {KeyCodes{}.code_of(vat->key), say("{day}, {colour}", arg("day", reports::shown_date(vat->date)),
                                               arg("colour", reports::colour_in_a_sentence(shop, vat->colour)))});
    return choices;
}

Measuring weight(const FieldHow::Texts&, const Writing& writing) {
    return {.kind = Kind::mass, .own = measures_for(writing.shop(), std::nullopt)};
}

std::vector<Key<Vat>> vats_on(const Change& change, Key<Drying> drying) {
    std::vector<Key<Vat>> vats;
    for (const DryingVat& line : change.put.all<DryingVat>())
        if (line.head == drying) vats.push_back(line.vat);
    return vats;
}

// Grams of powder from a kilogram of harvest of the vats on a plate; nothing where no harvest is noted.
std::optional<double> yield_of(const Shop& shop, const Drying& drying) {
    double kg = 0;
    for (const DryingVat& line : shop.all<DryingVat>())
        if (const Vat* vat = shop.find(line.vat); line.head == drying.key && vat != nullptr)
            kg += harvest_kg(shop, *vat);
    if (kg <= 0 || !drying.amount) return std::nullopt;
    return static_cast<double>(drying.amount->quantity.in_base()) / 1e3 / kg;
}

std::optional<Key<Colour>> colour_of(const Shop& shop, const Drying& drying) {
    for (const DryingVat& line : shop.all<DryingVat>())
        if (const Vat* vat = shop.find(line.vat); line.head == drying.key && vat != nullptr) return vat->colour;
    return std::nullopt;
}

bool is_used(const Shop& shop, Key<Lot> lot, FactRef maker) {
    const Removal removal = removal_of(shop, {kKindOf<Lot>, lot.number});
    return std::ranges::any_of(removal.users, [&](FactRef user) { return user != maker; });
}

// New lines get a lot of the drying's own powder; what is taken off the plate again takes its lot along.
bool give_further_lots(const Drying& drying, Form& filled, const Writing& now, Kept& kept) {
    auto& lines = kept.change.put.all<DryingLot>();
    if (!lines.empty() && !drying.lot) {
        filled.field("amount").trouble =
            say("Write here what the first of the lots weighs, before the further ones below.");
        return false;
    }
    const Lot* first = drying.lot ? in_change_or_shop(kept, now.shop(), *drying.lot) : nullptr;
    const Key<Material> powder = first == nullptr ? Key<Material>{} : first->material;
    for (DryingLot& line : lines) {
        if (line.lot.number != 0) continue;
        const Material* material = in_change_or_shop(kept, now.shop(), powder);
        line.lot = add_lot(material == nullptr ? std::string{} : material->name, powder, drying.date, now, kept);
    }
    for (const Key<DryingLot> gone : kept.change.removed_of<DryingLot>()) {
        const DryingLot* line = now.shop().find(gone);
        if (line == nullptr) continue;
        if (is_used(now.shop(), line->lot, ref(*line))) {
            filled.field("amount").trouble = say(
                "Powder of a further lot is used or tested already, so it cannot be taken away; correct that first.");
            return false;
        }
        kept.change.remove(line->lot);
    }
    return true;
}

std::string what_it_means(Key<Drying> key, const Writing& after) {
    const Shop& shop = after.shop();
    const Drying* drying = shop.find(key);
    if (drying == nullptr) return {};
    std::size_t vats = 0;
    for (const DryingVat& line : shop.all<DryingVat>())
        if (line.head == key) ++vats;
    if (!drying->amount || drying->amount->quantity.in_base() == 0)
        return say("Noted: it gave nothing. Its hours and money stand among the losses, not in the next vat.");
    const std::string grams = reports::shown_grams(static_cast<double>(drying->amount->quantity.in_base()) / 1e3);
    const std::string weighed =
        drying->amount->mark == Mark::measured ? grams : say("about {amount}", arg("amount", grams));
    const auto yield = yield_of(shop, *drying);
    if (!yield)
        return say_count(
            "{amount} of powder from one vat.", "{amount} of powder from {count} vats.", vats, arg("amount", weighed));
    double best = 0;  // of this colour: a root gives many times what a leaf gives
    const auto colour = colour_of(shop, *drying);
    for (const Drying& other : shop.all<Drying>())
        if (other.key != key && other.date <= drying->date && colour_of(shop, other) == colour)
            best = std::max(best, yield_of(shop, other).value_or(0));
    std::string told = say_count("{amount} of powder from one vat: {yield} g from a kilo.",
                                 "{amount} of powder from {count} vats: {yield} g from a kilo.", vats,
                                 arg("amount", weighed), arg("yield", reports::shown_number(*yield)));
    if (best == 0) return told;
    if (*yield > best) return say("{told} That is your best so far.", arg("told", told));
    return say("{told} Your best was {best}.", arg("told", told), arg("best", reports::shown_number(best)));
}

}  // namespace

Form drying_form(const Writing& writing, std::optional<Key<Drying>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<Drying> form{writing, "drying", say("Dried and weighed"), corrected};
    const bool fresh = form.is_new();
    if (fresh) form.fact().date = writing.day;
    form.add("date", say("&On"), &Drying::date)
        .add("amount", say("&Powder"), &Drying::amount,
             {.help = say("4 g, or ~4 g; blank or 0 when it gave nothing. Smelly or furry is out, not into soap."),
              .measuring = weight})
        .add("time", say("&Hands-on"), &Drying::time,
             {.help = say("Spreading, scraping, grinding. Mask on when grinding.")})
        .add("note", say("No&te"), &Drying::note)
        .more("dryness", say("It is &still"), &Drying::dryness,
              {.entry = Entry::choice,
               .choices = {{"", say("dry")}, {"dry", say("dry, for certain")}, {"damp", say("damp")}}})
        .more("lost", say("&Lost on the plate"), &Drying::lost, {.measuring = weight})
        .more("who", say("&Who"), &Drying::who, {.entry = Entry::choice, .choices = people_choices(shop)});
    LineForm<DryingVat> on_plate{.id = "vats", .name = say("The vats on this plate")};
    on_plate.add("vat", say("vat"), &DryingVat::vat, {.choices = vat_choices(shop)});
    form.lines(std::move(on_plate));
    LineForm<DryingLot> further{.id = "further", .name = say("Further lots from this plate: scraped off apart")};
    further.add("amount", say("how much"), &DryingLot::amount, {.help = say("Like 1.2 g."), .measuring = weight})
        .add(
            "worth", say("worth beside the first"), &DryingLot::worth,
            {.help = say("1/2 when a gram of it is worth half a gram of the first; blank when it is worth as much. The "
                         "cost is shared by it.")});
    form.lines(std::move(further));
    // Those of the colour that stands longest: another colour dries on a plate of its own.
    const auto standing = standing_vats(shop, writing.day);
    for (const Vat* vat : fresh ? standing : std::vector<const Vat*>{})
        if (vat->colour == standing.front()->colour)
            form.form().lines_of("vats").rows.push_back({KeyCodes{}.code_of(vat->key)});
    return std::move(form).done([](Drying& drying, Form& filled, const Writing& now, Kept& kept) {
        const auto vats = vats_on(kept.change, drying.key);
        const Vat* first = vats.empty() ? nullptr : now.shop().find(vats.front());
        if (first == nullptr) {
            filled.field("amount").trouble = say("Which vat it came from is missing; choose it below.");
            return false;
        }
        for (const Key<Vat> key : vats) {
            const Vat* vat = now.shop().find(key);
            if (vat == nullptr || vat->colour == first->colour) continue;
            filled.field("amount").trouble =
                say("Vats of two colours stand on this plate; take out those of the other colour and dry them apart.");
            return false;
        }
        for (std::size_t i = 0; i < vats.size(); ++i) {
            if (std::ranges::count(vats, vats[i]) == 1) continue;
            filled.field("amount").trouble =
                say("One vat stands twice on this plate; select one of its two lines and take it away.");
            return false;
        }
        const bool gave = drying.amount && drying.amount->quantity.in_base() > 0;
        if (gave && !drying.lot) {
            const Material* powder = powder_of(now.shop(), first->colour);
            const Colour* colour = now.shop().find(first->colour);
            const std::string name = powder != nullptr   ? powder->name
                                     : colour == nullptr ? say("Powder, our own")
                                                         : say("{colour} powder, our own", arg("colour", colour->name));
            Key<Material> material = powder != nullptr ? powder->key : Key<Material>{};
            if (powder == nullptr) {
                material = add_material(name, MaterialKind::pigment, std::nullopt, Kind::mass, now, kept);
                kept.change.put.all<Material>().back().colour = first->colour;
            }
            drying.lot = add_lot(name, material, drying.date, now, kept);
        }
        if (!gave) {
            if (drying.lot) {
                const bool used = is_used(now.shop(), *drying.lot, {kKindOf<Drying>, drying.key.number});
                if (used) {
                    filled.field("amount").trouble = say(
                        "Some of this powder is used or tested already, so it did give something; correct that first.");
                    return false;
                }
                kept.change.remove(*drying.lot);
            }
            drying.lot.reset();
            drying.amount.reset();
        }
        if (!give_further_lots(drying, filled, now, kept)) return false;
        kept.title = reports::message("drying of {day}");
        kept.args = {{"day", reports::shown_date(drying.date)}};
        kept.consequence = [key = drying.key](const Writing& after) { return what_it_means(key, after); };
        return true;
    });
}

}  // namespace dyestead::gui
