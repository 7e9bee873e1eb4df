// trace.h - from which facts does this figure come?
//
// Goes through the movements in the order of the books and keeps, for every account that can reach the
// figure, how much of what it holds came from which fact. What leaves an account takes of each fact in
// proportion, the last one taking the rest (values/share.h), so that the leaves of a figure add up to
// it to the last millionth, for each part of the cost.
#pragma once

#include <functional>
#include <vector>

#include "domain/ledger/period.h"
#include "domain/ledger/terms.h"

namespace dyestead {

// Cost that a fact brought into the books. `through`: the account it came in by (delivered, hours,
// energy ...); overhead where good bars absorbed it; otherwise what stood in for a cost not yet known.
struct Leaf {
    FactRef fact;
    Boundary through{};
    Cost cost;
};

// The movements into the accounts less those out of them, on the days of the period. `accounts` has one
// for each account. Leaves in the order in which their facts first came into the books.
std::vector<Leaf> trace(const Ledger& ledger, const std::vector<bool>& accounts, Period period);

// The movements of the period that count: 1 for what goes into the figure, -1 for what goes out of it, 0 for neither.
using Counts = std::function<int(const Movement&)>;
std::vector<Leaf> trace(const Ledger& ledger, const Counts& counts, Period period);

// What accrued over the period, by the setting or tool it accrued from: general running costs and wear (overhead), and
// the wear of tools for the dye alone (dye_sunk).
std::vector<Leaf> accrued(const Shop& shop, Period period);

// What an account held at the end of a day.
std::vector<Leaf> trace(const Ledger& ledger, Account account, Day day);

// All that ever came into an account up to the end of a day, whatever left it since: what a batch that
// is cut, or a lot that is sold out, was made of.
std::vector<Leaf> trace_into(const Ledger& ledger, Account account, Day day);

// A term of the partition as it grew over the period; general overhead accrued is a leaf for each
// setting. For what stood in it at a day: Period::up_to(day).
std::vector<Leaf> trace(const Shop& shop, const Ledger& ledger, Term term, Period period);

Cost sum(const std::vector<Leaf>& leaves);

}  // namespace dyestead
