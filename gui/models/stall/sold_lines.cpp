#include "gui/models/stall/sold_lines.h"

#include "reports/words/say.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

std::size_t column(const FormLines& lines, std::string_view id) {
    const auto found = std::ranges::find(lines.fields, id, &FormField::id);
    if (found == lines.fields.end()) throw std::logic_error("no such column: " + std::string{id});
    return static_cast<std::size_t>(found - lines.fields.begin());
}

void say_ready(FormLines& lines, std::string_view count, const Books& books) {
    const auto ready = ready_bars(books);
    const std::size_t bar_at = column(lines, "bar");
    const std::size_t count_at = column(lines, count);
    std::map<Key<Material>, int> asked;
    for (std::size_t i = 0; i < lines.rows.size() && i < lines.notes.size(); ++i) {
        const auto bar = KeyCodes{}.key_of<Material>(lines.rows[i][bar_at]);
        const auto bars = read_typed_count(lines.rows[i][count_at]);
        if (!bar || !bars) continue;
        const auto there = ready.find(*bar);
        const int of_it = there == ready.end() ? 0 : there->second;
        asked[*bar] += *bars;
        if (asked[*bar] > of_it && lines.notes[i].empty())
            lines.notes[i] = say("only {bars} ready", arg("bars", of_it));
    }
}

std::string lot_trouble(const Shop& shop, const std::optional<Key<Lot>>& lot, Key<Material> bar) {
    const Lot* found = lot ? shop.find(*lot) : nullptr;
    if (found == nullptr || found->material == bar) return {};
    return say("The lot {lot} is of {bar}; choose a lot of the bar in the line, or by rule.", arg("lot", found->code),
               arg("bar", reports::called(shop, found->material)));
}

}  // namespace dyestead::gui
