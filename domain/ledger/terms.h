// terms.h - in which term of the partition does an account stand, and what did each hold at the end of
// a day?
#pragma once

#include "domain/ledger/ledger.h"

namespace dyestead {

enum class Term : std::uint8_t { in, stock, in_progress, sold, lost, given, period };
inline constexpr std::size_t kTerms = static_cast<std::size_t>(Term::period) + 1;

// Never stock or in_progress.
Term term_of(Boundary boundary);

// Bars still in cure are in progress until they are ready, so it depends on the day.
Term term_of(const Shop& shop, const Ledger& ledger, Account account, Day day);

bool in_cure(const Shop& shop, const Ledger& ledger, std::uint32_t lot, Day day);

// One for each account. Requires: day <= ledger.as_of.
std::vector<Cost> balances_at(const Ledger& ledger, Day day);

// The cost of every lot's goods: what stands in its own account, and its share, by quantity, of the pool
// of its material. `held` has one for each account, `left` one for each lot, in base units.
std::vector<Cost> lot_costs(const Shop& shop, const AccountPlan& plan, const std::vector<Cost>& held,
                            const std::vector<std::int64_t>& left);

}  // namespace dyestead
