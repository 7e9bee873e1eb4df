// earns_best_words.h - what is said of what to make with what there is, beside the tables.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/earns_best.h"

namespace dyestead::reports {

std::string earns_best_headline(const Shop& shop, const EarnsBest& answer);

// What ordering would add, what an hour brings, whose hours are counted: one sentence or two each.
std::vector<std::string> earns_best_sentences(const Shop& shop, const EarnsBest& answer);

// Which bars are in no plan, and why.
std::vector<std::string> earns_best_missing(const Shop& shop, const EarnsBest& answer);

}  // namespace dyestead::reports
