#include <algorithm>

#include "domain/facts/material_amount.h"
#include "domain/ledger/latest_price.h"
#include "domain/ledger/order.h"
#include "domain/ledger/value.h"
#include "domain/text/amounts.h"

namespace dyestead {

GardenBook::GardenBook(Bookkeeper& books) : books_{books}, beds_(books.shop().all<Planting>().size()) {}

void GardenBook::post(const Planting& fact) {
    const std::uint32_t planting = books_.place(fact);
    beds_[planting].sown = true;
    books_.take_all(books_.planting(planting));
}

void GardenBook::post(const StandingBed& fact) {
    const auto planting = books_.place(fact.planting);
    if (!planting) return;
    if (books_.shop().all<Planting>()[*planting].sown > fact.date)
        books_.find(FindingCode::sown_after_its_facts, ref(fact), {});
    Cost cost = books_.own_time(fact.who, fact.time, ref(fact));
    cost.materials = fact.cost.value_or(Money{});
    books_.enter(Boundary::already_here, books_.planting(*planting), ref(fact), cost);
}

void GardenBook::post(const Tending& fact) {
    const auto planting = books_.place(fact.planting);
    if (!planting) return;
    // Time after the bed was done with has no crop to go to.
    const bool open = !beds_[*planting].ended;
    const Account to = open ? books_.planting(*planting) : account(Boundary::garden);
    if (!beds_[*planting].sown) books_.find(FindingCode::sown_after_its_facts, ref(fact), {});
    books_.take_all(to);
    books_.work(fact.who, fact.time, to, ref(fact));
}

// Harvest h takes B h / max(h, E - H) of the pool B, as in units of production: E expected in all,
// H harvested before. Nothing more expected: all of B. Its own picking time goes to the harvest.
void GardenBook::post(const Harvest& fact) {
    const auto planting = books_.place(fact.planting);
    const StockLine* line = books_.line_of(ref(fact));
    if (!planting) {
        // Not in a whole shop; but what was weighed in must be there to be used.
        if (line != nullptr) books_.receive(*line, account(Boundary::other), {});
        return;
    }
    Bed& bed = beds_[*planting];
    check_gathered(*planting, ref(fact));
    const Account pool = books_.planting(*planting);
    if (line == nullptr || line->quantity == 0) {
        books_.work(fact.who, fact.time, bed.ended ? account(Boundary::garden) : pool, ref(fact));
        return;
    }
    const std::int64_t expected_more = expected(*planting, ref(fact)) - bed.harvested;
    const std::int64_t over = std::max(line->quantity, expected_more);
    const Cost share = share_of(books_.balance(pool), line->quantity, over);
    bed.harvested += line->quantity;
    books_.receive(*line, pool, share);
    books_.work(fact.who, fact.time, books_.lot(line->lot), ref(fact));
}

void GardenBook::check_gathered(std::uint32_t planting, FactRef fact) {
    const std::string& code = books_.shop().all<Planting>()[planting].code;
    if (!beds_[planting].sown) books_.find(FindingCode::harvest_before_sowing, fact, {code});
    if (beds_[planting].ended) books_.find(FindingCode::harvest_after_end, fact, {code});
}

// A by-product takes what it would cost to buy off the main product (IAS 2, paragraph 14): min(1, x / full
// cost of the pool) of every part of it. Its own time goes to it; it is no part of the crop expected.
void GardenBook::post(const SeedKept& fact) {
    const auto planting = books_.place(fact.planting);
    const StockLine* line = books_.line_of(ref(fact));
    if (!planting) {
        // Not in a whole shop; but what was kept must be there to be sown.
        if (line != nullptr) books_.receive(*line, account(Boundary::other), {});
        return;
    }
    check_gathered(*planting, ref(fact));
    const Account pool = books_.planting(*planting);
    if (line == nullptr || line->quantity == 0) {
        books_.work(fact.who, fact.time, beds_[*planting].ended ? account(Boundary::garden) : pool, ref(fact));
        return;
    }
    books_.receive(*line, pool, credit(*line, books_.balance(pool)));
    const Account held = books_.holder(line->material, line->lot).account;
    const Cost before = books_.balance(held);
    books_.work(fact.who, fact.time, held, ref(fact));
    if (held != books_.lot(line->lot)) books_.ledger().lots[line->lot].cost_in += books_.balance(held) - before;
}

Cost GardenBook::credit(const StockLine& line, const Cost& pool) {
    const Material& material = books_.shop().all<Material>()[line.material];
    try {
        const auto price = latest_price(books_.shop(), material.key, books_.day());
        if (!price) {
            books_.find(FindingCode::by_product_worth_unknown, line.fact, {material.name});
            return {};
        }
        const std::int64_t full = pool.full().in_millionths();
        if (full <= 0) return {};  // a bed that cost nothing has nothing to hand on
        const Wide worth = static_cast<Wide>(price->amount.in_millionths()) * line.quantity / price->per.in_base();
        return worth >= full ? pool : share_of(pool, narrow(worth), full);
    } catch (const Overflow&) {
        books_.find(FindingCode::too_large, line.fact);
        return {};
    }
}

// Part of what stood is gone, and the same part of what had gone into it.
void GardenBook::post(const BedLost& fact) {
    const auto planting = books_.place(fact.planting);
    if (!planting) return;
    Bed& bed = beds_[*planting];
    const std::string& code = books_.shop().all<Planting>()[*planting].code;
    if (!bed.sown) books_.find(FindingCode::sown_after_its_facts, ref(fact));
    if (bed.ended) return books_.find(FindingCode::bed_lost_after_end, ref(fact), {code});
    const std::int64_t in_hand = area(*planting);
    const std::int64_t gone = std::max<std::int64_t>(0, fact.area.quantity.in_base());
    if (gone > in_hand) books_.find(FindingCode::more_lost_than_stood, ref(fact), {code});
    if (gone == 0) return;
    bed.area_lost += std::min(gone, in_hand);
    const Cost pool = books_.balance(books_.planting(*planting));
    const Cost share = gone >= in_hand ? pool : share_of(pool, gone, in_hand);
    if (share.is_zero()) return;
    books_.move(books_.planting(*planting), account(Boundary::lost), books_.source(ref(fact)), 0, share);
}

// The expected total in force today, in base units of what is harvested; 0 when nothing can be said.
std::int64_t GardenBook::expected(std::uint32_t place, FactRef fact) {
    const Shop& shop = books_.shop();
    const Planting& planting = shop.all<Planting>()[place];
    const ExpectedTotal* revised = nullptr;
    for (const ExpectedTotal& each : shop.all<ExpectedTotal>())
        if (each.planting == planting.key && each.date <= books_.day() &&
            (revised == nullptr || each.date >= revised->date))
            revised = &each;
    if (revised != nullptr) return revised->amount.quantity.in_base();
    if (planting.expected) return planting.expected->quantity.in_base();
    const Plant* plant = shop.find(planting.plant);
    if (plant == nullptr) return 0;
    constexpr std::int64_t kSquareMetre = 10'000;
    const Wide guess =
        static_cast<Wide>(plant->usual.quantity.in_base()) * area(place) / kSquareMetre * std::max(plant->crops, 1);
    const std::int64_t total = guess > kLargestStatedBase ? kLargestStatedBase : narrow(guess);
    if (!beds_[place].guessed) {
        const Amount amount{Quantity{plant->usual.quantity.kind(), total}, plant->usual.unit, Mark::about};
        books_.find(FindingCode::expected_harvest_guessed, fact, {planting.code, print(amount)});
    }
    beds_[place].guessed = true;
    return total;
}

std::int64_t GardenBook::area(std::uint32_t place) const {
    const Planting& planting = books_.shop().all<Planting>()[place];
    const dyestead::Bed* bed = books_.shop().find(planting.bed);
    const std::int64_t whole = bed == nullptr ? 0 : bed->area.quantity.in_base();
    const std::int64_t sown = planting.area ? planting.area->quantity.in_base() : whole;
    return std::max<std::int64_t>(0, sown - beds_[place].area_lost);
}

void GardenBook::end(std::uint32_t planting, FactRef fact, bool assumed) {
    Bed& bed = beds_[planting];
    if (bed.ended) return;
    bed.ended = true;
    const std::string& code = books_.shop().all<Planting>()[planting].code;
    if (assumed) books_.find(FindingCode::planting_end_assumed, fact, {code});
    const Cost rest = books_.balance(books_.planting(planting));
    if (rest.is_zero()) return;
    const Boundary to = bed.harvested == 0 ? Boundary::lost : Boundary::garden;
    books_.move(books_.planting(planting), account(to), books_.source(fact), 0, rest);
}

bool GardenBook::share_bill(const PaidOut& bill, Money amount) {
    const Shop& shop = books_.shop();
    std::vector<std::uint32_t> standing;
    Wide total = 0;
    for (std::uint32_t i = 0; i < beds_.size(); ++i) {
        const Planting& planting = shop.all<Planting>()[i];
        const Plant* plant = shop.find(planting.plant);
        const bool of_colour = !bill.colour || (plant != nullptr && plant->colour == bill.colour);
        if (!beds_[i].sown || beds_[i].ended || !of_colour || area(i) <= 0) continue;
        standing.push_back(i);
        total += area(i);
    }
    std::int64_t rest = amount.in_millionths();
    for (const std::uint32_t i : standing) {
        const std::int64_t by_area = area(i);
        Cost cost;
        cost.overhead = Money::millionths(narrow(static_cast<Wide>(rest) * by_area / total));
        rest -= cost.overhead.in_millionths();
        total -= by_area;
        books_.enter(Boundary::bills, books_.planting(i), ref(bill), cost);
    }
    return !standing.empty();
}

}  // namespace dyestead
