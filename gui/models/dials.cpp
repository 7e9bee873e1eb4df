#include "gui/models/dials.h"

#include <algorithm>
#include <cmath>

#include "gui/models/typed_number.h"
#include "reports/words/currency.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

constexpr std::size_t at(DialId id) {
    return static_cast<std::size_t>(id);
}

double value_in(const Model& model, DialId id) {
    switch (id) {
        case DialId::premium: return model.premium();
        case DialId::hour: return model.hourly_target;
        case DialId::yield: return model.yield;
        case DialId::leaf: return model.kg_per_vat;
        case DialId::minutes: return model.minutes_per_vat();
        case DialId::bought_price: return model.bought_price_per_gram;
    }
    return 0;
}

// All minutes of a vat move together; what was per kg stays per kg as long as there is room for it.
void set_minutes(Model& model, double minutes) {
    const double per_kg = model.vat_minutes_per_kg * model.kg_per_vat;
    if (per_kg <= minutes) {
        model.vat_minutes_fixed = minutes - per_kg;
    } else {
        model.vat_minutes_fixed = 0;
        model.vat_minutes_per_kg = minutes / model.kg_per_vat;
    }
}

// A round number from which a slider has room for twice what the records say.
double round_up(double value) {
    if (value <= 0) return 0;
    const double power = std::pow(10, std::floor(std::log10(value)));
    for (const double round : {1.0, 2.0, 5.0}) {
        if (value <= round * power) return round * power;
    }
    return 10 * power;
}

bool may_be_below_zero(DialId id) {
    return id == DialId::premium;
}

// A yield of nought, or a vat without leaf, leaves nothing to divide by.
bool must_be_above_zero(DialId id) {
    return id == DialId::yield || id == DialId::leaf;
}

}  // namespace

Dials::Dials(const Model& recorded, std::string currency) : recorded_{recorded}, currency_{std::move(currency)} {}

Dial Dials::dial(DialId id) const {
    const auto money = arg("currency", currency_);
    const int money_places = reports::minor_places(currency_);
    Dial dial{.id = id,
              .label = {},
              .unit = {},
              .recorded = value_in(recorded_, id),
              .value = value_in(tried(), id),
              .turned = tried_[at(id)].has_value()};
    const double twice = 2 * dial.recorded;
    switch (id) {
        case DialId::premium:
            dial.label = say("E&xtra on the price");
            dial.unit = say("{currency} a bar", money);
            dial.high = round_up(std::max(twice, 2.0));
            dial.low = dial.recorded < 0 ? -dial.high : 0;
            dial.places = money_places;
            break;
        case DialId::hour:
            dial.label = say("An ho&ur of ours");
            dial.unit = say("{currency} an hour", money);
            dial.high = round_up(std::max(twice, 20.0));
            dial.places = money_places;
            break;
        case DialId::yield:
            dial.label = say("Powder from a &kilo");
            dial.unit = say("g a kg");
            dial.high = round_up(std::max(twice, 1.0));
            break;
        case DialId::leaf:
            dial.label = say("&Leaf in one vat");
            dial.unit = say("kg");
            dial.high = round_up(std::max(2.5 * dial.recorded, 5.0));
            dial.places = 1;
            break;
        case DialId::minutes:
            dial.label = say("Hands-on &time for one vat");
            dial.unit = say("min");
            dial.high = round_up(std::max(twice, 60.0));
            dial.places = 0;
            break;
        case DialId::bought_price:
            dial.label = say("&Bought-in price per gram");
            dial.unit = say("{currency} a g", money);
            dial.high = round_up(std::max(twice, 0.2));
            dial.places = money_places + 1;
            break;
    }
    dial.high = std::max(dial.high, dial.value);
    dial.low = std::min(dial.low, dial.value);
    dial.step = dial.high / 100;
    if (must_be_above_zero(id)) dial.low = std::min(dial.step, dial.value);
    return dial;
}

std::vector<Dial> Dials::shown() const {
    std::vector<Dial> all;
    for (const DialId id : kDials) all.push_back(dial(id));
    return all;
}

bool Dials::turned() const {
    return std::ranges::any_of(tried_, [](const auto& value) { return value.has_value(); });
}

void Dials::back_to_records() {
    tried_ = {};
}

Turned Dials::type(DialId id, std::string_view text) {
    const auto read = read_typed(text);
    if (!read) {
        if (*read.trouble == TroubleId::blank) return {say("Blank: type a number, or go back to the records.")};
        return {say("Not a number: write it like 12.5 or 12,5.")};
    }
    const double value = as_double(*read);
    if (value < 0 && !may_be_below_zero(id)) return {say("Below nought: this can only be nought or more.")};
    if (value <= 0 && must_be_above_zero(id)) return {say("Nought: with nothing in it there is nothing to reckon.")};
    if (value > 1e6) return {say("Too large: less than a million.")};
    slide(id, value);
    return {};
}

void Dials::slide(DialId id, double value) {
    tried_[at(id)] = value;
}

Model Dials::tried() const {
    Model model = recorded_;
    const auto set = [&](DialId id, auto apply) {
        if (const auto& value = tried_[at(id)]) apply(*value);
    };
    set(DialId::premium, [&](double value) { model.home_price = model.bought_price + value; });
    set(DialId::hour, [&](double value) { model.hourly_target = value; });
    set(DialId::yield, [&](double value) { model.yield = value; });
    set(DialId::leaf, [&](double value) { model.kg_per_vat = value; });
    set(DialId::minutes, [&](double value) { set_minutes(model, value); });
    set(DialId::bought_price, [&](double value) { model.bought_price_per_gram = value; });
    return model;
}

}  // namespace dyestead::gui
