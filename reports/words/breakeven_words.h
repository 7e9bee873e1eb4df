// breakeven_words.h - how far would one thing have to move before grown and bought-in come out even?
// In words, where a number would be absurd.
#pragma once

#include <string>

#include "domain/decisions/verdict.h"

namespace dyestead::reports {

enum class Lever : std::uint8_t { premium, hourly_target, yield, harvest_per_vat, minutes_per_vat, bought_price };

// What a break-even is held against before it is printed.
struct Within {
    Model today{};
    double best_g_per_kg = 0;   // on record
    double largest_vat_kg = 0;  // on record
    std::string currency{};
};

// "extra on the shelf price of a grown bar"
std::string lever_name(Lever lever);
// Today's value with its unit.
std::string lever_today(Lever lever, const Within& within);
double lever_value(Lever lever, const Model& model);
const Breakeven& breakeven_of(Lever lever, const Breakevens& all);

// "at £0.83", "out of reach: more than three times your best vat", "no vat is big enough".
std::string breakeven_words(Lever lever, const Breakeven& breakeven, const Within& within);
// The same as part of "What would turn it: ..."; blank where it is no advice.
std::string turning_words(Lever lever, const Breakeven& breakeven, const Within& within, bool grown_is_behind);

}  // namespace dyestead::reports
