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

    // Nothing is held on its own account, so that nothing else will be.
    bool none() const { return touched_.empty(); }
    // Some of a lot, vat or batch went into another of them on a day.
    void went_into(Account from, Account to, Day day);
    // The latest reason in force at the end of a day; nothing: the lot may be sold.
    std::optional<Held> why(std::uint32_t lot, Day day) const;

private:
    static constexpr std::uint32_t kNone = UINT32_MAX;

    // Something went into something else; `before` is the place of the step before it out of the same account.
    struct Step {
        Account from = 0;
        Account to = 0;
        Day day{};
        std::uint32_t before = kNone;
    };
    // What a reason was ever given for, and all that it went into. The rest, which is nearly everything, cannot be
    // held.
    struct Touched {
        std::vector<Held> held;                // of a lot by a Hold; of a batch by its lye
        std::vector<std::uint32_t> came_from;  // steps out of what is touched, in order; one for each such account
    };
    // From an account on to the lot that is asked for.
    struct Way {
        Account account = 0;
        Day day{};  // of the step further on
        const Way* further = nullptr;
    };

    bool is_touched(Account account) const { return places_[account] != kNone; }
    Touched& touch(Account account);
    void carry(std::uint32_t step);
    void find_latest(const Way& way, Day day, std::optional<Held>& latest) const;
    std::optional<Held> carried(Held held, const Way& way, Day day) const;

    AccountPlan plan_;
    std::vector<Step> steps_;            // in the order in which they were told
    std::vector<std::uint32_t> last_;    // of each account: the last step out of it
    std::vector<std::uint32_t> places_;  // of each account: its place in touched_
    std::vector<Touched> touched_;
    std::map<Account, std::vector<Day>> released_;
};

// With all that the ledger's movements say of what went into what.
Holds holds(const Shop& shop, const Ledger& ledger);

}  // namespace dyestead
