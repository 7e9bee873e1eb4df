// trial.h - what would the verdict's figures be, if the model were as somebody tries it out?
// Not from the records; only what the six dials move is moved.
#pragma once

#include <string>

#include "domain/decisions/verdict.h"

namespace dyestead::gui {

// The verdict's figures at another model. Requires: verdict.figures.model.
VerdictFigures tried_figures(const Verdict& verdict, const Model& tried);

// "If it were so, ...": which way it would come out, for a bar.
std::string tried_headline(const std::string& colour, const VerdictFigures& tried, const std::string& currency);

}  // namespace dyestead::gui
