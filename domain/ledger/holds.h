// holds.h - must a lot not be sold or used, and why not?
//
// A lot is held by a Hold on it, by a Hold on any lot that went into it (through vats, batches and
// wrapping), or, being bars, because the lye of its batch was off beyond the scale's doubt or left no
// superfat; until it, or what it came through, is released on that day or later.
// "Beyond the scale's doubt": more than 2 % of the lye called for and more than 2 g a loaf. Both are our
// own figures, not a published rule. A batch with no lye put down is not judged.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <vector>

#include "domain/ledger/ledger.h"

namespace dyestead {

enum class HeldFor : std::uint8_t { hold, lye_off, no_superfat };

struct Held {
    HeldFor why{};
    FactRef fact;  // the Hold, or the Batch
    Day since{};
    std::uint32_t at = 0;  // place in shop.all<Lot>() of the lot first held; of a batch: the lot asked for
};

class Holds {
public:
    explicit Holds(const Shop& shop);

    // Some of a lot, vat or batch went into another of them on a day.
    void went_into(Account from, Account to, Day day);
    // The latest reason in force at the end of a day; nothing: the lot may be sold.
    std::optional<Held> why(std::uint32_t lot, Day day) const;

private:
    struct Step {
        Account from = 0;
        Day day{};
    };
    void touch(Account account);
    std::vector<Held> reasons(Account account, Day day, std::vector<Account>& on_the_way) const;

    AccountPlan plan_;
    std::map<Account, std::vector<Step>> came_from_;
    std::map<Account, std::vector<Held>> held_;  // of lots by a Hold; of batches by their lye
    std::map<Account, std::vector<Day>> released_;
    std::map<Account, std::vector<Account>> goes_into_;
    std::set<Account> touched_;  // whatever a reason was ever given for, and all that it went into
};

// With all that the ledger's movements say of what went into what.
Holds holds(const Shop& shop, const Ledger& ledger);

}  // namespace dyestead
