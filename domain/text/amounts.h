// amounts.h - how are money, quantities, times, ratios and dates written in the records, and read back?
// These are the forms of the files: decimal point, ISO 8601 dates, the unit after the number, `~`
// before it for "about". What is printed reads back to the same value. For figures rounded for
// people see show.h.
#pragma once

#include <string>
#include <string_view>

#include "domain/text/trouble.h"
#include "domain/values/date.h"
#include "domain/values/moment.h"
#include "domain/values/money.h"
#include "domain/values/ratio.h"
#include "domain/values/reading.h"
#include "domain/values/span.h"
#include "domain/values/unit.h"

namespace dyestead {

Read<Money> read_money(std::string_view text);              // 38.4
Read<Amount> read_amount(std::string_view text);            // 750 g, ~2 us tsp, 12
Read<Span> read_span(std::string_view text);                // 90 min, 1.5 h, 1 h 30
Read<Ratio> read_ratio(std::string_view text);              // 5 %, 1/3, 0.918
Read<Day> read_day(std::string_view text);                  // 2026-07-03
Read<Temperature> read_temperature(std::string_view text);  // 80.5
Read<Acidity> read_acidity(std::string_view text);          // 9.25
Read<Moment> read_moment(std::string_view text);            // 2026-07-03T14:10+01:00

std::string print(Money money);
std::string print(const Amount& amount);
std::string print(const Span& span);
std::string print(Ratio ratio);
std::string print(Day day);
std::string print(Temperature temperature);
std::string print(Acidity acidity);
std::string print(Moment moment);

}  // namespace dyestead
