#include "domain/text/decimal.h"

#include <fmt/format.h>

namespace dyestead {

std::int64_t power_of_ten(int exponent) {
    std::int64_t power = 1;
    for (int i = 0; i < exponent; ++i) power *= 10;
    return power;
}

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!text.empty() && blank(text.front())) text.remove_prefix(1);
    while (!text.empty() && blank(text.back())) text.remove_suffix(1);
    return text;
}

Read<Decimal> read_decimal(std::string_view text) {
    constexpr int kMostDigits = 18;
    text = trimmed(text);
    if (text.empty()) return TroubleId::blank;
    const bool negative = text.front() == '-';
    if (negative) text.remove_prefix(1);
    Decimal decimal;
    bool point = false;
    int count = 0;
    for (const char c : text) {
        if (c == '.' && !point) {
            point = true;
            continue;
        }
        if (c < '0' || c > '9') return TroubleId::not_a_number;
        if (decimal.digits != 0 || c != '0') ++count;
        if (point) ++decimal.places;
        if (count > kMostDigits || decimal.places > kMostDigits) return TroubleId::too_large;
        decimal.digits = decimal.digits * 10 + (c - '0');
    }
    if (text.empty() || text == ".") return TroubleId::not_a_number;
    if (negative) decimal.digits = -decimal.digits;
    return decimal;
}

std::string print_decimal(Decimal decimal) {
    while (decimal.places > 0 && decimal.digits % 10 == 0) {
        decimal.digits /= 10;
        --decimal.places;
    }
    if (decimal.places == 0) return fmt::format("{}", decimal.digits);
    const auto power = static_cast<std::uint64_t>(power_of_ten(decimal.places));
    // Unsigned, for the lowest number has no positive twin.
    const auto digits = static_cast<std::uint64_t>(decimal.digits);
    const std::uint64_t size = decimal.digits < 0 ? 0 - digits : digits;
    return fmt::format("{}{}.{:0{}}", decimal.digits < 0 ? "-" : "", size / power, size % power, decimal.places);
}

std::string shortest_decimal(std::int64_t base, std::int64_t top, std::int64_t bottom, int most) {
    Decimal decimal;
    for (int places = 0; places <= most; ++places) {
        const std::int64_t power = power_of_ten(places);
        decimal = {scaled(static_cast<Wide>(base) * power, bottom, top), places};
        if (scaled(decimal.digits, top, static_cast<Wide>(bottom) * power) == base) break;
    }
    return print_decimal(decimal);
}

}  // namespace dyestead
