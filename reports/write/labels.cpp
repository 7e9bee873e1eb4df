#include "reports/write/labels.h"

#include <algorithm>

#include "domain/text/amounts.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {

std::string findings_heading() {
    return tr("Does not add up");
}

std::string caution_word() {
    return tr("Caution");
}

std::string standing_line(const Document& document) {
    const auto day = read_day(document.as_of).value;
    const std::string shown = day ? shown_date(*day) : document.as_of;
    return say("As of {day}; amounts in {currency}.", arg("day", shown), arg("currency", document.currency));
}

std::vector<std::string> label_lines(const Table& table, std::size_t row) {
    std::vector<std::string> lines;
    const std::vector<Cell>& cells = table.rows[row];
    for (std::size_t c = 0; c < table.columns.size() && c < cells.size(); ++c) {
        const std::string& heading = table.columns[c].heading;
        if (cells[c].shown.empty() || cells[c].no_value) continue;
        lines.push_back(c == 0 || heading.empty()
                            ? cells[c].shown
                            : say("{what}: {value}", arg("what", heading), arg("value", cells[c].shown)));
    }
    return lines;
}

bool is_written_on(const Table& table) {
    return std::ranges::any_of(table.columns, [](const Column& column) { return column.room > 0; });
}

std::string page_of(std::size_t page, std::size_t pages) {
    return say("{page} of {pages}", arg("page", page), arg("pages", pages));
}

}  // namespace dyestead::reports
