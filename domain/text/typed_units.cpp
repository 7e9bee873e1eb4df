#include "domain/text/typed_units.h"

#include <algorithm>

#include "domain/text/typed_tokens.h"

namespace dyestead {

namespace {

struct UnitName {
    std::string_view name;
    Unit unit;
};

// Beside the codes of values/unit.h, and their plurals with s. The US spells metre and litre its own way.
constexpr std::array<UnitName, 38> kNames{{
    {"milligram", Unit::mg},
    {"milligramme", Unit::mg},
    {"gram", Unit::g},
    {"gramme", Unit::g},
    {"kilo", Unit::kg},
    {"kilogram", Unit::kg},
    {"kilogramme", Unit::kg},
    {"ounce", Unit::oz},
    {"pound", Unit::lb},
    {"millilitre", Unit::ml},
    {"milliliter", Unit::ml},
    {"centilitre", Unit::cl},
    {"centiliter", Unit::cl},
    {"litre", Unit::l},
    {"liter", Unit::l},
    {"ltr", Unit::l},
    {"sqcm", Unit::cm2},
    {"sq cm", Unit::cm2},
    {"square cm", Unit::cm2},
    {"square centimetre", Unit::cm2},
    {"square centimeter", Unit::cm2},
    {"sqm", Unit::m2},
    {"sq m", Unit::m2},
    {"square m", Unit::m2},
    {"square metre", Unit::m2},
    {"square meter", Unit::m2},
    {"sqft", Unit::ft2},
    {"sq ft", Unit::ft2},
    {"square ft", Unit::ft2},
    {"square foot", Unit::ft2},
    {"square feet", Unit::ft2},
    {"watt hour", Unit::wh},
    {"kilowatt hour", Unit::kwh},
    {"piece", Unit::piece},
    {"pc", Unit::piece},
    {"bar", Unit::piece},
    {"seed", Unit::piece},
    {"plant", Unit::piece},
}};

// Measures that are not the same everywhere.
struct KitchenName {
    std::string_view name;
    std::string_view other;
    std::optional<Unit> metric;
    Unit us;
    std::optional<Unit> uk;
};

constexpr std::array<KitchenName, 6> kKitchen{{
    {"tsp", "teaspoon", Unit::tsp, Unit::us_tsp, Unit::tsp},
    {"tbsp", "tablespoon", Unit::tbsp, Unit::us_tbsp, Unit::tbsp},
    {"fl oz", "fluid ounce", std::nullopt, Unit::us_fl_oz, Unit::uk_fl_oz},
    {"cup", "cupful", std::nullopt, Unit::us_cup, std::nullopt},
    {"pt", "pint", std::nullopt, Unit::us_pt, Unit::uk_pt},
    {"gal", "gallon", std::nullopt, Unit::us_gal, Unit::uk_gal},
}};

bool same_but_plural(std::string_view a, std::string_view b) {
    if (a.size() < b.size()) std::swap(a, b);
    if (!a.starts_with(b)) return false;
    const auto rest = a.substr(b.size());
    return rest.empty() || rest == "s" || rest == "es";
}

std::string words_of(std::string_view name) {
    std::string words;
    for (const Token& token : tokens_of(plain_text(name))) {
        if (!words.empty()) words += ' ';
        words += token.text;
    }
    return words;
}

const TypedMeasure* own_measure(std::string_view words, const std::vector<TypedMeasure>& own) {
    const TypedMeasure* found = nullptr;
    for (const TypedMeasure& each : own) {
        const std::string name = words_of(each.name);
        if (name == words) return &each;
        if (same_but_plural(name, words)) found = &each;
    }
    return found;
}

TypedUnit plain_unit(Unit unit) {
    return {info(unit).kind, info(unit).base, unit};
}

// Takes "us " or the like off the front.
std::optional<Spoons> take_place(std::string_view& words) {
    constexpr std::array<std::pair<std::string_view, Spoons>, 4> kPlaces{
        {{"us ", Spoons::us}, {"uk ", Spoons::uk}, {"imperial ", Spoons::uk}, {"metric ", Spoons::metric}}};
    for (const auto& [name, place] : kPlaces) {
        if (!words.starts_with(name)) continue;
        words.remove_prefix(name.size());
        return place;
    }
    return std::nullopt;
}

Read<TypedUnit> kitchen_unit(const KitchenName& name, std::optional<Spoons> told, Spoons setting) {
    std::optional<Unit> unit;
    switch (told.value_or(setting)) {
        case Spoons::metric: unit = name.metric; break;
        case Spoons::us: unit = name.us; break;
        case Spoons::uk: unit = name.uk; break;
    }
    if (unit) return plain_unit(*unit);
    if (told) return TroubleId::no_such_unit;
    return name.uk ? TroubleId::us_or_uk : TroubleId::which_cup;
}

}  // namespace

Read<TypedUnit> read_typed_unit(std::string_view words, const Measuring& measuring) {
    if (const TypedMeasure* const own = own_measure(words, measuring.own); own != nullptr) {
        const Amount& amount = own->amount;
        return TypedUnit{amount.quantity.kind(), {amount.quantity.in_base(), 1}, amount.unit, amount.mark};
    }
    if (words == "dozen") return TypedUnit{Kind::count, {12'000, 1}, Unit::piece};
    auto kitchen = words;
    const auto told = take_place(kitchen);
    for (const KitchenName& each : kKitchen)
        if (same_but_plural(kitchen, each.name) || same_but_plural(kitchen, each.other) ||
            (kitchen == "floz" && each.name == "fl oz"))
            return kitchen_unit(each, told, measuring.spoons);
    for (const UnitInfo& each : kUnits)
        if (!each.code.empty() && (plain_text(each.code) == words || plain_text(each.code) + "s" == words))
            return plain_unit(each.unit);
    for (const UnitName& each : kNames)
        if (each.name == words || (words.starts_with(each.name) && words.substr(each.name.size()) == "s"))
            return plain_unit(each.unit);
    return TroubleId::no_such_unit;
}

}  // namespace dyestead
