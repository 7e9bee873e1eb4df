// as_of.h - which day are the books to be looked at? The one asked for; else the day the shop is shown
// at; else today, by the machine's clock and time zone.
#pragma once

#include <optional>
#include <string>

#include "domain/facts/shop.h"

namespace dyestead::console {

// A day given on the command line by an option. Throws: Refused when the text is no day.
Day day_asked(const std::string& text, const std::string& option);

// Throws: Refused when the text is no day.
Day as_of(const Shop& shop, const std::optional<std::string>& asked);

}  // namespace dyestead::console
