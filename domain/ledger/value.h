// value.h - what does each event move, and at what cost? One pass over the events in order, with
// every lot a draw takes already settled by allocate.h.
//
// Bookkeeper is the only writer of movements: each takes from one account what it gives another.
// One file per stage of the work (value_garden.cpp ...) says which movements a fact makes.
#pragma once

#include <map>
#include <optional>
#include <span>

#include "domain/facts/in_turn.h"
#include "domain/facts/lines_of.h"
#include "domain/ledger/allocate.h"
#include "domain/ledger/ledger.h"

namespace dyestead {

class Bookkeeper {
public:
    Bookkeeper(const Shop& shop, const ShopLines& lines, const Stock& stock, Day as_of);

    // The event whose stock lines `take` and `receive` speak of.
    void begin(const Event& event, std::uint32_t number);
    void finish();  // settles what the event's goods owe

    Day day() const { return day_; }
    const Shop& shop() const { return shop_; }
    const ShopLines& shop_lines() const { return lines_; }
    Ledger& ledger() { return ledger_; }

    // Accounts.
    Account lot(std::uint32_t index) const { return ledger_.accounts.lots + index; }
    template <class Fact>
    std::optional<std::uint32_t> place(Key<Fact> key) const {
        const Fact* fact = shop_.find(key);
        if (fact == nullptr) return std::nullopt;
        return static_cast<std::uint32_t>(fact - shop_.all<Fact>().data());
    }
    // Of a fact in the shop's own list.
    template <class Fact>
    std::uint32_t place(const Fact& fact) const {
        return static_cast<std::uint32_t>(&fact - shop_.all<Fact>().data());
    }
    Account planting(std::uint32_t index) const { return ledger_.accounts.plantings + index; }
    Account vat(std::uint32_t index) const { return ledger_.accounts.vats + index; }
    Account batch(std::uint32_t index) const { return ledger_.accounts.batches + index; }
    Account out(std::uint32_t index) const { return ledger_.accounts.outs + index; }
    Account pool(std::uint32_t material) const { return ledger_.accounts.pools + material; }
    const Cost& balance(Account account) const { return ledger_.balances[account]; }

    std::uint32_t source(FactRef fact, std::uint32_t material = 0, bool named = false);
    // `cost` by value: callers hand in the balance of the very account it leaves.
    void move(Account from, Account to, std::uint32_t source, std::int64_t quantity, Cost cost);
    // Cost from outside: left out with a finding where the total would pass the gate.
    void enter(Boundary from, Account to, FactRef fact, const Cost& cost);

    // Where the cost of a lot's goods stands, and how much of the goods: in the lot itself, or in the pool
    // of its material while that is costed at the moving average.
    struct Holder {
        Account account = 0;
        std::int64_t quantity = 0;
    };
    Holder holder(std::uint32_t material, std::uint32_t lot) const;
    // The cost that goes with so much of a lot.
    Cost worth(std::uint32_t material, std::uint32_t lot, std::int64_t quantity) const;
    // Goods leave a lot, and a cost its holder.
    void leave(std::uint32_t material, std::uint32_t lot, Account to, std::uint32_t source, std::int64_t quantity,
               const Cost& cost);
    // The reverse of it.
    void put_in(std::uint32_t material, std::uint32_t lot, Account from, std::uint32_t source, std::int64_t quantity,
                const Cost& cost);
    // Cost from outside to the goods of a lot.
    void add_cost(Boundary from, std::uint32_t material, std::uint32_t lot, FactRef fact, const Cost& cost);
    // From now on by the moving average, or by lot. The open lots' cost becomes the pool, or the reverse.
    void cost_by(std::uint32_t material, CostBy rule, FactRef fact);

    // All uses of the event go to one account.
    void take_all(Account to);
    void take(const StockLine& line, Account to);
    // A draw that is short: taken provisionally, at the latest goods' cost.
    void take_short(const StockLine& line, const Draw& draw, std::uint32_t source, Account to);
    // The latest goods' cost for so much of them; nothing, with a finding, where none ever came or the
    // sum would pass the gate.
    Cost latest_cost(const StockLine& line, std::int64_t quantity);
    // The goods of a line come into their lot from an account, at a cost.
    void receive(const StockLine& line, Account from, const Cost& cost);
    // The event's stock line of a fact; null where it has none or was left out.
    const StockLine* line_of(FactRef fact) const;
    std::span<const StockLine> lines() const { return stock_.lines_of(event_); }
    std::span<const Draw> draws(const StockLine& line) const;

    // Somebody's time: of the shop's own people as labour and minutes, of paid ones as a wage.
    void work(const std::optional<Key<Person>>& who, const std::optional<Span>& time, Account to, FactRef fact);
    void work(const std::optional<Key<Person>>& who, Minutes time, Account to, FactRef fact);
    // The time as it stood before the books: from `already here`.
    Cost own_time(const std::optional<Key<Person>>& who, const std::optional<Span>& time, FactRef fact);

    void find(FindingCode code, FactRef about, std::vector<std::string> args = {});

    Ledger close() &&;

private:
    struct Short {
        Cost cost{};
        std::int64_t left = 0;
    };
    struct Pool {
        bool averaged = false;
        std::int64_t left = 0;
    };
    struct UnitCost {
        Cost cost{};
        std::int64_t quantity = 0;
    };

    std::uint32_t number_of(const StockLine& line) const {
        return static_cast<std::uint32_t>(&line - stock_.lines.data());
    }
    void settle(std::uint32_t line);
    const Pay* pay(const std::optional<Key<Person>>& who, FactRef fact, bool& known);

    const Shop& shop_;
    const ShopLines& lines_;
    const Stock& stock_;
    Ledger ledger_;
    Day day_{};
    std::uint32_t event_ = 0;
    std::map<std::uint32_t, Short> short_;  // by place of the draw in the stock
    std::vector<UnitCost> last_;            // one for each material: what its latest goods cost
    std::vector<Pool> pools_;               // one for each material
    Cost entered_{};                        // sizes of all that came in
};

// What a fact of each stage moves.
class GardenBook {
public:
    explicit GardenBook(Bookkeeper& books);
    void post(const Planting& fact);
    void post(const StandingBed& fact);
    void post(const Tending& fact);
    void post(const Harvest& fact);
    void post(const SeedKept& fact);
    void post(const BedLost& fact);
    void end(std::uint32_t planting, FactRef fact, bool assumed);
    bool is_open(std::uint32_t planting) const { return !beds_[planting].ended; }
    // Shares a dye-only bill over the beds in hand, by area. False where there are none.
    bool share_bill(const PaidOut& bill, Money amount);

private:
    struct Bed {
        bool sown = false;
        bool ended = false;
        bool guessed = false;
        std::int64_t harvested = 0;
        std::int64_t area_lost = 0;
    };
    // Says so where something was gathered before the bed was sown or after it was done with.
    void check_gathered(std::uint32_t planting, FactRef fact);
    // What leaves the pool with a by-product.
    Cost credit(const StockLine& line, const Cost& pool);
    std::int64_t expected(std::uint32_t planting, FactRef fact);
    // In hand: what was sown less what was lost.
    std::int64_t area(std::uint32_t planting) const;

    Bookkeeper& books_;
    std::vector<Bed> beds_;
};

class VatBook {
public:
    explicit VatBook(Bookkeeper& books);
    void post(const Vat& fact);
    void post(const Drying& fact);
    bool is_open(std::uint32_t vat) const { return !pots_[vat].dried; }
    bool share_bill(const PaidOut& bill, Money amount);

private:
    struct Pot {
        bool begun = false;
        bool dried = false;
    };
    void heat(const VatHeat& line, Account vat);
    // The hands' time, and so much of the waiting beside the pot as counts.
    static Minutes counted(const std::optional<Span>& hands_on, const std::optional<Span>& watched, Ratio share);
    struct Part {
        const StockLine* line = nullptr;  // null: lost at the plate
        std::int64_t weight = 0;
    };
    std::vector<Part> parts(const Drying& fact);
    std::int64_t lost_at_plate(const Drying& fact, const StockLine& powder);

    Bookkeeper& books_;
    std::vector<Pot> pots_;
    LinesOf<VatHeat> heats_;
    LinesOf<DryingVat> joined_;
};

class BenchBook {
public:
    explicit BenchBook(Bookkeeper& books);
    void post(const Batch& fact);
    void post(const Cut& fact);
    void post(const Wrapping& fact);
    bool is_open(std::uint32_t batch) const { return !loaves_[batch].cut; }
    std::optional<Key<Lot>> cut_into(std::uint32_t batch) const { return loaves_[batch].lot; }

private:
    struct Loaf {
        bool poured = false;
        bool cut = false;
        std::optional<Key<Lot>> lot{};  // of the first cut
    };
    void pour_off(const Batch& fact, Account to);
    Bookkeeper& books_;
    std::vector<Loaf> loaves_;
    InTurn<Batch> batches_;
    InTurn<Lot> lots_;
    LinesOf<BatchTime> times_;
};

class StallBook {
public:
    explicit StallBook(Bookkeeper& books);
    void post(const Fair& fact);
    void post(const Sale& fact);
    void post(const OutAtShop& fact);
    void post(const OutSettled& fact);
    void post(const Returned& fact);

private:
    // Bars of a lot that went out or were sold, at the cost at which they left it.
    struct Piece {
        std::uint32_t lot = kNoLot;
        std::int64_t quantity = 0;
        Cost cost{};
        Cost take(std::int64_t taken);
    };
    // Takes a line to an account; gives what went, lot by lot.
    std::vector<Piece> take(const StockLine& line, Account to);
    void sold(const Piece& piece);
    void come_back(Account from, const StockLine& line, const Draw& draw, const Cost& cost);
    // Sells the event's line of a fact; gives the bars, in thousandths.
    std::int64_t sell(FactRef fact, std::optional<Money> price);
    // Sells the event's powder; gives what was asked for what went.
    Money sell(const PowderLine& powder);

    Bookkeeper& books_;
    LinesOf<FairTime> times_;
    std::vector<std::vector<Piece>> out_;     // one for each OutAtShop
    std::map<std::uint32_t, Piece> sold_of_;  // of lots of which some came back once; less what came back
};

class CupboardBook {
public:
    explicit CupboardBook(Bookkeeper& books);
    void post(const AlreadyHere& fact);
    void post(const Delivery& fact);
    void post(const CostCorrection& fact);
    void post(const Loss& fact);
    void post(const Count& fact);
    void post(const CostRule& fact);

private:
    Money add_to_goods(const DeliveryLine& line, Money part, FactRef fact);
    void lose(const StockLine& line, LossReason reason);

    Bookkeeper& books_;
    std::vector<std::int64_t> found_;       // one for each lot: base units found at counts
    std::vector<std::int64_t> usual_lost_;  // one for each lot: base units lost as usual so far
};

}  // namespace dyestead
