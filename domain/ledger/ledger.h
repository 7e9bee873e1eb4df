// ledger.h - what do the facts come to: every movement of goods and cost, what is in each lot, what
// was sold, and what does not add up. Made by replay.h; every number shown is read from here.
#pragma once

#include <optional>
#include <vector>

#include "domain/ledger/account.h"
#include "domain/ledger/finding.h"
#include "domain/values/cost.h"

namespace dyestead {

AccountPlan account_plan(const Shop& shop);

// The line of a fact that a movement comes from.
struct Source {
    FactRef fact;
    std::uint32_t material = 0;  // place in shop.all<Material>(), where the movement has a quantity
    bool named_lot = false;      // the maker named the lot; otherwise it was taken by rule
};

// Cost and goods from one account to another. `quantity` is in base units of the material of its
// source, as the material is held; 0 where cost moves alone.
struct Movement {
    Account from = 0;
    Account to = 0;
    std::uint32_t source = 0;  // place in Ledger::sources
    std::int32_t day = 0;      // since 1970-01-01
    std::int64_t quantity = 0;
    Cost cost{};

    Day on() const { return Day{Days{day}}; }
};
static_assert(sizeof(Movement) == 64);

// What a lot holds at the end of the replay. All zero for a lot nobody has made yet.
struct LotState {
    std::optional<Day> made;
    Day ready{};  // bars: cured from this day; all else: the day it was made
    std::optional<Day> best_before;
    std::int64_t received = 0;  // base units
    std::int64_t left = 0;
    Cost cost{};     // of what is left
    Cost cost_in{};  // of all that was received, later additions too
};

// Bars that went to a customer; what came back stands in ReturnedLine. Fairs count by kind of bar; `price` is what the
// customer paid for one.
struct SoldLine {
    FactRef fact;  // a FairLine, SaleLine or OutSettled
    Day day{};
    std::uint32_t material = 0;  // the kind of bar
    std::int64_t bars = 0;       // thousandths
    std::optional<Money> price;
};

// Powder that went to a customer as it is. It is no bar: nothing that is told for each bar sold counts it.
struct PowderSoldLine {
    FactRef fact;  // a PowderLine
    Day day{};
    std::uint32_t material = 0;  // the pigment
    std::int64_t quantity = 0;   // base units, as it is held
    Money price;                 // for all of it
};

// Bars that came back from a customer, no more than were sold of their lot.
struct ReturnedLine {
    FactRef fact;
    Day day{};
    std::uint32_t material = 0;
    std::int64_t bars = 0;  // thousandths
    Money refund;
};

struct Ledger {
    Day as_of{};
    AccountPlan accounts;
    std::vector<Source> sources;
    std::vector<Movement> movements;  // in the order of the books; days never fall
    std::vector<LotState> lots;       // one for each of shop.all<Lot>()
    std::vector<Cost> balances;       // one for each account: what came in less what went out
    std::vector<SoldLine> sold;
    std::vector<PowderSoldLine> powder_sold;
    std::vector<ReturnedLine> returned;
    std::vector<Finding> findings;

    const Cost& balance(Boundary boundary) const { return balances[account(boundary)]; }
};

}  // namespace dyestead
