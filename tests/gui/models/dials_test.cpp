#include "gui/models/dials.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace dyestead::gui {

namespace {

// The worked check of decisions/model.h's formulas, premium nought.
Model recorded() {
    Model model;
    model.dose = 1.7 / 19;
    model.strength = 20.0 / 38;
    model.yield = 2;
    model.kg_per_vat = 5;
    model.vat_cash_per_kg = 0.296;
    model.garden_cash_per_kg = 0.56;
    model.vat_minutes_fixed = 120;
    model.garden_minutes_per_kg = 19.2;
    model.hourly_target = 12.71;
    model.bought_price_per_gram = 0.25;
    model.home_price = 5.5;
    model.bought_price = 5.5;
    return model;
}

const Dial& dial(const std::vector<Dial>& dials, DialId id) {
    return *std::ranges::find(dials, id, &Dial::id);
}

}  // namespace

TEST_CASE("before anything is turned the dials stand where the records do") {
    const Dials dials{recorded(), "GBP"};
    CHECK_FALSE(dials.turned());
    for (const Dial& each : dials.shown()) {
        CAPTURE(each.label);
        CHECK(each.value == doctest::Approx(each.recorded));
        CHECK(each.low <= each.value);
        CHECK(each.value <= each.high);
        CHECK(each.step > 0);
        CHECK_FALSE(each.turned);
    }
    CHECK(dial(dials.shown(), DialId::minutes).value == doctest::Approx(120));
}

TEST_CASE("a dial moves its own part of the model and nothing else") {
    Dials dials{recorded(), "GBP"};
    CHECK(dials.type(DialId::premium, "0,80").mistake.empty());
    CHECK(dials.turned());
    CHECK(dials.tried().premium() == doctest::Approx(0.80));
    CHECK(dials.tried().bought_price == doctest::Approx(5.5));
    CHECK(dials.tried().yield == doctest::Approx(2));
    CHECK(dials.type(DialId::minutes, "30").mistake.empty());
    CHECK(dials.tried().minutes_per_vat() == doctest::Approx(30));
    dials.slide(DialId::leaf, 20);
    CHECK(dials.tried().kg_per_vat == doctest::Approx(20));
    dials.back_to_records();
    CHECK_FALSE(dials.turned());
    CHECK(dials.tried().premium() == doctest::Approx(0));
    CHECK(dials.tried().minutes_per_vat() == doctest::Approx(120));
}

TEST_CASE("fewer minutes than the leaf alone would take leave no time below nought") {
    Model model = recorded();
    model.vat_minutes_fixed = 60;
    model.vat_minutes_per_kg = 12;
    Dials dials{model, "GBP"};
    CHECK(dials.type(DialId::minutes, "40").mistake.empty());
    CHECK(dials.tried().minutes_per_vat() == doctest::Approx(40));
    CHECK(dials.tried().vat_minutes_fixed >= 0);
    CHECK(dials.tried().vat_minutes_per_kg >= 0);
}

TEST_CASE("a mistake is said in words and moves nothing") {
    Dials dials{recorded(), "GBP"};
    for (const auto* text : {"", "many", "1,234.5", "-1", "99999999"}) {
        CAPTURE(text);
        CHECK_FALSE(dials.type(DialId::yield, text).mistake.empty());
    }
    CHECK_FALSE(dials.type(DialId::yield, "0").mistake.empty());
    CHECK_FALSE(dials.turned());
    CHECK(dials.type(DialId::premium, "-0.50").mistake.empty());
    CHECK(dials.tried().premium() == doctest::Approx(-0.5));
}

TEST_CASE("a slider has room for what is typed") {
    Dials dials{recorded(), "GBP"};
    CHECK(dials.type(DialId::hour, "250").mistake.empty());
    CHECK(dial(dials.shown(), DialId::hour).high >= 250);
}

}  // namespace dyestead::gui
