// currency.h - how many places has an amount in a currency, and how is the currency put to it?
#pragma once

#include <string>
#include <string_view>

namespace dyestead::reports {

// Digits after the decimal point: pounds 2, yen 0, dinars 3.
// Source: ISO 4217, list one, "minor units", as published on 25 June 2024. 2 for a code that is not in it.
int minor_places(std::string_view currency);

// "£" for GBP; blank where no sign belongs to that currency alone.
std::string_view currency_sign(std::string_view currency);

// The currency put to a number that is already written out: "£12.50", "-£3.00", "12.50 SEK".
// The one place that knows on which side it stands. `digits` carries no sign.
std::string with_currency(std::string_view digits, bool negative, std::string_view currency);

}  // namespace dyestead::reports
