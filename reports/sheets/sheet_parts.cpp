#include "reports/sheets/sheet_parts.h"

#include "reports/words/say.h"

namespace dyestead::reports {

Table questions(std::string title, const std::vector<std::string>& asked) {
    Table table{
        .title = std::move(title), .columns = {{tr("question")}, {.heading = tr("answer"), .room = 2 * kRoomForWords}}};
    for (const std::string& each : asked) table.rows.push_back({Cell{.shown = each}, Cell{}});
    return table;
}

Paragraph cautions(const std::vector<std::string>& sentences) {
    std::string all;
    for (const std::string& each : sentences)
        if (!each.empty()) all += (all.empty() ? "" : " ") + each;
    return {std::move(all), Tone::caution};
}

}  // namespace dyestead::reports
