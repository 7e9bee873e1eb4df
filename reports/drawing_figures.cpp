#include "reports/drawing_figures.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "reports/cells.h"
#include "reports/overloaded.h"
#include "reports/words/say.h"

namespace dyestead::reports {

namespace {

Table figures(const StackedBars& bars) {
    Table table{.title = bars.value_label, .columns = {{bars.value_label}}};
    for (const auto& bar : bars.bars) table.columns.push_back({bar.label, Align::right});
    for (std::size_t i = 0; i < bars.series.size(); ++i) {
        std::vector<Cell> row{{.shown = bars.series[i].name}};
        for (const auto& bar : bars.bars) {
            if (i < bar.values.size() && i < bar.shown.size())
                row.push_back({.shown = bar.shown[i], .number = bar.values[i]});
            else
                row.push_back(none_cell());
        }
        table.rows.push_back(std::move(row));
    }
    std::vector<Cell> totals{{.shown = say("all together")}};
    for (const auto& bar : bars.bars) totals.push_back({.shown = bar.total_shown});
    table.rows.push_back(std::move(totals));
    table.emphasise_last_row = true;
    return table;
}

Cell day_cell(Day day) {
    return {.shown = shown_date(day), .number = static_cast<double>(day.time_since_epoch().count())};
}

// Its own word, or what the legend calls such a shade or sign.
template <class What>
std::string word_of(const Timeline& timeline, const std::string& word, What what) {
    if (!word.empty()) return word;
    for (const TimelineKey& key : timeline.legend)
        if (const auto* const same = std::get_if<What>(&key.what); same != nullptr && *same == what) return key.name;
    return {};
}

Table figures(const Timeline& timeline) {
    struct Line {
        std::string what;
        Day from;
        Day to;
    };
    const bool any_figure =
        std::ranges::any_of(timeline.rows, [](const TimelineRow& row) { return !row.figure.empty(); });
    Table table{.title = {}, .columns = {{{}}, {say("what")}, {say("from"), Align::right}, {say("to"), Align::right}}};
    if (any_figure) table.columns.push_back({{}, Align::right});
    for (const TimelineRow& row : timeline.rows) {
        std::vector<Line> lines;
        for (const TimelineSpan& span : row.spans)
            lines.push_back({word_of(timeline, span.word, span.shade), span.from, std::max(span.from, span.to)});
        for (const TimelineSign& sign : row.signs)
            lines.push_back({word_of(timeline, sign.word, sign.sign), sign.on, sign.on});
        std::ranges::stable_sort(lines, {}, &Line::from);
        const std::size_t first = table.rows.size();
        for (const Line& line : lines)
            table.rows.push_back({{.shown = row.label}, {.shown = line.what}, day_cell(line.from), day_cell(line.to)});
        if (lines.empty()) table.rows.push_back({{.shown = row.label}, {}, none_cell(), none_cell()});
        if (any_figure) table.rows[first].push_back({.shown = row.figure});
    }
    return table;
}

Table figures(const Curve& curve) {
    Table table{.title = curve.y_label, .columns = {{curve.x_label, Align::right}}};
    // Each x once, and what each line is there.
    std::map<double, std::vector<Cell>> at;
    for (std::size_t l = 0; l < curve.lines.size(); ++l) {
        table.columns.push_back({curve.lines[l].name.empty() ? curve.y_label : curve.lines[l].name, Align::right});
        for (const CurvePoint& point : curve.lines[l].points) {
            if (!std::isfinite(point.x) || !std::isfinite(point.y)) continue;
            auto& row = at[point.x];
            row.resize(curve.lines.size(), none_cell());
            row[l] = number_cell(point.y);
        }
    }
    for (auto& [x, cells] : at) {
        std::vector<Cell> row{number_cell(x)};
        row.insert(row.end(), cells.begin(), cells.end());
        table.rows.push_back(std::move(row));
    }
    const auto note = [&](const std::string& sentence) { table.note += (table.note.empty() ? "" : " ") + sentence; };
    for (const CurveMark& mark : curve.marks)
        note(say("At {number}: {what}.", arg("number", shown_number(mark.x)), arg("what", mark.label)));
    if (curve.band)
        note(say("From {low} to {high}: {what}.", arg("low", shown_number(curve.band->from)),
                 arg("high", shown_number(curve.band->to)), arg("what", curve.band->name)));
    for (std::size_t column = 1; column < table.columns.size(); ++column) line_up(table, column);
    return table;
}

}  // namespace

Table figures_of(const Drawing& drawing) {
    return std::visit([](const auto& data) { return figures(data); }, drawing);
}

}  // namespace dyestead::reports
