#include "gui/models/amounts_shown.h"

#include <fmt/format.h>

#include "domain/decisions/records.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::Cell;
using reports::say;

Cell words_cell(std::string text) {
    return {.shown = std::move(text)};
}

Cell money_cell(double units, const std::string& currency) {
    return {.shown = reports::bare_money(units, currency), .number = units};
}

Cell held_cell(const Material& material, std::int64_t base) {
    return {.shown = reports::shown_quantity({kind_of(material.held_as), base}), .number = static_cast<double>(base)};
}

Cell day_cell(Day day) {
    return {.shown = reports::short_date(day), .number = static_cast<double>(day.time_since_epoch().count())};
}

Cell count_cell(std::size_t count) {
    return {.shown = fmt::to_string(count), .number = static_cast<double>(count)};
}

Cell number_cell(double value, std::string shown) {
    return {.shown = std::move(shown), .number = value};
}

Cell no_cell() {
    return {.shown = "\u2013", .number = std::nullopt, .no_value = true};
}

std::int64_t price_unit(const Material& material) {
    if (material.held_as == HeldAs::count) return 1'000;
    const bool dear = material.kind == MaterialKind::pigment || material.kind == MaterialKind::seed ||
                      material.purpose == Purpose::colourant || material.purpose == Purpose::scent;
    return dear && material.held_as == HeldAs::mass ? 1'000 : 1'000'000;
}

Cell price_cell(const Material& material, Money cost, std::int64_t base, const std::string& currency) {
    if (base <= 0) return no_cell();
    const double each = number(cost) * static_cast<double>(price_unit(material)) / static_cast<double>(base);
    const std::string money = reports::fine_money(each, currency);
    const auto shown = arg("money", money);
    switch (material.held_as) {
        case HeldAs::mass:
            return number_cell(
                each, price_unit(material) == 1'000 ? say("{money} a g", shown) : say("{money} a kg", shown));
        case HeldAs::volume: return number_cell(each, say("{money} a l", shown));
        case HeldAs::count: return number_cell(each, say("{money} each", shown));
    }
    return no_cell();
}

}  // namespace dyestead::gui
