// reorder.h - what runs out first and when, what must be ordered by which day, from whom and how much?
//
// Where batches are planned, what they take is dated, and the order must be out early enough for the slowest
// delivery on record (under three on record: the offer's lead time and half as much again). Beyond plans, stock is
// held for the batches likely to be poured until the next delivery: the fewest that last with the given chance
// (Poisson, order_quantity.h). How much: the number of packs that costs least over a year, in goods, orders and
// money lying on the shelf, within the shelf's room and what is used before it goes off.
// A year's holding costs a share of the goods' price: our own default, no source.
#pragma once

#include <optional>
#include <vector>

#include "domain/decisions/order_quantity.h"
#include "domain/decisions/records.h"

namespace dyestead {

struct ReorderTerms {
    double chance_of_enough = 0.95;
    double holding_share = 0.10;  // of the price, a year
    int review_days = 30;         // from one look at the shelf to the next
    int soon_days = 60;           // lots that go off within so many days are named
};

struct PlannedUse {
    Key<Plan> plan;
    Day date{};
    std::int64_t quantity = 0;
};

// How long a supplier takes, in days.
struct LeadTime {
    int usual = 0;
    int safe = 0;     // the longest on record, or the offer's and a half
    int records = 0;  // deliveries with the day they were ordered
    bool known = false;
};

struct OrderLine {
    Key<Offer> offer;
    int packs = 0;
    std::int64_t quantity = 0;  // base units
    Money price;                // of all packs, at the break reached
};

// A bought material that something is made from.
struct ReorderRow {
    Key<Material> material;
    std::int64_t there = 0;           // not past its date, not on hold
    std::vector<PlannedUse> planned;  // by day
    std::optional<Day> runs_out;      // the first plan that cannot be met
    std::optional<Day> order_by;      // for that plan
    double batches_a_year = 0;        // that used it, last 12 months
    std::int64_t a_batch = 0;         // what one took, on average
    std::int64_t keep = 0;            // the reorder point: order at or below it
    std::int64_t after_plans = 0;     // what is left when all plans are poured; below nought: short
    LeadTime lead;
    std::optional<OrderLine> order;  // empty: none needed, or nobody offers it
    bool wanted = false;             // below the reorder point, or short for a plan
    bool late = false;               // the day to order by has passed
};

struct DraftOrder {
    Key<Supplier> supplier;
    std::vector<std::size_t> rows;  // places in Reorder::rows, all with an order
    Money goods;
    Money carriage;                         // 0 where the goods reach the supplier's own mark
    std::optional<Money> to_free_carriage;  // what is missing to it
    Day send_by{};
};

struct GoingOff {
    Key<Lot> lot;
    Day best_before{};
    std::int64_t left = 0;
    std::vector<Key<Material>> bars;  // that could use it
};

struct Reorder {
    std::vector<ReorderRow> rows;     // the first to run out first
    std::vector<DraftOrder> orders;   // the first to send first
    std::vector<GoingOff> going_off;  // by day
    int plans = 0;                    // still to come
};

Reorder reorder(const Shop& shop, const Ledger& ledger, const ReorderTerms& terms = {});

LeadTime lead_time(const Shop& shop, Key<Supplier> supplier, std::optional<int> offered, Day day);

}  // namespace dyestead
