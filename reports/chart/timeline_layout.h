// timeline_layout.h - where does everything in a timeline stand? Worked out once from measured text; the drawing, the
// tips and the natural height all read it.
#pragma once

#include <optional>
#include <vector>

#include "reports/chart/legend.h"
#include "reports/chart/timeline.h"

namespace dyestead::reports {

struct PlacedSpan {
    Box box{};
    std::size_t row = 0;
    std::size_t span = 0;
    std::optional<PlacedText> word{};  // only where it fits
};

struct PlacedSign {
    double x = 0;  // its middle
    double y = 0;
    std::size_t row = 0;
    std::size_t sign = 0;
};

struct PlacedDayTick {
    double x = 0;
    PlacedText label;
    std::optional<PlacedText> year{};
};

struct PlacedToday {
    double x = 0;
    PlacedText label;
};

struct TimelineLayout {
    std::vector<PlacedSwatch> legend{};
    std::vector<PlacedDayTick> ticks{};
    std::vector<PlacedText> labels{};
    std::vector<PlacedText> figures{};
    std::vector<PlacedSpan> spans{};
    std::vector<PlacedSign> signs{};
    std::optional<PlacedToday> today{};
    double plot_left = 0;
    double plot_right = 0;
    double plot_top = 0;
    double plot_bottom = 0;
    double row_height = 0;
    double natural_height = 0;
};

inline constexpr double kSignRadius = 5;

// A height of 0 means the natural one. Without a day: an empty layout.
TimelineLayout lay_out_timeline(double width, double height, const Timeline& data);

}  // namespace dyestead::reports
