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
    bool over_a_year = false;  // said or on record; reckoned as a year
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

// Loaves of one plan not poured, and what they would have left over before own time, selling paid.
struct PourFewer {
    Key<Plan> plan;
    int loaves = 0;
    std::optional<double> left;  // empty: no price or no cost of the bar is on record
};

// A colourant, own powder or bought in, that does not last for the plans.
struct ColourShort {
    Key<Material> material;
    Key<Colour> colour;
    bool own = false;
    std::int64_t there = 0;
    std::int64_t short_by = 0;       // for all plans
    Day runs_out{};                  // the first plan that cannot be met
    std::optional<Day> next_powder;  // own: when the next of it is dry, as usual
    // Bought in instead, at equal shade (or simply bought); empty: no match, or no price on record.
    std::optional<Key<Material>> buy;
    std::int64_t buy_quantity = 0;
    std::optional<double> buy_cost;
    std::vector<PourFewer> fewer;        // the last plans first
    int loaves() const;                  // of all of them
    std::optional<double> left() const;  // what not pouring them gives up; empty where one is not known
};

// The same thing got in two ways: from two suppliers, or put down as two things.
struct BoughtTwice {
    std::vector<Key<Material>> materials;  // one, or those that are the same
    struct From {
        Key<Offer> offer;     // in force
        double a_unit = 0;    // money for a kilogram, litre or piece
        bool bought = false;  // from there, in the last 12 months
    };
    std::vector<From> from;  // the cheapest first
};

struct Reorder {
    std::vector<ReorderRow> rows;      // the first to run out first
    std::vector<DraftOrder> orders;    // the first to send first
    std::vector<GoingOff> going_off;   // by day
    std::vector<ColourShort> colours;  // the first to run out first
    std::vector<BoughtTwice> twice;
    int plans = 0;  // still to come
};

Reorder reorder(const Shop& shop, const Ledger& ledger, const ReorderTerms& terms = {});

LeadTime lead_time(const Shop& shop, Key<Supplier> supplier, std::optional<int> offered, Day day);

}  // namespace dyestead
