// stands_on.h - which records do the figures stand on, and what was left out of them?
#pragma once

#include "domain/decisions/figures.h"

namespace dyestead {

// `every_vat`: finished, any year; `vats`: finished in the window.
StandsOn stands_on(const Records& records, const Gathered& gathered, const std::vector<FinishedVat>& every_vat,
                   const std::vector<FinishedVat>& vats, Window window);

std::vector<VatRow> vat_rows(const Records& records, const Colour& colour, const std::vector<FinishedVat>& vats);

// Bars of a recipe sold in those days, by colouring and price.
std::vector<PriceSold> sold_at(const Records& records, const Recipe& recipe, Key<Colour> colour, Window days);

}  // namespace dyestead
