// timeline.h - what lay over which days: one row for each planting, batch or vat, its spans drawn as bars and its
// events as small signs upon them, with today as an upright line.
//
// The same drawing goes to the window, to SVG and to PDF (see stacked_bars.h). Shades differ in lightness and hatching
// and are outlined, signs differ in shape: it reads in grey.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "domain/values/date.h"
#include "reports/chart/chart_colours.h"

using cairo_t = struct _cairo;

namespace dyestead::reports {

enum class Shade : std::uint8_t { solid, light, hatched };
// A notch for what was done (a cut), a dot for what was seen (a reading).
enum class Sign : std::uint8_t { notch, dot };

// From the morning of `from` to the evening of `to`. The word stands in the bar where it fits, and in its tip.
struct TimelineSpan {
    Day from;
    Day to;
    Shade shade = Shade::solid;
    std::string word{};
};

struct TimelineSign {
    Day on;
    Sign sign = Sign::notch;
    std::string word{};  // for its tip
};

struct TimelineRow {
    std::string label;
    std::vector<TimelineSpan> spans{};
    std::vector<TimelineSign> signs{};
    std::string figure{};  // at the right
};

struct TimelineKey {
    std::variant<Shade, Sign> what;
    std::string name;
};

struct Timeline {
    std::vector<TimelineRow> rows{};
    std::optional<Day> today{};
    std::vector<TimelineKey> legend{};
};

// Draws within (0, 0) to (width, height); paints no background. Without a row, or without a day in any, it draws
// nothing.
void draw_timeline(cairo_t* cr, double width, double height, const Timeline& data, const ChartColours& colours);
double timeline_height(double width, const Timeline& data);
// "indigo, bed 1: first cut, 3 July 2026"; empty where nothing is.
std::string timeline_tip(double x, double y, double width, double height, const Timeline& data);

}  // namespace dyestead::reports
