// Lye against published saponification values, a published titration, and molar masses.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "domain/ledger/lye.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

struct Oil {
    Ratio saponification;
    Quantity mass;
};

LyeNeed need(std::initializer_list<Oil> oils, Ratio superfat, Ratio concentration = {33, 100}) {
    ShopBuilder b;
    const auto loaf = b.recipe(12);
    b.at(loaf).superfat = superfat;
    b.at(loaf).lye_concentration = concentration;
    for (const Oil& oil : oils) {
        const auto key = b.oil("oil", oil.saponification);
        auto& part = b.add<RecipePart>(loaf);
        part.material = key;
        part.amount = {oil.mass, Unit::g, Mark::measured};
    }
    return lye_need(b.shop(), b.at(loaf));
}

// Grams of lye for a kilogram that leaves no superfat.
double lye_per_kilogram(Ratio saponification) {
    const auto answer = need({{saponification, Quantity::grams(1'000)}}, {0, 1});
    REQUIRE(answer.lye);
    return static_cast<double>(answer.lye->in_base()) / 1'000;
}

constexpr double kMolarNaOH = static_cast<double>(kMolarMassOfSodiumHydroxide) / 100'000;
constexpr double kMolarKOH = static_cast<double>(kMolarMassOfPotassiumHydroxide) / 100'000;

}  // namespace

TEST_CASE("molar masses are the sums of the abridged atomic weights") {
    // IUPAC abridged atomic weights, from memory: K 39.0983, Na 22.98976928, O 15.999, H 1.008.
    CHECK(kMolarKOH == doctest::Approx(39.0983 + 15.999 + 1.008).epsilon(1e-7));
    CHECK(kMolarNaOH == doctest::Approx(22.98976928 + 15.999 + 1.008).epsilon(1e-7));
    CHECK(kMolarNaOH / kMolarKOH == doctest::Approx(0.712888).epsilon(1e-6));
    // Source: the older weights in GNU units 2.22: K 39.0983, Na 22.989768, O 15.9994, H 1.00794.
    const double older = (22.989768 + 15.9994 + 1.00794) / (39.0983 + 15.9994 + 1.00794);
    CHECK(kMolarNaOH / kMolarKOH == doctest::Approx(older).epsilon(2e-5));
}

// Source: Simmons and Appleton, The Handbook of Soap Manufacture (1908), chapter on analysis: 1.8976 g of fat,
// blank 25.6 ml, test 18.95 ml of normal acid, saponification value 196.6, equivalent 285.3.
TEST_CASE("the titrated sample calls for as many moles of soda as it took of potash") {
    const double millimoles = 25.6 - 18.95;
    const double value = millimoles * 56.1 / 1.8976;
    CHECK(value == doctest::Approx(196.6).epsilon(0.0002));
    CHECK(56'100 / 285.3 == doctest::Approx(value).epsilon(0.0003));

    // A hundred times the sample, so that a milligram is small: 665 millimoles.
    const auto answer = need({{{3'730'650, 18'976}, Quantity::milligrams(189'760)}}, {0, 1});
    REQUIRE(answer.lye);
    CHECK(static_cast<double>(answer.lye->in_base()) / kMolarNaOH == doctest::Approx(100 * millimoles).epsilon(0.0002));
}

namespace {

struct Sample {
    std::string_view oil;
    double equivalent;  // Simmons and Appleton 1908, single samples
    Ratio low, high;    // the range published elsewhere, mg KOH to a gram
    std::string_view source;
};

constexpr std::array kSamples{
    Sample{"coconut, Cochin", 215.5, {248, 1}, {265, 1}, "Codex STAN 210, as repeated on a product sheet"},
    Sample{"coconut, Ceylon", 216, {248, 1}, {265, 1}, "Codex STAN 210, as repeated on a product sheet"},
    Sample{"sunflower", 290.7, {187, 1}, {194, 1}, "CXS 210-1999, amended 2022"},
    Sample{"shea", 313, {160, 1}, {195, 1}, "CXS 325R-2017"},
    Sample{"shea", 303, {160, 1}, {195, 1}, "CXS 325R-2017"},
    Sample{"castor", 310, {176, 1}, {187, 1}, "BP 1993"},
    Sample{"palm", 278, {195, 1}, {205, 1}, "AGMARK"},
    Sample{"palm", 280, {195, 1}, {205, 1}, "AGMARK"},
    Sample{"linseed", 292, {118, 1}, {196, 1}, "Ichino 1988, data set oils.int"},
    Sample{"cottonseed", 290, {189, 1}, {198, 1}, "Ichino 1988, data set oils.int"},
    Sample{"sesame", 295.2, {187, 1}, {193, 1}, "Ichino 1988, data set oils.int"},
    Sample{"olive", 288, {187, 1}, {196, 1}, "Ichino 1988, data set oils.int"},
    Sample{"tallow", 283.6, {190, 1}, {199, 1}, "Ichino 1988, data set oils.int"},
    Sample{"lard", 286, {190, 1}, {202, 1}, "Ichino 1988, data set oils.int"},
};

}  // namespace

TEST_CASE("the lye for each sample of 1908 lies within the lye for the range published for that oil") {
    for (const Sample& sample : kSamples) {
        CAPTURE(sample.oil);
        CAPTURE(sample.source);
        const Ratio value{56'100'000, std::llround(sample.equivalent * 1'000)};
        CHECK(lye_per_kilogram(value) >= lye_per_kilogram(sample.low));
        CHECK(lye_per_kilogram(value) <= lye_per_kilogram(sample.high));
    }
}

TEST_CASE("groundnut of 1908 lies just outside, so the ranges do tell oils apart") {
    // Equivalent 285, 196.8 mg KOH; the limit of 196 is from memory.
    CHECK(lye_per_kilogram({56'100, 285}) > lye_per_kilogram({196, 1}));
}

// Ranges as in the test before; grams of soda to a gram of oil by arithmetic.
TEST_CASE("soda to a gram of oil, by the ends of the ranges") {
    CHECK(lye_per_kilogram({248, 1}) == doctest::Approx(177).epsilon(0.003));
    CHECK(lye_per_kilogram({265, 1}) == doctest::Approx(189).epsilon(0.003));
    CHECK(lye_per_kilogram({160, 1}) == doctest::Approx(114).epsilon(0.003));
    CHECK(lye_per_kilogram({195, 1}) == doctest::Approx(139).epsilon(0.003));
}

// Common practice, no source: soda to a gram of olive oil 0.135, coconut 0.183, shea 0.1275, 5 % superfat.
// The masses that follow are arithmetic.
TEST_CASE("a kilogram of olive, coconut and shea at 60, 30 and 10 %") {
    const auto by_soda = [](std::int64_t tenths_of_mg_per_gram) {
        return Ratio{tenths_of_mg_per_gram * kMolarMassOfPotassiumHydroxide, 10 * kMolarMassOfSodiumHydroxide};
    };
    const auto loaf = [&](Ratio concentration) {
        return need({{by_soda(1'350), Quantity::grams(600)},
                     {by_soda(1'830), Quantity::grams(300)},
                     {by_soda(1'275), Quantity::grams(100)}},
                    {5, 100}, concentration);
    };
    const auto third = loaf({33, 100});
    REQUIRE(third.lye);
    REQUIRE(third.water);
    CHECK(*third.lye == Quantity::milligrams(141'218));                                // 141 g
    CHECK(*third.water == Quantity::milligrams(286'714));                              // 287 g
    CHECK(third.oils + *third.lye + *third.water == Quantity::milligrams(1'427'932));  // 1428 g
    const auto weaker = loaf({28, 100});
    REQUIRE(weaker.water);
    CHECK(weaker.lye == third.lye);
    CHECK(*weaker.water == Quantity::milligrams(363'131));
}

// Source: Great Soviet Encyclopedia: 52.2 % of sodium hydroxide by mass at 20 degrees Celsius; 109.2 g to
// 100 g of water by arithmetic.
TEST_CASE("no stronger lye than dissolves goes without a caution") {
    CHECK(100.0 * static_cast<double>(kStrongestLye.top) /
              static_cast<double>(kStrongestLye.bottom - kStrongestLye.top) ==
          doctest::Approx(109.2).epsilon(0.0005));
    const auto warned = [](Ratio concentration) {
        const auto answer = need({{{190, 1}, Quantity::grams(1'000)}}, {5, 100}, concentration);
        return std::ranges::count(answer.cautions, LyeCaution::stronger_than_dissolves) == 1;
    };
    CHECK_FALSE(warned({522, 1'000}));
    CHECK(warned({5'221, 10'000}));
    CHECK_FALSE(warned({1, 3}));
}

// From the molar masses above, by arithmetic: 190 mg KOH to a gram, 40 % of the power as potassium. A kilogram takes
// 76 g of KOH, 84.444 g as sold at 90 %, and 114 g * 39.99677 / 56.1053 = 81.269 g of NaOH.
TEST_CASE("a lye of two alkalis shares the power, and each is weighed by its own molar mass and purity") {
    ShopBuilder b;
    const auto loaf = b.recipe(12);
    b.at(loaf).superfat = {0, 1};
    b.at(loaf).potassium_share = Ratio{40, 100};
    const auto oil = b.oil("oil", {190, 1});
    auto& part = b.add<RecipePart>(loaf);
    part.material = oil;
    part.amount = grams(1'000);
    const auto soda = b.material("soda", Purpose::lye);
    const auto potash = b.material("potash", Purpose::lye);
    b.at(potash).alkali = Alkali::potassium;
    b.at(potash).purity = Ratio{90, 100};
    const auto need = lye_need(b.shop(), b.at(loaf));
    CHECK(need.sodium.weighed == Quantity::milligrams(81'269));
    CHECK(need.potassium.weighed == Quantity::milligrams(84'444));
    CHECK(need.potassium.from == potash);
    REQUIRE(need.lye);
    CHECK(*need.lye == Quantity::milligrams(81'269 + 84'444 + 1));  // 165.713626 g, rounded once

    const auto batch = b.batch(day_of(2026, 3, 1), loaf, b.made("bar", MaterialKind::bar));
    b.uses<BatchUse>(batch, oil, grams(1'000));
    b.uses<BatchUse>(batch, soda, {Quantity::milligrams(81'269), Unit::g, Mark::measured});
    b.uses<BatchUse>(batch, potash, {Quantity::milligrams(84'444), Unit::g, Mark::measured});
    const auto check = lye_check(b.shop(), b.at(batch));
    REQUIRE(check.difference);
    CHECK(std::abs(check.difference->top) <= 1);  // a milligram
}
