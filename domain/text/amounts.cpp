#include "domain/text/amounts.h"

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <optional>

#include <fmt/format.h>

#include "domain/text/decimal.h"

namespace dyestead {
namespace {

constexpr std::string_view kByMethod = "method:";

// Takes the mark off the front of the text.
Mark read_mark(std::string_view& text) {
    text = trimmed(text);
    if (text.starts_with('~')) {
        text = trimmed(text.substr(1));
        return Mark::about;
    }
    if (text.starts_with(kByMethod)) {
        text = trimmed(text.substr(kByMethod.size()));
        return Mark::from_method;
    }
    return Mark::measured;
}

std::string_view print_mark(Mark mark) {
    switch (mark) {
        case Mark::measured: return "";
        case Mark::about: return "~";
        case Mark::from_method: return "method: ";
    }
    return "";
}

// Splits "1.5 h" or "1.5h" into its number and what follows it.
std::pair<std::string_view, std::string_view> split_number(std::string_view text) {
    const auto end = text.find_first_not_of("0123456789.,-");
    if (end == std::string_view::npos) return {text, {}};
    return {text.substr(0, end), trimmed(text.substr(end))};
}

// decimal * top / bottom in whole base units, held to what one fact may state.
Read<std::int64_t> in_base(Decimal decimal, Ratio base, std::int64_t largest) {
    const Wide wide =
        static_cast<Wide>(decimal.digits) * base.top / (static_cast<Wide>(base.bottom) * power_of_ten(decimal.places));
    if (wide > largest || wide < -largest) return TroubleId::too_large;
    if (decimal.digits < 0) return TroubleId::below_zero;
    const auto rounded =
        scaled(decimal.digits, base.top, static_cast<Wide>(base.bottom) * power_of_ten(decimal.places));
    if (rounded > largest) return TroubleId::too_large;
    return rounded;
}

// A number of at most so many places, times ten to that power.
Read<std::int64_t> read_tenfold(std::string_view text, int places, std::int64_t largest) {
    const auto read = read_decimal(text);
    if (!read) return *read.trouble;
    Decimal decimal = *read;
    for (; decimal.places > places && decimal.digits % 10 == 0; --decimal.places) decimal.digits /= 10;
    if (decimal.places > places) return TroubleId::not_a_number;
    const Wide wide = static_cast<Wide>(decimal.digits) * power_of_ten(places - decimal.places);
    if (wide > largest || wide < -largest) return TroubleId::too_large;
    return narrow(wide);
}

Read<int> read_digits(std::string_view text) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size()) return TroubleId::not_a_date;
    return number;
}

}  // namespace

Read<Money> read_money(std::string_view text) {
    const auto decimal = read_decimal(text);
    if (!decimal) return *decimal.trouble;
    const auto count = in_base(*decimal, {1'000'000, 1}, kLargestStatedMoney.in_millionths());
    if (!count) return *count.trouble;
    return Money::millionths(*count);
}

Read<Amount> read_amount(std::string_view text) {
    Amount amount;
    amount.mark = read_mark(text);
    const auto [number, unit] = split_number(text);
    if (text.empty()) return TroubleId::blank;
    if (number.empty()) return TroubleId::not_a_number;
    const auto decimal = read_decimal(number);
    if (!decimal) return *decimal.trouble;
    const auto* found = std::ranges::find(kUnits, unit, &UnitInfo::code);
    if (found == kUnits.end()) return TroubleId::no_such_unit;
    const auto base = in_base(*decimal, found->base, kLargestStatedBase);
    if (!base) return *base.trouble;
    amount.quantity = Quantity{found->kind, *base};
    amount.unit = found->unit;
    return amount;
}

Read<Span> read_span(std::string_view text) {
    Span span;
    span.mark = read_mark(text);
    if (text.empty()) return TroubleId::blank;
    std::int64_t total = 0;
    for (bool first = true; !text.empty(); first = false) {
        const auto end = std::min(text.size(), text.find_first_of("hm"));
        const auto number = read_decimal(text.substr(0, end));
        if (!number) return TroubleId::not_a_time;
        const bool hours = end < text.size() && text[end] == 'h';
        const bool named = hours || text.substr(end).starts_with("min");
        // "1 h 30": minutes may go unnamed after hours, and only there.
        if (!named && (first || end < text.size())) return TroubleId::not_a_time;
        if (hours && !first) return TroubleId::not_a_time;
        const auto part = in_base(*number, {hours ? 60'000'000 : 1'000'000, 1}, kLongestStatedTime.in_millionths());
        if (!part) return *part.trouble;
        total += *part;
        span.unit = hours ? TimeUnit::h : TimeUnit::min;
        text = trimmed(text.substr(std::min(text.size(), end + (hours ? 1U : 3U))));
        if (!hours && !text.empty()) return TroubleId::not_a_time;
    }
    if (total > kLongestStatedTime.in_millionths()) return TroubleId::too_large;
    span.time = Minutes::millionths(total);
    return span;
}

Read<Ratio> read_ratio(std::string_view text) {
    text = trimmed(text);
    if (text.empty()) return TroubleId::blank;
    constexpr std::int64_t kMost = 1'000'000'000;
    const bool percent = text.ends_with('%');
    if (percent) text = trimmed(text.substr(0, text.size() - 1));
    const auto slash = text.find('/');
    if (percent && slash != std::string_view::npos) return TroubleId::not_a_ratio;
    const auto top = read_decimal(text.substr(0, slash));
    if (!top) return TroubleId::not_a_ratio;
    Ratio ratio{(*top).digits, 1};
    if ((*top).digits < 0) return TroubleId::below_zero;
    if ((*top).places > 9) return TroubleId::not_a_ratio;
    ratio.bottom = power_of_ten((*top).places) * (percent ? 100 : 1);
    // Hundredths are kept as thousandths, so that 0.91 does not come back as 91 %.
    if (!percent && (*top).places == 2) ratio = {ratio.top * 10, 1'000};
    if (slash != std::string_view::npos) {
        const auto bottom = read_decimal(text.substr(slash + 1));
        if (!bottom || (*bottom).digits <= 0 || (*bottom).places != 0 || (*top).places != 0)
            return TroubleId::not_a_ratio;
        ratio.bottom = (*bottom).digits;
    }
    if (ratio.top > kMost * 100 || ratio.bottom > kMost * 100) return TroubleId::too_large;
    return ratio;
}

Read<Day> read_day(std::string_view text) {
    text = trimmed(text);
    if (text.empty()) return TroubleId::blank;
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return TroubleId::not_a_date;
    const auto year = read_digits(text.substr(0, 4));
    const auto month = read_digits(text.substr(5, 2));
    const auto day = read_digits(text.substr(8, 2));
    if (!year || !month || !day || *year < 0 || *month < 0 || *day < 0) return TroubleId::not_a_date;
    const std::chrono::year_month_day date{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
                                           std::chrono::day{static_cast<unsigned>(*day)}};
    if (!date.ok()) return TroubleId::no_such_day;
    return Day{date};
}

Read<Temperature> read_temperature(std::string_view text) {
    const auto tenths = read_tenfold(text, 1, 100'000);
    if (!tenths) return *tenths.trouble;
    return Temperature{static_cast<std::int32_t>(*tenths)};
}

Read<Acidity> read_acidity(std::string_view text) {
    const auto hundredths = read_tenfold(text, 2, 1'500);
    if (!hundredths) return *hundredths.trouble;
    return Acidity{static_cast<std::int32_t>(*hundredths)};
}

Read<Moment> read_moment(std::string_view text) {
    text = trimmed(text);
    if (text.empty()) return TroubleId::blank;
    constexpr std::string_view kForm = "dddddddddd-hh:mm+hh:mm";
    const bool universal = text.ends_with('Z');
    const std::size_t clock = 11;
    const std::size_t offset = clock + 5;
    if (text.size() != (universal ? offset + 1 : kForm.size()) || (text[10] != 'T' && text[10] != ' '))
        return TroubleId::not_a_moment;
    const auto day = read_day(text.substr(0, 10));
    if (!day) return *day.trouble;
    const auto minutes_at = [&](std::size_t at) -> std::optional<int> {
        const auto digit = [&](std::size_t place) { return text[place] >= '0' && text[place] <= '9'; };
        if (!digit(at) || !digit(at + 1) || text[at + 2] != ':' || !digit(at + 3) || !digit(at + 4))
            return std::nullopt;
        const int hour = (text[at] - '0') * 10 + text[at + 1] - '0';
        const int minute = (text[at + 3] - '0') * 10 + text[at + 4] - '0';
        if (hour > 23 || minute > 59) return std::nullopt;
        return hour * 60 + minute;
    };
    const auto minute = minutes_at(clock);
    if (!minute) return TroubleId::not_a_moment;
    Moment moment{*day, *minute, 0};
    if (universal) return moment;
    const auto ahead = minutes_at(offset + 1);
    const char sign = text[offset];
    if (!ahead || *ahead > kFurthestUtcOffset || (sign != '+' && sign != '-')) return TroubleId::not_a_moment;
    moment.utc_offset = sign == '-' ? -*ahead : *ahead;
    return moment;
}

std::string print(Money money) {
    return print_decimal({money.in_millionths(), 6});
}

std::string print(const Amount& amount) {
    const UnitInfo& unit = info(amount.unit);
    const auto number = shortest_decimal(amount.quantity.in_base(), unit.base.top, unit.base.bottom);
    return fmt::format("{}{}{}{}", print_mark(amount.mark), number, unit.code.empty() ? "" : " ", unit.code);
}

std::string print(const Span& span) {
    const bool hours = span.unit == TimeUnit::h;
    const auto number = shortest_decimal(span.time.in_millionths(), hours ? 60'000'000 : 1'000'000, 1);
    return fmt::format("{}{} {}", print_mark(span.mark), number, hours ? "h" : "min");
}

std::string print(Ratio ratio) {
    // 7.00 % is 7 %: otherwise it would come out as 0.07, and that, once read, as 7 %.
    while (ratio.bottom > 100 && ratio.bottom % 10 == 0 && ratio.top % 10 == 0) {
        ratio.top /= 10;
        ratio.bottom /= 10;
    }
    if (ratio.bottom == 1) return fmt::format("{}", ratio.top);
    if (ratio.bottom == 100) return fmt::format("{} %", ratio.top);
    for (int places = 1; places <= 9; ++places)
        if (ratio.bottom == power_of_ten(places)) return print_decimal({ratio.top, places});
    return fmt::format("{}/{}", ratio.top, ratio.bottom);
}

std::string print(Day day) {
    const std::chrono::year_month_day date{day};
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                       static_cast<unsigned>(date.day()));
}

std::string print(Temperature temperature) {
    return print_decimal({temperature.tenths, 1});
}

std::string print(Acidity acidity) {
    return print_decimal({acidity.hundredths, 2});
}

std::string print(Moment moment) {
    const int ahead = std::abs(moment.utc_offset);
    return fmt::format("{}T{:02}:{:02}{}{:02}:{:02}", print(moment.day), moment.minute / 60, moment.minute % 60,
                       moment.utc_offset < 0 ? '-' : '+', ahead / 60, ahead % 60);
}

}  // namespace dyestead
