// bill.h - what does a delivery come to in the shop's money? In another currency every amount on the bill is
// turned into the shop's once, by the rate on the bill; tax is left out where the shop gets it back.
#pragma once

#include <span>

#include "domain/facts/lines_of.h"
#include "domain/ledger/finding.h"

namespace dyestead {

struct BillLine {
    Money price;
    Money tax;  // what stays with the goods
};

struct Bill {
    std::vector<BillLine> lines;  // as given
    Money carriage;
    Money duty;
    Money discount;
    bool rate_unknown = false;       // counted one to one
    std::vector<FactRef> too_large;  // delivery or lines with an amount that counts as nought

    Money shared() const { return carriage + duty - discount; }
};

// `lines` are those of the delivery.
Bill bill_of(const Shop& shop, const Delivery& delivery, std::span<const DeliveryLine* const> lines);

// Below nought for a credit note.
Money signed_amount(const CostCorrection& correction);

}  // namespace dyestead
