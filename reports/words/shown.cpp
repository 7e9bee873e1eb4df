#include "reports/words/shown.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "domain/text/amounts.h"
#include "reports/words/currency.h"
#include "reports/words/language.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

constexpr double kLargestShown = 1e15;  // above, a double has no halves left to round

bool showable(double value) {
    return std::isfinite(value) && std::abs(value) < kLargestShown;
}

// Digits without a sign, thousands parted.
std::string grouped(std::int64_t whole) {
    std::string digits = fmt::to_string(whole);
    const std::string mark = digits.size() > 3 ? marks_here().thousands : std::string{};
    for (int at = static_cast<int>(digits.size()) - 3; at > 0; at -= 3) {
        digits.insert(static_cast<std::size_t>(at), mark);
    }
    return digits;
}

// A number as a whole count of 1/10^places.
struct Fixed {
    std::int64_t count = 0;
    int places = 0;
};

Fixed fixed(double value, int places) {
    return {std::llround(value * std::pow(10.0, places)), places};
}

std::string digits(Fixed number, bool trim) {
    std::int64_t power = 1;
    for (int place = 0; place < number.places; ++place) power *= 10;
    const std::int64_t count = number.count < 0 ? -number.count : number.count;
    std::string out = grouped(count / power);
    if (number.places == 0) return out;
    std::string part = fmt::format("{:0{}}", count % power, number.places);
    if (trim) part.erase(part.find_last_not_of('0') + 1);
    return part.empty() ? out : out + marks_here().decimal + part;
}

std::string signed_digits(Fixed number, bool trim = true) {
    return (number.count < 0 ? "-" : "") + digits(number, trim);
}

std::string money_of(Fixed number, std::string_view currency) {
    return with_currency(digits(number, false), number.count < 0, currency);
}

}  // namespace

std::string not_known() {
    return tr("not known");
}

std::string shown_money(Money money, std::string_view currency) {
    const int places = minor_places(currency);
    std::int64_t unit = 1'000'000;
    for (int place = 0; place < places; ++place) unit /= 10;
    return money_of({scaled(money.in_millionths(), 1, unit), places}, currency);
}

std::string shown_money(double units, std::string_view currency) {
    return showable(units) ? money_of(fixed(units, minor_places(currency)), currency) : not_known();
}

std::string rough_money(double units, std::string_view currency) {
    if (!showable(units)) return not_known();
    const bool small = std::abs(units) < 9.995;
    return money_of(fixed(units, small ? minor_places(currency) : 0), currency);
}

std::string fine_money(double units, std::string_view currency) {
    if (!showable(units)) return not_known();
    const int places = minor_places(currency);
    const Fixed finer = fixed(units, places + 1);
    if (std::abs(units) >= 1 || finer.count % 10 == 0) return shown_money(units, currency);
    return money_of(finer, currency);
}

std::string bare_money(double units, std::string_view currency) {
    return showable(units) ? signed_digits(fixed(units, minor_places(currency)), false) : not_known();
}

std::string shown_minutes(double minutes) {
    if (!showable(minutes)) return not_known();
    if (std::abs(minutes) < 9.95) return say("{number} min", arg("number", signed_digits(fixed(minutes, 1))));
    const std::int64_t whole = std::llround(std::abs(minutes));
    const std::string minus = minutes < 0 ? "-" : "";
    if (whole < 60) return say("{number} min", arg("number", fmt::format("{}{}", minus, whole)));
    return say("{hours} h {minutes} min", arg("hours", fmt::format("{}{}", minus, grouped(whole / 60))),
               arg("minutes", fmt::format("{:02}", whole % 60)));
}

std::string shown_hours(double hours) {
    if (!showable(hours)) return not_known();
    const Fixed number = fixed(hours, std::abs(hours) < 9.95 ? 1 : 0);
    const bool one = signed_digits(number) == "1";
    return say_count("{hours} hour", "{hours} hours", one ? 1 : 2, arg("hours", signed_digits(number)));
}

int places_for(double value) {
    const double size = std::abs(value);
    if (size >= 99.95) return 0;
    if (size >= 9.995) return 1;
    if (size >= 0.9995) return 2;
    if (size >= 0.0005 || size == 0) return 3;
    return 6;
}

std::string shown_fixed(double value, int places) {
    return showable(value) ? signed_digits(fixed(value, places), false) : not_known();
}

std::string shown_number(double value) {
    return showable(value) ? signed_digits(fixed(value, places_for(value))) : not_known();
}

std::string shown_grams(double grams) {
    if (!showable(grams)) return not_known();
    if (std::abs(grams) >= 999.5) return shown_kilograms(grams / 1000);
    return say("{number} g", arg("number", shown_number(grams)));
}

std::string shown_kilograms(double kilograms) {
    return showable(kilograms) ? say("{number} kg", arg("number", shown_number(kilograms))) : not_known();
}

std::string shown_quantity(Quantity quantity) {
    const auto base = static_cast<double>(quantity.in_base());
    switch (quantity.kind()) {
        case Kind::mass: return shown_grams(base / 1000);
        case Kind::volume:
            return std::abs(base) >= 999'500 ? say("{number} l", arg("number", shown_number(base / 1e6)))
                                             : say("{number} ml", arg("number", shown_number(base / 1e3)));
        case Kind::count: return shown_number(base / 1000);
        case Kind::area: return say("{number} m²", arg("number", shown_number(base / 1e4)));
        case Kind::energy: return say("{number} kWh", arg("number", shown_number(base / 1e3)));
    }
    return not_known();
}

std::string shown_percent(double share) {
    if (!showable(share)) return not_known();
    return say("{number} %", arg("number", signed_digits(fixed(share * 100, std::abs(share) < 0.0995 ? 1 : 0))));
}

std::string shown_date(Day day) {
    const std::chrono::year_month_day ymd{day};
    return say("{day} {month} {year}", arg("day", static_cast<unsigned>(ymd.day())),
               arg("month", month_name(static_cast<unsigned>(ymd.month()))), arg("year", static_cast<int>(ymd.year())));
}

std::string shown_clock(Moment moment) {
    return fmt::format("{:02}:{:02}", moment.minute / 60, moment.minute % 60);
}

std::string shown_moment(Moment moment) {
    return say("{day} {clock}", arg("day", shown_date(moment.day)), arg("clock", shown_clock(moment)));
}

std::string month_name(unsigned month) {
    static constexpr std::array<std::string_view, 12> kMonths{
        message("January"),   message("February"), message("March"),    message("April"),
        message("May"),       message("June"),     message("July"),     message("August"),
        message("September"), message("October"),  message("November"), message("December")};
    return tr(kMonths[month - 1]);
}

MonthNames month_names() {
    MonthNames names;
    for (std::size_t i = 0; i < names.size(); ++i) names[i] = month_name(static_cast<unsigned>(i) + 1);
    return names;
}

std::string short_month(unsigned month) {
    static constexpr std::array<std::string_view, 12> kMonths{
        message("Jan"), message("Feb"), message("Mar"), message("Apr"), message("May"), message("Jun"),
        message("Jul"), message("Aug"), message("Sep"), message("Oct"), message("Nov"), message("Dec")};
    return tr(kMonths[month - 1]);
}

std::string short_date(Day day) {
    const std::chrono::year_month_day ymd{day};
    return say("{day} {month} {year}", arg("day", static_cast<unsigned>(ymd.day())),
               arg("month", short_month(static_cast<unsigned>(ymd.month()))),
               arg("year", static_cast<int>(ymd.year())));
}

}  // namespace dyestead::reports
