#include <charconv>

#include "domain/text/decimal.h"
#include "domain/text/typed.h"
#include "domain/text/typed_tokens.h"

namespace dyestead {

namespace {

// 14:10, 14.10, 9:05, 2:10 pm, 8h15.
std::optional<int> minute_of_day(std::string_view clock, bool afternoon, bool twelve_hours) {
    const auto mark = clock.find_first_of(":.h");
    if (mark == std::string_view::npos) return std::nullopt;
    const auto number = [](std::string_view digits) -> std::optional<int> {
        int value = 0;
        const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
        const bool whole = error == std::errc{} && end == digits.data() + digits.size() && digits.size() <= 2;
        return whole && value >= 0 ? std::optional{value} : std::nullopt;
    };
    const auto hour = number(clock.substr(0, mark));
    const auto minute = number(clock.substr(mark + 1));
    constexpr std::size_t kTwoDigits = 2;
    if (!hour || !minute || *minute > 59 || clock.size() - mark - 1 != kTwoDigits) return std::nullopt;
    if (twelve_hours && (*hour < 1 || *hour > 12)) return std::nullopt;
    if (*hour > 23) return std::nullopt;
    const int of_day = twelve_hours ? *hour % 12 + (afternoon ? 12 : 0) : *hour;
    return of_day * 60 + *minute;
}

}  // namespace

Read<Moment> read_typed_moment(std::string_view text, Day writing_for, const MonthNames& months) {
    if (const auto exact = read_moment(text)) return exact;
    const std::string plain = plain_text(text);
    std::string_view rest = trimmed(plain);
    if (rest.empty()) return TroubleId::blank;
    const bool afternoon = rest.ends_with("pm");
    const bool twelve_hours = afternoon || rest.ends_with("am");
    if (twelve_hours) rest = trimmed(rest.substr(0, rest.size() - 2));
    const auto space = rest.rfind(' ');
    const std::string_view clock = space == std::string_view::npos ? rest : rest.substr(space + 1);
    const auto minute = minute_of_day(clock, afternoon, twelve_hours);
    if (!minute) return TroubleId::not_a_moment;
    std::string_view day = space == std::string_view::npos ? std::string_view{} : trimmed(rest.substr(0, space));
    while (!day.empty() && (day.back() == ',' || day.back() == ' ')) day.remove_suffix(1);
    if (day.empty()) return Moment{writing_for, *minute, 0};
    const auto read = read_typed_day(day, writing_for, months);
    if (!read) return *read.trouble;
    return Moment{*read, *minute, 0};
}

}  // namespace dyestead
