#include "gui/models/bench/use_lines.h"

#include "domain/decisions/records.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

bool of_the_bench(const Material& material) {
    if (material.kind == MaterialKind::pigment) return true;
    if (material.kind != MaterialKind::raw) return false;
    switch (material.purpose.value_or(Purpose::other)) {
        case Purpose::oil:
        case Purpose::lye:
        case Purpose::water:
        case Purpose::colourant:
        case Purpose::scent:
        case Purpose::wrapping:
        case Purpose::other: return true;
        case Purpose::alkali:
        case Purpose::mordant:
        case Purpose::acid:
        case Purpose::feed: return false;
    }
    return false;
}

std::string amount_text(const Material& material, std::int64_t base) {
    const auto in = [&](Kind kind, Unit unit) { return print(Amount{Quantity{kind, base}, unit, Mark::measured}); };
    switch (material.held_as) {
        case HeldAs::mass: return in(Kind::mass, Unit::g);
        case HeldAs::volume: return in(Kind::volume, Unit::ml);
        case HeldAs::count: return in(Kind::count, Unit::piece);
    }
    return {};
}

// To the tenth of a gram or millilitre, and to a whole piece upwards: what can be weighed out.
std::int64_t weighable(const Material& material, std::int64_t base) {
    const std::int64_t step = material.held_as == HeldAs::count ? 1'000 : 100;
    return material.held_as == HeldAs::count ? (base + step - 1) / step * step : (base + step / 2) / step * step;
}

}  // namespace

std::vector<Choice> bench_material_choices(const Shop& shop) {
    return material_choices(shop, of_the_bench);
}

std::vector<Choice> bench_lot_choices(const Books& books) {
    std::vector<Choice> choices;
    for (std::size_t i = 0; i < books.shop.all<Lot>().size() && i < books.ledger.lots.size(); ++i) {
        const Lot& lot = books.shop.all<Lot>()[i];
        const Material* material = books.shop.find(lot.material);
        const std::int64_t left = books.ledger.lots[i].left;
        if (material == nullptr || left <= 0 || !of_the_bench(*material)) continue;
        choices.push_back({KeyCodes{}.code_of(lot.key),
                           say("{material}, {lot}, {left} left", arg("material", material->name), arg("lot", lot.code),
                               arg("left", reports::shown_quantity({kind_of(material->held_as), left})))});
    }
    std::ranges::stable_sort(choices, {}, &Choice::shown);
    choices.insert(choices.begin(), Choice{"", say("by rule")});
    return choices;
}

std::string taken_from(const Books& books, const Ingredient& ingredient) {
    const Material* material = books.shop.find(ingredient.material);
    if (material == nullptr) return {};
    const auto shown = [&](std::int64_t base) { return reports::shown_quantity({kind_of(material->held_as), base}); };
    if (ingredient.short_by() > 0)
        return say("only {there}: short {short}", arg("there", shown(ingredient.there)),
                   arg("short", shown(ingredient.short_by())));
    if (ingredient.take.size() == 1) return reports::called(books.shop, ingredient.take.front().lot);
    std::string lots;
    for (const TakeFrom& each : ingredient.take)
        lots += (lots.empty() ? "" : ", ") + say("{amount} of {lot}", arg("amount", shown(each.quantity)),
                                                 arg("lot", reports::called(books.shop, each.lot)));
    return lots;
}

std::vector<std::vector<std::string>> rows_for(const Shop& shop, const std::vector<Need>& needs) {
    std::vector<std::vector<std::string>> rows;
    for (const Need& need : needs) {
        const Material* material = shop.find(need.material);
        if (material == nullptr) continue;
        rows.push_back(
            {KeyCodes{}.code_of(need.material), amount_text(*material, weighable(*material, need.quantity)), {}});
    }
    return rows;
}

}  // namespace dyestead::gui
