#include "domain/text/typed.h"

#include <algorithm>
#include <charconv>

#include "domain/text/decimal.h"

namespace dyestead {

namespace {

char folded(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

std::optional<int> read_whole(std::string_view text) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return number;
}

// The month whose name begins so; nothing when none or several do.
std::optional<unsigned> month_named(std::string_view beginning, const MonthNames& months) {
    constexpr std::size_t kLeastLetters = 3;
    if (beginning.size() < kLeastLetters) return std::nullopt;
    std::optional<unsigned> found;
    for (unsigned i = 0; i < months.size(); ++i) {
        const std::string& name = months[i];
        if (beginning.size() > name.size() || !std::equal(beginning.begin(), beginning.end(), name.begin(),
                                                          [](char a, char b) { return folded(a) == folded(b); }))
            continue;
        if (found) return std::nullopt;
        found = i + 1;
    }
    return found;
}

}  // namespace

std::string with_point(std::string_view text) {
    std::string pointed{trimmed(text)};
    if (std::ranges::count(pointed, ',') == 1 && pointed.find('.') == std::string::npos)
        std::ranges::replace(pointed, ',', '.');
    return pointed;
}

Read<Amount> read_typed_amount(std::string_view text, const Measuring& measuring) {
    static_cast<void>(measuring);
    return read_amount(with_point(text));
}

const MonthNames& english_months() {
    static const MonthNames kMonths{"January", "February", "March",     "April",   "May",      "June",
                                    "July",    "August",   "September", "October", "November", "December"};
    return kMonths;
}

Read<Day> read_typed_day(std::string_view text, Day writing_for, const MonthNames& months) {
    text = trimmed(text);
    if (text == "+") return writing_for + Days{1};
    const auto end_of_day = text.find_first_not_of("0123456789");
    if (end_of_day == 0 || end_of_day > 2) return read_day(text);
    const auto day = read_whole(text.substr(0, end_of_day));
    auto rest = trimmed(text.substr(end_of_day));
    const auto end_of_month = std::min(rest.find_first_of(" 0123456789"), rest.size());
    const auto month = month_named(rest.substr(0, end_of_month), months);
    if (!day || !month) return TroubleId::not_a_date;
    rest = trimmed(rest.substr(end_of_month));
    int year = year_of(writing_for);
    if (!rest.empty()) {
        const auto told = read_whole(rest);
        if (!told || rest.size() != 4) return TroubleId::not_a_date;
        year = *told;
    }
    const std::chrono::year_month_day date{
        std::chrono::year{year}, std::chrono::month{*month}, std::chrono::day{static_cast<unsigned>(*day)}};
    if (!date.ok()) return TroubleId::no_such_day;
    return Day{date};
}

Read<Span> read_typed_span(std::string_view text) {
    return read_span(with_point(text));
}

Read<Money> read_typed_money(std::string_view text) {
    return read_money(with_point(text));
}

Read<Ratio> read_typed_ratio(std::string_view text) {
    return read_ratio(with_point(text));
}

Read<int> read_typed_count(std::string_view text) {
    const auto decimal = read_decimal(with_point(text));
    if (!decimal) return *decimal.trouble;
    if ((*decimal).digits < 0) return TroubleId::below_zero;
    if ((*decimal).places > 0) return TroubleId::not_a_whole_number;
    constexpr std::int64_t kMost = 1'000'000'000;
    if ((*decimal).digits > kMost) return TroubleId::too_large;
    return static_cast<int>((*decimal).digits);
}

}  // namespace dyestead
