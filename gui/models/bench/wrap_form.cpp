#include "domain/ledger/planned_from.h"
#include "gui/models/bench/bars.h"
#include "gui/models/bench/cut_form.h"
#include "gui/models/bench/use_lines.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

std::vector<Need> wrapping_for(const Shop& shop, Key<Lot> key, int bars) {
    std::vector<Need> needs;
    const Lot* lot = shop.find(key);
    if (lot == nullptr || bars <= 0) return needs;
    for (const RecipeWrapping* line : wrapping_of(shop, lot->material)) {
        const Material* material = shop.find(line->material);
        const auto held = material == nullptr ? std::nullopt : as_held(*material, line->per_bar);
        if (held) needs.push_back({line->material, scaled(held->in_base(), bars, 1), false});
    }
    return needs;
}

// "60 wrapped; 40 bands left, enough for 40 bars."
std::string wrapped_meant(const Writing& after, const Wrapping& wrapping) {
    const auto bars = static_cast<std::uint64_t>(wrapping.bars);
    const Shop& shop = after.shop();
    const Lot* lot = shop.find(wrapping.lot);
    const RecipeWrapping* scarcest = nullptr;
    std::int64_t most = 0;
    std::int64_t left_of_it = 0;
    for (const RecipeWrapping* line :
         lot == nullptr ? std::vector<const RecipeWrapping*>{} : wrapping_of(shop, lot->material)) {
        const Material* material = shop.find(line->material);
        const auto held = material == nullptr ? std::nullopt : as_held(*material, line->per_bar);
        if (!held || held->in_base() <= 0) continue;
        std::int64_t left = 0;
        for (std::size_t i = 0; i < shop.all<Lot>().size(); ++i)
            if (shop.all<Lot>()[i].material == material->key) left += after.books.ledger.lots[i].left;
        if (scarcest != nullptr && left / held->in_base() >= most) continue;
        scarcest = line;
        most = left / held->in_base();
        left_of_it = left;
    }
    if (scarcest == nullptr) return say_count("One bar wrapped.", "{count} bars wrapped.", bars);
    const Material& material = *shop.find(scarcest->material);
    return say_count("One bar wrapped; {left} of {material} left, enough for {more} bars.",
                     "{count} bars wrapped; {left} of {material} left, enough for {more} bars.", bars,
                     arg("left", reports::shown_quantity({kind_of(material.held_as), left_of_it})),
                     arg("material", material.name), arg("more", most));
}

int bars_made(const Books& books, Key<Lot> lot) {
    const LotState* state = Records{books.shop, books.ledger}.state(lot);
    return state == nullptr ? 0 : whole_bars(state->received);
}

}  // namespace

int not_wrapped(const Books& books, Key<Lot> lot) {
    const LotState* state = Records{books.shop, books.ledger}.state(lot);
    if (state == nullptr) return 0;
    int wrapped = 0;
    for (const Wrapping& each : books.shop.all<Wrapping>())
        if (each.lot == lot && each.date <= books.as_of()) wrapped += each.bars;
    return std::clamp(bars_made(books, lot) - wrapped, 0, whole_bars(state->left));
}

Form wrap_form(const Writing& writing, std::optional<Key<Lot>> lot, std::optional<Key<Wrapping>> corrected) {
    FactForm<Wrapping> form{writing, "wrapping", say("Bars wrapped"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (lot) form.fact().lot = *lot;
    }
    std::vector<Choice> lots = bar_lot_choices(writing.books, [&](const ShelfLot& each) {
        return each.state != BarState::held || each.lot == form.fact().lot;
    });
    const std::string chosen = KeyCodes{}.code_of(form.fact().lot);
    if (!chosen.empty() && std::ranges::find(lots, chosen, &Choice::code) == lots.end())
        lots.push_back({chosen, reports::called(writing.shop(), form.fact().lot)});
    form.add("lot", say("&Bars"), &Wrapping::lot, {.choices = std::move(lots)})
        .add("bars", say("How man&y"), &Wrapping::bars)
        .add("date", say("Wrapped &on"), &Wrapping::date)
        .add("time", say("&Time"), &Wrapping::time, {.help = say("All of it; may stay blank.")})
        .more("who", say("W&ho"), &Wrapping::who, {.choices = people_choices(writing.shop())});
    form.lines(use_lines<Wrapping>(writing, say("What they were wrapped in")));
    form.look([filled = std::make_shared<FilledLines>()](Form& shown, const Writing& now) {
        const auto key = KeyCodes{}.key_of<Lot>(shown.text("lot"));
        if (shown.fact || !key) return;
        FormField& bars = shown.field("bars");
        if (bars.text.empty() || !bars.origin.empty()) {
            bars.text = fmt::to_string(not_wrapped(now.books, *key));
            bars.origin = say("all not wrapped yet");
            bars.trouble.clear();
        }
        const auto count = read_typed_count(bars.text);
        if (!count) return;
        FormLines& uses = shown.lines_of("uses");
        filled->fill(uses, fmt::format("{} {}", key->number, *count),
                     [&] { return rows_for(now.shop(), wrapping_for(now.shop(), *key, *count)); });
        uses.notes.resize(uses.rows.size());
    });
    return std::move(form).done([](Wrapping& wrapping, Form& shown, const Writing& now, Kept& kept) {
        const int made = bars_made(now.books, wrapping.lot);
        if (wrapping.bars <= 0 || wrapping.bars > made) {
            shown.field("bars").trouble = say_count("Only one bar was made of this lot; write how many were wrapped.",
                                                    "{count} bars were made of this lot; write how many of them were "
                                                    "wrapped.",
                                                    static_cast<std::uint64_t>(made));
            return false;
        }
        kept.title = reports::message("{bars} bars of lot {lot} wrapped");
        kept.args = {{"bars", fmt::to_string(wrapping.bars)}, {"lot", reports::called(now.shop(), wrapping.lot)}};
        kept.consequence = [wrapping](const Writing& after) { return wrapped_meant(after, wrapping); };
        return true;
    });
}

}  // namespace dyestead::gui
