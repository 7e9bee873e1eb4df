#include <doctest/doctest.h>

#include "domain/decisions/improve.h"
#include "domain/decisions/plants_compared.h"
#include "tests/domain/decisions/blue_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

const Improving* found(const std::vector<Improving>& all, Improvement what) {
    for (const Improving& each : all)
        if (each.what == what) return &each;
    return nullptr;
}

}  // namespace

TEST_CASE("where the hours went, step by step, adds up to all dye hours") {
    BlueShop shop;
    const auto hours = dye_hours(shop.shop(), shop.verdict());
    REQUIRE(hours.size() == 3);
    // Garden 210 minutes, steps 60 + 30 + 54, drying 6.
    CHECK(hours[0].at == HoursAt::garden);
    CHECK(hours[0].minutes == Approx(210));
    CHECK(hours[0].share == Approx(210.0 / 360));
    CHECK(hours[1].at == HoursAt::step);
    CHECK(hours[1].minutes == Approx(144));
    CHECK(hours[1].times == Approx(1));
    CHECK(hours[2].at == HoursAt::rest_of_vat);
    CHECK(hours[2].minutes == Approx(6));
    CHECK(dye_hours(Shop{}, Verdict{}).empty());
}

TEST_CASE("each change is the verdict with one thing otherwise, the one that helps most first") {
    BlueShop shop;
    const Verdict verdict = shop.verdict();
    const auto all = improvements(shop.shop(), shop.ledger(), verdict, 20);
    REQUIRE(all.size() >= 5);
    for (std::size_t i = 1; i < all.size(); ++i) CHECK(all[i - 1].gain >= all[i].gain);
    for (const Improving& each : all) CHECK(each.gain > 0);
    CHECK(improvements(shop.shop(), shop.ledger(), verdict).size() == 3);

    const double hour = *verdict.figures.extra_dye_hour.hurdle;
    const Model& model = *verdict.figures.model;
    const auto season = [&](const Model& at, double kilos) {
        return kilos * at.yield * at.strength / at.dose * home_less_bought(at).full(hour);
    };
    const double today = season(model, 20);
    // Twenty kilos in three vats, of which one held ten.
    const Improving* fuller = found(all, Improvement::fuller_vats);
    REQUIRE(fuller != nullptr);
    CHECK(fuller->then == Approx(10));
    Model at = model;
    at.kg_per_vat = 10;
    CHECK(fuller->gain == Approx(season(at, 20) - today));
    // One vat of three gave nothing.
    const Improving* none_failed = found(all, Improvement::no_failed_vat);
    REQUIRE(none_failed != nullptr);
    at = model;
    at.yield = 3;
    CHECK(none_failed->gain == Approx(season(at, 20) - today));
    // 48 minutes of the step for one vat, halved; two of its fifty are drying.
    const Improving* quicker = found(all, Improvement::quicker_step);
    REQUIRE(quicker != nullptr);
    CHECK(quicker->now == Approx(48));
    at = model;
    at.vat_minutes_fixed *= 26.0 / 50;
    at.vat_minutes_per_kg *= 26.0 / 50;
    CHECK(quicker->gain == Approx(season(at, 20) - today));
    CHECK(found(all, Improvement::free_water) == nullptr);
}

TEST_CASE("bought water is worth saving when it was bought") {
    BlueShop shop;
    const auto water = shop.material("spring water", Purpose::water, HeldAs::volume);
    shop.delivery(
        day_of(2026, 7, 1), water, {Quantity::microlitres(50'000'000), Unit::l, Mark::measured}, Money::units(20));
    const Key<Vat> last = shop.shop().all<Vat>().back().key;
    shop.uses<VatUse>(last, water, {Quantity::microlitres(25'000'000), Unit::l, Mark::measured});
    const auto all = improvements(shop.shop(), shop.ledger(), shop.verdict(), 20);
    const Improving* saved = found(all, Improvement::free_water);
    REQUIRE(saved != nullptr);
    CHECK(saved->now == Approx(10.0 / 20));
    // Ten for the water over all bars the powder colours.
    CHECK(saved->gain == Approx(10));
}

TEST_CASE("nothing is advised where nothing can be worked out") {
    BlueShop shop;
    Verdict verdict = shop.verdict();
    verdict.figures.model.reset();
    CHECK(improvements(shop.shop(), shop.ledger(), verdict).empty());
}

TEST_CASE("plants are held against each other by hour, bed and shade") {
    BlueShop shop;
    const auto rows = plants_compared(shop.shop(), shop.ledger());
    REQUIRE(rows.size() == 1);
    const Verdict verdict = shop.verdict();
    CHECK(rows[0].earned_per_hour == verdict.figures.extra_dye_hour.earned);
    // Ten square metres from April to December 2025, ten from April 2026 on.
    CHECK(rows[0].square_metre_seasons == Approx(20));
    CHECK(*rows[0].per_square_metre == Approx(*verdict.figures.season.cash_difference / 20));
    CHECK(*rows[0].per_shade_gram == Approx(75.40 / 40 / 0.625));
    CHECK(*rows[0].bought_per_shade_gram == Approx(0.32));
    // A colour without a vat is not compared, and one that gave nothing comes last.
    shop.add<Colour>().name = "none";
    auto& failed = shop.add<Colour>();
    failed.name = "failed";
    const auto colour = failed.key;
    auto& vat = shop.add<Vat>();
    vat.date = day_of(2026, 8, 1);
    vat.colour = colour;
    const auto key = vat.key;
    shop.dry(day_of(2026, 8, 5), key, 0, 0);
    const auto more = plants_compared(shop.shop(), shop.ledger());
    REQUIRE(more.size() == 2);
    CHECK(more[1].colour == colour);
    CHECK_FALSE(more[1].earned_per_hour.has_value());
}
