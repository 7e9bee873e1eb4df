// field_values.h - how does a value of a record stand in a field of the window, and what is read back from what was
// typed there? One function each way for every type a record has; the rules for what may be typed are
// domain/text/typed.h's.
#pragma once

#include <charconv>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "domain/facts/field_text.h"
#include "domain/facts/material_amount.h"
#include "domain/text/typed.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

// What a text is read by.
struct Reading {
    Day writing_for{};
    Measuring measuring{};
    const Material* material = nullptr;  // what an amount is of, where that is known
    std::string currency{};
    std::function<int(Moment)> utc_offset{};
};

// A fact is chosen by its key: two things of one name stay two things.
struct KeyCodes {
    template <class Fact>
    std::string code_of(Key<Fact> key) const {
        return key.number == 0 ? std::string{} : fmt::to_string(key.number);
    }
    std::string name_of(const AnyKey& any) const {
        return any.number == 0 ? std::string{} : fmt::format("{}/{}", any.table, any.number);
    }
    std::optional<AnyKey> any_key_of(std::string_view text) const;
    template <class Fact>
    std::optional<Key<Fact>> key_of(std::string_view text) const {
        Key<Fact> key;
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), key.number);
        if (error != std::errc{} || end != text.data() + text.size() || key.number <= 0) return std::nullopt;
        return key;
    }
};

std::string money_text(Money money);     // 34.90, 30
std::string day_text(Day day);           // 4 July 2026
std::string moment_text(Moment moment);  // 4 July 2026 14:10
Read<Moment> read_typed_moment_field(std::string_view text, const Reading& reading);
// The text of a number with the reader's decimal mark, so that it reads back: "1,5 kg", and "1,2340 kg" where three
// places behind a comma could be thousands.
std::string number_text(std::string_view as_in_records);
// "1.500": thousands where the reader's decimal mark is a comma, and one and a half by the records.
bool may_be_thousands(std::string_view typed);

// What is written with digits and a decimal mark.
template <class T>
constexpr bool kIsNumber = std::is_same_v<T, Amount> || std::is_same_v<T, Span> || std::is_same_v<T, Money> ||
                           std::is_same_v<T, Ratio> || std::is_same_v<T, Temperature> || std::is_same_v<T, Acidity>;

template <class T>
std::string field_text(const T& value) {
    if constexpr (field_detail::Is<T>::optional)
        return value ? field_text(*value) : std::string{};
    else if constexpr (std::is_same_v<T, Money>)
        return money_text(value);
    else if constexpr (std::is_same_v<T, Day>)
        return day_text(value);
    else if constexpr (std::is_same_v<T, Moment>)
        return moment_text(value);
    else if constexpr (kIsNumber<T>)
        return number_text(print_field(value, KeyCodes{}));
    else
        return print_field(value, KeyCodes{});
}

// A blank, or `-` for "not measured", is nothing where the record may do without.
template <class T>
Read<T> read_typed_field(std::string_view text, const Reading& reading) {
    if constexpr (field_detail::Is<T>::optional) {
        using Inner = typename field_detail::Is<T>::Inner;
        if (trimmed(text).empty() || trimmed(text) == "-") return T{};
        const auto inner = read_typed_field<Inner>(text, reading);
        if (!inner) return *inner.trouble;
        return T{*inner};
    } else {
        if (trimmed(text).empty()) return TroubleId::blank;
        if constexpr (kIsNumber<T>)
            if (may_be_thousands(text)) return TroubleId::which_decimal_mark;
        if constexpr (std::is_same_v<T, Amount>)
            return read_typed_amount(text, reading.measuring);
        else if constexpr (std::is_same_v<T, Day>)
            return read_typed_day(text, reading.writing_for, reports::month_names());
        else if constexpr (std::is_same_v<T, Span>)
            return read_typed_span(text);
        else if constexpr (std::is_same_v<T, Moment>)
            return read_typed_moment_field(text, reading);
        else if constexpr (std::is_same_v<T, Money>)
            return read_typed_money(text, reading.currency);
        else if constexpr (std::is_same_v<T, Ratio>)
            return read_typed_ratio(text);
        else if constexpr (std::is_same_v<T, int>)
            return read_typed_count(text);
        else if constexpr (std::is_same_v<T, Temperature> || std::is_same_v<T, Acidity>)
            return read_field<T>(with_point(text), KeyCodes{});
        else if constexpr (std::is_same_v<T, std::string>)
            return std::string{trimmed(text)};
        else
            return read_field<T>(text, KeyCodes{});
    }
}

// What was read, said back: "about 2.2 kg", "1 h 30 min"; blank where the text itself says all there is to say.
std::string said_back(const Amount& amount, const Reading& reading);
std::string said_back(const Span& span, const Reading& reading);
std::string said_back(Money money, const Reading& reading);
std::string said_back(Day day, const Reading& reading);
std::string said_back(Moment moment, const Reading& reading);
template <class T>
std::string said_back(const T& value, const Reading& reading) {
    if constexpr (field_detail::Is<T>::optional) {
        return value ? said_back(*value, reading) : std::string{};
    } else {
        return {};
    }
}

// Nothing is wrong where an amount can be counted in the kind its material is held in.
std::optional<std::string> amount_trouble(const Amount& amount, const Reading& reading);
// Why a text cannot stand in a field, and how to mend it.
std::string field_trouble(TroubleId id, std::string_view text);

}  // namespace dyestead::gui
