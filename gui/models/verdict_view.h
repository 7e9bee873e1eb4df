// verdict_view.h - the verdict as the window shows it: the sentences of the paper, word for word, its tables and
// picture; and the same while something is being tried out.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "domain/decisions/verdict.h"
#include "gui/models/books.h"
#include "reports/document.h"

namespace dyestead::gui {

struct VerdictView {
    std::string headline;
    std::vector<std::string> lines;  // what is missing; each bar, your hours, what would turn it
    std::string stands_on;           // small
    std::string caution;             // whether the colour may be sold at all; blank once it may
    reports::Table side_by_side;
    reports::Table adds_up;     // where one bar's cost comes from
    reports::Table answers;     // from memory: what was asked and answered, in place of the other tables
    reports::Table how_sure;    // how far each uncertain thing moves a season
    reports::Table would_help;  // the changes that help most, one at a time
    reports::Table hours;       // where the hours went
    std::optional<reports::Chart> chart;
    reports::Table figures;  // the picture's, as a list
};

VerdictView verdict_view(const Books& books, const Verdict& verdict);
// As if the model were another one. Requires: verdict.figures.model.
VerdictView tried_view(const Books& books, const Verdict& verdict, const Model& tried);

// Back at what was; ahead, from each place one can stand.
std::vector<std::string> ways_of_looking();
// Of one of those ways, by its place among them; nothing for looking back.
std::optional<Stand> stand_of(std::size_t way);

// The colours of the shop by name, and the one to begin with: the one most worked in the verdict's months.
struct ColourChoice {
    std::vector<std::string> names;
    std::vector<Key<Colour>> colours;
    std::size_t first = 0;
};
ColourChoice colour_choice(const Books& books);

// Where a verdict cannot be begun yet: what is missing.
std::string no_colour_sentence();
std::string trying_out_sentence();
std::string no_dials_sentence();

}  // namespace dyestead::gui
