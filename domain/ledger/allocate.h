// allocate.h - which lots does each use draw on? Quantities only: a changed price changes nothing
// here, and each material stands for itself.
//
// The named lot; else the open one; else the first to expire; else the oldest. What is not there
// is short: it is settled from the next goods of that material that come.
//
// A count sets the books to what was counted. Where there is less, the difference goes out; where there
// is more, it comes in, and with it what the material was short of, which it settles.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "domain/ledger/order.h"

namespace dyestead {

inline constexpr std::uint32_t kNoLot = UINT32_MAX;

// What bars do beside coming in once and going out for good.
enum class Trip : std::uint8_t {
    none,
    out,         // to somebody's shop, not sold
    sold_there,  // out of what is at that shop; not off the shelf
    back,        // from that shop into the lots they came from
    returned,    // sold bars of the lot, fit to be sold again
    spoiled,     // sold bars of the lot, fit for nothing
};

// One line of an event that brings goods in or takes them out.
struct StockLine {
    FactRef fact;
    std::uint32_t material = 0;  // place in shop.all<Material>()
    std::uint32_t lot = kNoLot;  // place in shop.all<Lot>(); of a use: kNoLot is by rule
    std::int64_t quantity = 0;   // base units, as the material is held
    Day day{};
    bool comes_in = false;
    bool counted = false;   // at a count; until allocate() reaches it, `quantity` is what was counted
    bool for_sale = false;  // wants bars out of cure
    bool left_out = false;  // too large, or no way to the material's kind of amount
    Day ready{};
    std::optional<Day> best_before;
    Trip trip = Trip::none;
    std::uint32_t out = kNoLot;  // place in shop.all<OutAtShop>()
};

// Of a trip back or returned: what went into the lot. Of one sold there: which lot was sold.
struct Draw {
    std::uint32_t lot = kNoLot;  // kNoLot: short
    std::int64_t quantity = 0;
};

struct Settlement {
    std::uint32_t draw = 0;  // the short draw, place in Stock::draws
    std::int64_t quantity = 0;
};

// The stock lines of all events in order, and what became of them. Line i has draws[first_draw[i]]
// to draws[first_draw[i + 1]], likewise settlements; event i has lines[first_line[i]] onwards.
struct Stock {
    std::vector<StockLine> lines;
    std::vector<std::uint32_t> first_line;
    std::vector<Draw> draws;
    std::vector<std::uint32_t> first_draw;
    std::vector<Settlement> settlements;
    std::vector<std::uint32_t> first_settlement;
    std::vector<Finding> findings;

    std::span<const StockLine> lines_of(std::uint32_t event) const {
        return std::span{lines}.subspan(first_line[event], first_line[event + 1] - first_line[event]);
    }
};

// The lines alone, in order, with draws and settlements still empty.
Stock stock_lines(const Shop& shop, const ShopLines& lines, std::span<const Event> events);

Stock allocate(const Shop& shop, const ShopLines& lines, std::span<const Event> events);

}  // namespace dyestead
