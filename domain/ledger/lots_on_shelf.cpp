#include "domain/ledger/lots_on_shelf.h"

#include <algorithm>

#include "domain/text/amounts.h"

namespace dyestead {
namespace {

// More of one material than this is more than the books can hold.
constexpr Wide kGate = Wide{1} << 61;

std::string shown(const Material& material, std::int64_t base) {
    switch (material.held_as) {
        case HeldAs::mass: return print(Amount{Quantity{Kind::mass, base}, Unit::g});
        case HeldAs::volume: return print(Amount{Quantity{Kind::volume, base}, Unit::ml});
        case HeldAs::count: return print(Amount{Quantity{Kind::count, base}, Unit::piece});
    }
    return {};
}

}  // namespace

LotsOnShelf::LotsOnShelf(const Shop& shop, Stock& stock, std::vector<LotOnShelf>& lots, const Holds& holds)
    : shop_{shop}, stock_{stock}, lots_{lots}, holds_{holds} {}

void LotsOnShelf::post(std::uint32_t number) {
    StockLine& line = stock_.lines[number];
    if (line.counted && !compare(line)) return;
    switch (line.trip) {
        case Trip::none:
        case Trip::out: return line.comes_in ? come_in(line) : go_out(line);
        case Trip::sold_there:
        case Trip::back: return settle_out(line);
        case Trip::returned:
        case Trip::spoiled: return take_back(line);
    }
}

// Makes a line that comes in or goes out of one that states what was counted. False where there is
// nothing to do.
bool LotsOnShelf::compare(StockLine& line) {
    Wide held = 0;
    for (const std::uint32_t each : on_shelf_)
        if (line.lot == kNoLot || each == line.lot) held += lots_[each].left;
    const Wide more = line.quantity - held;
    line.comes_in = more > 0;
    if (more <= 0) {
        line.quantity = narrow(-more);
        return more < 0;
    }
    const auto arrival = [&](std::uint32_t lot) { return lots_[lot].arrival; };
    if (line.lot == kNoLot) line.lot = on_shelf_.empty() ? newest_ : *std::ranges::max_element(on_shelf_, {}, arrival);
    if (line.lot == kNoLot) {
        const Material& material = shop_.all<Material>()[line.material];
        find(FindingCode::found_without_lot, line, {shown(material, narrow(more)), material.name});
        line.left_out = true;
        return false;
    }
    Wide owed = 0;
    for (const Owed& each : short_) owed += each.quantity;
    line.quantity = narrow(more + owed);
    const auto& made = lots_[line.lot].made;
    line.ready = made ? made->ready : line.day;
    if (made) line.best_before = made->best_before;
    return true;
}

void LotsOnShelf::come_in(StockLine& in) {
    if (seen_ + in.quantity > kGate) return leave_out(in);
    seen_ += in.quantity;
    newest_ = in.lot;
    LotOnShelf& held = lots_[in.lot];
    if (held.made && !in.counted) find(FindingCode::lot_made_twice, in, {shop_.all<Lot>()[in.lot].code});
    if (!held.made) held.made = LotOnShelf::Label{in.ready, in.best_before};
    if (held.left > 0) {
        take_off(in.lot);
    } else {
        held.received = 0;
        held.ready = in.ready;
        held.best_before = in.best_before;
        held.arrival = ++arrivals_;
    }
    held.received += in.quantity;
    held.left += in.quantity;
    settle(held);
    put_on(in.lot);
}

void LotsOnShelf::go_out(StockLine& out) {
    if (seen_ + out.quantity > kGate) return leave_out(out);
    seen_ += out.quantity;
    const std::size_t first = stock_.draws.size();
    std::int64_t wanted = out.quantity;
    if (out.lot != kNoLot) {
        if (lots_[out.lot].left > 0) take(out, out.lot, wanted);
    } else {
        while (wanted > 0) {
            auto best = next(out, Pick::cured_and_free);
            if (!best) best = next(out, Pick::free);
            if (!best) best = next(out, Pick::any);
            if (!best) break;
            take(out, *best, wanted);
        }
    }
    if (wanted > 0) run_short(out, wanted);
    const bool may_come_back = out.for_sale && out.fact.kind != kKindOf<PowderLine>;
    for (const Draw& draw : std::span{stock_.draws}.subspan(first)) {
        if (out.trip == Trip::out)
            out_[out.out].push_back(draw);
        else if (may_come_back && draw.lot != kNoLot)
            lots_[draw.lot].sold += draw.quantity;
    }
}

// Bars that are out at a shop: sold there, or back into the lots they came from. What was out and
// had never been there cannot come back.
void LotsOnShelf::settle_out(const StockLine& settled) {
    const bool back = settled.trip == Trip::back;
    std::int64_t wanted = settled.quantity;
    for (Draw& piece : out_[settled.out]) {
        const std::int64_t taken = std::min(wanted, piece.quantity);
        if (taken == 0 || (back && piece.lot == kNoLot)) continue;
        wanted -= taken;
        piece.quantity -= taken;
        stock_.draws.push_back({piece.lot, taken});
        if (back)
            put_back(piece.lot, taken);
        else if (piece.lot != kNoLot)
            lots_[piece.lot].sold += taken;
    }
    if (wanted > 0) find(FindingCode::settled_more_than_out, settled, {shop_.all<Material>()[settled.material].name});
}

// Bars a customer brought back: no more of a lot than were sold of it.
void LotsOnShelf::take_back(const StockLine& returned) {
    std::int64_t& sold = lots_[returned.lot].sold;
    const std::int64_t taken = std::min(returned.quantity, sold);
    if (taken < returned.quantity)
        find(FindingCode::returned_more_than_sold, returned, {shop_.all<Lot>()[returned.lot].code});
    if (taken == 0) return;
    sold -= taken;
    stock_.draws.push_back({returned.lot, taken});
    if (returned.trip == Trip::returned) put_back(returned.lot, taken);
}

// In its old place: it came when it came.
void LotsOnShelf::put_back(std::uint32_t lot, std::int64_t quantity) {
    take_off(lot);
    lots_[lot].left += quantity;
    put_on(lot);
}

std::optional<std::uint32_t> LotsOnShelf::next(const StockLine& out, Pick pick) const {
    for (const std::uint32_t lot : on_shelf_) {
        if (out.for_sale && pick == Pick::cured_and_free && lots_[lot].ready > out.day) continue;
        if (out.for_sale && pick != Pick::any && holds_.why(lot, out.day)) continue;
        return lot;
    }
    return std::nullopt;
}

void LotsOnShelf::take(const StockLine& out, std::uint32_t lot, std::int64_t& wanted) {
    LotOnShelf& held = lots_[lot];
    const std::int64_t taken = std::min(wanted, held.left);
    if (taken == 0) return;
    if (out.for_sale && held.ready > out.day) find(FindingCode::sold_before_cured, out, {shop_.all<Lot>()[lot].code});
    if (out.for_sale && holds_.why(lot, out.day)) find(FindingCode::sold_while_held, out, {shop_.all<Lot>()[lot].code});
    take_off(lot);
    held.left -= taken;
    put_on(lot);
    wanted -= taken;
    stock_.draws.push_back({lot, taken});
}

void LotsOnShelf::run_short(const StockLine& out, std::int64_t wanted) {
    const Material& material = shop_.all<Material>()[out.material];
    find(FindingCode::more_used_than_there, out, {shown(material, wanted), material.name});
    short_.push_back({static_cast<std::uint32_t>(stock_.draws.size()), wanted});
    stock_.draws.push_back({kNoLot, wanted});
}

void LotsOnShelf::settle(LotOnShelf& held) {
    while (!short_.empty() && held.left > 0) {
        Owed& owed = short_.front();
        const std::int64_t settled = std::min(owed.quantity, held.left);
        stock_.settlements.push_back({owed.draw, settled});
        held.left -= settled;
        owed.quantity -= settled;
        if (owed.quantity == 0) short_.pop_front();
    }
}

void LotsOnShelf::leave_out(StockLine& line) {
    line.left_out = true;
    find(FindingCode::too_large, line, {});
}

// What is open before what is not, then what expires first, then what came first.
bool LotsOnShelf::taken_before(std::uint32_t a, std::uint32_t b) const {
    const LotOnShelf& one = lots_[a];
    const LotOnShelf& other = lots_[b];
    if (one.open() != other.open()) return one.open();
    if (one.best_before != other.best_before) {
        if (!one.best_before || !other.best_before) return one.best_before.has_value();
        return *one.best_before < *other.best_before;
    }
    return one.arrival < other.arrival;
}

void LotsOnShelf::put_on(std::uint32_t lot) {
    if (lots_[lot].left == 0) return;
    const auto before = [&](std::uint32_t a, std::uint32_t b) { return taken_before(a, b); };
    on_shelf_.insert(std::ranges::upper_bound(on_shelf_, lot, before), lot);
}

// Before anything about it changes, for it is found by that.
void LotsOnShelf::take_off(std::uint32_t lot) {
    if (lots_[lot].left == 0) return;
    const auto before = [&](std::uint32_t a, std::uint32_t b) { return taken_before(a, b); };
    on_shelf_.erase(std::ranges::lower_bound(on_shelf_, lot, before));
}

void LotsOnShelf::find(FindingCode code, const StockLine& line, std::vector<std::string> args) {
    stock_.findings.push_back({code, line.fact, line.day, std::move(args)});
}

}  // namespace dyestead
