#include <algorithm>
#include <charconv>

#include "domain/text/decimal.h"
#include "domain/text/typed.h"
#include "domain/text/typed_tokens.h"
#include "domain/text/typed_words.h"

namespace dyestead {

namespace {

// --- days ---

constexpr std::string_view kDigits = "0123456789";

std::optional<int> read_whole(std::string_view text) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return number;
}

// The month whose name begins so; nothing when none or several do.
std::optional<int> month_named(std::string_view beginning, const MonthNames& months) {
    constexpr std::size_t kLeastLetters = 3;
    if (beginning.size() < kLeastLetters) return std::nullopt;
    std::optional<int> found;
    for (std::size_t i = 0; i < months.size(); ++i) {
        if (!plain_text(months[i]).starts_with(beginning)) continue;
        if (found) return std::nullopt;
        found = static_cast<int>(i) + 1;
    }
    return found;
}

// The numbers and words of a date; what parts them does not matter. `3rd` and `of` go the way of `3`.
std::vector<std::string> parts_of(std::string_view plain) {
    constexpr std::array<std::string_view, 5> kNoMatter{"st", "nd", "rd", "th", "of"};
    std::vector<std::string> parts;
    while (!plain.empty()) {
        const bool digits = kDigits.find(plain[0]) != std::string_view::npos;
        const auto end =
            std::min(plain.size(), digits ? plain.find_first_not_of(kDigits)
                                          : std::max<std::size_t>(1, plain.find_first_of(" ./-,0123456789")));
        const std::string part{plain.substr(0, end)};
        plain.remove_prefix(end);
        const bool apart = part.size() == 1 && std::string_view{" ./-,"}.find(part) != std::string_view::npos;
        if (!apart && std::ranges::find(kNoMatter, part) == kNoMatter.end()) parts.push_back(part);
    }
    return parts;
}

std::chrono::year_month_day date_of(int year, int month, int day) {
    return {std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
            std::chrono::day{static_cast<unsigned>(day)}};
}

struct Date {
    std::optional<int> year{};
    int month = 0;
    int day = 0;
};

Read<Day> day_told(const Date& date, Day writing_for) {
    if (date.year) {
        const auto told = date_of(*date.year, date.month, date.day);
        return told.ok() ? Read<Day>{Day{told}} : TroubleId::no_such_day;
    }
    const Day last = months_before(writing_for, -1);
    for (const int year : {year_of(last), year_of(last) - 1}) {
        const auto told = date_of(year, date.month, date.day);
        if (told.ok() && Day{told} <= last && Day{told} > months_before(last, 12)) return Day{told};
    }
    return TroubleId::no_such_day;
}

Read<Date> date_of_numbers(const std::vector<int>& numbers) {
    constexpr int kFirstOfFourDigits = 1000;
    // Year first is always followed by the month.
    if (numbers.size() == 3 && numbers[0] >= kFirstOfFourDigits) return Date{numbers[0], numbers[1], numbers[2]};
    Date date{.month = numbers[1], .day = numbers[0]};
    if (numbers.size() == 3) {
        if (numbers[2] < kFirstOfFourDigits) return TroubleId::not_a_date;
        date.year = numbers[2];
    }
    constexpr int kLeapYear = 2000;
    const bool day_first = date_of(date.year.value_or(kLeapYear), numbers[1], numbers[0]).ok();
    const bool month_first = date_of(date.year.value_or(kLeapYear), numbers[0], numbers[1]).ok();
    if (day_first && month_first && numbers[0] != numbers[1]) return TroubleId::which_is_the_month;
    if (!day_first && !month_first) return TroubleId::no_such_day;
    if (!day_first) std::swap(date.month, date.day);
    return date;
}

Read<Date> date_of_parts(const std::vector<std::string>& parts, const MonthNames& months) {
    if (parts.size() < 2 || parts.size() > 3) return TroubleId::not_a_date;
    Date date;
    std::vector<int> numbers;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (const auto number = read_whole(parts[i])) {
            if (parts[i].size() == 3 || parts[i].size() > 4) return TroubleId::not_a_date;
            numbers.push_back(*number);
            continue;
        }
        auto month = month_named(parts[i], months);
        if (!month) month = month_named(parts[i], english_months());
        if (!month || date.month != 0 || i > 1) return TroubleId::not_a_date;
        date.month = *month;
    }
    if (date.month == 0) return date_of_numbers(numbers);
    constexpr int kMostDays = 99;
    if (numbers.empty() || numbers[0] > kMostDays) return TroubleId::not_a_date;
    date.day = numbers[0];
    if (numbers.size() == 2) {
        if (parts[2].size() != 4) return TroubleId::not_a_date;
        date.year = numbers[1];
    }
    return date;
}

// --- lengths of time ---

std::optional<TimeUnit> time_unit(std::string_view word) {
    for (const std::string_view name : {"h", "hr", "hrs", "hour", "hours"})
        if (word == name) return TimeUnit::h;
    for (const std::string_view name : {"m", "min", "mins", "minute", "minutes"})
        if (word == name) return TimeUnit::min;
    return std::nullopt;
}

struct TimeTerm {
    Ratio value;
    bool part = false;
    std::optional<TimeUnit> unit{};
};

Read<TimeTerm> read_time_term(TypedWords& words) {
    if (words.take("-")) return words.at(TokenKind::number) ? TroubleId::below_zero : TroubleId::not_a_time;
    const auto number = words.take_number();
    if (!number) return *number.trouble;
    if (!*number) return TroubleId::not_a_time;
    TimeTerm term{.value = (*number)->value, .part = (*number)->part};
    if (term.part) {
        words.take("of");
        if (!words.take("an")) words.take("a");
    }
    term.unit = time_unit(words.text());
    if (term.unit) words.skip();
    return term;
}

}  // namespace

const MonthNames& english_months() {
    static const MonthNames kMonths{"January", "February", "March",     "April",   "May",      "June",
                                    "July",    "August",   "September", "October", "November", "December"};
    return kMonths;
}

Read<Day> read_typed_day(std::string_view text, Day writing_for, const MonthNames& months, std::optional<Day> today) {
    const std::string plain = plain_text(text);
    if (plain == "+") return writing_for + Days{1};
    if (in_english(plain) == "today") return today.value_or(writing_for);
    if (in_english(plain) == "yesterday") return today.value_or(writing_for) - Days{1};
    const auto as_in_files = read_day(plain);
    if (as_in_files || *as_in_files.trouble != TroubleId::not_a_date) return as_in_files;
    const auto date = date_of_parts(parts_of(plain), months);
    if (!date) return *date.trouble;
    return day_told(*date, writing_for);
}

Read<Span> read_typed_span(std::string_view text) {
    constexpr auto kMost = kLongestStatedTime.in_millionths();
    TypedWords words{tokens_of(plain_text(text))};
    Span span;
    span.mark = words.take_mark();
    if (words.done()) return TroubleId::blank;
    const auto times = words.take_times();
    if (!times) return *times.trouble;
    std::int64_t total = 0;
    const auto add = [&](const TimeTerm& term, TimeUnit unit) -> std::optional<TroubleId> {
        const Ratio base{unit == TimeUnit::h ? 60'000'000 : 1'000'000, 1};
        const auto part = in_whole_base(std::max<std::int64_t>(*times, 1), term.value, base, kMost);
        if (!part) return part.trouble;
        total += *part;
        span.unit = unit;
        return std::nullopt;
    };

    const auto first = read_time_term(words);
    if (!first) return *first.trouble;
    if (!(*first).unit) return words.done() ? TroubleId::time_unit_missing : TroubleId::not_a_time;
    if (const auto trouble = add(*first, *(*first).unit)) return *trouble;
    if ((*first).unit == TimeUnit::h && !words.done()) {
        words.take("and");
        const auto second = read_time_term(words);
        if (!second) return *second.trouble;
        if ((*second).unit == TimeUnit::h) return TroubleId::not_a_time;
        // An hour and a half; and in 1 h 30 the minutes go unnamed.
        const auto unit = (*second).unit.value_or((*second).part ? TimeUnit::h : TimeUnit::min);
        if (const auto trouble = add(*second, unit)) return *trouble;
    }
    if (!words.done()) return TroubleId::not_a_time;
    if (total > kMost) return TroubleId::too_large;
    span.time = Minutes::millionths(total);
    return span;
}

}  // namespace dyestead
