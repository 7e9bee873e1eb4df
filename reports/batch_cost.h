// batch_cost.h - what does one bar of a batch cost, part by part, and what went into the batch?
// Once the batch is cut: its lot of bars, wrapping and running costs in. Before: what is in the batch, over the bars
// its recipe says.
#pragma once

#include <array>

#include "domain/ledger/ledger.h"
#include "reports/document.h"

namespace dyestead::reports {

enum class BarPart : std::uint8_t {
    oils,
    lye_and_water,
    colour,  // bought, or what growing it took beside time
    scent,
    wrapping,
    other,
    running_costs,
    garden_time,
    vat_time,
    bench_time,
};
inline constexpr std::size_t kBarParts = static_cast<std::size_t>(BarPart::bench_time) + 1;
constexpr bool is_time(BarPart part) {
    return part >= BarPart::garden_time;
}

// Money in currency units, of one good bar.
struct BatchCost {
    double bars = 0;
    bool cut = false;
    std::array<double, kBarParts> parts{};
    double minutes = 0;
    double colour_minutes = 0;  // of these: in the garden, at the vat, and at the bench for the colour

    double without_time() const;
    double with_time() const;
};

// Nothing: no such batch, or no bars come of it.
std::optional<BatchCost> batch_cost(const Shop& shop, const Ledger& ledger, Key<Batch> batch);

// The same without its parts, for a list.
struct BarCosts {
    double without_time = 0;
    double with_time = 0;
};
std::optional<BarCosts> bar_costs(const Shop& shop, const Ledger& ledger, Key<Batch> batch);

// The cut of a batch that counts: the first. Null while it is not cut.
const Cut* cut_of(const Shop& shop, const Ledger& ledger, Key<Batch> batch);

std::string part_name(BarPart part);

// "A blue bar costs 1.84 without your time and 2.91 with it; 37 % of the time is the colour."
std::string batch_sentence(const Shop& shop, const Ledger& ledger, Key<Batch> batch);
// What went in, by lot.
Table batch_inputs(const Shop& shop, const Ledger& ledger, Key<Batch> batch);
// One bar's cost, laid out part by part; nothing where it cost nothing.
std::optional<Chart> batch_chart(const Shop& shop, const Ledger& ledger, Key<Batch> batch);

}  // namespace dyestead::reports
