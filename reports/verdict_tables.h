// verdict_tables.h - the figures a verdict rests on, as tables and as one picture.
#pragma once

#include <optional>

#include "domain/decisions/verdict.h"
#include "reports/document.h"

namespace dyestead::reports {

// One bar, our own, bought in and plain. `title` says at which strength.
Table side_by_side(const Shop& shop, const VerdictFigures& figures, const std::string& title);
// What one bar costs part by part, against its price; nothing when a bar's cost is not known.
std::optional<Chart> cost_chart(const Shop& shop, const VerdictFigures& figures);
Table what_would_turn_it(const Shop& shop, const Verdict& verdict);
// How far each uncertain thing moves a season; only where it is drawn.
Table what_matters(const Shop& shop, const Verdict& verdict);
// Where the hours for the colour went, the longest first.
Table hours_table(const Shop& shop, const Verdict& verdict);
Table vats_table(const Shop& shop, const Verdict& verdict);
Table seasons_table(const Shop& shop, const Verdict& verdict);
Table sold_table(const Shop& shop, const Verdict& verdict);
// Every figure by its key, at both strengths; only where the strength is not tested.
Table at_both_strengths(const Verdict& verdict);

}  // namespace dyestead::reports
