#include "domain/ledger/allocate.h"

#include <algorithm>
#include <deque>
#include <map>
#include <set>

#include <fmt/format.h>

#include "domain/text/amounts.h"
#include "domain/text/decimal.h"

namespace dyestead {
namespace {

// More of one material than this is more than the books can hold.
constexpr Wide kGate = Wide{1} << 61;

struct Held {
    std::uint32_t lot = 0;
    std::int64_t received = 0;
    std::int64_t left = 0;
    Day ready{};
    std::optional<Day> best_before;
    std::uint32_t arrival = 0;

    bool open() const { return left < received; }
};

// Whether `a` is taken before `b`; lots stand in the order in which they came.
bool taken_before(const Held& a, const Held& b) {
    if (a.open() != b.open()) return a.open();
    if (a.best_before != b.best_before) {
        if (!a.best_before || !b.best_before) return a.best_before.has_value();
        return *a.best_before < *b.best_before;
    }
    return false;
}

struct Open {  // a short draw not yet settled
    std::uint32_t line = 0;
    std::uint32_t draw = 0;  // within the line
    std::int64_t quantity = 0;
};

struct Outcome {
    std::vector<Draw> draws;
    std::vector<std::pair<Open, std::int64_t>> settled;
};

// The lots of one material, and what its lines do to them.
class Shelf {
public:
    Shelf(const Shop& shop, Stock& stock, std::vector<Outcome>& outcomes)
        : shop_{shop}, stock_{stock}, outcomes_{outcomes} {}

    void come_in(std::uint32_t line) {
        StockLine& in = stock_.lines[line];
        if (seen_ + in.quantity > kGate) return leave_out(in);
        seen_ += in.quantity;
        const auto at = std::ranges::find(lots_, in.lot, &Held::lot);
        if (!made_.insert(in.lot).second)
            find(FindingCode::lot_made_twice, in.fact, in.day, {shop_.all<Lot>()[in.lot].code});
        Held& held =
            at != lots_.end() ? *at : lots_.emplace_back(Held{in.lot, 0, 0, in.ready, in.best_before, ++arrivals_});
        held.received += in.quantity;
        held.left += in.quantity;
        settle(line, held);
        drop_empty();
    }

    void go_out(std::uint32_t line) {
        StockLine& out = stock_.lines[line];
        if (seen_ + out.quantity > kGate) return leave_out(out);
        seen_ += out.quantity;
        std::int64_t wanted = out.quantity;
        if (out.lot != kNoLot) {
            const auto at = std::ranges::find(lots_, out.lot, &Held::lot);
            if (at != lots_.end()) take(line, *at, wanted);
        } else {
            while (wanted > 0) {
                Held* best = next(out, true);
                if (best == nullptr) best = next(out, false);
                if (best == nullptr) break;
                take(line, *best, wanted);
            }
        }
        if (wanted > 0) run_short(line, wanted);
        drop_empty();
        for (const Draw& draw : outcomes_[line].draws) {
            if (out.trip == Trip::out)
                out_[out.out].push_back(draw);
            else if (out.for_sale)
                sold_[draw.lot] += draw.quantity;
        }
    }

    // Bars that are out at a shop: sold there, or back into the lots they came from. What was out and
    // had never been there cannot come back.
    void settle_out(std::uint32_t line) {
        const StockLine& settled = stock_.lines[line];
        const bool back = settled.trip == Trip::back;
        std::int64_t wanted = settled.quantity;
        for (Draw& piece : out_[settled.out]) {
            const std::int64_t taken = std::min(wanted, piece.quantity);
            if (taken == 0 || (back && piece.lot == kNoLot)) continue;
            wanted -= taken;
            piece.quantity -= taken;
            outcomes_[line].draws.push_back({piece.lot, taken});
            if (back)
                put_back(piece.lot, taken);
            else
                sold_[piece.lot] += taken;
        }
        if (wanted > 0)
            find(FindingCode::settled_more_than_out, settled.fact, settled.day,
                 {shop_.all<Material>()[settled.material].name});
    }

    // Bars a customer brought back: no more of a lot than were sold of it.
    void take_back(std::uint32_t line) {
        const StockLine& returned = stock_.lines[line];
        std::int64_t& sold = sold_[returned.lot];
        const std::int64_t taken = std::min(returned.quantity, sold);
        if (taken < returned.quantity)
            find(FindingCode::returned_more_than_sold, returned.fact, returned.day,
                 {shop_.all<Lot>()[returned.lot].code});
        if (taken == 0) return;
        sold -= taken;
        outcomes_[line].draws.push_back({returned.lot, taken});
        if (returned.trip == Trip::returned) put_back(returned.lot, taken);
    }

private:
    void put_back(std::uint32_t lot, std::int64_t quantity) {
        auto at = std::ranges::find(lots_, lot, &Held::lot);
        if (at == lots_.end()) {
            const Held& gone = empty_.at(lot);
            at = lots_.insert(std::ranges::upper_bound(lots_, gone.arrival, {}, &Held::arrival), gone);
        }
        at->left += quantity;
    }

    Held* next(const StockLine& out, bool only_ready) {
        Held* best = nullptr;
        for (Held& held : lots_) {
            if (held.left == 0 || (out.for_sale && only_ready && held.ready > out.day)) continue;
            if (best == nullptr || taken_before(held, *best)) best = &held;
        }
        return best;
    }

    void take(std::uint32_t line, Held& held, std::int64_t& wanted) {
        const std::int64_t taken = std::min(wanted, held.left);
        if (taken == 0) return;
        const StockLine& out = stock_.lines[line];
        if (out.for_sale && held.ready > out.day)
            find(FindingCode::sold_before_cured, out.fact, out.day, {shop_.all<Lot>()[held.lot].code});
        held.left -= taken;
        wanted -= taken;
        outcomes_[line].draws.push_back({held.lot, taken});
    }

    void run_short(std::uint32_t line, std::int64_t wanted) {
        const StockLine& out = stock_.lines[line];
        const Material& material = shop_.all<Material>()[out.material];
        find(FindingCode::more_used_than_there, out.fact, out.day, {shown(material, wanted), material.name});
        short_.push_back({line, static_cast<std::uint32_t>(outcomes_[line].draws.size()), wanted});
        outcomes_[line].draws.push_back({kNoLot, wanted});
    }

    void settle(std::uint32_t line, Held& held) {
        while (!short_.empty() && held.left > 0) {
            Open& owed = short_.front();
            const std::int64_t settled = std::min(owed.quantity, held.left);
            outcomes_[line].settled.emplace_back(owed, settled);
            held.left -= settled;
            owed.quantity -= settled;
            if (owed.quantity == 0) short_.pop_front();
        }
    }

    void drop_empty() {
        for (const Held& held : lots_)
            if (held.left == 0) empty_[held.lot] = held;
        std::erase_if(lots_, [](const Held& held) { return held.left == 0; });
    }

    void leave_out(StockLine& line) {
        line.left_out = true;
        find(FindingCode::too_large, line.fact, line.day, {});
    }

    static std::string shown(const Material& material, std::int64_t base) {
        switch (material.held_as) {
            case HeldAs::mass: return print(Amount{Quantity{Kind::mass, base}, Unit::g});
            case HeldAs::volume: return print(Amount{Quantity{Kind::volume, base}, Unit::ml});
            case HeldAs::count: return print(Amount{Quantity{Kind::count, base}, Unit::piece});
        }
        return {};
    }

    void find(FindingCode code, FactRef about, Day day, std::vector<std::string> args) {
        stock_.findings.push_back({code, about, day, std::move(args)});
    }

    const Shop& shop_;
    Stock& stock_;
    std::vector<Outcome>& outcomes_;
    std::vector<Held> lots_;
    std::set<std::uint32_t> made_;
    std::deque<Open> short_;
    std::map<std::uint32_t, Held> empty_;             // lots that held goods once
    std::map<std::uint32_t, std::vector<Draw>> out_;  // at shops, by place of the OutAtShop, as they went
    std::map<std::uint32_t, std::int64_t> sold_;      // of each lot, less what came back
    std::uint32_t arrivals_ = 0;
    Wide seen_ = 0;
};

}  // namespace

Stock allocate(const Shop& shop, std::span<const Event> events) {
    Stock stock = stock_lines(shop, events);
    std::vector<Outcome> outcomes(stock.lines.size());
    std::map<std::uint32_t, Shelf> shelves;
    for (std::uint32_t line = 0; line < stock.lines.size(); ++line) {
        if (stock.lines[line].left_out) continue;
        Shelf& shelf = shelves.try_emplace(stock.lines[line].material, shop, stock, outcomes).first->second;
        switch (stock.lines[line].trip) {
            case Trip::none:
            case Trip::out: stock.lines[line].comes_in ? shelf.come_in(line) : shelf.go_out(line); break;
            case Trip::sold_there:
            case Trip::back: shelf.settle_out(line); break;
            case Trip::returned:
            case Trip::spoiled: shelf.take_back(line); break;
        }
    }
    for (const Outcome& outcome : outcomes) {
        stock.first_draw.push_back(static_cast<std::uint32_t>(stock.draws.size()));
        stock.draws.insert(stock.draws.end(), outcome.draws.begin(), outcome.draws.end());
    }
    stock.first_draw.push_back(static_cast<std::uint32_t>(stock.draws.size()));
    for (const Outcome& outcome : outcomes) {
        stock.first_settlement.push_back(static_cast<std::uint32_t>(stock.settlements.size()));
        for (const auto& [owed, quantity] : outcome.settled)
            stock.settlements.push_back({stock.first_draw[owed.line] + owed.draw, quantity});
    }
    stock.first_settlement.push_back(static_cast<std::uint32_t>(stock.settlements.size()));
    return stock;
}

}  // namespace dyestead
