// follow.h - from which facts does a line of a statement come?
//
//     follow(shop, ledger, StockKind::pigment, period)   // the powder in stock on the last day
//     follow(shop, ledger, LossKind::spilled, period)    // what was spilled in the period
#pragma once

#include <variant>

#include "domain/ledger/follow_earned.h"
#include "domain/ledger/hours.h"
#include "domain/ledger/losses.h"
#include "domain/ledger/money_flow.h"
#include "domain/ledger/stock_value.h"
#include "domain/ledger/trace.h"

namespace dyestead {

// What stands in selling: bills by kind, on the day of the fair or sale, and the people there.
enum class SellingPart : std::uint8_t { stalls, travel, postage, payment_fees, people };
inline constexpr std::size_t kSellingParts = static_cast<std::size_t>(SellingPart::people) + 1;

// A Boundary is a line of the period's own costs; overhead: what accrued less what good bars took up.
using StatementLine =
    std::variant<Term, StockKind, LossKind, SellingPart, Boundary, Stage, TakenAt, PaidFor, EarnedPart>;

// The sum of the leaves is the figure, to the unit. Of what stands at a day: at the end of the period. Money in and out
// stands among the materials, for it is no cost of anything yet. Requires: period.last <= ledger.as_of.
std::vector<Leaf> follow(const Shop& shop, const Ledger& ledger, const StatementLine& line, Period period);

}  // namespace dyestead
