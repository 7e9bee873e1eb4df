#include "domain/decisions/stands_on.h"

#include <algorithm>
#include <map>
#include <set>

#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

void count_vats(const Records& records, const Gathered& gathered, const std::vector<FinishedVat>& every_vat,
                StandsOn& on) {
    std::set<Key<Vat>> finished;
    std::set<int> years;
    for (const FinishedVat& vat : every_vat) {
        finished.insert(vat.vat->key);
        years.insert(vat.season);
        if (vat.kg > 0 && !vat.failed()) on.best_g_per_kg = std::max(on.best_g_per_kg.value_or(0), vat.grams / vat.kg);
    }
    on.harvest_years = static_cast<int>(years.size());
    for (const Vat& vat : records.shop.all<Vat>()) {
        if (vat.colour != gathered.colour->key || vat.date > records.ledger.as_of) continue;
        ++on.vats_on_record;
        if (!finished.contains(vat.key)) on.vats_not_dry.push_back(vat.key);
    }
}

void weigh_powder(const Records& records, const std::vector<FinishedVat>& vats, StandsOn& on) {
    std::set<Key<Lot>> lots;
    for (const FinishedVat& vat : vats)
        for (const PowderLot& powder : vat.powder) lots.insert(powder.lot->key);
    for (const Key<Lot> lot : lots)
        on.grams_left +=
            grams(*records.shop.find(records.shop.find(lot)->material), records.state(lot)->left).value_or(0);
    for (const Movement& movement : records.ledger.movements) {
        if (movement.quantity == 0 || records.kind(movement.from) != AccountKind::lot ||
            !lots.contains(records.lot(movement.from).key))
            continue;
        const double weight = grams(records.material(movement), movement.quantity).value_or(0);
        if (movement.to == account(Boundary::given))
            on.grams_given += weight;
        else if (movement.to == account(Boundary::sold))
            on.grams_sold += weight;
        else if (movement.to == account(Boundary::provisional) || records.kind(movement.to) != AccountKind::boundary)
            on.grams_used += weight;
    }
}

// Beds of the colour's plants that are not closed, and leaf that is in no vat yet.
void name_left_out(const Records& records, Key<Colour> colour, StandsOn& on) {
    std::set<Key<Planting>> closed;
    for (const PlantingEnd& end : records.shop.all<PlantingEnd>())
        if (end.date <= records.ledger.as_of) closed.insert(end.planting);
    for (const Movement& movement : records.ledger.movements)
        if (records.kind(movement.from) == AccountKind::planting &&
            records.kind(movement.to) == AccountKind::boundary && records.from<BedLost>(movement) == nullptr)
            closed.insert(records.planting(movement.from).key);
    for (const Planting& planting : records.shop.all<Planting>())
        if (planting.sown <= records.ledger.as_of && is_of_colour(records.shop, planting, colour) &&
            !closed.contains(planting.key))
            on.standing_beds.push_back(planting.key);

    std::set<Key<Lot>> leaf;
    for (const Harvest& harvest : records.shop.all<Harvest>()) {
        const Planting* planting = records.shop.find(harvest.planting);
        if (harvest.date <= records.ledger.as_of && planting != nullptr &&
            is_of_colour(records.shop, *planting, colour))
            leaf.insert(harvest.lot);
    }
    for (const Key<Lot> key : leaf) {
        const Lot* lot = records.shop.find(key);
        const Material* material = lot == nullptr ? nullptr : records.shop.find(lot->material);
        if (material != nullptr) on.leaf_kg += grams(*material, records.state(key)->left).value_or(0) / 1000;
    }
}

double already_spent(const Records& records, Key<Colour> colour, Window window) {
    Money spent;
    for (const Movement& movement : records.ledger.movements) {
        if (movement.to != account(Boundary::dye_sunk)) continue;
        const PaidOut* bill = records.from<PaidOut>(movement);
        if (bill == nullptr) continue;
        const Ratio share = share_of_dye_bill(records, *bill, colour, window);
        spent += Money::millionths(times(movement.cost.cash().in_millionths(), share));
    }
    return number(spent);
}

}  // namespace

StandsOn stands_on(const Records& records, const Gathered& gathered, const std::vector<FinishedVat>& every_vat,
                   const std::vector<FinishedVat>& vats, Window window) {
    const Key<Colour> colour = gathered.colour->key;
    const PigmentPool& pool = gathered.pool;
    StandsOn on;
    count_vats(records, gathered, every_vat, on);
    on.vats_finished = pool.vats;
    on.vats_failed = pool.failed;
    on.failed_hours = number(pool.failed_vats.all().hands_on) / 60;
    on.failed_cash = number(pool.failed_vats.all().cash());
    on.kg = pool.kg;
    on.grams_dried = pool.grams_dried;
    on.grams_lost = pool.grams_lost;
    weigh_powder(records, vats, on);
    on.tested_share = strength_of(records, *gathered.colour, vats).tested_share;
    for (const Planting* planting : pool.plantings_lost) on.plantings_lost.push_back(planting->key);
    on.plantings_closed_cash = number(pool.closed.cash());
    on.plantings_closed_hours = number(pool.closed.hands_on) / 60;
    on.leaf_lost_cash = number(pool.leaf_lost.cash());
    on.leaf_lost_hours = number(pool.leaf_lost.hands_on) / 60;
    on.bills_cash = number(pool.bills.all().cash());
    on.dye_cash = number(pool.all().cash());
    if (gathered.target) on.dye_labour = number(pool.all().labour);
    name_left_out(records, colour, on);
    on.already_spent = already_spent(records, colour, window);
    if (const Allowed* answer = allowed_in_force(records.shop, colour, records.ledger.as_of)) on.allowed = *answer;
    on.home_price_from = gathered.prices.own.from;
    on.bought_bar_price_from = gathered.prices.bought.from;
    on.plain_price_from = gathered.prices.plain.from;
    on.bought_price_from = gathered.landed.from;
    return on;
}

std::vector<VatRow> vat_rows(const Records& records, const Colour& colour, const std::vector<FinishedVat>& vats) {
    std::vector<VatRow> rows;
    for (const FinishedVat& vat : vats) {
        VatRow row;
        row.vat = vat.vat->key;
        row.begun = vat.vat->date;
        row.dried = vat.dried;
        row.season = vat.season;
        row.kg = vat.kg;
        row.grams = vat.grams;
        row.shared_plate = vat.shared_plate;
        row.strength = strength_of(records, colour, {vat}).tested;
        if (vat.kg > 0) row.g_per_kg = vat.grams / vat.kg;
        if (vat.plate_grams > 0) {
            row.full_cost_per_gram_booked = number(vat.booked.full()) / vat.plate_grams;
            row.cash_cost_per_gram_booked = number(vat.booked.cash()) / vat.plate_grams;
        }
        row.hours = number(vat.own.hands_on) / 60;
        row.cash = number(vat.all().cash());
        rows.push_back(row);
    }
    return rows;
}

std::vector<PriceSold> sold_at(const Records& records, const Recipe& recipe, Key<Colour> colour, Window days) {
    std::map<std::pair<Colouring, Money>, std::int64_t> bars;
    for (const SoldLine& line : records.ledger.sold) {
        if (!days.contains(line.day) || !line.price) continue;
        const Key<Material> bar = records.shop.all<Material>()[line.material].key;
        for (const Colouring colouring : {Colouring::plain, Colouring::bought, Colouring::own}) {
            const auto* of_recipe = colouring_of(records.shop, recipe.key, colouring, colour);
            if (of_recipe == nullptr || of_recipe->bar != bar) continue;
            bars[{colouring, *line.price}] += line.bars;
            break;
        }
    }
    std::vector<PriceSold> result;
    for (const auto& [key, count] : bars)
        result.push_back({key.first, number(key.second), static_cast<double>(count) / 1000});
    return result;
}

}  // namespace dyestead
