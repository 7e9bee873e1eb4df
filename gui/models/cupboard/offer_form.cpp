#include "domain/decisions/prices.h"
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

const Offer* last_offer(const Shop& shop, Key<Material> material, Day day) {
    const Offer* last = nullptr;
    for (const Offer& offer : shop.all<Offer>())
        if (offer.material == material && offer.noted <= day && (last == nullptr || offer.from >= last->from))
            last = &offer;
    return last;
}

const Material* material_of(const FieldHow::Texts& texts, const Writing& writing) {
    return material_typed(texts("material"), writing, {});
}

std::string what_it_means(const Offer& offer, const Writing& after) {
    const Material* material = after.shop().find(offer.material);
    if (material == nullptr) return say("Noted.");
    const auto held = as_held(*material, offer.pack);
    const std::string currency = reports::currency_of(after.shop());
    const std::string price =
        held ? price_cell(*material, offer.price, held->in_base(), currency).shown : reports::not_known();
    return say("{what} from {day}: {price}. The Stall shows which bars that moves under their price.",
               arg("what", material->name), arg("day", reports::shown_date(offer.from)), arg("price", price));
}

}  // namespace

Form offer_form(const Writing& writing, std::optional<Key<Offer>> corrected, std::optional<Key<Material>> of) {
    const Shop& shop = writing.shop();
    FactForm<Offer> form{writing, "offer", say("A supplier's price"), corrected};
    const bool fresh = form.is_new();
    const Offer* like = fresh && of ? last_offer(shop, *of, writing.day) : nullptr;
    if (fresh) {
        if (like != nullptr) form.fact() = *like;
        form.fact().key = {};
        form.fact().code.clear();
        form.fact().price = {};
        form.fact().noted = writing.day;
        form.fact().from = writing.day;
        if (of) form.fact().material = *of;
    }
    form.add("material", say("&What"), &Offer::material,
             {.choices = material_choices(shop,
                                          [](const Material& each) {
                                              return each.kind == MaterialKind::raw || each.kind == MaterialKind::seed;
                                          })})
        .add("supplier", say("Fro&m"), &Offer::supplier, {.choices = supplier_choices(shop)})
        .add("pack", say("&Pack"), &Offer::pack,
             {.help = say("How much is in one: 5 kg, 100."), .material = material_of})
        .add("price", say("Pri&ce of a pack"), &Offer::price)
        .add("from", say("From &on"), &Offer::from)
        .more("lead_days", say("&Days they take"), &Offer::lead_days)
        .more("noted", say("Known &since"), &Offer::noted)
        .more("how_known", say("&How known"), &Offer::how_known, {.help = say("A letter, a price list, by word.")});
    if (like != nullptr)
        for (const char* id : {"supplier", "pack", "lead_days"})
            form.form().field(id).origin = say("from the last price");
    LineForm<OfferBreak> breaks{.id = "breaks", .name = say("Cheaper from so many packs on")};
    breaks.add("from_packs", say("from packs"), &OfferBreak::from_packs)
        .add("price", say("a pack"), &OfferBreak::price);
    form.lines(std::move(breaks));
    return std::move(form).done([](Offer& offer, Form&, const Writing& now, Kept& kept) {
        kept.title = reports::message("price of {what} from {day}");
        kept.args = {{"what", reports::called(now.shop(), offer.material)}, {"day", reports::shown_date(offer.from)}};
        kept.consequence = [offer](const Writing& after) { return what_it_means(offer, after); };
        return true;
    });
}

}  // namespace dyestead::gui
