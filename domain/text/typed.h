// typed.h - what did somebody mean who typed into a field of the window?
// More than the forms of the files (amounts.h), which are all read here too. What can be read in two ways is refused
// with a question, never guessed: `1,234 kg`, a bare `5` for a weight, `3/7` for a day, `1 pt`.
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

// Which spoon and which pint a name without `us` or `uk` stands for. With `metric` a teaspoon is 5 ml, and a bare pint,
// gallon or fluid ounce is asked about. `uk` spoons are the metric ones: common practice, no source.
enum class Spoons : std::uint8_t { metric, us, uk };

// What an amount may be told by, beside the units.
struct Measuring {
    std::optional<Kind> kind{};       // what is wanted; a number alone is then pieces, or lacks its unit
    std::optional<Amount> there{};    // what is there: "half" is half of it, "all" all
    std::vector<TypedMeasure> own{};  // "2 buckets"
    Spoons spoons = Spoons::metric;
};

// 1.5 l, 1,5 l, 2 lb 4 oz, 2 x 5 l, 1 1/2 tsp, half a packet, two buckets, ~12 bars, a dozen; 3.2 kg - 380 g takes the
// weight of the tub off; 318 g / 3 is one of three; half, a third, all are of what is there. The unit kept is the one
// typed, of a sum the first; of an own measure the one it was told in, with its mark.
Read<Amount> read_typed_amount(std::string_view text, const Measuring& measuring);
// As print() does, but so that it reads back under this setting: `metric tsp` where a bare one is the US spoon.
std::string print_typed(const Amount& amount, Spoons spoons);

// The names of the months in the reader's language, January first; three letters of one are enough.
using MonthNames = std::array<std::string, 12>;
const MonthNames& english_months();

// 3 July, July 3rd, 3. Juli, 3 July 2026, 13/7, 2026-07-03, today, yesterday, `+`. `writing_for`: the day that records
// are dated to, of which `+` is the next. A date without its year is the one in the twelve months that end one month
// after it: 3 July written on 3 June 2026 is in 2026, written on 2 June in 2025. `today`: where it is not
// `writing_for`.
Read<Day> read_typed_day(std::string_view text, Day writing_for, const MonthNames& months = english_months(),
                         std::optional<Day> today = std::nullopt);
// 14:10, 2.10 pm, 8h15; with a day before it: 3 July 14:10. Without one it is on the day that is written for. The clock
// on the wall is all that was typed: how far it is ahead of UTC is for whoever has a clock to say.
Read<Moment> read_typed_moment(std::string_view text, Day writing_for, const MonthNames& months = english_months());
// 90 min, 1.5 h, 1 h 30, ~2 h, an hour, half an hour, 2 x 45 min; 2 x 1 h 30 is twice the whole of it.
Read<Span> read_typed_span(std::string_view text);
// 34.90, £34.90, 1 234,50 EUR. `currency`: ISO 4217; a sign of another one is refused. Blank: any is let pass.
Read<Money> read_typed_money(std::string_view text, std::string_view currency = {});
Read<Ratio> read_typed_ratio(std::string_view text);
Read<int> read_typed_count(std::string_view text);

// One decimal comma, and no point beside it, stands for a point.
std::string with_point(std::string_view text);

}  // namespace dyestead
