#include "domain/decisions/pigment_pool.h"

#include <algorithm>
#include <map>
#include <set>

#include "domain/decisions/method_split.h"

namespace dyestead {

bool is_of_colour(const Shop& shop, const Planting& planting, Key<Colour> colour) {
    const Plant* plant = shop.find(planting.plant);
    return plant != nullptr && plant->colour == colour;
}

namespace {

// The lots that hold harvest of the colour's plants.
std::set<Key<Lot>> harvest_lots(const Shop& shop, Key<Colour> colour) {
    std::set<Key<Lot>> lots;
    for (const Harvest& harvest : shop.all<Harvest>()) {
        const Planting* planting = shop.find(harvest.planting);
        if (planting != nullptr && is_of_colour(shop, *planting, colour)) lots.insert(harvest.lot);
    }
    return lots;
}

bool is_damp(const Drying& drying) {
    return drying.dryness == Dryness::damp;
}

// The share of `part` that goes with `rest` in each part of `all`; nothing where all holds nothing.
Cost in_proportion(const Cost& part, const Cost& rest, const Cost& all) {
    const auto share = [](auto some, auto of, auto whole) {
        using Amount = decltype(some);
        const std::int64_t bottom = whole.in_millionths();
        return bottom == 0 ? Amount{} : Amount::millionths(scaled(some.in_millionths(), of.in_millionths(), bottom));
    };
    return {share(part.materials, rest.materials, all.materials), share(part.labour, rest.labour, all.labour),
            share(part.energy, rest.energy, all.energy), share(part.overhead, rest.overhead, all.overhead),
            share(part.hands_on, rest.hands_on, all.hands_on)};
}

class VatReader {
public:
    VatReader(const Records& records, Key<Colour> colour)
        : records_{records}, colour_{colour}, dried_{first_dryings(records, colour)} {
        std::erase_if(dried_, [](const auto& each) { return is_damp(*each.second); });
        for (const Harvest& harvest : records.shop.all<Harvest>()) cut_in_.emplace(harvest.lot, year_of(harvest.date));
    }

    std::vector<FinishedVat> read() {
        for (const auto& [key, drying] : dried_) {
            FinishedVat& vat = vats_[key];
            vat.vat = records_.shop.find(key);
            vat.dried = drying->date;
            vat.season = year_of(vat.vat->date);
        }
        Day first = records_.ledger.as_of;
        for (const auto& [key, vat] : vats_) first = std::min(first, vat.vat->date);
        for (const Movement& movement : records_.movements_since(first)) {
            if (records_.kind(movement.to) == AccountKind::vat)
                into_vat(movement);
            else if (records_.kind(movement.from) == AccountKind::vat)
                out_of_vat(movement);
            else if (movement.to == account(Boundary::lost) && records_.kind(movement.from) == AccountKind::lot)
                powder_lost(movement);
            else if (records_.kind(movement.to) == AccountKind::lot && records_.from<SittingAt>(movement) != nullptr)
                sat_at_powder(movement);
        }
        share_plates();
        std::vector<FinishedVat> result;
        for (auto& [key, vat] : vats_) result.push_back(vat);
        std::ranges::stable_sort(result, {}, [](const FinishedVat& vat) {
            return std::pair{vat.dried, vat.vat->date};
        });
        return result;
    }

private:
    struct Plate {
        std::map<const Lot*, PowderLot> powder;
        Cost booked;
        Cost sat;
        std::vector<FinishedVat*> vats;
    };

    void into_vat(const Movement& movement) {
        const auto at = vats_.find(records_.vat(movement.to).key);
        if (at == vats_.end()) return;
        FinishedVat& vat = at->second;
        vat.went_in.push_back(&movement);
        const bool harvest =
            records_.from<VatUse>(movement) != nullptr && records_.material(movement).kind == MaterialKind::harvest;
        if (!harvest) {
            vat.own += movement.cost;
            return;
        }
        vat.carried += movement.cost;
        const double kg = grams(records_.material(movement), movement.quantity).value_or(0) / 1000;
        vat.kg += kg;
        if (records_.kind(movement.from) != AccountKind::lot) return;
        const auto cut = cut_in_.find(records_.lot(movement.from).key);
        if (cut != cut_in_.end()) kg_of_year_[at->first][cut->second] += kg;
    }

    void out_of_vat(const Movement& movement) {
        const auto at = dried_.find(records_.vat(movement.from).key);
        if (at == dried_.end() || records_.kind(movement.to) != AccountKind::lot) return;
        const Lot& lot = records_.lot(movement.to);
        const Material* material = records_.shop.find(lot.material);
        if (material == nullptr) return;
        if (material->colour && *material->colour != colour_) {
            FinishedVat& vat = vats_.at(at->first);
            const Cost with_harvest = in_proportion(movement.cost, vat.carried, vat.all());
            vat.own -= movement.cost - with_harvest;
            vat.carried -= with_harvest;
            return;
        }
        Plate& plate = plates_[at->second];
        plate.booked += movement.cost;
        PowderLot& powder = plate.powder[&lot];
        powder.lot = &lot;
        powder.grams += grams(*material, movement.quantity).value_or(0);
        plate_of_lot_[&lot] = at->second;
    }

    void powder_lost(const Movement& movement) {
        const auto at = plate_of_lot_.find(&records_.lot(movement.from));
        if (at != plate_of_lot_.end())
            plates_[at->second].powder[at->first].lost +=
                grams(records_.material(movement), movement.quantity).value_or(0);
    }

    // Time of a sitting at the drying goes to the powder.
    void sat_at_powder(const Movement& movement) {
        const auto at = plate_of_lot_.find(&records_.lot(movement.to));
        if (at != plate_of_lot_.end()) plates_[at->second].sat += movement.cost;
    }

    void share_plates() {
        for (auto& [key, vat] : vats_) plates_[dried_.at(key)].vats.push_back(&vat);
        for (auto& [drying, plate] : plates_) {
            double kg = 0;
            for (const FinishedVat* vat : plate.vats) kg += vat->kg;
            plate.booked += plate.sat;
            std::int64_t left = static_cast<std::int64_t>(plate.vats.size());
            for (FinishedVat* vat : plate.vats) {
                const Cost sat = share_of(plate.sat, 1, left--);
                plate.sat -= sat;
                vat->own += sat;
                const double share = kg > 0 ? vat->kg / kg : 1 / static_cast<double>(plate.vats.size());
                vat->shared_plate = plate.vats.size() > 1;
                vat->booked = plate.booked;
                for (const auto& [lot, powder] : plate.powder) {
                    if (powder.grams <= 0) continue;
                    vat->powder.push_back({lot, powder.grams * share, powder.lost * share});
                    vat->grams += powder.grams * share;
                    vat->grams_lost += powder.lost * share;
                    vat->plate_grams += powder.grams;
                }
            }
        }
        for (auto& [key, years] : kg_of_year_)
            vats_.at(key).season =
                std::ranges::max_element(years, {}, [](const auto& year) { return year.second; })->first;
    }

    const Records& records_;
    Key<Colour> colour_;
    std::map<Key<Vat>, const Drying*> dried_;
    std::map<Key<Lot>, int> cut_in_;
    std::map<Key<Vat>, FinishedVat> vats_;
    std::map<Key<Vat>, std::map<int, double>> kg_of_year_;
    std::map<const Drying*, Plate> plates_;
    std::map<const Lot*, const Drying*> plate_of_lot_;
};

// What beds, leaf and bills of the colour came to in the days, beside the vats.
class Beside {
public:
    Beside(const Records& records, Key<Colour> colour, Window days, PigmentPool& pool)
        : records_{records}, colour_{colour}, days_{days}, pool_{pool}, leaf_{harvest_lots(records.shop, colour)} {}

    void read() {
        for (const Movement& movement : records_.movements(days_)) add(movement);
    }

private:
    void add(const Movement& movement) {
        const bool to_lost = movement.to == account(Boundary::lost);
        const bool from_bed = records_.kind(movement.from) == AccountKind::planting;
        if ((to_lost && from_bed) || movement.to == account(Boundary::garden)) {
            const Planting* planting = from_bed ? &records_.planting(movement.from) : tended_after_end(movement);
            if (planting == nullptr || !is_of_colour(records_.shop, *planting, colour_)) return;
            pool_.closed += movement.cost;
            pool_.garden += movement.cost;
            const bool part_of_it = records_.from<BedLost>(movement) != nullptr;
            if (!from_bed || !to_lost || part_of_it) return;
            pool_.plantings_lost.push_back(planting);
            pool_.never_cut += movement.cost;
        } else if (to_lost && records_.kind(movement.from) == AccountKind::lot &&
                   leaf_.contains(records_.lot(movement.from).key)) {
            pool_.leaf_lost += movement.cost;
            pool_.garden += movement.cost;
        } else if (movement.to == account(Boundary::dye_avoidable)) {
            const PaidOut* bill = records_.from<PaidOut>(movement);
            if (bill == nullptr) return;
            const Ratio share = share_of_dye_bill(records_, *bill, colour_, days_);
            if (share.is_zero()) return;
            const Cost part = share_of(movement.cost, share.top, share.bottom);
            const bool garden = bill->dye_only == DyeOnly::garden;
            (garden ? pool_.bills.garden : pool_.bills.vat) += part;
            (garden ? pool_.garden : pool_.vat) += part;
        }
    }

    // The planting that time or feed was given to when it was already closed.
    const Planting* tended_after_end(const Movement& movement) const {
        if (const auto* harvest = records_.from<Harvest>(movement)) return records_.shop.find(harvest->planting);
        const auto* tending = records_.from<Tending>(movement);
        if (const auto* sat = records_.from<SittingAt>(movement); sat != nullptr && sat->tending)
            tending = records_.shop.find(*sat->tending);
        if (const auto* use = records_.from<TendingUse>(movement)) tending = records_.shop.find(use->head);
        return tending == nullptr ? nullptr : records_.shop.find(tending->planting);
    }

    const Records& records_;
    Key<Colour> colour_;
    Window days_;
    PigmentPool& pool_;
    std::set<Key<Lot>> leaf_;
};

}  // namespace

std::map<Key<Vat>, const Drying*> first_dryings(const Records& records, Key<Colour> colour) {
    std::map<Key<Vat>, const Drying*> dried;
    for (const DryingVat& line : records.shop.all<DryingVat>()) {
        const Drying* drying = records.shop.find(line.head);
        const Vat* vat = records.shop.find(line.vat);
        if (drying == nullptr || vat == nullptr || vat->colour != colour) continue;
        if (drying->date > records.ledger.as_of || drying->date < vat->date) continue;
        const auto [at, is_new] = dried.emplace(vat->key, drying);
        if (!is_new && std::pair{drying->date, drying->key} < std::pair{at->second->date, at->second->key})
            at->second = drying;
    }
    return dried;
}

std::vector<FinishedVat> finished_vats(const Records& records, Key<Colour> colour) {
    return VatReader{records, colour}.read();
}

PigmentPool pigment_pool(const Records& records, Key<Colour> colour, const std::vector<FinishedVat>& vats,
                         Window days) {
    PigmentPool pool;
    for (const FinishedVat& vat : vats) {
        ++pool.vats;
        pool.kg += vat.kg;
        pool.grams_dried += vat.grams;
        pool.grams_lost += vat.grams_lost;
        pool.vat += vat.own;
        pool.garden += vat.carried;
        if (!vat.failed()) continue;
        ++pool.failed;
        pool.failed_vats.vat += vat.own;
        pool.failed_vats.garden += vat.carried;
    }
    const VatSplit split = split_by_method(records, vats);
    pool.without_method = split.without_method;
    pool.vat_cash_fixed = split.cash_share() * number(pool.vat.cash());
    pool.vat_minutes_fixed = split.minutes_share() * number(pool.vat.hands_on);
    Beside{records, colour, days, pool}.read();
    return pool;
}

PigmentPool still_to_spend(PigmentPool pool, Stand stand) {
    if (stand == Stand::before_sowing) return pool;
    for (Cost* spent :
         {&pool.garden, &pool.failed_vats.garden, &pool.bills.garden, &pool.closed, &pool.never_cut, &pool.leaf_lost})
        *spent = {};
    pool.plantings_lost.clear();
    if (stand == Stand::leaf_standing) return pool;
    for (Cost* spent : {&pool.vat, &pool.failed_vats.vat, &pool.bills.vat}) *spent = {};
    pool.vat_cash_fixed = 0;
    pool.vat_minutes_fixed = 0;
    return pool;
}

Ratio share_of_dye_bill(const Records& records, const PaidOut& bill, Key<Colour> colour, Window days) {
    if (bill.colour) return {*bill.colour == colour ? 1 : 0, 1};
    std::set<Key<Vat>> finished;
    for (const DryingVat& line : records.shop.all<DryingVat>()) {
        const Drying* drying = records.shop.find(line.head);
        if (drying != nullptr && !is_damp(*drying) && drying->date <= records.ledger.as_of &&
            days.contains(drying->date))
            finished.insert(line.vat);
    }
    const auto own = std::ranges::count_if(finished, [&](Key<Vat> key) {
        const Vat* vat = records.shop.find(key);
        return vat != nullptr && vat->colour == colour;
    });
    return {own, std::max<std::int64_t>(1, static_cast<std::int64_t>(finished.size()))};
}

}  // namespace dyestead
