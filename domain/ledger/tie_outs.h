// tie_outs.h - do the statements say the same as the books, to the unit?
#pragma once

#include "domain/ledger/earned.h"
#include "domain/ledger/money_flow.h"

namespace dyestead {

enum class Tie : std::uint8_t {
    opening_to_closing,  // what was here, and what came in, is what is here or went out
    stock,               // stock and work in progress, item by item, are the terms of the partition
    cost_of_sales,       // what it comes from, fact by fact, is what stood in sold
    losses,              // by reason, and given away
    earned,              // takings less what was earned is all that left stock, overhead in stock aside
    hours,               // by stage and person
    money_goods,         // suppliers' lines and carriage
    money_bills,         // stalls, travel, postage, fees and dye-only bills
};
inline constexpr std::size_t kTies = static_cast<std::size_t>(Tie::money_bills) + 1;

struct TieOut {
    Tie of{};
    Cost statement;
    Cost books;
    bool ties() const { return statement == books; }
};

// One of each, in order. Requires: period.last <= ledger.as_of.
std::vector<TieOut> tie_outs(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead
