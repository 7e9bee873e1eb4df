// unsaid_words.h - what a recipe leaves open, and how to mend it.
#pragma once

#include <string>

#include "domain/decisions/loaf_needs.h"

namespace dyestead::reports {

std::string unsaid_sentence(Unsaid what, const std::string& bar);

}  // namespace dyestead::reports
