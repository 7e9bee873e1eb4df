// A verdict as it might be, invented, with one block of every kind; for the tests of the writers.
#pragma once

#include "reports/document.h"

namespace dyestead::reports {

inline StackedBars sample_bars() {
    return {.value_label = "GBP for one bar",
            .series = {{"oils"},
                       {"lye and water"},
                       {"colour"},
                       {"wrapping"},
                       {"running costs"},
                       {"garden time", SeriesKind::time},
                       {"vat time", SeriesKind::time},
                       {"bench time", SeriesKind::time}},
            .bars = {{.label = "our own",
                      .values = {0.92, 0.11, 0.14, 0.19, 0.28, 0.71, 0.82, 1.27},
                      .shown = {"0.92", "0.11", "0.14", "0.19", "0.28", "0.71", "0.82", "1.27"},
                      .total_shown = "4.44",
                      .mark = BarMark{5.5, "price 5.50"}},
                     {.label = "bought in",
                      .values = {0.92, 0.11, 0.04, 0.19, 0.28, 0, 0, 1.27},
                      .shown = {"0.92", "0.11", "0.04", "0.19", "0.28", "", "", "1.27"},
                      .total_shown = "2.81",
                      .mark = BarMark{5.5, "price 5.50"}},
                     {.label = "plain",
                      .values = {0.92, 0.11, 0, 0.19, 0.28, 0, 0, 1.27},
                      .shown = {"0.92", "0.11", "", "0.19", "0.28", "", "", "1.27"},
                      .total_shown = "2.77",
                      .mark = BarMark{5.0, "price 5.00"}}}};
}

inline Chart sample_chart() {
    return {.title = "What one bar costs, against its price",
            .sentence =
                "A bar with our own blue costs 4.44 with our time, one with bought-in blue 2.81, a plain one "
                "2.77; the blue sells at 5.50, the plain at 5.00.",
            .data = sample_bars()};
}

inline Table sample_table() {
    return {.title = "Side by side: one bar at the same blue",
            .columns = {{"GBP a bar"}, {"our own", Align::right}, {"bought in", Align::right}, {"plain", Align::right}},
            .rows = {{{"price on the shelf"}, {"5.50", 5.5}, {"5.50", 5.5}, {"5.00", 5.0}},
                     {{"out of pocket"}, {"1.64", 1.6412}, {"1.54", 1.54}, {"1.50", 1.5}},
                     {{"our time"}, {"2.80", 2.8}, {"1.27", 1.27}, {"1.27", 1.27}},
                     {{"left over before our time"}, {"3.86", 3.86}, {"3.96", 3.96}, {"3.50", 3.5}},
                     {{"strength, against the bought"}, {"0.53", 0.526315789}, {"1", 1.0}, {}},
                     {{"sold of taken"},
                      {"14 of 18"},
                      {.shown = "not known", .no_value = true},
                      {.shown = "none", .no_value = true}},
                     {{"left over after our time"}, {"1.06", 1.0588}, {"2.69", 2.69}, {"2.23", 2.23}}},
            .emphasise_last_row = true,
            .note = "Fees taken off; general running costs are the same for all three."};
}

inline Document sample_document() {
    Document out{
        .report = "verdict", .as_of = "2026-07-04", .currency = "GBP", .title = "Is growing the blue worth the hours?"};
    out.blocks = {
        Headline{"Buy the blue in: growing it took 18 hours and left you £15 worse off than buying it."},
        Paragraph{"Each bar: with your own blue it leaves 1.06 after your time, with bought-in blue 2.69."},
        Paragraph{"Your hour: each extra hour at bed and vat cost you 0.83; an hour of plain soap brings 9.40."},
        Paragraph{"What would turn it: people giving 0.83 more for your own blue than for bought-in blue."},
        Paragraph{"Stands on 8 vats and 2 summers; six hours in ten from memory; strength from one test bar. A "
                  "sum from your records, not advice to stop or start a trade.",
                  Tone::small},
        sample_chart(),
        sample_table(),
        Section{"What would help most"},
        Paragraph{"One large vat instead of five would save 4 hours; rain water instead of bottled £75."},
        Paragraph{"Colour may not be allowed where you sell: ask the safety assessor before sowing. Home powder "
                  "differs from vat to vat, and plants and pigments can sensitise skin.",
                  Tone::caution}};
    out.figures = {{"home.full_margin", 1.0588}, {"season.bars", 118.0}, {"breakeven.harvest_per_vat"}};
    out.findings = {{"used-before-had", "6 batches used shea butter before any is on record.", "B-031"},
                    {"clock-running", "The clock of the vat of 3 July is still running since 09:10.", "V-009"}};
    return out;
}

// As little as a report can say.
inline Document empty_document() {
    return {.report = "hours", .as_of = "2026-01-31", .currency = "EUR", .title = "Hours"};
}

}  // namespace dyestead::reports
