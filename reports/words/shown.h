// shown.h - amounts as people read them: rounded half away from zero, with no more digits than tell
// them something. What is not a number is said so in words; "nan" is never shown.
// For the exact forms that files are written in see domain/text/amounts.h.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "domain/text/typed.h"
#include "domain/values/date.h"
#include "domain/values/moment.h"
#include "domain/values/money.h"
#include "domain/values/quantity.h"

namespace dyestead::reports {

// "not known", in the reader's language.
std::string not_known();

// In the currency's minor unit: "£1,912.40", "-£0.06", "JPY" without places.
std::string shown_money(Money money, std::string_view currency);
std::string shown_money(double units, std::string_view currency);
// For a sentence: from 10 units up without the minor unit ("£15"), below with it ("£1.42").
std::string rough_money(double units, std::string_view currency);
// For a price of very little: below 1 unit one place more than the minor unit, where it says something.
std::string fine_money(double units, std::string_view currency);
// The same as shown_money, without the currency: for a column whose heading carries it.
std::string bare_money(double units, std::string_view currency);

// "2 h 05 min", "45 min", below ten minutes "3.7 min".
std::string shown_minutes(double minutes);
// "18 hours", "4.5 hours", "1 hour".
std::string shown_hours(double hours);

// Three significant digits, no trailing noughts, thousands parted: "0.526", "12.5", "1,240".
std::string shown_number(double value);
// How many places that takes; and a number with so many, noughts kept.
int places_for(double value);
std::string shown_fixed(double value, int places);
// "2.5 g"; from 1,000 g up "1.24 kg".
std::string shown_grams(double grams);
std::string shown_kilograms(double kilograms);
// A mass, volume or count as it is held: "1.9 kg", "750 ml", "12".
std::string shown_quantity(Quantity quantity);
// A share of one as a percentage: "12 %".
std::string shown_percent(double share);

// "3 July 2026"
std::string shown_date(Day day);
// "3 July 2026 14:10", by the clock on the wall.
std::string shown_moment(Moment moment);
// "14:10"
std::string shown_clock(Moment moment);
// "3 Jul 2026", for the narrow column of a list.
std::string short_date(Day day);
// "Jul", "July". Requires: 1 to 12.
std::string short_month(unsigned month);
std::string month_name(unsigned month);
// All of them, for reading a typed day.
MonthNames month_names();

// The text, or "not known" where there is none.
template <class Shown>
std::string shown_or_not_known(std::optional<double> value, Shown shown) {
    return value ? shown(*value) : not_known();
}

}  // namespace dyestead::reports
