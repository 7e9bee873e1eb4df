// fair_words.h - how a fair went or may go, in words, as tables, and as the line of money left by bars sold.
#pragma once

#include "domain/decisions/fair_plan.h"
#include "gui/models/books.h"
#include "reports/document.h"

namespace dyestead::gui {

// Fewest and most bars sold at so many fairs; all nought for none.
struct SoldRange {
    int fewest = 0;
    int most = 0;
    int fairs = 0;
};

// Money left once the stall and the way there are paid, by bars sold, at what a bar brings on the average of the kinds
// that are taken.
struct FairCurve {
    struct Point {
        int bars = 0;
        double left = 0;  // currency units; own time not paid
    };
    std::vector<Point> points{};      // from no bar on
    std::optional<int> pays_stall{};  // bars that cover the stall
    std::optional<int> pays_day{};    // and the hours there at the hourly target
    SoldRange like_this{};            // fairs of this name, else all, stood to their end
    std::optional<Point> this_one{};  // of a fair that is over: what it did come to
    std::string sentence{};
};
// Nothing where the plan knows no bar to sell.
std::optional<FairCurve> fair_curve(const Books& books, Key<Fair> fair);

// The same, drawn: two marks, and a band of what was sold at fairs like this.
std::optional<reports::Chart> fair_picture(const Books& books, Key<Fair> fair);

// "17 bars pay for the stall, 47 pay for your day as well." Of a fair to come.
std::string fair_ahead(const Books& books, const FairPlan& plan);
// "46.40 taken in 4 hours: 22 short of the stall and travel." Of one that is over.
std::string fair_told(const Books& books, Key<Fair> fair);
// What was or is to be taken against what came back, by kind; under it the tin.
reports::Table fair_table(const Books& books, Key<Fair> fair);

}  // namespace dyestead::gui
