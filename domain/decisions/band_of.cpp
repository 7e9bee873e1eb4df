#include "domain/decisions/band_of.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace dyestead {
namespace {

// So many values, evenly spread over all, tell about where the three are.
constexpr std::size_t kSample = 4'096;

std::size_t place(double share, std::size_t count) {
    return static_cast<std::size_t>(share * static_cast<double>(count - 1));
}

double at_place(std::vector<double>& values, std::size_t place) {
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(place);
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

// The values between two, and how many lie below.
struct Window {
    double from = 0;
    double to = 0;
    std::size_t below = 0;
    std::size_t count = 0;         // inside
    std::vector<double> inside{};  // where they differ

    void look_at(double value) {
        const std::size_t is_under = value < from ? 1 : 0;
        const std::size_t is_upto = value <= to ? 1 : 0;
        below += is_under;
        count += is_upto - is_under;
        // Seldom, so that the machine need not guess.
        if (is_under != is_upto && from < to) inside.push_back(value);
    }
    // Nothing where it lies outside.
    std::optional<double> at(std::size_t place) {
        if (place < below || place - below >= count) return std::nullopt;
        return inside.empty() ? from : at_place(inside, place - below);
    }
};

// Four standard errors to either side of where the sample has it.
Window around(const std::vector<double>& sample, double share) {
    const auto at = static_cast<std::ptrdiff_t>(place(share, sample.size()));
    const auto apart =
        static_cast<std::ptrdiff_t>(4 * std::sqrt(static_cast<double>(sample.size()) * share * (1 - share)));
    const auto last = static_cast<std::ptrdiff_t>(sample.size()) - 1;
    const auto value = [&](std::ptrdiff_t where) {
        return sample[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(where, 0, last))];
    };
    return {value(at - apart), value(at + apart)};
}

}  // namespace

Band band_of(const std::vector<double>& values) {
    std::vector<double> sample;
    const std::size_t step = values.size() / kSample + 1;
    for (std::size_t i = 0; i < values.size(); i += step) sample.push_back(values[i]);
    std::ranges::sort(sample);
    Window bad = around(sample, kBad);
    Window usual = around(sample, kUsual);
    Window good = around(sample, kGood);
    for (const double value : values) {
        bad.look_at(value);
        usual.look_at(value);
        good.look_at(value);
    }
    const auto found = [&](Window& window, double share) {
        const std::size_t wanted = place(share, values.size());
        if (const auto value = window.at(wanted)) return *value;
        std::vector<double> all = values;
        return at_place(all, wanted);
    };
    return {found(bad, kBad), found(usual, kUsual), found(good, kGood)};
}

}  // namespace dyestead
