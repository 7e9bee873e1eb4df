// column.h - in which columns of the shop file does a value of each type stand?
// From this and a fact's field list come the insert, the select and the seal (row.h, seal.h).
// A source gives whole(), text() and is_nothing() of the next column, and skips columns.
#pragma once

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead::db {

// A cell that none of our versions wrote: the file is damaged.
struct BadCell : std::runtime_error {
    BadCell() : std::runtime_error("a cell holds what no version of this program writes") {}
};

inline constexpr std::array<std::string_view, 3> kMarkWords{"measured", "about", "method"};
inline constexpr std::array<std::string_view, 2> kTimeUnitWords{"min", "h"};

// What is added to a field's name, for each of its columns.
template <class T>
inline constexpr auto kSuffixes = std::array<std::string_view, 1>{""};
template <>
inline constexpr auto kSuffixes<Amount> = std::array<std::string_view, 3>{"", "_unit", "_mark"};
template <>
inline constexpr auto kSuffixes<Span> = std::array<std::string_view, 3>{"", "_unit", "_mark"};
template <>
inline constexpr auto kSuffixes<Ratio> = std::array<std::string_view, 2>{"_top", "_bottom"};
template <>
inline constexpr auto kSuffixes<Moment> = std::array<std::string_view, 3>{"", "_minute", "_utc_offset"};
template <>
inline constexpr auto kSuffixes<AnyKey> = std::array<std::string_view, 2>{"_table", "_key"};
template <class T>
inline constexpr auto kSuffixes<std::optional<T>> = kSuffixes<T>;

template <class T>
inline constexpr bool kIsOptional = false;
template <class T>
inline constexpr bool kIsOptional<std::optional<T>> = true;
template <class T>
inline constexpr bool kIsKey = false;
template <class Fact>
inline constexpr bool kIsKey<Key<Fact>> = true;

// Takes the values of a row, column after column.
class Sink {
public:
    virtual void whole(std::int64_t number) = 0;
    virtual void text(std::string_view words) = 0;
    virtual void nothing() = 0;

protected:
    ~Sink() = default;
};

// Not inlined, as fetch() below: there are hundreds of fields, and of types a tenth of it.
template <class T>
[[gnu::noinline]] void store(const T& value, Sink& sink) {
    if constexpr (kIsOptional<T>) {
        if (value) return store(*value, sink);
        for (std::size_t i = 0; i < kSuffixes<T>.size(); ++i) sink.nothing();
    } else if constexpr (std::is_same_v<T, std::string>) {
        sink.text(value);
    } else if constexpr (kIsKey<T>) {
        sink.whole(value.number);
    } else if constexpr (std::is_same_v<T, Day>) {
        sink.whole(value.time_since_epoch().count());
    } else if constexpr (std::is_same_v<T, Money>) {
        sink.whole(value.in_millionths());
    } else if constexpr (std::is_same_v<T, Amount>) {
        sink.whole(value.quantity.in_base());
        sink.text(info(value.unit).code);
        sink.text(kMarkWords[static_cast<std::size_t>(value.mark)]);
    } else if constexpr (std::is_same_v<T, Span>) {
        sink.whole(value.time.in_millionths());
        sink.text(kTimeUnitWords[static_cast<std::size_t>(value.unit)]);
        sink.text(kMarkWords[static_cast<std::size_t>(value.mark)]);
    } else if constexpr (std::is_same_v<T, Ratio>) {
        sink.whole(value.top);
        sink.whole(value.bottom);
    } else if constexpr (std::is_same_v<T, Moment>) {
        sink.whole(value.day.time_since_epoch().count());
        sink.whole(value.minute);
        sink.whole(value.utc_offset);
    } else if constexpr (std::is_same_v<T, AnyKey>) {
        sink.text(value.table);
        sink.whole(value.number);
    } else if constexpr (std::is_same_v<T, Temperature>) {
        sink.whole(value.tenths);
    } else if constexpr (std::is_same_v<T, Acidity>) {
        sink.whole(value.hundredths);
    } else if constexpr (std::is_same_v<T, int>) {
        sink.whole(value);
    } else {
        static_assert(std::is_enum_v<T>, "a field of a type that has no columns");
        sink.text(word(value));
    }
}

// Throws: BadCell.
template <class Enum, std::size_t kCount>
Enum one_of(const std::array<std::string_view, kCount>& words, std::string_view text) {
    const auto at = std::ranges::find(words, text);
    if (at == words.end()) throw BadCell{};
    return static_cast<Enum>(at - words.begin());
}

template <class Int>
Int narrowed(std::int64_t number) {
    if (number != static_cast<Int>(number)) throw BadCell{};
    return static_cast<Int>(number);
}

// Throws: BadCell.
template <class T, class Source>
[[gnu::noinline]] T fetch(Source& source) {
    if constexpr (kIsOptional<T>) {
        if (!source.is_nothing()) return fetch<typename T::value_type>(source);
        source.skip(kSuffixes<T>.size());
        return std::nullopt;
    } else if constexpr (std::is_same_v<T, std::string>) {
        return std::string{source.text()};
    } else if constexpr (kIsKey<T>) {
        return {source.whole()};
    } else if constexpr (std::is_same_v<T, Day>) {
        return Day{Days{narrowed<int>(source.whole())}};
    } else if constexpr (std::is_same_v<T, Money>) {
        return Money::millionths(source.whole());
    } else if constexpr (std::is_same_v<T, Amount>) {
        const std::int64_t base = source.whole();
        const auto unit = std::ranges::find(kUnits, source.text(), &UnitInfo::code);
        if (unit == kUnits.end()) throw BadCell{};
        return {Quantity{unit->kind, base}, unit->unit, one_of<Mark>(kMarkWords, source.text())};
    } else if constexpr (std::is_same_v<T, Span>) {
        const auto time = Minutes::millionths(source.whole());
        const auto unit = one_of<TimeUnit>(kTimeUnitWords, source.text());
        return {time, unit, one_of<Mark>(kMarkWords, source.text())};
    } else if constexpr (std::is_same_v<T, Ratio>) {
        const std::int64_t top = source.whole();
        const std::int64_t bottom = source.whole();
        if (bottom <= 0) throw BadCell{};
        return {top, bottom};
    } else if constexpr (std::is_same_v<T, Moment>) {
        const Day day{Days{narrowed<int>(source.whole())}};
        const int minute = narrowed<int>(source.whole());
        return {day, minute, narrowed<int>(source.whole())};
    } else if constexpr (std::is_same_v<T, AnyKey>) {
        std::string table{source.text()};
        return {std::move(table), source.whole()};
    } else if constexpr (std::is_same_v<T, Temperature>) {
        return {narrowed<std::int32_t>(source.whole())};
    } else if constexpr (std::is_same_v<T, Acidity>) {
        return {narrowed<std::int32_t>(source.whole())};
    } else if constexpr (std::is_same_v<T, int>) {
        return narrowed<int>(source.whole());
    } else {
        static_assert(std::is_enum_v<T>, "a field of a type that has no columns");
        return one_of<T>(kWords<T>, source.text());
    }
}

template <class T, class Source>
[[gnu::noinline]] void fetch_into(T& value, Source& source) {
    value = fetch<T>(source);
}

// All that stands in the row of a fact, in the order of its columns. Of a const Fact, const.
template <class Fact, class Visit>
void for_each_value(Fact& fact, Visit&& visit) {
    visit(fact.key);
    if constexpr (Line<std::remove_const_t<Fact>>) {
        visit(fact.head);
        visit(fact.position);
    } else {
        visit(fact.code);
    }
    for_each_field<std::remove_const_t<Fact>>([&](const auto& each) { visit(fact.*each.member); });
}

template <class Fact, class Source>
void fetch_fact(Fact& fact, Source& source) {
    for_each_value(fact, [&](auto& value) { fetch_into(value, source); });
}

}  // namespace dyestead::db
