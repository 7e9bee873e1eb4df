// method.h - how does the maker mean to get colour out: which steps, what goes in, what should come?
// Bands and minutes are the method's own ("your method says"), never the program's.
#pragma once

#include "domain/facts/cupboard.h"
#include "domain/values/reading.h"
#include "domain/values/span.h"

namespace dyestead {

enum class Watch : std::uint8_t { unattended, attended };
template <>
inline constexpr std::array<std::string_view, 2> kWords<Watch>{"unattended", "attended"};

struct Method : HeadOf<Method> {
    static constexpr std::string_view kTable = "method";
    std::string name;
    std::optional<Key<Colour>> colour;  // blank: for any
    std::optional<Amount> low;          // powder from a kilogram of harvest: a bad vat,
    std::optional<Amount> usual;        // a usual one,
    std::optional<Amount> high;         // a good one
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Method> = [](auto&& visit) {
    visit(field("name", &Method::name));
    visit(field("colour", &Method::colour));
    visit(field("low", &Method::low));
    visit(field("usual", &Method::usual));
    visit(field("high", &Method::high));
    visit(field("note", &Method::note));
};

// `times`: done so often (washes). Minutes are those of one time.
struct MethodStep : LineOf<MethodStep, Method> {
    static constexpr std::string_view kTable = "method_step";
    std::string what;
    std::optional<Temperature> temperature_low;
    std::optional<Temperature> temperature_high;
    std::optional<Acidity> acidity_low;
    std::optional<Acidity> acidity_high;
    std::optional<Span> hands_on;         // whatever the size of the vat
    std::optional<Span> hands_on_per_kg;  // of harvest
    std::optional<Span> waiting;
    std::optional<Span> waiting_high;  // 2 to 3 hours: `waiting` is then the least
    Watch watch = Watch::unattended;
    int times = 1;
    Caution caution = Caution::none;
};
template <>
inline constexpr auto kFields<MethodStep> = [](auto&& visit) {
    visit(field("what", &MethodStep::what));
    visit(field("temperature_low", &MethodStep::temperature_low));
    visit(field("temperature_high", &MethodStep::temperature_high));
    visit(field("acidity_low", &MethodStep::acidity_low));
    visit(field("acidity_high", &MethodStep::acidity_high));
    visit(field("hands_on", &MethodStep::hands_on));
    visit(field("hands_on_per_kg", &MethodStep::hands_on_per_kg));
    visit(field("waiting", &MethodStep::waiting));
    visit(field("waiting_high", &MethodStep::waiting_high));
    visit(field("watch", &MethodStep::watch));
    visit(field("times", &MethodStep::times));
    visit(field("caution", &MethodStep::caution));
};

// What an amount in a method is for: the vat whatever its size, each kilogram of harvest, or each
// litre of water in it.
enum class Per : std::uint8_t { vat, kg, litre };
template <>
inline constexpr std::array<std::string_view, 3> kWords<Per>{"vat", "kg", "litre"};

struct MethodUse : LineOf<MethodUse, Method> {
    static constexpr std::string_view kTable = "method_use";
    Key<Material> material;
    Amount amount;
    Per per = Per::vat;
};
template <>
inline constexpr auto kFields<MethodUse> = [](auto&& visit) {
    visit(field("material", &MethodUse::material));
    visit(field("amount", &MethodUse::amount));
    visit(field("per", &MethodUse::per));
};

}  // namespace dyestead
