#include "domain/decisions/records.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/cupboard/supply_forms.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/new_things.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

const Material* material_of(const FieldHow::Texts& texts, const Writing& writing) {
    return material_typed(texts("what"), writing, {});
}

std::vector<Choice> kinds() {
    return {{"", say("as it is on record")},
            {"oil", say("an oil or butter")},
            {"lye", say("lye")},
            {"alkali", say("alkali, like soda ash")},
            {"mordant", say("mordant, like alum")},
            {"water", say("water")},
            {"colourant", say("a bought-in colour")},
            {"scent", say("scent")},
            {"wrapping", say("wrapping")},
            {"seed", say("seed")},
            {"pigment", say("powder of our own")},
            {"harvest", say("leaf, root or herb")},
            {"bar", say("bars of soap")},
            {"other", say("something else")}};
}

Key<Material> new_material(const std::string& name, const std::string& kind, Kind held, const Writing& writing,
                           Kept& kept) {
    if (const auto made = read_field<MaterialKind>(kind, KeyCodes{}); made && *made != MaterialKind::raw)
        return add_material(name, *made, std::nullopt, held, writing, kept);
    const auto purpose = read_field<Purpose>(kind, KeyCodes{});
    return add_material(name, MaterialKind::raw, purpose ? *purpose : Purpose::other, held, writing, kept);
}

}  // namespace

Form already_here_form(const Writing& writing, std::optional<Key<AlreadyHere>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<AlreadyHere> form{writing, "already-here", say("Already here"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    const Lot* lot = form.is_new() ? nullptr : shop.find(form.fact().lot);
    form.extra(
        {.id = "what",
         .label = say("&What"),
         .entry = Entry::name,
         .text = lot == nullptr ? std::string{} : KeyCodes{}.code_of(lot->material),
         .help = say("What stood in the cupboard before the books began; a new name is put down as a new thing."),
         .choices = material_choices(shop, {})});
    form.add("amount", say("How &much"), &AlreadyHere::amount,
             {.help = say("Roughly will do: ~2 kg."), .material = material_of})
        .add("cost", say("What it &cost"), &AlreadyHere::cost,
             {.help = say("In money, without your own hours; blank when you do not know.")})
        .more("best_before", say("&Best before"), &AlreadyHere::best_before)
        .more("time", say("&Hours of your own in it"), &AlreadyHere::time)
        .more("who", say("Wh&ose hours"), &AlreadyHere::who, {.entry = Entry::choice, .choices = people_choices(shop)})
        .more("date", say("&As of"), &AlreadyHere::date);
    form.extra(
        {.id = "kind", .label = say("What for, when &new"), .entry = Entry::choice, .more = true, .choices = kinds()});
    return std::move(form).done([](AlreadyHere& here, Form& filled, const Writing& now, Kept& kept) {
        const std::string& what = filled.text("what");
        if (trimmed(what).empty()) {
            filled.field("what").trouble = say("What it is is blank; choose it, or write a new name.");
            return false;
        }
        const Material* known = material_typed(what, now, kept);
        const std::string name = known != nullptr ? known->name : std::string{trimmed(what)};
        const Key<Material> material =
            known != nullptr ? known->key
                             : new_material(what, filled.text("kind"), here.amount.quantity.kind(), now, kept);
        const Lot* before = now.shop().find(here.lot);
        if (before == nullptr || before->material != material) here.lot = add_lot(name, material, here.date, now, kept);
        kept.title = reports::message("already here: {what}");
        kept.args = {{"what", name}};
        kept.consequence = [name, material](const Writing& after) {
            const Material* of = after.shop().find(material);
            std::int64_t left = 0;
            const Records records{after.shop(), after.books.ledger};
            for (const Lot& each : after.shop().all<Lot>())
                if (const LotState* state = records.state(each.key); each.material == material && state != nullptr)
                    left += state->left;
            if (of == nullptr) return say("Put down.");
            return say("{what}: {amount} in hand.", arg("what", name),
                       arg("amount", reports::shown_quantity({kind_of(of->held_as), left})));
        };
        return true;
    });
}

Form supplier_form(const Writing& writing, std::optional<Key<Supplier>> corrected) {
    FactForm<Supplier> form{writing, "supplier", say("A supplier"), corrected};
    form.add("name", say("&Name"), &Supplier::name)
        .add("carriage", say("&Postage of one order"), &Supplier::carriage)
        .add("carriage_free_from", say("Free &from"), &Supplier::carriage_free_from,
             {.help = say("Goods of one order from which they send without postage.")})
        .more("order_time", say("&Time an order takes you"), &Supplier::order_time)
        .more("note", say("N&ote"), &Supplier::note);
    return std::move(form).done([](Supplier& supplier, Form&, const Writing& now, Kept& kept) {
        if (now.shop().find(supplier.key) == nullptr)
            supplier.code = free_code<Supplier>(now.shop(), code_from(supplier.name));
        kept.title = reports::message("supplier {name}");
        kept.args = {{"name", supplier.name}};
        kept.consequence = [name = supplier.name](const Writing&) {
            return say("{name} can be chosen at deliveries and prices.", arg("name", name));
        };
        return true;
    });
}

}  // namespace dyestead::gui
