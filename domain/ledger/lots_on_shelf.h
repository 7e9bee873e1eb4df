// lots_on_shelf.h - which lots of one material stand on the shelf, in which order are they taken, and what does each
// stock line do to them? The working part of allocate.h.
#pragma once

#include <deque>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "domain/ledger/allocate.h"
#include "domain/ledger/holds.h"

namespace dyestead {

// A lot of the shop, on the shelf while something is left of it.
struct LotOnShelf {
    std::int64_t received = 0;  // since it last came on the shelf
    std::int64_t left = 0;
    std::int64_t sold = 0;  // less what came back
    Day ready{};
    std::optional<Day> best_before;
    std::uint32_t arrival = 0;

    struct Label {  // on the jar
        Day ready{};
        std::optional<Day> best_before;
    };
    std::optional<Label> made;

    bool open() const { return left < received; }
};

class LotsOnShelf {
public:
    // `lots`: one for each lot of the shop; every material's shelf has its own of them.
    LotsOnShelf(const Shop& shop, Stock& stock, std::vector<LotOnShelf>& lots, const Holds& holds);

    // The next line: its draws and settlements go to the end of the stock's.
    void post(std::uint32_t line);

private:
    struct Owed {                // a short draw not yet settled
        std::uint32_t draw = 0;  // place in Stock::draws
        std::int64_t quantity = 0;
    };
    // Which lots may leave: for a sale first those cured and free, then, rather than none, any.
    enum class Pick : std::uint8_t { cured_and_free, free, any };

    bool compare(StockLine& line);
    void come_in(StockLine& line);
    void go_out(StockLine& line);
    void settle_out(const StockLine& line);
    void take_back(const StockLine& line);
    void put_back(std::uint32_t lot, std::int64_t quantity);

    std::optional<std::uint32_t> next(const StockLine& out, Pick pick) const;
    void take(const StockLine& out, std::uint32_t lot, std::int64_t& wanted);
    void run_short(const StockLine& out, std::int64_t wanted);
    void settle(LotOnShelf& held);
    void leave_out(StockLine& line);

    bool taken_before(std::uint32_t a, std::uint32_t b) const;
    void put_on(std::uint32_t lot);
    void take_off(std::uint32_t lot);
    void find(FindingCode code, const StockLine& line, std::vector<std::string> args);

    const Shop& shop_;
    Stock& stock_;
    std::vector<LotOnShelf>& lots_;
    const Holds& holds_;
    std::vector<std::uint32_t> on_shelf_;  // in the order in which they are taken
    std::uint32_t newest_ = kNoLot;
    std::uint32_t arrivals_ = 0;
    std::deque<Owed> short_;
    std::map<std::uint32_t, std::vector<Draw>> out_;  // at shops, by place of the OutAtShop, as they went
    Wide seen_ = 0;
};

}  // namespace dyestead
