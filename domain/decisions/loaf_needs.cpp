#include "domain/decisions/loaf_needs.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "domain/facts/material_amount.h"
#include "domain/facts/recipe_amounts.h"
#include "domain/ledger/lye.h"

namespace dyestead {
namespace {

class Listing {
public:
    Listing(const Records& records, LoafNeeds& result, int loaves)
        : records_{records}, shop_{records.shop}, result_{result}, loaves_{loaves} {}

    void parts() {
        for (const RecipePart& part : shop_.all<RecipePart>()) {
            if (part.head != result_.recipe->key) continue;
            const auto amount = part_amount(*result_.recipe, part);
            amount ? add(part.material, *amount, loaves_) : unsaid(Unsaid::amount);
        }
    }

    void lye_and_water() {
        const LyeNeed need = lye_need(shop_, *result_.recipe);
        if (!need.lye || !need.water) return unsaid(Unsaid::lye);
        for (const LyePart* part : {&need.sodium, &need.potassium}) {
            if (part->weighed.is_zero()) continue;
            if (!part->from) unsaid(Unsaid::no_lye);
            if (part->from) add(*part->from, Amount{part->weighed, Unit::g, Mark::measured}, loaves_);
        }
        const Material* water = used_last(Purpose::water);
        if (water == nullptr) unsaid(Unsaid::no_lye);
        if (water != nullptr) add(water->key, by_weight(*water, *need.water), loaves_);
    }

    void wrapping() {
        for (const RecipeWrapping& line : shop_.all<RecipeWrapping>())
            if (line.head == result_.recipe->key)
                add(line.material, line.per_bar, std::int64_t{loaves_} * result_.recipe->bars_per_loaf);
    }

    void dose() {
        const RecipeColouring& line = *result_.colouring;
        if (line.colouring == Colouring::plain || !line.colour) return;
        const Colour* colour = shop_.find(*line.colour);
        if (!line.dose) return unsaid(Unsaid::dose);
        const bool bought = line.colouring == Colouring::bought;
        const Material* material = bought ? matching(colour) : powder_of(*line.colour);
        if (material == nullptr || material->held_as != HeldAs::mass) return unsaid(Unsaid::no_colourant);
        const double strength = bought ? (colour->match_strength ? number(*colour->match_strength) : 1.0)
                                       : strength_in_stock(*material, colour).value_or(1.0);
        const double milligrams = static_cast<double>(line.dose->quantity.in_base()) / (strength > 0 ? strength : 1.0);
        keep(material->key, std::int64_t{std::llround(milligrams)} * loaves_, true);
    }

private:
    void add(Key<Material> key, const Amount& amount, std::int64_t times_over) {
        const Material* material = shop_.find(key);
        const auto held = material == nullptr ? std::nullopt : as_held(*material, amount);
        if (!held) return unsaid(Unsaid::amount);
        keep(key, scaled(held->in_base(), times_over, 1), false);
    }

    void keep(Key<Material> key, std::int64_t quantity, bool colour) {
        const auto same = std::ranges::find(result_.needs, key, &Need::material);
        if (same != result_.needs.end())
            same->quantity += quantity;
        else
            result_.needs.push_back({key, quantity, colour});
    }

    void unsaid(Unsaid what) {
        if (std::ranges::find(result_.unsaid, what) == result_.unsaid.end()) result_.unsaid.push_back(what);
    }

    // Water is called for by weight: one gram a millilitre where no density is on record.
    static Amount by_weight(const Material& water, Quantity mass) {
        if (water.held_as == HeldAs::volume && !water.density)
            return {Quantity{Kind::volume, mass.in_base()}, Unit::ml, Mark::measured};
        return {mass, Unit::g, Mark::measured};
    }

    // What the newest batch used for this purpose; else the first on record.
    const Material* used_last(Purpose purpose) const {
        std::vector<const Material*> all;
        for (const Material& each : shop_.all<Material>())
            if (each.purpose == purpose) all.push_back(&each);
        if (all.size() < 2) return all.empty() ? nullptr : all.front();
        const Material* found = nullptr;
        Day newest{};
        for (const BatchUse& use : shop_.all<BatchUse>()) {
            const auto material = std::ranges::find(all, use.material, &Material::key);
            const Batch* batch = material == all.end() ? nullptr : shop_.find(use.head);
            if (batch == nullptr || batch->date > records_.ledger.as_of) continue;
            if (found != nullptr && batch->date < newest) continue;
            found = *material;
            newest = batch->date;
        }
        return found != nullptr ? found : all.front();
    }

    const Material* matching(const Colour* colour) const {
        return colour == nullptr || !colour->bought_match ? nullptr : shop_.find(*colour->bought_match);
    }

    const Material* powder_of(Key<Colour> colour) const {
        for (const Material& each : shop_.all<Material>())
            if (each.kind == MaterialKind::pigment && each.colour == colour) return &each;
        // Not said of the powder itself: what the newest vat of the colour gave.
        const Lot* newest = nullptr;
        for (const DryingVat& line : shop_.all<DryingVat>()) {
            const Vat* vat = shop_.find(line.vat);
            const Drying* drying = shop_.find(line.head);
            if (vat == nullptr || drying == nullptr || vat->colour != colour || !drying->lot) continue;
            if (const Lot* lot = shop_.find(*drying->lot)) newest = lot;
        }
        return newest == nullptr ? nullptr : shop_.find(newest->material);
    }

    std::optional<double> strength_in_stock(const Material& powder, const Colour* colour) const {
        double tested = 0;
        double shade = 0;
        for (std::size_t i = 0; i < shop_.all<Lot>().size(); ++i) {
            const Lot& lot = shop_.all<Lot>()[i];
            if (lot.material != powder.key || records_.ledger.lots[i].left <= 0) continue;
            const ShadeTest* newest = nullptr;
            for (const ShadeTest& test : shop_.all<ShadeTest>())
                if (test.lot == lot.key && test.needed_for_same && !test.needed_for_same->is_zero() &&
                    colour != nullptr && colour->bought_match == test.against && test.date <= records_.ledger.as_of &&
                    (newest == nullptr || test.date >= newest->date))
                    newest = &test;
            if (newest == nullptr) continue;
            const double match = colour->match_strength ? number(*colour->match_strength) : 1.0;
            const auto left = static_cast<double>(records_.ledger.lots[i].left);
            tested += left;
            shade += left * match / number(*newest->needed_for_same);
        }
        return tested > 0 ? std::optional{shade / tested} : std::nullopt;
    }

    const Records& records_;
    const Shop& shop_;
    LoafNeeds& result_;
    int loaves_;
};

}  // namespace

LoafNeeds loaf_needs(const Records& records, Key<Material> bar, int loaves) {
    LoafNeeds result;
    const auto& colourings = records.shop.all<RecipeColouring>();
    const auto line = std::ranges::find(colourings, bar, &RecipeColouring::bar);
    result.recipe = line == colourings.end() ? nullptr : records.shop.find(line->head);
    if (result.recipe == nullptr) {
        result.unsaid.push_back(Unsaid::no_such_recipe);
        return result;
    }
    result.colouring = &*line;
    Listing listing{records, result, std::max(loaves, 0)};
    listing.parts();
    listing.lye_and_water();
    listing.dose();
    listing.wrapping();
    return result;
}

}  // namespace dyestead
