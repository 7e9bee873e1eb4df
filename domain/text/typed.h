// typed.h - what did somebody mean who typed into a field of the window?
// More than the forms of the files (amounts.h): a decimal comma, `about`, sums, packs and own measures for amounts;
// `3 July`, `today`, `+` for days. What cannot be read in one way only is refused with a question, never guessed.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "domain/text/amounts.h"

namespace dyestead {

// A measure of the maker's own: "bucket".
struct TypedMeasure {
    std::string name;
    Amount amount;
};

// What an amount may be told by, beside the units.
struct Measuring {
    std::optional<Kind> kind{};       // what is wanted; a number alone then takes the unit that is usual for it
    std::optional<Amount> there{};    // what is there: "half" is half of it, "all" all
    std::vector<TypedMeasure> own{};  // "2 buckets"
};

Read<Amount> read_typed_amount(std::string_view text, const Measuring& measuring);
// `writing_for`: the day that `+` and a date without its year are told from. `months`: their names in the reader's
// language, January first; three letters of one are enough.
using MonthNames = std::array<std::string, 12>;
const MonthNames& english_months();
Read<Day> read_typed_day(std::string_view text, Day writing_for, const MonthNames& months = english_months());
Read<Span> read_typed_span(std::string_view text);
Read<Money> read_typed_money(std::string_view text);
Read<Ratio> read_typed_ratio(std::string_view text);
Read<int> read_typed_count(std::string_view text);

// One decimal comma, and no point beside it, stands for a point.
std::string with_point(std::string_view text);

}  // namespace dyestead
