#include "domain/decisions/dye_yield.h"

#include "domain/decisions/strength.h"

namespace dyestead {
namespace {

constexpr double kSupposed = 1;

std::optional<double> stated(const std::optional<Ratio>& ratio) {
    return ratio && ratio->top > 0 ? std::optional{number(*ratio)} : std::nullopt;
}

SowingFigure strength_untested(const Plant* plant) {
    const auto usual = plant == nullptr ? std::nullopt : stated(plant->strength_usual);
    if (!usual) return {{kIfWeaker, kSupposed, kSupposed}, SowingFrom::supposed, 0};
    return {{stated(plant->strength_low).value_or(*usual), usual, stated(plant->strength_high).value_or(*usual)},
            SowingFrom::plant,
            0};
}

SowingFigure stated_yield(const Shop& shop, const Colour& colour) {
    for (const Method& method : shop.all<Method>()) {
        const auto usual = in_grams(method.usual);
        if (method.colour != colour.key || !usual || *usual <= 0) continue;
        return {{in_grams(method.low).value_or(*usual), usual, in_grams(method.high).value_or(*usual)},
                SowingFrom::method,
                0};
    }
    return {};
}

struct Season {
    std::vector<FinishedVat> vats;
    double grams = 0;  // less lost
    double kg = 0;
    void add(const FinishedVat& vat) {
        vats.push_back(vat);
        grams += vat.grams - vat.grams_lost;
        kg += vat.kg;
    }
    double yield() const { return grams / kg; }
};

}  // namespace

std::optional<double> in_grams(const std::optional<Amount>& amount) {
    if (!amount || amount->quantity.kind() != Kind::mass) return std::nullopt;
    return static_cast<double>(amount->quantity.in_base()) / 1e3;
}

DyeYield dye_yield(const Records& records, const Colour& colour, const Plant* plant,
                   const std::vector<FinishedVat>& vats) {
    std::map<int, Season> seasons;
    Season all;
    for (const FinishedVat& vat : vats) {
        seasons[vat.season].add(vat);
        all.add(vat);
    }
    const auto tested = strength_of(records, colour, all.vats).known();
    DyeYield result;
    result.strength = tested ? SowingFigure{{{}, tested, {}}, SowingFrom::records, 0} : strength_untested(plant);
    if (all.kg <= 0) {
        result.powder_per_kg = stated_yield(records.shop, colour);
        if (tested) result.strength.of = every_year(*tested);
        result.shade_per_kg = {times(result.powder_per_kg.of, result.strength.of), result.powder_per_kg.from, 0};
        return result;
    }
    result.powder_per_kg.from = result.shade_per_kg.from = SowingFrom::records;
    for (const auto& [year, season] : seasons) {
        if (season.kg <= 0) continue;
        ++result.powder_per_kg.seasons;
        widen(result.powder_per_kg.of, season.yield());
        if (!tested) continue;
        const auto here = strength_of(records, colour, season.vats).known();
        if (here) ++result.strength.seasons;
        widen(result.strength.of, here.value_or(*tested));
        widen(result.shade_per_kg.of, season.yield() * here.value_or(*tested));
    }
    result.powder_per_kg.of.usual = all.yield();
    if (!tested) result.shade_per_kg.of = times(result.powder_per_kg.of, result.strength.of);
    result.shade_per_kg.of.usual = all.yield() * *result.strength.of.usual;
    result.shade_per_kg.seasons = result.powder_per_kg.seasons;
    return result;
}

}  // namespace dyestead
