#include "domain/decisions/starter_oils.h"

#include <algorithm>
#include <array>

namespace dyestead {
namespace {

constexpr std::array<StarterOil, 11> kOils{{
    {"coconut", 248, 265, 908, 921, 40, "Codex CXS 210"},
    {"sunflower", 187, 194, 916, 923, 20, "Codex CXS 210-1999, amended 2022"},
    {"shea", 160, 195, 890, 930, 40, "Codex CXS 325R-2017"},
    {"olive", 187, 196, 914, 919, 20, "Ichino 1988"},
    {"almond", 190, 200, 910, 915, 25, "USP 29"},
    {"sesame", 188, 195, 916, 921, 25, "USP 32"},
    {"castor", 176, 187, 957, 961, 25, "BP 1993, density USP 29"},
    {"cocoa butter", 192, 198, 0, 0, 0, "Knapp 1920"},
    {"cottonseed", 189, 198, 916, 918, 20, "Ichino 1988"},
    {"tallow", 190, 199, 0, 0, 0, "Ichino 1988"},
    {"lard", 190, 202, 0, 0, 0, "Ichino 1988"},
}};
// Of the same plant, and quite another oil.
constexpr std::array<std::string_view, 4> kOthers{"fractionated", "hydrogenated", "pomace", "oleic"};

char small(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

bool has(std::string_view name, std::string_view word) {
    return std::search(name.begin(), name.end(), word.begin(), word.end(),
                       [](char a, char b) { return small(a) == b; }) != name.end();
}

}  // namespace

std::optional<StarterOil> starter_oil(std::string_view name) {
    if (std::ranges::any_of(kOthers, [&](std::string_view word) { return has(name, word); })) return std::nullopt;
    const auto* const found = std::ranges::find_if(kOils, [&](const StarterOil& oil) { return has(name, oil.called); });
    return found == kOils.end() ? std::nullopt : std::optional{*found};
}

std::optional<Ratio> usual_density(const StarterOil& oil) {
    if (oil.density_low == 0) return std::nullopt;
    constexpr int kHalf = 5;
    constexpr int kTenThousand = 10'000;
    return Ratio{(oil.density_low + oil.density_high) * kHalf, kTenThousand};
}

}  // namespace dyestead
