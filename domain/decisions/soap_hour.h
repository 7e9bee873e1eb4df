// soap_hour.h - what would the same hour have earned making more soap without colour?
//
// (net price - fees - materials - energy) / (bench and selling time of a bar), times the share of
// those bars that was sold at fairs stood to their end; of the recipe where that comes to most.
#pragma once

#include "domain/decisions/selling.h"

namespace dyestead {

struct SoapHour {
    std::optional<double> earned;  // per hour; empty: no recipe without colour was poured or priced
    bool taken_to_fair = false;    // else as if every bar sold
};

// `made`: when the batches were poured. `sold`: when the fairs were.
SoapHour soap_hour(const Records& records, const Selling& selling, double sales_tax, Window made, Window sold);

}  // namespace dyestead
