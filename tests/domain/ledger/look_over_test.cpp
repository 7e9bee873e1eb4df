#include "domain/ledger/look_over.h"

#include <doctest/doctest.h>

#include "domain/ledger/in_force.h"
#include "domain/ledger/notes.h"
#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

const Day kDay = day_of(2026, 7, 4);

constexpr Moment at(Day day, int hour, int minute) {
    return {day, hour * 60 + minute, 60};
}

std::vector<Finding> of(const Shop& shop, FindingCode code) {
    std::vector<Finding> found = replay(shop, kDay + Days{9}).findings;
    std::erase_if(found, [&](const Finding& each) { return each.code != code; });
    return found;
}

}  // namespace

TEST_CASE("the steps of a vat run forwards: a step before the vat or before the one above it is found") {
    ShopBuilder b;
    auto& vat = b.add<Vat>();
    vat.date = kDay;
    vat.code = "blue-7";
    const auto key = vat.key;
    const auto step = [&](std::optional<Moment> begun) { b.add<VatStep>(key).begun = begun; };
    step(at(kDay, 9, 0));
    step(std::nullopt);
    step(at(kDay, 9, 0));
    step(at(kDay + Days{1}, 7, 30));
    CHECK(of(b.shop(), FindingCode::vat_steps_backwards).empty());
    step(at(kDay, 12, 0));
    const auto found = of(b.shop(), FindingCode::vat_steps_backwards);
    REQUIRE(found.size() == 1);
    CHECK(found[0].about == ref(b.shop().all<VatStep>().back()));
    CHECK(found[0].args == std::vector<std::string>{"blue-7"});
    CHECK(found[0].day == kDay);

    auto& early = b.add<Vat>();
    early.date = kDay;
    b.add<VatStep>(early.key).begun = at(kDay - Days{1}, 23, 0);
    CHECK(of(b.shop(), FindingCode::vat_steps_backwards).size() == 2);
    // What is not yet begun is not looked at.
    CHECK(look_over(b.shop(), kDay - Days{1}).empty());
}

TEST_CASE("no more bars go in bundles than are sold in all") {
    ShopBuilder b;
    auto& fair = b.add<Fair>();
    fair.date = kDay;
    const auto key = fair.key;
    auto& line = b.add<FairLine>(key);
    line.taken = 8;
    line.back = 2;
    auto& bundle = b.add<FairBundle>(key);
    bundle.bars = 3;
    bundle.sold = 2;
    CHECK(of(b.shop(), FindingCode::bundles_more_than_sold).empty());
    b.all<FairBundle>().front().sold = 3;
    const auto found = of(b.shop(), FindingCode::bundles_more_than_sold);
    REQUIRE(found.size() == 1);
    CHECK(found[0].args == std::vector<std::string>{"9", "6"});
}

TEST_CASE("no more seed comes up than was laid out") {
    ShopBuilder b;
    auto& tried = b.add<GerminationTry>();
    tried.date = kDay;
    tried.lot = b.lot(b.made("seed", MaterialKind::seed));
    tried.tried = 20;
    tried.came_up = 20;
    CHECK(of(b.shop(), FindingCode::more_came_up_than_laid_out).empty());
    b.all<GerminationTry>().front().came_up = 21;
    CHECK(of(b.shop(), FindingCode::more_came_up_than_laid_out).size() == 1);
}

TEST_CASE("a note hangs on a record of any kind, and on its head; on nothing it is found") {
    ShopBuilder b;
    auto& vat = b.add<Vat>();
    vat.date = kDay;
    const auto step = b.add<VatStep>(vat.key).key;
    const FactRef of_vat = ref(b.all<Vat>().front());
    const auto note = [&](const AnyKey& about, int on) {
        auto& fact = b.add<Note>();
        fact.date = kDay + Days{on};
        fact.about = about;
        fact.text = "green froth";
        return fact.key;
    };
    const auto later = note(any_key(of_vat), 1);
    const auto earlier = note({"vat_step", step.number}, 0);
    CHECK(of(b.shop(), FindingCode::note_on_nothing).empty());
    const auto found = notes_on(b.shop(), of_vat);
    REQUIRE(found.size() == 2);
    CHECK(found[0]->key == earlier);
    CHECK(found[1]->key == later);
    CHECK(notes_on(b.shop(), {kKindOf<VatStep>, step.number}).size() == 1);
    CHECK(notes_on(b.shop(), {kKindOf<Drying>, of_vat.key}).empty());
    CHECK(fact_ref(any_key(of_vat)) == of_vat);
    CHECK_FALSE(fact_ref(AnyKey{"vats", 1}));

    b.all<VatStep>().clear();
    CHECK(of(b.shop(), FindingCode::note_on_nothing).size() == 1);
    note({"vats", 1}, 2);
    CHECK(of(b.shop(), FindingCode::note_on_nothing).size() == 2);
    // A note moves nothing.
    CHECK(replay(b.shop(), kDay + Days{9}).movements.empty());
}

TEST_CASE("of the vats of a day the one begun first by the clock takes its goods first, one without a time last") {
    ShopBuilder b;
    const auto leaf = b.made("leaf", MaterialKind::harvest);
    const auto first = b.already_here(kDay, leaf, grams(100), Money::units(1));
    const auto second = b.already_here(kDay, leaf, grams(100), Money::units(3));
    const auto vat = [&](std::optional<Moment> begun, std::int64_t weight) {
        auto& fact = b.add<Vat>();
        fact.date = kDay;
        const auto key = fact.key;
        auto& use = b.add<VatUse>(key);
        use.material = leaf;
        use.amount = grams(weight);
        b.add<VatStep>(key).begun = begun;
    };
    vat(std::nullopt, 100);
    vat(at(kDay, 14, 0), 50);
    vat(at(kDay, 9, 0), 50);
    const Ledger ledger = replay(b.shop(), kDay);
    const auto cost = [&](std::uint32_t place) { return ledger.balances[ledger.accounts.vats + place].materials; };
    CHECK(state(b.shop(), ledger, first).left + state(b.shop(), ledger, second).left == 0);
    CHECK(cost(0) == Money::units(3));
    CHECK(cost(1) == Money::hundredths(50));
    CHECK(cost(2) == Money::hundredths(50));
    std::vector<std::uint32_t> order;
    for (const Movement& movement : ledger.movements)
        if (ledger.accounts.kind(movement.to) == AccountKind::vat) order.push_back(ledger.accounts.index(movement.to));
    CHECK(order == std::vector<std::uint32_t>{2, 1, 0});
}

TEST_CASE("a loaf of no bars and running costs over no bars are found, and every other number is still there") {
    ShopBuilder b;
    const auto recipe = b.recipe(12);
    auto& costs = b.add<Overhead>();
    costs.from = kDay;
    costs.per_year = Money::units(365);
    costs.normal_bars = 100;
    const auto key = costs.key;
    CHECK(of(b.shop(), FindingCode::loaf_without_bars).empty());
    CHECK(of(b.shop(), FindingCode::running_costs_without_bars).empty());
    b.at(recipe).bars_per_loaf = 0;
    b.at(key).normal_bars = 0;
    const auto loaves = of(b.shop(), FindingCode::loaf_without_bars);
    REQUIRE(loaves.size() == 1);
    CHECK(loaves[0].about == ref(b.at(recipe)));
    const auto shares = of(b.shop(), FindingCode::running_costs_without_bars);
    REQUIRE(shares.size() == 1);
    CHECK(shares[0].about == ref(b.at(key)));
    CHECK(shares[0].day == kDay);
    CHECK(overhead_accrued(b.shop(), kDay + Days{1}) == Money::units(2));
    b.at(key).per_year = Money{};  // nothing to share
    CHECK(of(b.shop(), FindingCode::running_costs_without_bars).empty());
}
