// sheet.h - which sheets go to the pan, the bed, the shelf and the fair, to be written on by hand and typed in later?
// Each has what is known already, and room for the rest; a shop without records gets it with more room.
#pragma once

#include <string>
#include <vector>

#include "domain/ledger/ledger.h"
#include "reports/document.h"

namespace dyestead::reports {

struct Sheet {
    std::string title;
    std::vector<Block> blocks{};
};

// The method's steps, targets and bands, its cautions, and five answers at the end. Null: steps are written by hand.
Sheet vat_sheet(const Shop& shop, const Method* method);

// What a planting is, and a line for each time something was done there. Null: which one is written by hand.
Sheet garden_card(const Shop& shop, const Ledger& ledger, const Planting* planting);

// All that is in stock, in the order of the stock-take's form, with room for what is counted. What the books say is
// left off: it is to be counted, not copied.
Sheet count_sheet(const Shop& shop, const Ledger& ledger);

// What to take, as suggested; what was taken and what came back; the tin. Null: a fair that is not put down yet.
Sheet fair_sheet(const Shop& shop, const Ledger& ledger, const Fair* fair);

}  // namespace dyestead::reports
