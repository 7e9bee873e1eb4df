#include "domain/ledger/lye.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day kDay = day_of(2026, 3, 1);

struct Bench : ShopBuilder {
    Key<Recipe> loaf = recipe(12);
    Key<Material> lye = material("lye", Purpose::lye);

    void calls_for(Key<Material> material, Amount amount) {
        auto& part = add<RecipePart>(loaf);
        part.material = material;
        part.amount = amount;
    }
    LyeNeed need() { return lye_need(shop(), at(loaf)); }
    LyeCheck check(Key<Batch> batch) { return lye_check(shop(), at(batch)); }
};

bool warns(const LyeNeed& need, LyeCaution code) {
    return std::ranges::find(need.cautions, code) != need.cautions.end();
}

std::int64_t in_milligrams(const std::optional<Quantity>& mass) {
    REQUIRE(mass.has_value());
    return mass->in_base();
}

}  // namespace

TEST_CASE("lye is worked out exactly and rounded once, to the milligram") {
    Bench b;
    b.at(b.loaf).superfat = {0, 100};
    b.at(b.loaf).lye_concentration = {1, 3};
    b.calls_for(b.oil("olive oil", {190, 1}), grams(1'000));
    // 190 g of KOH * 3999677 / 5610530 = 135.448635 g of NaOH
    const auto all = b.need();
    CHECK(all.oils == Quantity::grams(1'000));
    CHECK(in_milligrams(all.lye) == 135'449);
    CHECK(in_milligrams(all.water) == 270'897);  // twice 135.448635 g, not twice 135.449 g
    b.at(b.loaf).superfat = {1, 4};
    CHECK(in_milligrams(b.need().lye) == 101'586);  // three quarters of 135.449 g would be 101.587 g
}

TEST_CASE("values of different denominators add up without rounding in between") {
    Bench whole;
    whole.calls_for(whole.oil("oil", {200, 1}), grams(300));
    Bench parts;
    // 190 + 1/3, 200, 209 + 2/3: 200 on average.
    parts.calls_for(parts.oil("one", {571, 3}), grams(100));
    parts.calls_for(parts.oil("two", {200'000, 1'000}), grams(100));
    parts.calls_for(parts.oil("three", {629, 3}), grams(100));
    CHECK(in_milligrams(parts.need().lye) == in_milligrams(whole.need().lye));
    CHECK(in_milligrams(parts.need().water) == in_milligrams(whole.need().water));
}

TEST_CASE("a lye of nothing but lye needs no water") {
    Bench b;
    b.calls_for(b.oil("olive oil", {190, 1}), grams(1'000));
    b.at(b.loaf).lye_concentration = {1, 1};
    CHECK(in_milligrams(b.need().water) == 0);
    CHECK(in_milligrams(b.need().lye) > 0);
}

TEST_CASE("an oil without a saponification value is named, and no lye is said") {
    Bench b;
    const auto known = b.oil("olive oil", {190, 1});
    const auto unknown = b.material("nut oil", Purpose::oil);
    b.calls_for(known, grams(500));
    b.calls_for(unknown, grams(300));
    b.calls_for(unknown, grams(200));
    const auto need = b.need();
    CHECK_FALSE(need.lye);
    CHECK_FALSE(need.water);
    CHECK(need.without_saponification == std::vector{unknown});
    CHECK(need.oils == Quantity::grams(1'000));
}

TEST_CASE("an oil measured by volume counts by its density, and is named without one") {
    Bench b;
    const auto poured = b.oil("olive oil", {190, 1});
    b.calls_for(poured, {Quantity::microlitres(1'000'000), Unit::l, Mark::measured});
    CHECK(b.need().without_mass == std::vector{poured});
    CHECK_FALSE(b.need().lye);

    b.at(poured).density = Ratio{914, 1'000};
    CHECK(b.need().oils == Quantity::grams(914));
    const auto by_mass = in_milligrams(b.need().lye);
    b.at(poured).held_as = HeldAs::volume;
    CHECK(in_milligrams(b.need().lye) == by_mass);
}

TEST_CASE("scent and water are no oils") {
    Bench b;
    b.calls_for(b.material("lavender", Purpose::scent), grams(30));
    CHECK(b.need().oils.is_zero());
    CHECK(in_milligrams(b.need().lye) == 0);
    CHECK(b.need().without_saponification.empty());
}

TEST_CASE("every answer is a check only, and warns where the recipe itself would hurt") {
    Bench b;
    b.calls_for(b.oil("olive oil", {190, 1}), grams(1'000));
    auto& recipe = b.at(b.loaf);
    CHECK(b.need().cautions == std::vector{LyeCaution::a_check_only});
    recipe.superfat = {0, 100};
    CHECK(warns(b.need(), LyeCaution::no_superfat));
    recipe.superfat = {5, 100};
    recipe.lye_concentration = kStrongestLye;
    CHECK_FALSE(warns(b.need(), LyeCaution::stronger_than_dissolves));
    recipe.lye_concentration = {523, 1'000};
    CHECK(warns(b.need(), LyeCaution::stronger_than_dissolves));
}

TEST_CASE("a superfat of all the oil and a lye of nothing are refused in words, not reckoned with") {
    Bench b;
    b.calls_for(b.oil("olive oil", {190, 1}), grams(1'000));
    auto& recipe = b.at(b.loaf);
    recipe.lye_concentration = {0, 1};
    CHECK(warns(b.need(), LyeCaution::concentration_impossible));
    CHECK(b.need().lye.has_value());
    CHECK_FALSE(b.need().water);
    recipe.superfat = {1, 1};
    CHECK(warns(b.need(), LyeCaution::superfat_impossible));
    CHECK_FALSE(b.need().lye);
}

TEST_CASE("a batch is held against what the oils weighed in call for") {
    Bench b;
    const auto oil = b.oil("olive oil", {190, 1});
    b.at(b.loaf).superfat = {5, 100};
    const auto batch = b.batch(kDay, b.loaf, b.made("bar", MaterialKind::bar));
    b.uses<BatchUse>(batch, oil, grams(2'000));
    b.uses<BatchUse>(batch, b.lye, {Quantity::milligrams(257'352), Unit::g, Mark::measured});
    // 2 kg * 190 * 0.95 * 3999677 / 5610530 = 257.352406 g
    const auto right = b.check(batch);
    CHECK(in_milligrams(right.called_for.lye) == 257'352);
    REQUIRE(right.difference);
    CHECK(right.difference->is_zero());

    b.uses<BatchUse>(batch, b.lye, grams(10));
    const auto more = b.check(batch);
    REQUIRE(more.difference);
    CHECK(*more.difference == Ratio{10'000, 257'352});
    CHECK_FALSE(warns(more.called_for, LyeCaution::no_superfat));

    b.uses<BatchUse>(batch, b.lye, grams(4));  // 271.352 g, where all of the oil takes 270.897 g
    CHECK(warns(b.check(batch).called_for, LyeCaution::no_superfat));
}

TEST_CASE("too little lye is a difference below zero, and none at all is minus all of it") {
    Bench b;
    const auto batch = b.batch(kDay, b.loaf, b.made("bar", MaterialKind::bar));
    b.uses<BatchUse>(batch, b.oil("olive oil", {190, 1}), grams(1'000));
    REQUIRE(b.check(batch).difference);
    CHECK(*b.check(batch).difference == Ratio{-1, 1});
}

TEST_CASE("no difference is said while something is not known") {
    Bench b;
    const auto oil = b.oil("olive oil", {190, 1});
    const auto batch = b.batch(kDay, b.loaf, b.made("bar", MaterialKind::bar));
    CHECK_FALSE(b.check(batch).difference);  // no oils yet
    b.uses<BatchUse>(batch, oil, grams(1'000));
    b.uses<BatchUse>(batch, b.lye, {Quantity::microlitres(300'000), Unit::ml, Mark::measured});
    const auto by_volume = b.check(batch);
    CHECK_FALSE(by_volume.difference);
    CHECK_FALSE(by_volume.weighed);
    CHECK(by_volume.called_for.without_mass == std::vector{b.lye});
    CHECK(by_volume.called_for.lye.has_value());
    b.at(oil).saponification.reset();
    CHECK(b.check(batch).called_for.without_saponification == std::vector{oil});
}

TEST_CASE("another batch's oils do not count") {
    Bench b;
    const auto oil = b.oil("olive oil", {190, 1});
    const auto bar = b.made("bar", MaterialKind::bar);
    const auto one = b.batch(kDay, b.loaf, bar);
    const auto other = b.batch(kDay, b.loaf, bar);
    b.uses<BatchUse>(one, oil, grams(1'000));
    b.uses<BatchUse>(other, oil, grams(3'000));
    CHECK(in_milligrams(b.check(other).called_for.lye) > 2 * in_milligrams(b.check(one).called_for.lye));
    CHECK(b.check(one).called_for.oils == Quantity::grams(1'000));
}

TEST_CASE("values far outside any soap are refused, never wrapped round") {
    Bench b;
    for (const std::int64_t bottom : {99'999'999'977, 99'999'999'947, 99'999'999'943, 99'999'999'907})
        b.calls_for(
            b.oil("oil", {99'999'999'999, bottom}), {Quantity{Kind::mass, kLargestStatedBase}, Unit::kg, Mark::about});
    CHECK_THROWS_AS(b.need(), Overflow);
}
