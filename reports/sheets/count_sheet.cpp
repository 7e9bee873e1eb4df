#include <algorithm>
#include <map>

#include "domain/facts/material_amount.h"
#include "reports/sheets/sheet.h"
#include "reports/sheets/sheet_parts.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

constexpr std::size_t kLinesOfAnEmptyShop = 20;
constexpr std::size_t kSpareLines = 3;

std::string unit_of(HeldAs held) {
    switch (held) {
        case HeldAs::mass: return tr("g or kg");
        case HeldAs::volume: return tr("ml or l");
        case HeldAs::count: return tr("how many");
    }
    return {};
}

// A jar or two by their names, many by their number.
std::string named(const std::vector<std::string>& lots) {
    constexpr std::size_t kFew = 2;
    if (lots.size() > kFew) return say_count("one lot", "{count} lots", lots.size());
    return lots.size() < kFew ? lots.front()
                              : say("{one}, {other}", arg("one", lots.front()), arg("other", lots.back()));
}

}  // namespace

Sheet count_sheet(const Shop& shop, const Ledger& ledger) {
    // By name, as the form of the stock-take lists them.
    std::vector<std::pair<std::string, const Material*>> there;
    std::map<Key<Material>, std::vector<std::string>> lots;
    for (std::size_t i = 0; i < shop.all<Lot>().size(); ++i) {
        const Lot& lot = shop.all<Lot>()[i];
        const Material* material = shop.find(lot.material);
        if (material == nullptr || ledger.lots[i].left <= 0) continue;
        std::vector<std::string>& listed = lots[lot.material];
        if (listed.empty()) there.emplace_back(material->name, material);
        listed.push_back(lot.code);
    }
    std::ranges::stable_sort(there, {}, &std::pair<std::string, const Material*>::first);

    Sheet sheet{.title = say("Count sheet, {day}", arg("day", shown_date(ledger.as_of)))};
    sheet.blocks.push_back(Paragraph{
        tr("Blank is not counted, 0 is none left. What the books say is left off, so that it is counted and not "
           "copied.")});
    Table who{
        .title = {},
        .columns = {{.heading = tr("counted on"), .room = kRoomForDay}, {.heading = tr("by"), .room = kRoomForWords}}};
    add_empty_rows(who, 1);
    sheet.blocks.push_back(std::move(who));
    const bool none = there.empty();
    Table table{.title = tr("On the shelf"),
                .columns = {{.heading = tr("what"), .room = none ? kRoomForWords : 0},
                            {tr("lots")},
                            {tr("in")},
                            {.heading = tr("counted"), .room = 30},
                            {.heading = tr("why less"), .room = 24}}};
    for (const auto& [name, material] : there)
        table.rows.push_back({Cell{.shown = name}, Cell{.shown = named(lots[material->key])},
                              Cell{.shown = unit_of(material->held_as)}, Cell{}, Cell{}});
    if (none) table.columns.erase(table.columns.begin() + 1, table.columns.begin() + 3);
    add_empty_rows(table, none ? kLinesOfAnEmptyShop : kSpareLines);
    table.note = tr("Typed in at the Cupboard with \"Stock-take\", in the same order.");
    sheet.blocks.push_back(std::move(table));
    return sheet;
}

}  // namespace dyestead::reports
