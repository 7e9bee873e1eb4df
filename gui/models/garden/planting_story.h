// planting_story.h - how does a planting stand: what went into it, what was cut, when is its first cut due?
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "gui/models/books.h"
#include "reports/document.h"

namespace dyestead::gui {

// To the day of the books.
struct PlantingFigures {
    Cost spent{};             // all that came into it, seed and feed too
    std::int64_t cut = 0;     // milligrams
    bool cut_about = false;   // some of it not weighed
    std::vector<Day> cuts{};  // in order
    std::optional<Day> ended{};
    std::int64_t area = 0;  // square centimetres that stand, or stood at the end
};
PlantingFigures planting_figures(const Books& books, const Planting& planting);

// Harvest it is expected to give over its life, in milligrams: as revised, else as stated, else the plant's usual.
// Nothing where the plant has none.
std::optional<std::int64_t> expected_of(const Shop& shop, const Planting& planting, Day day);

// When its first cut may be looked for: an annual by its days, a root or biennial on the sowing's day so many years on.
// Nothing where the plant does not say.
std::optional<Day> first_cut_about(const Shop& shop, const Planting& planting);

// "the second week of July 2026"
std::string week_of(Day day);

// Sown, in hand, cut and what is next, in one or two sentences.
std::string planting_sentence(const Books& books, Key<Planting> planting);
// What happened to it, the newest first.
reports::Table planting_events(const Books& books, Key<Planting> planting);

// One row of the season line: a bar from sowing to the end, with a notch for each cut.
struct SeasonLine {
    Key<Planting> planting;
    std::string name;
    Day from{};
    std::optional<Day> to{};  // none: it stands
    std::vector<Day> cuts{};
    std::optional<Day> cut_about{};  // the first cut, while there is none
};
struct SeasonLines {
    Day today{};
    std::vector<SeasonLine> rows{};  // those that stand by sowing, then those that ended this year
};
SeasonLines season_rows(const Books& books);

}  // namespace dyestead::gui
