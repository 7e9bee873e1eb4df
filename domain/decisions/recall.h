// recall.h - what holds some of these goods, where is it now, and what is in it?
//
// Forward to every bed, vat, batch and lot that holds some of them, and to where that is, in three heaps:
// still here; out, with somebody on record who can be asked; out, with nobody. Backward to every lot that
// is in them. Each step is named by the maker, or only taken by rule, or not excluded (could be: another
// lot of the same material, used while this one was on the shelf). Common practice in food and cosmetics
// is one step forward and one back, for every lot, produced on demand; which of it the law wants, and
// whether bars must be called back, the rules where they are sold and the assessor say.
#pragma once

#include "domain/ledger/goods_moved.h"
#include "domain/ledger/holds.h"

namespace dyestead {

enum class Heap : std::uint8_t { here, reachable, out_of_reach, gone };
inline constexpr std::size_t kHeaps = 4;

// Goods that hold some of what is recalled, and where they are.
struct Whereabouts {
    Heap heap{};
    Known known{};
    Account of = 0;             // the lot; of what is not made up yet: its bed, vat or batch
    std::int64_t quantity = 0;  // base units of the lot's material; 0: not made up yet
    Day day{};                  // they went out; of what is here: they were made, sown, steeped or poured
    // By what they went out: a SaleLine, PowderLine, FairLine, OutAtShop (still there), OutSettled, Loss, CountLine or
    // Returned. Of what is here: unset.
    std::optional<FactRef> fact{};
    std::optional<Held> held{};  // what is here must not be sold, and why
};

// A bed, vat, batch or lot that holds some of what is recalled.
struct HoldsSome {
    Account account = 0;
    Known known{};
    Day since{};  // it holds some, or, where it is what is recalled, it was made
};

// A lot that is in what is asked about.
struct IsIn {
    Account lot = 0;
    Known known{};
    std::int64_t quantity = 0;      // of the steps by which it went in, base units of its material
    std::optional<FactRef> came{};  // the DeliveryLine or AlreadyHere; a lot made here: unset
};

struct Recall {
    std::vector<Account> of;
    std::vector<HoldsSome> holds;          // in the order in which they came to hold some; not `of` itself
    std::vector<Whereabouts> whereabouts;  // heap by heap, the surest first
    std::vector<IsIn> is_in;               // the surest first
    std::int64_t came_back = 0;            // bars, in thousandths, of those gone out: brought back since
    // Bars, in thousandths, of the same kinds that went out by rule from other lots while these were on
    // the shelf: unless their lots are on the labels, they may be these.
    std::int64_t others_out = 0;

    // Bars of a heap, in thousandths.
    std::int64_t bars(const Shop& shop, const Ledger& ledger, Heap heap, Known known) const;
};

// `of`: lots, beds, vats or batches.
Recall recall(const Shop& shop, const Ledger& ledger, std::vector<Account> of);

}  // namespace dyestead
