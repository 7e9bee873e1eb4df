#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <numeric>

#include "domain/decisions/season_draws.h"
#include "tests/domain/decisions/blue_shop.h"
#include "tests/support/invented_season.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

VatPoint vat(int season, double grams, double minutes = 120, double strength = 0.5) {
    return {season, 5, grams, minutes, strength};
}

std::vector<VatPoint> two_summers() {
    return {vat(2025, 8, 130, 0.6), vat(2025, 12, 110, 0.4), vat(2025, 10), vat(2026, 9), vat(2026, 14, 100, 0.45)};
}

double quantile(std::vector<double> values, double share) {
    std::ranges::sort(values);
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

double spread(const std::vector<double>& values) {
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
    double sum = 0;
    for (const double value : values) sum += (value - mean) * (value - mean);
    return std::sqrt(sum / static_cast<double>(values.size() - 1));
}

}  // namespace

TEST_CASE("how much can be said goes by how many vats and seasons are on record") {
    CHECK(doubt(invented({})).kind == DoubtKind::unknown);
    CHECK(doubt(invented({vat(2026, 9)})).kind == DoubtKind::unknown);
    CHECK(doubt(invented({vat(2026, 9), vat(2026, 0), vat(2025, 0)})).kind == DoubtKind::unknown);
    CHECK(doubt(invented(two_summers()), 0).kind == DoubtKind::unknown);

    const Doubt few = doubt(invented({vat(2025, 5), vat(2025, 9), vat(2026, 14)}));
    CHECK(few.kind == DoubtKind::extremes);
    CHECK_FALSE(few.home_beats_bought.has_value());
    CHECK(few.at_hurdle->bad < few.at_hurdle->usual);
    CHECK(few.at_hurdle->usual < few.at_hurdle->good);

    const Doubt one = doubt(invented({vat(2026, 5), vat(2026, 9), vat(2026, 14), vat(2026, 10)}));
    CHECK(one.kind == DoubtKind::one_season);
    CHECK_FALSE(one.home_beats_bought.has_value());
    CHECK(one.full_margin.has_value());

    const Doubt two = doubt(invented(two_summers()));
    CHECK(two.kind == DoubtKind::chance);
    CHECK(two.season_vats == 2);
    for (const auto& chance :
         {two.home_beats_bought, two.home_beats_plain, two.home_beats_bought_cash, two.home_beats_plain_cash}) {
        REQUIRE(chance.has_value());
        CHECK(*chance >= 0);
        CHECK(*chance <= 1);
    }
    CHECK(*two.home_beats_bought_cash > *two.home_beats_bought);
    CHECK(two.full_margin->bad < two.full_margin->usual);
    CHECK(two.full_margin->usual < two.full_margin->good);
}

TEST_CASE("the same question gives the same answer") {
    const Doubt first = doubt(invented(two_summers()));
    const Doubt second = doubt(invented(two_summers()));
    CHECK(*first.home_beats_bought == *second.home_beats_bought);
    CHECK(first.earned_per_hour->good == second.earned_per_hour->good);
}

TEST_CASE("without a price, a target or a hurdle what needs them is left out") {
    DoubtInput input = invented(two_summers());
    input.plain_price_known = false;
    input.target.reset();
    input.hurdle.reset();
    input.full_margin.reset();
    const Doubt result = doubt(input);
    CHECK_FALSE(result.home_beats_bought.has_value());
    CHECK_FALSE(result.home_beats_plain_cash.has_value());
    CHECK(result.home_beats_bought_cash.has_value());
    CHECK_FALSE(result.full_margin.has_value());
    CHECK(result.cash_margin.has_value());
    CHECK(result.matters.empty());
}

TEST_CASE("a higher price makes it likelier, a vat that gave nothing less likely") {
    DoubtInput input = invented(two_summers());
    const double now = *doubt(input).home_beats_bought;
    input.model.home_price += 0.3;
    CHECK(*doubt(input).home_beats_bought > now);
    input = invented(two_summers());
    input.vats.push_back(vat(2026, 0));
    CHECK(*doubt(input).home_beats_bought < now);
    CHECK(doubt(input).season_vats == 3);
}

TEST_CASE("a season without a bar has no margin, and no figure pretends it has") {
    DoubtInput input = invented(two_summers());
    for (int i = 0; i < 20; ++i) input.vats.push_back(vat(2026, 0));
    input.crop_can_fail = true;
    input.plantings_lost = 3;
    const Doubt result = doubt(input);
    REQUIRE(result.full_margin.has_value());
    CHECK(std::isfinite(result.full_margin->bad));
    CHECK(std::isfinite(result.at_hurdle->bad));
    input.vats.resize(4);
    input.vats[0].grams = input.vats[1].grams = 0;
    CHECK(doubt(input).kind == DoubtKind::extremes);
    CHECK(std::isfinite(doubt(input).at_hurdle->bad));
}

TEST_CASE("one vat to come lies as Student's t says") {
    // Predictive of a normal sample: mean + s sqrt(1 + 1/n) t(n - 1) (Gelman and others, Bayesian Data Analysis, 3rd
    // edition, section 3.2). Quantiles of t by Boost.Math.
    DoubtInput input = invented(two_summers());
    const VatSpread sample = vat_spread(input);
    std::vector<double> logs;
    for (const DrawnSeason& each : draw_seasons(input, sample, 1, kDraws))
        if (each.season.failed_vats == 0) logs.push_back(std::log(each.season.yield));
    const boost::math::students_t t{4};
    for (const double share : {0.1, 0.25, 0.5, 0.75, 0.9}) {
        const double expected =
            sample.mean[0] + sample.root[0][0] * std::sqrt(1 + 1.0 / 5) * boost::math::quantile(t, share);
        CHECK(quantile(logs, share) == Approx(expected).epsilon(0.01));
    }
}

TEST_CASE("vats that give nothing are as many as Jeffreys' prior and the counts say") {
    // Beta-binomial: mean n (x + 1/2) / (N + 1).
    DoubtInput input = invented(two_summers());
    input.vats.push_back(vat(2026, 0));
    const auto drawn = draw_seasons(input, vat_spread(input), 4, kDraws);
    double failed = 0;
    for (const DrawnSeason& each : drawn) failed += each.season.failed_vats;
    CHECK(failed / kDraws == Approx(4 * 1.5 / 7).epsilon(0.01));
    input.crop_can_fail = true;
    input.plantings = 4;
    input.plantings_lost = 1;
    double lost = 0;
    for (const DrawnSeason& each : draw_seasons(input, vat_spread(input), 4, kDraws))
        lost += each.season.crop_lost ? 1 : 0;
    CHECK(lost / kDraws == Approx(1.5 / 5).epsilon(0.02));
}

TEST_CASE("more powder is weaker, and a summer is shared by its vats") {
    DoubtInput input = invented(two_summers());
    const VatSpread sample = vat_spread(input);
    CHECK(sample.season_share == 0.5);
    // With four to seven vats the correlation is the one that is set.
    CHECK(sample.root[2][0] / std::hypot(sample.root[2][0], sample.root[2][2]) == Approx(-0.5));
    CHECK(sample.root[1][0] == 0);
    // Of a season of many vats half the variance is left, and the mean's own.
    std::vector<double> narrow;
    std::vector<double> wide;
    for (const DrawnSeason& each : draw_seasons(input, sample, 60, 20'000))
        narrow.push_back(std::log(each.season.yield));
    for (const DrawnSeason& each : draw_seasons(input, sample, 1, 20'000))
        if (each.season.yield > 0) wide.push_back(std::log(each.season.yield));
    const double ratio =
        (quantile(narrow, 0.75) - quantile(narrow, 0.25)) / (quantile(wide, 0.75) - quantile(wide, 0.25));
    CHECK(ratio == Approx(std::sqrt((0.5 + 0.2) / 1.2)).epsilon(0.05));
}

TEST_CASE("with eight vats their own covariance counts, halved; three seasons tell the weather from the vats") {
    std::vector<VatPoint> vats;
    for (int season = 0; season < 4; ++season)
        for (int i = 0; i < 3; ++i) {
            const double better = 1 + 0.3 * season + 0.02 * i;
            vats.push_back(vat(2023 + season, 8 * better, 120, 0.6 / better));
        }
    const VatSpread sample = vat_spread(invented(vats));
    CHECK(sample.vats == 12);
    CHECK(sample.seasons == 4);
    CHECK(sample.season_share > 0.95);
    // Strength falls exactly as yield rises: minus one, halved.
    CHECK(sample.root[2][0] / std::hypot(sample.root[2][0], sample.root[2][2]) == Approx(-0.5).epsilon(1e-6));
    std::vector<double> strengths;
    for (const VatPoint& each : vats) strengths.push_back(std::log(*each.strength));
    CHECK(std::hypot(sample.root[2][0], sample.root[2][2]) == Approx(spread(strengths)));
}

TEST_CASE("what a perfect forecast is worth comes to the closed form for one uncertain thing") {
    // Only the yield is uncertain, lognormal with location mu and scale sigma; growing brings a Y - c or is left alone.
    // E max(a Y - c, 0) = a exp(mu + sigma^2/2) N(d + sigma) - c N(d), d = (ln(a/c) + mu) / sigma: the lognormal's
    // partial expectation (Aitchison and Brown, The Lognormal Distribution, 1957, theorem 2.6).
    std::vector<VatPoint> vats;
    for (int i = 0; i < 2'000; ++i) {
        const boost::math::normal n;
        const double at = boost::math::quantile(n, (i + 0.5) / 2'000);
        vats.push_back(vat(2025 + i % 2, 10 * std::exp(0.3 * at)));
    }
    vats.push_back(vat(2026 + 1, 10));  // one vat in the season to come
    DoubtInput input = invented(vats);
    input.yield_strength_correlation = 0;
    input.hurdle = 9.3;
    const VatSpread sample = vat_spread(input);
    const double sigma = sample.root[0][0];
    const double mu = sample.mean[0];
    const SeasonSums one = season_sums(input, 1, {1, 1, 0.5, 0, false});
    const SeasonSums none = season_sums(input, 1, {0, 1, 0.5, 0, false});
    const double a = one.bought.full(9.3) - none.bought.full(9.3);
    const double c = -none.bought.full(9.3);
    const double d = (std::log(a / c) + mu) / sigma;
    const boost::math::normal normal;
    const double usual = a * std::exp(mu + sigma * sigma / 2) - c;
    const double expected = a * std::exp(mu + sigma * sigma / 2) * boost::math::cdf(normal, d + sigma) -
                            c * boost::math::cdf(normal, d) - std::max(0.0, usual);
    const Doubt result = doubt(input);
    REQUIRE(result.matters.front().of == DoubtOf::yield);
    CHECK(expected > 0.2);
    CHECK(result.matters.front().perfect_forecast == Approx(expected).epsilon(0.06));
    // And the chance itself: P(a Y > c), but for the one vat in two thousand that gives nothing.
    CHECK(*result.home_beats_bought_cash == Approx(1).epsilon(0.01));
}

TEST_CASE("one more record narrows its own input: t for what is measured, beta-binomial for what is counted") {
    DoubtInput input = invented(two_summers());
    input.crop_can_fail = true;
    input.plantings = 2;
    const Doubt five = doubt(input);
    const auto of = [&](DoubtOf what) {
        const auto found = std::ranges::find(five.matters, what, &Matter::of);
        REQUIRE(found != five.matters.end());
        return found->one_more;
    };
    const auto width = [](double records) {
        return boost::math::quantile(boost::math::students_t{records - 1}, 0.9) * std::sqrt(1 + 1 / records);
    };
    REQUIRE(of(DoubtOf::yield));
    CHECK(*of(DoubtOf::yield) == Approx(width(6) / width(5)));
    CHECK(*of(DoubtOf::yield) < 1);
    // All five vats are tested.
    CHECK(*of(DoubtOf::strength) == Approx(width(6) / width(5)));
    // Two vats to come, five counted: by hand, summing over what one more could show.
    const auto variance = [](double failed, double counted, double to_come) {
        const double all = counted + 1;
        const double p = (failed + 0.5) / all;
        return to_come * p * (1 - p) * (to_come + all) / (all + 1);
    };
    const double p = 0.5 / 6;
    const double after = p * variance(1, 6, 2) + (1 - p) * variance(0, 6, 2);
    const auto counted = std::ranges::find(five.matters, DoubtOf::failed_vats, &Matter::of);
    if (counted != five.matters.end())
        CHECK(*counted->one_more == Approx(std::sqrt(after / variance(0, 5, 2))).epsilon(1e-6));
    const auto crop = std::ranges::find(five.matters, DoubtOf::lost_crop, &Matter::of);
    if (crop != five.matters.end()) {
        const double q = 0.5 / 3;
        const double then = q * variance(1, 3, 1) + (1 - q) * variance(0, 3, 1);
        CHECK(*crop->one_more == Approx(std::sqrt(then / variance(0, 2, 1))).epsilon(1e-6));
    }
    // One test says nothing of how tests differ.
    DoubtInput untested = invented(two_summers());
    for (std::size_t i = 1; i < untested.vats.size(); ++i) untested.vats[i].strength.reset();
    for (const Matter& each : doubt(untested).matters) CHECK((each.of != DoubtOf::strength || !each.one_more));
}

TEST_CASE("until two powders are tested strength spreads as the plant's own range says, drawn as PERT") {
    DoubtInput input = invented(two_summers());
    for (VatPoint& each : input.vats) each.strength.reset();
    const auto variance = [&] {
        const VatSpread spread = vat_spread(input);
        double sum = 0;
        for (const double each : spread.root[2]) sum += each * each;
        return sum;
    };
    const double as_yields = variance();
    input.strength_stated = Band{0.25, 0.5, 1.0};
    // Even in logs: the mean is the middle, half the range away from either end.
    const double half = std::log(2.0);
    CHECK(variance() == Approx(half * half / 7));
    CHECK(variance() != Approx(as_yields));
    input.strength_stated = Band{0.5, 0.5, 0.5};
    CHECK(variance() == Approx(0));
    for (const Band wrong : {Band{0, 0.5, 1}, Band{0.6, 0.5, 1}, Band{0.2, 0.5, 0.4}}) {
        input.strength_stated = wrong;
        CHECK(variance() == Approx(as_yields));
    }
    // Two tests count before what was said beforehand.
    DoubtInput tested = invented(two_summers());
    const auto before = vat_spread(tested).root;
    tested.strength_stated = Band{0.25, 0.5, 1.0};
    CHECK(vat_spread(tested).root == before);
}

TEST_CASE("the shop's own records are the sample") {
    BlueShop shop;
    const Verdict few = shop.verdict();
    CHECK(few.doubt.kind == DoubtKind::extremes);
    CHECK(few.doubt.vats == 2);
    // Two more vats of each summer's leaf, worked like the first.
    for (int year : {2025, 2026}) {
        const auto bed = shop.blue_planting(day_of(year, 4, 1), 20'000);
        const auto cut = shop.harvest(day_of(year, 8, 20), bed, shop.leaf, grams(20'000));
        for (int i = 0; i < 2; ++i)
            shop.dry(day_of(year, 9, 1), shop.vat(day_of(year, 8, 21 + i), cut, 10'000, 60 + 10 * i, 0), 14 + 4 * i, 0);
    }
    const Verdict enough = shop.verdict();
    CHECK(enough.doubt.kind == DoubtKind::chance);
    CHECK(enough.doubt.vats == 6);
    CHECK(enough.doubt.season_vats == 3);
    CHECK(enough.doubt.home_beats_bought.has_value());
    CHECK(dyestead::verdict(shop.shop(), shop.ledger(), shop.blue, kVerdictMonths, 0).doubt.kind == DoubtKind::unknown);
    CHECK(look_ahead(shop.shop(), shop.as_of, shop.blue, Stand::pigment_dry).doubt.kind == DoubtKind::unknown);
}
