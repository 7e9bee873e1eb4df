#include "gui/models/form/used_lines.h"

#include "domain/decisions/records.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

Unit unit_of(HeldAs held) {
    switch (held) {
        case HeldAs::mass: return Unit::g;
        case HeldAs::volume: return Unit::ml;
        case HeldAs::count: return Unit::piece;
    }
    return Unit::g;
}

}  // namespace

std::optional<Amount> amount_there(const Books& books, const Material* material, std::optional<Key<Lot>> lot) {
    if (material == nullptr) return std::nullopt;
    std::int64_t left = 0;
    const auto& lots = books.shop.all<Lot>();
    for (std::size_t i = 0; i < lots.size() && i < books.ledger.lots.size(); ++i)
        if (lots[i].material == material->key && (!lot || lots[i].key == *lot)) left += books.ledger.lots[i].left;
    return Amount{{kind_of(material->held_as), left}, unit_of(material->held_as), Mark::about};
}

std::vector<Choice> lots_of(const Books& books, const std::function<bool(const Material&)>& wanted,
                            const std::vector<Key<Lot>>& also) {
    const auto left = [&](const Lot& lot) {
        const LotState* state = Records{books.shop, books.ledger}.state(lot.key);
        return state != nullptr ? state->left : 0;
    };
    return choices_of_kind<Lot>(
        books.shop,
        [&](const Lot& lot) {
            const Material* material = books.shop.find(lot.material);
            if (std::ranges::find(also, lot.key) != also.end()) return true;
            return material != nullptr && (!wanted || wanted(*material)) && left(lot) > 0;
        },
        [&](const Lot& lot) {
            const Material& material = *books.shop.find(lot.material);
            return say("{material}, {lot}, {left} left", arg("material", material.name), arg("lot", lot.code),
                       arg("left", reports::shown_quantity({kind_of(material.held_as), left(lot)})));
        },
        say("by rule"));
}

Measuring measuring_of_material(const FieldHow::Texts& texts, const Writing& writing) {
    const auto key = KeyCodes{}.key_of<Material>(texts("material"));
    const Material* material = key ? writing.shop().find(*key) : nullptr;
    Measuring measuring{.own = measures_for(writing.shop(), key)};
    if (material != nullptr) measuring.kind = kind_of(material->held_as);
    measuring.there = amount_there(writing.books, material, KeyCodes{}.key_of<Lot>(texts("lot")));
    return measuring;
}

}  // namespace dyestead::gui
