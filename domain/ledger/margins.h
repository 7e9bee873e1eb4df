// margins.h - what did each kind of bar, and each powder sold as it is, bring in over a period, and what had it cost to
// make?
//
// What came in at a fair or sale, with its sales tax and fees, is shared over the kinds sold there by what they should
// have fetched, the last one taking the rest; so the kinds add up to what the year earned, to the last unit. What no
// kind was sold for (a counted tin on a day without a bar, cost that came later) stands on a line without a kind.
#pragma once

#include <optional>
#include <vector>

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"

namespace dyestead {

struct KindMargin {
    std::optional<Key<Material>> kind{};  // of bar, or the pigment
    std::int64_t bars = 0;                // thousandths, those brought back taken off
    std::int64_t powder = 0;              // base units, as the pigment is held
    Money net;                            // without sales tax
    Money fees;                           // of being paid, and bags
    Cost made;                            // of what was sold, as it was made

    Money left_without_labour() const { return net - fees - made.cash(); }
    Money left() const { return net - fees - made.full(); }
};

// By key, the line without a kind last; kinds that sold nothing are left out.
std::vector<KindMargin> kind_margins(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead
