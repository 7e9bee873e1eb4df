#include "domain/ledger/allocate.h"

#include <algorithm>
#include <deque>
#include <map>

#include <fmt/format.h>

#include "domain/facts/lines_of.h"
#include "domain/ledger/holds.h"
#include "domain/text/amounts.h"
#include "domain/text/decimal.h"

namespace dyestead {
namespace {

// More of one material than this is more than the books can hold.
constexpr Wide kGate = Wide{1} << 61;

struct OnShelf {
    std::uint32_t lot = 0;
    std::int64_t received = 0;
    std::int64_t left = 0;
    Day ready{};
    std::optional<Day> best_before;
    std::uint32_t arrival = 0;

    bool open() const { return left < received; }
};

// Whether `a` is taken before `b`; lots stand in the order in which they came.
bool taken_before(const OnShelf& a, const OnShelf& b) {
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

struct Label {  // on the jar
    Day ready{};
    std::optional<Day> best_before;
};

struct Outcome {
    std::vector<Draw> draws;
    std::vector<std::pair<Open, std::int64_t>> settled;
};

// The lots of one material, and what its lines do to them.
class Shelf {
public:
    Shelf(const Shop& shop, Stock& stock, std::vector<Outcome>& outcomes, const Holds& holds)
        : shop_{shop}, stock_{stock}, outcomes_{outcomes}, holds_{holds} {}

    void post(std::uint32_t line) {
        if (stock_.lines[line].counted && !compare(line)) return;
        switch (stock_.lines[line].trip) {
            case Trip::none:
            case Trip::out: return stock_.lines[line].comes_in ? come_in(line) : go_out(line);
            case Trip::sold_there:
            case Trip::back: return settle_out(line);
            case Trip::returned:
            case Trip::spoiled: return take_back(line);
        }
    }

private:
    // Makes a line that comes in or goes out of one that states what was counted. False where there is
    // nothing to do.
    bool compare(std::uint32_t number) {
        StockLine& line = stock_.lines[number];
        Wide held = 0;
        for (const OnShelf& each : lots_)
            if (line.lot == kNoLot || each.lot == line.lot) held += each.left;
        const Wide more = line.quantity - held;
        line.comes_in = more > 0;
        if (more <= 0) {
            line.quantity = narrow(-more);
            return more < 0;
        }
        if (line.lot == kNoLot) line.lot = lots_.empty() ? newest_ : lots_.back().lot;
        if (line.lot == kNoLot) {
            const Material& material = shop_.all<Material>()[line.material];
            find(FindingCode::found_without_lot, line.fact, line.day, {shown(material, narrow(more)), material.name});
            line.left_out = true;
            return false;
        }
        Wide owed = 0;
        for (const Open& each : short_) owed += each.quantity;
        line.quantity = narrow(more + owed);
        const auto known = made_.find(line.lot);
        line.ready = known == made_.end() ? line.day : known->second.ready;
        if (known != made_.end()) line.best_before = known->second.best_before;
        return true;
    }

    void come_in(std::uint32_t line) {
        StockLine& in = stock_.lines[line];
        if (seen_ + in.quantity > kGate) return leave_out(in);
        seen_ += in.quantity;
        const auto at = std::ranges::find(lots_, in.lot, &OnShelf::lot);
        newest_ = in.lot;
        if (!made_.try_emplace(in.lot, Label{in.ready, in.best_before}).second && !in.counted)
            find(FindingCode::lot_made_twice, in.fact, in.day, {shop_.all<Lot>()[in.lot].code});
        OnShelf& held =
            at != lots_.end() ? *at : lots_.emplace_back(OnShelf{in.lot, 0, 0, in.ready, in.best_before, ++arrivals_});
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
            const auto at = std::ranges::find(lots_, out.lot, &OnShelf::lot);
            if (at != lots_.end()) take(line, *at, wanted);
        } else {
            while (wanted > 0) {
                OnShelf* best = next(out, Pick::cured_and_free);
                if (best == nullptr) best = next(out, Pick::free);
                if (best == nullptr) best = next(out, Pick::any);
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

    void put_back(std::uint32_t lot, std::int64_t quantity) {
        auto at = std::ranges::find(lots_, lot, &OnShelf::lot);
        if (at == lots_.end()) {
            const OnShelf& gone = empty_.at(lot);
            at = lots_.insert(std::ranges::upper_bound(lots_, gone.arrival, {}, &OnShelf::arrival), gone);
        }
        at->left += quantity;
    }

    // Which lots may leave: for a sale first those cured and free, then, rather than none, any.
    enum class Pick : std::uint8_t { cured_and_free, free, any };

    OnShelf* next(const StockLine& out, Pick pick) {
        OnShelf* best = nullptr;
        for (OnShelf& held : lots_) {
            if (held.left == 0) continue;
            if (out.for_sale && pick == Pick::cured_and_free && held.ready > out.day) continue;
            if (best != nullptr && !taken_before(held, *best)) continue;
            if (out.for_sale && pick != Pick::any && holds_.why(held.lot, out.day)) continue;
            best = &held;
        }
        return best;
    }

    void take(std::uint32_t line, OnShelf& held, std::int64_t& wanted) {
        const std::int64_t taken = std::min(wanted, held.left);
        if (taken == 0) return;
        const StockLine& out = stock_.lines[line];
        if (out.for_sale && held.ready > out.day)
            find(FindingCode::sold_before_cured, out.fact, out.day, {shop_.all<Lot>()[held.lot].code});
        if (out.for_sale && holds_.why(held.lot, out.day))
            find(FindingCode::sold_while_held, out.fact, out.day, {shop_.all<Lot>()[held.lot].code});
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

    void settle(std::uint32_t line, OnShelf& held) {
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
        for (const OnShelf& held : lots_)
            if (held.left == 0) empty_[held.lot] = held;
        std::erase_if(lots_, [](const OnShelf& held) { return held.left == 0; });
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
    const Holds& holds_;
    std::vector<OnShelf> lots_;
    std::map<std::uint32_t, Label> made_;  // every lot that ever was
    std::uint32_t newest_ = kNoLot;
    std::deque<Open> short_;
    std::map<std::uint32_t, OnShelf> empty_;          // lots that held goods once
    std::map<std::uint32_t, std::vector<Draw>> out_;  // at shops, by place of the OutAtShop, as they went
    std::map<std::uint32_t, std::int64_t> sold_;      // of each lot, less what came back
    std::uint32_t arrivals_ = 0;
    Wide seen_ = 0;
};

// What went into what, line by line as it is allocated.
class Follower {
public:
    Follower(const Shop& shop, Holds& holds) : shop_{shop}, holds_{holds}, joined_{shop} {
        for (const Batch& batch : shop.all<Batch>())
            if (batch.split_from)
                if (const Batch* from = shop.find(*batch.split_from); from != nullptr && from->date <= batch.date)
                    holds_.went_into(at(plan_.batches, *from), at(plan_.batches, batch), batch.date);
    }

    void follow(const StockLine& line, const std::vector<Draw>& draws) {
        if (line.comes_in) return made(line);
        const auto into = used_in(line.fact);
        if (!into) return;
        for (const Draw& draw : draws)
            if (draw.lot != kNoLot) holds_.went_into(plan_.lots + draw.lot, *into, line.day);
    }

private:
    template <class Fact>
    Account at(Account first, const Fact& fact) const {
        return first + static_cast<Account>(&fact - shop_.all<Fact>().data());
    }
    template <class Use>
    const auto* head_of(FactRef fact) const {
        return shop_.find(shop_.find(Key<Use>{fact.key})->head);
    }

    std::optional<Account> used_in(FactRef fact) const {
        if (fact.kind == kKindOf<BatchUse>) return at(plan_.batches, *head_of<BatchUse>(fact));
        if (fact.kind == kKindOf<VatUse>) return at(plan_.vats, *head_of<VatUse>(fact));
        if (fact.kind != kKindOf<WrappingUse>) return std::nullopt;
        const Lot* wrapped = shop_.find(head_of<WrappingUse>(fact)->lot);
        return wrapped == nullptr ? std::nullopt : std::optional{at(plan_.lots, *wrapped)};
    }

    void made(const StockLine& line) {
        const Account lot = plan_.lots + line.lot;
        if (line.fact.kind == kKindOf<Cut>) {
            const Batch* batch = shop_.find(shop_.find(Key<Cut>{line.fact.key})->batch);
            if (batch != nullptr) holds_.went_into(at(plan_.batches, *batch), lot, line.day);
        }
        Key<Drying> drying{line.fact.kind == kKindOf<Drying> ? line.fact.key : 0};
        if (line.fact.kind == kKindOf<DryingLot>) drying = shop_.find(Key<DryingLot>{line.fact.key})->head;
        for (const DryingVat* joined : joined_(drying))
            if (const Vat* vat = shop_.find(joined->vat)) holds_.went_into(at(plan_.vats, *vat), lot, line.day);
    }

    const Shop& shop_;
    Holds& holds_;
    AccountPlan plan_ = account_plan(shop_);
    LinesOf<DryingVat> joined_;
};

}  // namespace

Stock allocate(const Shop& shop, std::span<const Event> events) {
    Stock stock = stock_lines(shop, events);
    std::vector<Outcome> outcomes(stock.lines.size());
    std::map<std::uint32_t, Shelf> shelves;
    Holds holds{shop};
    Follower follower{shop, holds};
    for (std::uint32_t line = 0; line < stock.lines.size(); ++line) {
        if (stock.lines[line].left_out) continue;
        shelves.try_emplace(stock.lines[line].material, shop, stock, outcomes, holds).first->second.post(line);
        follower.follow(stock.lines[line], outcomes[line].draws);
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
