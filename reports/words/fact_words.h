// fact_words.h - a record in words: what it is about, and where it stands.
#pragma once

#include <optional>
#include <string>

#include "domain/ledger/finding.h"

namespace dyestead::reports {

// What the record is about, as far as it says so: "Olive oil" of a delivery's line or of a use, the
// planting of a tending, what a vat's step or a bill was. Else its own name or code.
std::string fact_words(const Shop& shop, FactRef about);

// "delivery-2024-02-23-1, line 2"; a record without a code by its table.
std::string fact_place(const Shop& shop, FactRef about);

// The day it is dated to; of a line, its head's. None where it has no date.
std::optional<Day> fact_day(const Shop& shop, FactRef about);

}  // namespace dyestead::reports
