#include "domain/decisions/starter_plants.h"

#include <algorithm>
#include <array>

namespace dyestead {
namespace {

struct Starter {
    std::string_view called;  // part of the name, in small letters
    std::string_view latin;
    std::string_view part;
    std::int64_t low_grams;  // from a square metre
    std::int64_t usual_grams;
    std::int64_t high_grams;
    int years_to_first;
    std::int64_t seed_milligrams;  // to a square metre
    int days_to_harvest;           // 0: no annual
    Caution caution;
};

constexpr std::array<Starter, 5> kStarters{{
    {"indigo", "Persicaria tinctoria", "leaf", 1'000, 2'000, 5'000, 0, 1'000, 100, Caution::none},
    {"madder", "Rubia tinctorum", "root, dried", 60, 150, 180, 3, 900, 0, Caution::sensitising},
    {"weld", "Reseda luteola", "whole herb, dried", 300, 500, 600, 1, 300, 0, Caution::invasive},
    {"calendula", "Calendula officinalis", "flower heads, dried", 100, 150, 200, 0, 600, 75, Caution::none},
    {"coreopsis", "Coreopsis tinctoria", "flowers, dried", 20, 40, 60, 0, 100, 60, Caution::none},
}};

char small(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

Amount about(std::int64_t grams) {
    return {Quantity::grams(grams), Unit::g, Mark::about};
}

}  // namespace

bool fill_in_starter(Plant& plant, std::string_view name) {
    const auto named = [&](const Starter& starter) {
        return std::search(name.begin(), name.end(), starter.called.begin(), starter.called.end(),
                           [](char a, char b) { return small(a) == b; }) != name.end();
    };
    const auto* const found = std::ranges::find_if(kStarters, named);
    if (found == kStarters.end()) return false;
    plant.latin = found->latin;
    plant.part = found->part;
    plant.low = about(found->low_grams);
    plant.usual = about(found->usual_grams);
    plant.high = about(found->high_grams);
    plant.years_to_first = found->years_to_first;
    plant.caution = found->caution;
    plant.seed_rate = Amount{Quantity::milligrams(found->seed_milligrams), Unit::mg, Mark::about};
    if (found->days_to_harvest > 0) plant.days_to_harvest = found->days_to_harvest;
    return true;
}

}  // namespace dyestead
