// A season of a garden, a shelf of curing bars, a vat over days, a fair and the weight of bars in cure, as they might
// be, invented; for the tests of pictures.
#pragma once

#include "reports/chart/drawing.h"

namespace dyestead::reports {

inline Timeline sample_season() {
    return {.rows = {{.label = "Indigo, bed 1",
                      .spans = {{day_of(2026, 4, 2), day_of(2026, 5, 19), Shade::light, "under glass"},
                                {day_of(2026, 5, 20), day_of(2026, 9, 30), Shade::solid, "in the bed"}},
                      .signs = {{day_of(2026, 7, 3), Sign::notch, "first cut"},
                                {day_of(2026, 8, 15), Sign::dot, "second cut, if it goes on so"}}},
                     {.label = "Weld, bed 2",
                      .spans = {{day_of(2025, 9, 12), day_of(2026, 8, 20), Shade::solid, "in the bed"}}},
                     {.label = "Madder, bed 3",
                      .spans = {{day_of(2024, 4, 20), day_of(2026, 10, 10), Shade::solid, "in the bed"}}}},
            .today = day_of(2026, 7, 4),
            .legend = {{Shade::light, "under glass"},
                       {Shade::solid, "in the bed"},
                       {Sign::notch, "a cut"},
                       {Sign::dot, "a cut to come"}}};
}

inline Timeline sample_shelf() {
    return {.rows = {{.label = "44 Blue loaf",
                      .spans = {{day_of(2026, 6, 30), day_of(2026, 7, 4), Shade::solid},
                                {day_of(2026, 7, 5), day_of(2026, 8, 11), Shade::light}},
                      .figure = "38 days to go"},
                     {.label = "43 Plain",
                      .spans = {{day_of(2026, 5, 24), day_of(2026, 7, 4), Shade::solid},
                                {day_of(2026, 7, 5), day_of(2026, 7, 5), Shade::light}},
                      .figure = "1 day to go"},
                     {.label = "41 Pink with rose clay and a long name that does not end",
                      .spans = {{day_of(2026, 5, 20), day_of(2026, 7, 1), Shade::hatched, "on hold: lye 6 % over"}},
                      .figure = "on hold"}},
            .today = day_of(2026, 7, 4),
            .legend = {{Shade::solid, "cured"}, {Shade::light, "to come"}, {Shade::hatched, "on hold"}}};
}

inline Timeline sample_vat() {
    return {
        .rows = {{.label = "Vat of 3 July",
                  .spans = {{day_of(2026, 7, 3), day_of(2026, 7, 3), Shade::solid, "steeping"},
                            {day_of(2026, 7, 4), day_of(2026, 7, 6), Shade::light, "settling"}},
                  .signs = {{day_of(2026, 7, 3), Sign::dot, "60 \u00b0C"}, {day_of(2026, 7, 5), Sign::dot, "pH 9.2"}},
                  .figure = "2 h 05 min"}},
        .legend = {{Shade::solid, "hands-on"}, {Shade::light, "waiting"}, {Sign::dot, "a reading"}}};
}

inline Curve sample_fair() {
    Curve fair{.x_label = "bars sold",
               .y_label = "GBP left after the stall",
               .marks = {{17, "17 pays the stall"}, {47, "47 pays you too"}},
               .band = CurveBand{22, 41, "your last fairs"}};
    CurveLine& left = fair.lines.emplace_back();
    for (int bars = 0; bars <= 60; ++bars) left.points.push_back({static_cast<double>(bars), 3.1 * bars - 52.7});
    return fair;
}

inline Curve sample_cure() {
    return {
        .x_label = "days since it was poured",
        .y_label = "grams a bar",
        .lines = {
            {.name = "44 Blue", .points = {{0, 118}, {7, 113.5}, {14, 110.2}, {28, 107.1}, {42, 105.9}}, .dots = true},
            {.name = "43 Plain", .points = {{0, 121}, {10, 115}, {30, 109}, {55, 106}}, .dots = true},
            {.name = "the weight on the label", .points = {{0, 100}, {60, 100}}}}};
}

}  // namespace dyestead::reports
