#include "reports/chart/timeline_layout.h"

#include <algorithm>
#include <utility>

#include "reports/chart/day_ticks.h"
#include "reports/words/say.h"

namespace dyestead::reports {

namespace {

constexpr TextStyle kPlain{.size = 12};
constexpr TextStyle kSmall{.size = 11};
constexpr double kGap = 6;
constexpr double kBarHeight = 18;
constexpr double kRowHeight = 28;
constexpr double kLeastBar = 2;  // a single day in years is still seen
constexpr TextStyle kTight{.size = 10};
constexpr double kMostOfWidth = 0.3;  // for the words on either side
constexpr double kMostAnyway = 120;   // of a narrow picture more, but no more than this

struct Reach {
    Day first;
    Day last;
};

std::optional<Reach> reach_of(const Timeline& data) {
    std::optional<Reach> reach;
    const auto take = [&](Day day) {
        if (!reach) reach = Reach{day, day};
        reach->first = std::min(reach->first, day);
        reach->last = std::max(reach->last, day);
    };
    for (const TimelineRow& row : data.rows) {
        for (const TimelineSpan& span : row.spans) {
            take(span.from);
            take(std::max(span.from, span.to));
        }
        for (const TimelineSign& sign : row.signs) take(sign.on);
    }
    if (reach && data.today) take(*data.today);
    if (!reach) return reach;
    // A little air, so that neither a bar nor a sign stands on the edge.
    constexpr int kAir = 50;
    const Days air{(reach->last - reach->first).count() / kAir};
    return Reach{reach->first - air, reach->last + air};
}

struct DayScale {
    double left = 0;
    double width = 0;
    Reach reach;

    // Where the day begins.
    double operator()(Day day) const {
        const auto days = static_cast<double>((reach.last - reach.first).count() + 1);
        return left + width * static_cast<double>((day - reach.first).count()) / days;
    }
    double middle(Day day) const { return ((*this)(day) + (*this)(day + Days{1})) / 2; }
};

template <class Words>
double widest(const std::vector<TimelineRow>& rows, double most, Words words) {
    double width = 0;
    for (const TimelineRow& row : rows) width = std::max(width, TextBox::cut(words(row), kPlain, most).width());
    return width;
}

// On one line, or on two smaller ones where the row has room for them.
TextBox label_within(std::string_view text, double width, double row_height) {
    TextBox one_line{text, kPlain};
    if (one_line.width() <= width) return one_line;
    TextBox two_lines = TextBox::cut(text, kTight, width, 2);
    return two_lines.height() <= row_height ? two_lines : TextBox::cut(text, kPlain, width);
}

void lay_out_row(TimelineLayout& out, const TimelineRow& row, std::size_t index, const DayScale& scale, double middle) {
    const double bar = std::min(kBarHeight, out.row_height - 4);
    const auto in_middle = [&](const TextBox& text) { return middle - text.height() / 2; };
    for (std::size_t s = 0; s < row.spans.size(); ++s) {
        const TimelineSpan& span = row.spans[s];
        const double from = scale(span.from);
        const double to = scale(std::max(span.from, span.to) + Days{1});
        PlacedSpan placed{
            .box = {from, middle - bar / 2, std::max(to - from, kLeastBar), bar}, .row = index, .span = s};
        // Signs would stand upon the word; of two bars the later one would.
        const auto covers = [&](Day first, Day last) { return first <= span.to && last >= span.from; };
        const bool covered =
            std::ranges::any_of(row.signs, [&](const TimelineSign& sign) { return covers(sign.on, sign.on); }) ||
            std::any_of(row.spans.begin() + static_cast<std::ptrdiff_t>(s) + 1, row.spans.end(),
                        [&](const TimelineSpan& other) { return covers(other.from, other.to); });
        const TextBox word{span.word, kSmall};
        if (!span.word.empty() && !covered && word.width() + kGap <= placed.box.width && word.height() <= bar)
            placed.word = PlacedText{word, from + (placed.box.width - word.width()) / 2, in_middle(word)};
        out.spans.push_back(std::move(placed));
    }
    for (std::size_t s = 0; s < row.signs.size(); ++s)
        out.signs.push_back({.x = scale.middle(row.signs[s].on), .y = middle, .row = index, .sign = s});
}

void lay_out_ticks(TimelineLayout& out, const DayScale& scale, double width, double text_height) {
    // The widest label there is: two figures and three letters, or a year.
    const double label_width = TextBox{"30 May", kSmall}.width() + 2 * kGap;
    double years_end = 0;
    for (const DayTick& tick : day_ticks(scale.reach.first, scale.reach.last, scale.width, label_width)) {
        const TextBox label{tick.label, kSmall};
        const double x = scale(tick.on);
        if (x + 3 + label.width() > width) continue;
        PlacedDayTick placed{.x = x, .label = {label, x + 3, out.plot_bottom + kGap / 2}};
        const TextBox year{tick.year, kSmall};
        if (!tick.year.empty() && x + 3 >= years_end && x + 3 + year.width() <= width) {
            placed.year = PlacedText{year, x + 3, out.plot_bottom + kGap / 2 + text_height};
            years_end = placed.year->right() + kGap;
        }
        out.ticks.push_back(std::move(placed));
    }
}

}  // namespace

TimelineLayout lay_out_timeline(double width, double height, const Timeline& data) {
    TimelineLayout out;
    const auto reach = reach_of(data);
    if (!reach) return out;

    const double most = width * kMostOfWidth;
    const double most_of_label = std::max(most, std::min(kMostAnyway, width / 2));
    const double label_width = widest(data.rows, most_of_label, [](const TimelineRow& row) { return row.label; });
    const double figure_width = widest(data.rows, most, [](const TimelineRow& row) { return row.figure; });
    out.plot_left = label_width + 2 * kGap;
    out.plot_right = std::max(width - figure_width - (figure_width > 0 ? 2 * kGap : 1), out.plot_left + 20);
    const DayScale scale{out.plot_left, out.plot_right - out.plot_left, *reach};

    std::vector<std::string> names;
    for (const TimelineKey& key : data.legend) names.push_back(key.name);
    Legend legend = lay_out_legend(names, width);
    out.legend = std::move(legend.swatches);
    const double text_height = TextBox{"0", kSmall}.height();
    const double legend_height = legend.height > 0 ? legend.height + kGap : 0;
    out.plot_top = legend_height + (data.today ? text_height + 2 : 0) + 2;

    const auto rows = static_cast<double>(data.rows.size());
    const double axis_height = kGap / 2 + 2 * text_height + 2;
    out.row_height = kRowHeight;
    out.natural_height = out.plot_top + rows * kRowHeight + axis_height;
    if (height > 0) out.row_height = std::clamp((height - out.plot_top - axis_height) / rows, 6.0, kRowHeight * 1.5);
    out.plot_bottom = out.plot_top + rows * out.row_height;

    for (std::size_t r = 0; r < data.rows.size(); ++r) {
        const double middle = out.plot_top + (static_cast<double>(r) + 0.5) * out.row_height;
        const TextBox label = label_within(data.rows[r].label, label_width + 1, out.row_height);
        out.labels.push_back({label, 0, middle - label.height() / 2});
        if (!data.rows[r].figure.empty()) {
            const TextBox figure = TextBox::cut(data.rows[r].figure, kPlain, figure_width + 1);
            out.figures.push_back({figure, width - figure.width(), middle - figure.height() / 2});
        }
        lay_out_row(out, data.rows[r], r, scale, middle);
    }
    lay_out_ticks(out, scale, width, text_height);
    if (data.today) {
        const TextBox word{say("today"), kSmall};
        const double x = scale.middle(*data.today);
        const double left = std::max(0.0, std::min(x - word.width() / 2, width - word.width()));
        out.today = PlacedToday{x, {word, left, out.plot_top - 2 - text_height}};
    }
    return out;
}

}  // namespace dyestead::reports
