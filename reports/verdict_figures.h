// verdict_figures.h - the verdict for other programs: every key always there, in this order, empty
// where a figure is not known.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/verdict.h"
#include "reports/document.h"

namespace dyestead::reports {

// home.*, bought.*, plain.*, pigment.*, season.*, hourly_target, extra_dye_hour.*, breakeven.*
// Money in the shop's currency, minutes in minutes, season.dye_hours in hours; unrounded.
std::vector<Figure> verdict_figures(const VerdictFigures& figures, std::optional<double> hourly_target);

// The same, and chance.*, doubt.*: chances from 0 to 1; a tenth of the seasons are worse than *_p10, half than *_p50.
std::vector<Figure> all_figures(const Verdict& verdict);

}  // namespace dyestead::reports
