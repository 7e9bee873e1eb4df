// cautions.h - what holds at every vat: where the work can hurt someone it is said where the hand is.
#pragma once

#include <string>
#include <vector>

namespace dyestead::gui {

std::vector<std::string> vat_cautions();

}  // namespace dyestead::gui
