#include "gui/models/form/field_values.h"

#include <algorithm>

#include "domain/decisions/records.h"
#include "reports/words/language.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/trouble_words.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

std::string marked(Mark mark, std::string shown) {
    switch (mark) {
        case Mark::measured: return shown;
        case Mark::about: return say("about {amount}", arg("amount", std::move(shown)));
        case Mark::from_method: return say("{amount}, by the method", arg("amount", std::move(shown)));
    }
    return shown;
}

constexpr std::string_view kDigits = "0123456789";

// One to three digits, a point, three digits; a nought before the point leaves no doubt.
bool like_thousands(std::string_view number) {
    const auto point = number.find('.');
    return point != std::string_view::npos && point >= 1 && point <= 3 && number.size() - point == 4 &&
           number[0] != '0';
}

}  // namespace

std::string money_text(Money money) {
    constexpr std::int64_t kHundredth = 10'000;
    constexpr std::int64_t kWhole = 1'000'000;
    const std::string text = print(money);
    // 4.1 is written 4.10; whole amounts and fractions of a penny stay as they are.
    const bool tenths = money.in_millionths() % kWhole != 0 && money.in_millionths() % (10 * kHundredth) == 0;
    return number_text(tenths ? text + "0" : text);
}

std::string number_text(std::string_view as_in_records) {
    const std::string decimal = reports::marks_here().decimal;
    std::string out;
    for (std::size_t at = 0; at < as_in_records.size();) {
        const auto start = as_in_records.find_first_of(kDigits, at);
        out += as_in_records.substr(at, start - at);
        if (start == std::string_view::npos) break;
        at = std::min(as_in_records.find_first_not_of("0123456789.", start), as_in_records.size());
        std::string number{as_in_records.substr(start, at - start)};
        if (decimal != "." && like_thousands(number)) number += '0';
        out += reports::in_marks_here(number);
    }
    return out;
}

bool may_be_thousands(std::string_view typed) {
    if (reports::marks_here().decimal == ".") return false;
    for (std::size_t at = 0; at < typed.size();) {
        const auto start = typed.find_first_of(kDigits, at);
        if (start == std::string_view::npos) return false;
        at = std::min(typed.find_first_not_of("0123456789.", start), typed.size());
        if (like_thousands(typed.substr(start, at - start))) return true;
    }
    return false;
}

std::string day_text(Day day) {
    return reports::shown_date(day);
}

std::string moment_text(Moment moment) {
    return reports::shown_moment(moment);
}

Read<Moment> read_typed_moment_field(std::string_view text, const Reading& reading) {
    auto read = read_typed_moment(text, reading.writing_for, reports::month_names());
    // What came with its own distance from UTC keeps it.
    if (read && reading.utc_offset && !read_moment(text)) read.value->utc_offset = reading.utc_offset(*read);
    return read;
}

std::optional<AnyKey> KeyCodes::any_key_of(std::string_view text) const {
    const auto slash = text.find('/');
    if (slash == std::string_view::npos) return std::nullopt;
    const auto key = key_of<AnyKey>(text.substr(slash + 1));
    if (!key) return std::nullopt;
    return AnyKey{std::string{text.substr(0, slash)}, key->number};
}

std::string said_back(const Amount& amount, const Reading& reading) {
    if (reading.material != nullptr) {
        if (const auto held = as_held(*reading.material, amount))
            return say("{amount} {material}", arg("amount", marked(amount.mark, reports::shown_quantity(*held))),
                       arg("material", reading.material->name));
    }
    return marked(amount.mark, reports::shown_quantity(amount.quantity));
}

std::string said_back(const Span& span, const Reading& /*reading*/) {
    return marked(span.mark, reports::shown_minutes(number(span.time)));
}

std::string said_back(Money money, const Reading& reading) {
    return reports::shown_money(money, reading.currency);
}

std::string said_back(Day day, const Reading& /*reading*/) {
    return reports::shown_date(day);
}

std::string said_back(Moment moment, const Reading& /*reading*/) {
    return moment_text(moment);
}

std::optional<std::string> amount_trouble(const Amount& amount, const Reading& reading) {
    if (reading.material != nullptr) {
        if (as_held(*reading.material, amount)) return std::nullopt;
        return say(
            "{material} is held in another kind of amount, and no density leads from one to the other; write a weight "
            "for what is weighed, a volume for what is poured, a number for what is counted.",
            arg("material", reading.material->name));
    }
    if (!reading.measuring.kind || amount.quantity.kind() == *reading.measuring.kind) return std::nullopt;
    switch (*reading.measuring.kind) {
        case Kind::mass: return say("A weight belongs here; write it like 750 g.");
        case Kind::volume: return say("A volume belongs here; write it like 1.5 l.");
        case Kind::count: return say("A number belongs here; write it like 12.");
        case Kind::area: return say("An area belongs here; write it like 4 m2.");
        case Kind::energy: return say("Energy belongs here; write it like 1.2 kWh.");
    }
    return std::nullopt;
}

std::string field_trouble(TroubleId id, std::string_view text) {
    if (id == TroubleId::blank) return say("This is needed; everything behind \"More\" may stay blank.");
    return reports::trouble_sentence({.id = id, .args = {{"value", std::string{trimmed(text)}}}});
}

}  // namespace dyestead::gui
