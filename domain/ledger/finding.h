// finding.h - what in the records does not add up, and which fact is it about?
// Never an exception and never silence: every other number is still right. The sentences are in
// reports/words.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

// Which list of the Shop a fact stands in: its place in ForEveryKind.
enum class FactKind : std::uint8_t {};

template <class Fact>
inline constexpr FactKind kKindOf{static_cast<std::uint8_t>(ForEveryKind<FactList>::place<Fact>())};

// A fact of any kind, by its key.
struct FactRef {
    FactKind kind{};
    std::int64_t key = 0;
    friend constexpr bool operator==(FactRef, FactRef) = default;
};

template <class Fact>
constexpr FactRef ref(const Fact& fact) {
    return {kKindOf<Fact>, fact.key.number};
}

enum class FindingCode : std::uint8_t {
    more_used_than_there,      // amount, material
    no_cost_known,             // material: used before any price of it is on record
    lot_of_another_material,   // lot, material
    lot_made_twice,            // lot
    amount_not_convertible,    // amount, material: no density to get from one to the other
    nothing_in_it,             // an amount of nought where something was paid
    too_large,                 // left out: the total would pass what the books can hold
    sold_before_cured,         // lot
    back_more_than_taken,      // bar
    no_price,                  // bar: sold with no price on record
    harvest_before_sowing,     // planting
    harvest_after_end,         // planting
    expected_harvest_guessed,  // planting, amount
    planting_end_assumed,      // planting
    sown_after_its_facts,      // planting
    by_product_worth_unknown,  // material
    bed_lost_after_end,        // planting
    more_lost_than_stood,      // planting
    vat_told_twice,
    vat_dried_twice,         // vat
    vat_dried_before_begun,  // vat
    drying_without_vat,
    batch_cut_twice,         // batch
    cut_before_pouring,      // batch
    no_good_bars,            // batch
    rejected_more_than_cut,  // batch
    wrapped_when_gone,       // lot
    split_before_pouring,    // batch it was to be poured off from
    split_after_cut,         // batch it was to be poured off from
    split_without_share,     // batch it was to be poured off from
    settled_before_out,
    settled_more_than_out,    // bar
    returned_more_than_sold,  // lot
    sold_while_held,          // lot
    sitting_before_its_work,
    sitting_at_nothing,
    sat_at_when_gone,  // lot, vat or batch
    equipment_without_years,
    pay_unknown,                 // person: time counted, no hourly target or wage on record
    nobody_named,                // time counted, but no person is on record
    tariff_unknown,              // source
    heat_not_complete,           // water or temperatures missing
    dye_bill_without_work,       // no bed or vat of the colour was in hand that day
    exchange_rate_unknown,       // currency: counted one to one
    discount_more_than_goods,    // what is shared took a line's cost below nought
    credit_more_than_cost,       // material: more credited than the goods that are here cost
    correction_before_delivery,  // delivery
    correction_of_nothing,       // delivery: no lines of it are on record
    counted_twice,               // material
    found_without_lot,           // amount, material: counted, and no lot of it ever was
    cost_rule_waits,             // day: not the first of a financial year, so it counts from that day on
    vat_steps_backwards,         // vat: a step is timed before the vat, or before the step above it
    bundles_more_than_sold,      // fair: bars in bundles, bars sold
    more_came_up_than_laid_out,  // lot
    note_on_nothing,
    loaf_without_bars,           // recipe
    running_costs_without_bars,  // no good bar a year to share them over
    no_average_for,              // material: harvests, pigments, bars and colourants are costed by lot
    no_powder,                   // material: sold as powder, but it is none made here
};

struct Finding {
    FindingCode code{};
    FactRef about{};
    Day day{};
    // What the sentence names besides the fact, in the order given beside the code.
    std::vector<std::string> args{};
};

// The code of a fact; of a line, its head's code, a colon and its position ("oils-march:3"). Blank when
// there is no such fact.
std::string name_of(const Shop& shop, FactRef about);
// The table the fact stands in: "delivery_line".
std::string_view table_of(FactKind kind);

}  // namespace dyestead
