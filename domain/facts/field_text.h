// field_text.h - how does one field of a fact look in a file of records, and what is read back?
// One function each way for every type that a field may have; what is printed reads back the same.
// `codes` stands between the keys of facts and their codes: codes.code_of(key) gives a string,
// codes.template key_of<Fact>(code) an optional key; codes.name_of(any_key) and codes.any_key_of(name) likewise for a
// record of any kind, which is named by its table and its code: "vat/blue-2026-1", "vat_step/blue-2026-1/3".
#pragma once

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

#include "domain/facts/field.h"
#include "domain/text/amounts.h"
#include "domain/text/decimal.h"

namespace dyestead {

// The most pieces, days or years a fact may state: as many pieces as the largest quantity has.
inline constexpr int kLargestStatedCount = static_cast<int>(kLargestStatedBase / 1'000);

// What people name a fact by. Anything but blanks at the ends, commas, quotes and control characters.
constexpr bool is_code(std::string_view text) {
    const auto bad = [](char c) { return c == ',' || c == '"' || static_cast<unsigned char>(c) < 0x20 || c == 0x7F; };
    return !text.empty() && text.front() != ' ' && text.back() != ' ' && std::ranges::none_of(text, bad);
}

namespace field_detail {
template <class T>
struct Is {
    static constexpr bool optional = false;
    static constexpr bool key = false;
    using Inner = T;
};
template <class T>
struct Is<std::optional<T>> {
    static constexpr bool optional = true;
    static constexpr bool key = false;
    using Inner = T;
};
template <class Fact>
struct Is<Key<Fact>> {
    static constexpr bool optional = false;
    static constexpr bool key = true;
    using Inner = Fact;
};
}  // namespace field_detail

inline Read<int> read_count(std::string_view text) {
    text = trimmed(text);
    if (text.empty()) return TroubleId::blank;
    const auto decimal = read_decimal(text);
    if (!decimal) return *decimal.trouble;
    if ((*decimal).digits < 0) return TroubleId::below_zero;
    if ((*decimal).places > 0) return TroubleId::not_a_whole_number;
    if ((*decimal).digits > kLargestStatedCount) return TroubleId::too_large;
    return static_cast<int>((*decimal).digits);
}

template <class T, class Codes>
std::string print_field(const T& value, const Codes& codes) {
    if constexpr (field_detail::Is<T>::optional)
        return value ? print_field(*value, codes) : std::string{};
    else if constexpr (field_detail::Is<T>::key)
        return codes.code_of(value);
    else if constexpr (std::is_same_v<T, AnyKey>)
        return codes.name_of(value);
    else if constexpr (std::is_same_v<T, std::string>)
        return value;
    else if constexpr (std::is_same_v<T, int>)
        return fmt::format("{}", value);
    else if constexpr (std::is_enum_v<T>)
        return std::string{word(value)};
    else
        return print(value);
}

// A blank cell is nothing where the field may be blank, else the trouble blank. Text is kept as it stands.
template <class T, class Codes>
Read<T> read_field(std::string_view text, const Codes& codes) {
    if constexpr (field_detail::Is<T>::optional) {
        using Inner = typename field_detail::Is<T>::Inner;
        if (trimmed(text).empty()) return T{};
        const auto inner = read_field<Inner>(text, codes);
        if (!inner) return *inner.trouble;
        return T{*inner};
    } else if constexpr (field_detail::Is<T>::key) {
        if (trimmed(text).empty()) return TroubleId::blank;
        const auto key = codes.template key_of<typename field_detail::Is<T>::Inner>(trimmed(text));
        if (!key) return TroubleId::no_such_reference;
        return *key;
    } else if constexpr (std::is_same_v<T, AnyKey>) {
        if (trimmed(text).empty()) return TroubleId::blank;
        const auto key = codes.any_key_of(trimmed(text));
        if (!key) return TroubleId::no_such_record;
        return *key;
    } else if constexpr (std::is_same_v<T, std::string>) {
        if (trimmed(text).empty()) return TroubleId::blank;
        return std::string{text};
    } else if constexpr (std::is_enum_v<T>) {
        if (trimmed(text).empty()) return TroubleId::blank;
        const auto at = std::ranges::find(kWords<T>, trimmed(text));
        if (at == kWords<T>.end()) return TroubleId::not_one_of;
        return static_cast<T>(at - kWords<T>.begin());
    } else if constexpr (std::is_same_v<T, int>) {
        return read_count(text);
    } else if constexpr (std::is_same_v<T, Day>) {
        return read_day(text);
    } else if constexpr (std::is_same_v<T, Money>) {
        return read_money(text);
    } else if constexpr (std::is_same_v<T, Amount>) {
        return read_amount(text);
    } else if constexpr (std::is_same_v<T, Span>) {
        return read_span(text);
    } else if constexpr (std::is_same_v<T, Ratio>) {
        return read_ratio(text);
    } else if constexpr (std::is_same_v<T, Temperature>) {
        return read_temperature(text);
    } else if constexpr (std::is_same_v<T, Moment>) {
        return read_moment(text);
    } else {
        static_assert(std::is_same_v<T, Acidity>, "a field of a type that has no text");
        return read_acidity(text);
    }
}

// The words a field of this type may hold, for the sentence that says so; blank when it is no choice.
template <class T>
std::string choices_of() {
    std::string choices;
    if constexpr (field_detail::Is<T>::optional)
        choices = choices_of<typename field_detail::Is<T>::Inner>();
    else if constexpr (std::is_enum_v<T>)
        for (const auto each : kWords<T>) choices += fmt::format("{}{}", choices.empty() ? "" : ", ", each);
    return choices;
}

}  // namespace dyestead
