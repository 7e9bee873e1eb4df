// The powder sold as it is, beside pouring it into soap, on the small shop whose figures can be worked out by hand
// (blue_shop.h): 40 g took 3.40 before own time and 9 minutes a gram; 2 % of takings go in fees.
#include <doctest/doctest.h>

#include "domain/decisions/verdict.h"
#include "tests/domain/decisions/blue_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

struct Sold : BlueShop {
    PowderPrice& price_of(Amount pack, Money money) {
        auto& fact = add<PowderPrice>();
        fact.from = day_of(2026, 1, 1);
        fact.colour = blue;
        fact.pack = pack;
        fact.price = money;
        return fact;
    }
};

}  // namespace

TEST_CASE("10 g for 9: 0.90 a gram less fees and 0.085, and that over nine minutes") {
    Sold s;
    CHECK_FALSE(s.verdict().figures.powder);
    s.price_of(grams(10), Money::units(9));
    const Verdict verdict = s.verdict();
    REQUIRE(verdict.figures.powder);
    const PowderSold& powder = *verdict.figures.powder;
    CHECK(powder.price_per_gram == Approx(0.9));
    CHECK(powder.brings_per_gram == Approx(0.9 * (1 - verdict.fee_share)));
    CHECK(*powder.left_per_gram == Approx(powder.brings_per_gram - 3.40 / 40));
    CHECK(*powder.left_per_dye_hour == Approx(*powder.left_per_gram / 9 * 60));
    // In soap: what a bar of our own leaves more than the better of the others, over the grams in it.
    const VerdictFigures& figures = verdict.figures;
    const double better = std::max(*figures.bought.cash_margin_per_bar, *figures.plain.cash_margin_per_bar);
    const double grams_a_bar = *verdict.dose_per_bar / figures.strength;
    CHECK(*powder.soap_left_per_gram == Approx((*figures.home.cash_margin_per_bar - better) / grams_a_bar));
    CHECK(*powder.soap_left_per_dye_hour == Approx(*powder.soap_left_per_gram / 9 * 60));
}

TEST_CASE("at the price that makes them even, both leave the same; the newest price counts from its day") {
    Sold s;
    s.price_of(grams(1), Money::units(1));
    const double even = *s.verdict().figures.powder->even_price_per_gram;
    auto& dated = s.price_of(grams(1'000), Money::millionths(static_cast<std::int64_t>(even * 1e9)));
    dated.from = day_of(2026, 10, 31);
    const PowderSold powder = *s.verdict().figures.powder;
    CHECK(powder.price_per_gram == Approx(even));
    CHECK(*powder.left_per_gram == Approx(*powder.soap_left_per_gram));
    s.all<PowderPrice>().back().from = day_of(2026, 11, 1);
    CHECK(s.verdict().figures.powder->price_per_gram == Approx(1));
}

TEST_CASE("with the powder dry already nothing more is spent on it, and no hour is left to earn anything") {
    Sold s;
    s.price_of(grams(10), Money::units(9));
    const Verdict ahead = look_ahead(s.shop(), s.as_of, s.blue, Stand::pigment_dry);
    REQUIRE(ahead.figures.powder);
    CHECK(*ahead.figures.powder->left_per_gram == Approx(ahead.figures.powder->brings_per_gram));
    CHECK_FALSE(ahead.figures.powder->left_per_dye_hour);
}

TEST_CASE("a pack of nothing is no price; without vats or a price of the bars only what is known is said") {
    Sold nothing;
    nothing.price_of(grams(0), Money::units(9));
    CHECK_FALSE(nothing.verdict().figures.powder);
    Sold no_vat;
    no_vat.price_of(grams(10), Money::units(9));
    no_vat.as_of = day_of(2025, 6, 1);
    no_vat.all<PowderPrice>().front().from = day_of(2025, 1, 1);
    const auto young = no_vat.verdict().figures.powder;
    CHECK((!young || !young->left_per_gram));
    Sold unpriced;
    unpriced.price_of(grams(10), Money::units(9));
    unpriced.all<Price>().clear();
    const auto powder = unpriced.verdict().figures.powder;
    REQUIRE(powder);
    CHECK(powder->left_per_gram);
    CHECK_FALSE(powder->soap_left_per_gram);
    CHECK_FALSE(powder->even_price_per_gram);
}

TEST_CASE("what was sold as powder counts as made: it is named, and no figure of the verdict moves") {
    Sold s;
    s.price_of(grams(10), Money::units(9));
    const Verdict before = s.verdict();
    const auto sale = s.sale(day_of(2026, 10, 20));
    s.at(sale).channel = Channel::card;
    s.at(sale).postage = Money::units(4);
    s.at(sale).time = minutes(50);
    auto& line = s.add<PowderLine>(sale);
    line.pigment = s.powder;
    line.lot = s.powder_2026;
    line.amount = grams(12);
    line.price = Money::units(10);
    const Verdict after = s.verdict();
    CHECK(after.stands_on.grams_sold == Approx(12));
    CHECK(after.stands_on.grams_left == Approx(before.stands_on.grams_left - 12));
    CHECK(after.stands_on.grams_used == before.stands_on.grams_used);
    CHECK(after.stands_on.grams_lost == 0);
    CHECK(after.fee_share == before.fee_share);
    CHECK(after.fee_per_bar == before.fee_per_bar);
    const auto figures = [](const VerdictFigures& of) {
        return std::vector<std::optional<double>>{
            of.strength,
            of.home.full_margin_per_bar,
            of.home.earnings_per_hour,
            of.home.earnings_per_hour_with_selling,
            of.bought.full_margin_per_bar,
            of.plain.full_margin_per_bar,
            of.pigment.full_cost_per_gram,
            of.pigment.cash_cost_per_gram,
            of.pigment.hands_on_minutes_per_gram,
            of.pigment.strength,
            of.season.dye_hours,
            of.season.bars,
            of.season.full_difference,
            of.extra_dye_hour.earned,
            of.extra_dye_hour.hurdle,
            of.extra_dye_hour.soap_hour,
            of.powder->left_per_gram,
            of.powder->soap_left_per_gram,
            of.breakeven.premium_per_bar.value,
        };
    };
    CHECK(figures(after.figures) == figures(before.figures));
    CHECK(after.ruling.word == before.ruling.word);
}
