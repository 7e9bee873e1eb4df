#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <random>

#include "domain/decisions/breakeven.h"

using namespace dyestead;

namespace {

// A fixed seed: the same models on every machine (the engine is exact by the standard; its shares are
// taken by hand, for the standard's distributions are not).
class Chance {
public:
    double between(double low, double high) {
        return low + (high - low) * (static_cast<double>(engine_()) / 4294967296.0);
    }
    bool one_in(int n) { return engine_() % static_cast<unsigned>(n) == 0; }

private:
    std::mt19937 engine_{20261031};
};

Model any_model(Chance& chance) {
    Model m;
    m.dose = chance.between(0.02, 0.5);
    m.strength = chance.between(0.1, 3);
    m.bought_strength = chance.between(0.3, 2);
    m.yield = chance.between(0.2, 8);
    m.kg_per_vat = chance.between(0.5, 20);
    m.vat_cash_fixed = chance.one_in(3) ? 0 : chance.between(0, 4);
    m.vat_cash_per_kg = chance.between(0, 1);
    m.garden_cash_per_kg = chance.between(0, 2);
    m.garden_minutes_per_kg = chance.between(0, 60);
    m.vat_minutes_fixed = chance.one_in(4) ? 0 : chance.between(0, 240);
    m.vat_minutes_per_kg = chance.between(0, 30);
    m.hourly_target = chance.one_in(8) ? 0 : chance.between(0, 30);
    m.bought_price_per_gram = chance.between(0.01, 3);
    m.home_price = chance.between(3, 8);
    m.bought_price = chance.between(3, 8);
    m.plain_price = chance.between(3, 8);
    m.sales_tax = chance.one_in(2) ? 0 : chance.between(0, 0.25);
    m.fee_share = chance.between(0, 1.1);
    m.bought_minutes_per_bar = chance.between(0, 5);
    m.home_minutes_per_bar = chance.between(0, 5);
    m.home_cash_per_bar = chance.between(0, 0.5);
    return m;
}

// D and what it is made of, to say how near to nought is near.
double full_difference(const Model& m) {
    return home_less_bought(m).full(m.hourly_target);
}
double scale(const Model& m) {
    return std::abs(m.kept_share() * m.home_price) + std::abs(m.kept_share() * m.bought_price) + m.home_full() +
           m.bought_cash() + m.home_cash_per_bar + m.target_per_minute() * 10;
}

void check_even(const Model& moved, const Model& was) {
    CHECK(std::abs(full_difference(moved)) <= 1e-9 * std::max(1.0, std::max(scale(moved), scale(was))));
}

}  // namespace

TEST_CASE("each break-even makes the difference nought, and exists exactly when its condition holds") {
    Chance chance;
    std::array<int, 6> exist{};
    std::array<int, 6> missing{};
    for (int i = 0; i < 20'000; ++i) {
        const Model m = any_model(chance);
        const double d = full_difference(m);
        const Breakevens all = breakevens(m);
        const auto count = [&](std::size_t which, const Breakeven& each, bool should_exist) {
            ++(each.value ? exist : missing)[which];
            REQUIRE(each.value.has_value() == should_exist);
            REQUIRE((each.why == NoBreakeven::exists) == should_exist);
            return should_exist;
        };
        if (count(0, all.premium_per_bar, m.kept_share() > 0)) {
            Model moved = m;
            moved.home_price = moved.bought_price + *all.premium_per_bar.value;
            check_even(moved, m);
        }
        const double seconds = home_less_bought(m).hours * 3600;
        if (count(1, all.hourly_target, std::abs(seconds) >= 6)) {
            Model moved = m;
            moved.hourly_target = *all.hourly_target.value;
            check_even(moved, m);
        }
        if (count(2, all.yield_g_per_kg, m.home_full() > 0 && d + m.home_full() > 0)) {
            Model moved = m;
            moved.yield = *all.yield_g_per_kg.value;
            check_even(moved, m);
        }
        if (count(3, all.harvest_kg_per_vat, m.fixed_per_vat() > 0 && d + m.fixed_per_vat() > 0)) {
            Model moved = m;
            moved.kg_per_vat = *all.harvest_kg_per_vat.value;
            check_even(moved, m);
        }
        if (count(4, all.hands_on_minutes_per_vat, m.hourly_target > 0)) {
            Model moved = m;
            moved.vat_minutes_fixed = *all.hands_on_minutes_per_vat.value - m.vat_minutes_per_kg * m.kg_per_vat;
            check_even(moved, m);
        }
        if (count(5, all.bought_price_per_gram, true)) {
            Model moved = m;
            moved.bought_price_per_gram = *all.bought_price_per_gram.value;
            check_even(moved, m);
        }
    }
    // Each condition was met and, where it can fail, failed.
    for (const int times : exist) CHECK(times > 1'000);
    for (const std::size_t which : {0U, 1U, 2U, 3U, 4U}) CHECK(missing[which] > 0);
}

TEST_CASE("the cash break-evens are even in cash") {
    Chance chance;
    for (int i = 0; i < 2'000; ++i) {
        const Model m = any_model(chance);
        const Breakevens cash = cash_breakevens(m);
        const auto even = [&](Model moved) {
            moved.hourly_target = 0;
            check_even(moved, m);
        };
        CHECK(!cash.hourly_target.value);
        CHECK(!cash.hands_on_minutes_per_vat.value);
        if (cash.premium_per_bar.value) {
            Model moved = m;
            moved.home_price = moved.bought_price + *cash.premium_per_bar.value;
            even(moved);
        }
        CHECK(cash.yield_g_per_kg.value.has_value() ==
              (m.home_cash() > 0 && m.home_cash() + home_less_bought(m).cash > 0));
        if (cash.yield_g_per_kg.value) {
            Model moved = m;
            moved.yield = *cash.yield_g_per_kg.value;
            even(moved);
        }
        if (cash.harvest_kg_per_vat.value) {
            Model moved = m;
            moved.kg_per_vat = *cash.harvest_kg_per_vat.value;
            even(moved);
        }
        Model moved = m;
        moved.bought_price_per_gram = *cash.bought_price_per_gram.value;
        even(moved);
    }
}

TEST_CASE("where home comes out even already, every break-even is today's value") {
    Model m;
    m.dose = 0.1;
    m.yield = 2;
    m.kg_per_vat = 5;
    m.vat_cash_per_kg = 0.3;
    m.vat_minutes_fixed = 100;
    m.hourly_target = 12;
    m.bought_price_per_gram = 0.25;
    m.bought_price = 5;
    m.home_price = m.bought_price + *breakevens(m).premium_per_bar.value;
    const Breakevens all = breakevens(m);
    CHECK(*all.premium_per_bar.value == doctest::Approx(m.premium()));
    CHECK(*all.hourly_target.value == doctest::Approx(12));
    CHECK(*all.yield_g_per_kg.value == doctest::Approx(2));
    CHECK(*all.harvest_kg_per_vat.value == doctest::Approx(5));
    CHECK(*all.hands_on_minutes_per_vat.value == doctest::Approx(100));
    CHECK(*all.bought_price_per_gram.value == doctest::Approx(0.25));
}

TEST_CASE("what no value can mend is no number, and says why") {
    Model m;
    m.dose = 0.1;
    m.yield = 2;
    m.kg_per_vat = 5;
    m.vat_cash_per_kg = 0.3;
    m.vat_minutes_fixed = 100;
    m.hourly_target = 12;
    m.bought_price_per_gram = 0.25;
    m.bought_price = 5;
    m.home_price = 5;
    SUBCASE("fees that leave nothing of a higher price") {
        m.fee_share = 1;
        CHECK(breakevens(m).premium_per_bar.why == NoBreakeven::fees_take_all);
        CHECK(!breakevens(m).premium_per_bar.value);
    }
    SUBCASE("five seconds a bar are no hours; six are") {
        m.vat_minutes_fixed = 0;
        m.home_minutes_per_bar = 5.0 / 60;
        CHECK(breakevens(m).hourly_target.why == NoBreakeven::no_difference_in_hours);
        m.home_minutes_per_bar = 0.1;
        CHECK(breakevens(m).hourly_target.value);
        m.home_minutes_per_bar = 0;
        m.bought_minutes_per_bar = 0.2;
        CHECK(breakevens(m).hourly_target.value);
    }
    SUBCASE("a bar that sells for less than it would have to even if the pigment were free") {
        m.home_price = 4;
        CHECK(breakevens(m).yield_g_per_kg.why == NoBreakeven::even_free_would_not_pay);
        CHECK(breakevens(m).harvest_kg_per_vat.why == NoBreakeven::no_vat_big_enough);
    }
    SUBCASE("pigment that costs nothing at all") {
        m.vat_cash_per_kg = 0;
        m.vat_minutes_fixed = 0;
        CHECK(breakevens(m).yield_g_per_kg.why == NoBreakeven::pigment_costs_nothing);
        CHECK(breakevens(m).harvest_kg_per_vat.why == NoBreakeven::size_does_not_matter);
    }
    SUBCASE("no hourly target") {
        m.hourly_target = 0;
        CHECK(breakevens(m).hands_on_minutes_per_vat.why == NoBreakeven::no_target);
    }
    SUBCASE("home ahead even of bought colour for nothing") {
        m.home_price = 9;
        CHECK(*breakevens(m).bought_price_per_gram.value < 0);
    }
}

TEST_CASE("the extra dye hour and the break-even target are the same number, bit for bit") {
    Chance chance;
    for (int i = 0; i < 2'000; ++i) {
        const Model m = any_model(chance);
        CHECK(home_less_bought(m).earned_per_hour() == breakevens(m).hourly_target.value);
    }
}
