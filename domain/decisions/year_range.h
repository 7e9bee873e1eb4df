// year_range.h - what does a figure come to in a bad year, a usual one and a good one, and where is that known from?
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>

namespace dyestead {

// Empty: not known, or no amount would do, for nothing came of it.
struct YearRange {
    std::optional<double> bad;
    std::optional<double> usual;
    std::optional<double> good;
};

enum class SowingFrom : std::uint8_t {
    nothing,
    sales,     // of the last 12 months
    asked,     // by whoever asks
    recipe,    // the doses of the recipes
    records,   // own seasons
    method,    // what the colour's method says is usual
    plant,     // what is put down for the plant
    setting,   // what the maker set for all sowing
    supposed,  // the program's own default
};

struct SowingFigure {
    YearRange of;
    SowingFrom from = SowingFrom::nothing;
    int seasons = 0;  // on record
};

// Nothing where there is nothing to divide by.
constexpr std::optional<double> over(std::optional<double> top, std::optional<double> bottom) {
    return top && bottom && *bottom > 0 ? std::optional{*top / *bottom} : std::nullopt;
}
// Year by year.
constexpr YearRange over(const YearRange& top, const YearRange& bottom) {
    return {over(top.bad, bottom.bad), over(top.usual, bottom.usual), over(top.good, bottom.good)};
}
constexpr std::optional<double> times(std::optional<double> a, std::optional<double> b) {
    return a && b ? std::optional{*a * *b} : std::nullopt;
}
constexpr YearRange times(const YearRange& a, const YearRange& b) {
    return {times(a.bad, b.bad), times(a.usual, b.usual), times(a.good, b.good)};
}
constexpr YearRange every_year(double value) {
    return {value, value, value};
}
constexpr YearRange times(const YearRange& range, double factor) {
    return times(range, every_year(factor));
}

// The bad and the good year moved out to take in one more season.
constexpr void widen(YearRange& range, double season) {
    range.bad = std::min(range.bad.value_or(season), season);
    range.good = std::max(range.good.value_or(season), season);
}

}  // namespace dyestead
