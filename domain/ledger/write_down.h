// write_down.h - what in stock is worth less than it cost? (IAS 2, paragraphs 9 and 28 to 33)
//
// Bars, lot by lot: what they should fetch (price less sales tax, less the wrapping still to come, less
// the fees of being paid) against their cost. A bought material or a powder only when every kind of
// bar that is made from it is under cost (paragraph 32), and then against what it would cost to buy the
// same again; a powder at the shade it was tested to have. Nothing is ever put above its cost. A line
// of valuation on reports, no movement: it is reckoned anew each time, so that a price that comes back
// brings the value back, up to cost (paragraph 33).
#pragma once

#include <optional>

#include "domain/ledger/stock_value.h"

namespace dyestead {

enum class WorthBy : std::uint8_t {
    fetches,      // a bar: what it should fetch
    replacement,  // a material all of whose bars are under cost
    cost,         // a material whose bars bring in what they cost, or what is not written down at all
    not_known,    // no price on record: stands at cost
};

struct Valued {
    StockItem item;
    WorthBy by{};
    Money cost;                  // without the shop's own labour
    std::optional<Money> worth;  // of the whole item; never below nought
    // Of a bar: what the worth is made of, for the whole item.
    Money net_price;
    Money wrapping_to_come;
    Money fees;

    Money write_down() const { return worth && *worth < cost ? cost - *worth : Money{}; }
};

struct WriteDown {
    std::vector<Valued> items;  // of bars, bought materials and powders that hold something

    Money total() const;
    Money of(StockKind kind) const;
};

// At the end of a day. Requires: day <= ledger.as_of.
WriteDown write_down(const Shop& shop, const Ledger& ledger, Day day);

}  // namespace dyestead
