// blue_shop.h - a small invented shop with one colour over two summers, every figure of which can be
// worked out by hand (verdict_test.cpp does). Knobs: what a test changes before it asks.
#pragma once

#include "domain/decisions/verdict.h"
#include "domain/ledger/replay.h"
#include "tests/support/shop_builder.h"

namespace dyestead::test {

class BlueShop : public ShopBuilder {
public:
    Key<Person> who = person(day_of(2025, 1, 1), Money::units(12));
    Key<Material> bought_blue = material("bought blue", Purpose::colourant);
    Key<Colour> blue = [this] {
        auto& colour = add<Colour>();
        colour.name = "blue";
        colour.bought_match = bought_blue;
        return colour.key;
    }();
    Key<Material> seed = made("seed", MaterialKind::seed);
    Key<Material> leaf = made("leaf", MaterialKind::harvest);
    Key<Material> powder = made("powder", MaterialKind::pigment);
    Key<Material> soda = material("soda ash", Purpose::alkali);
    Key<Material> oil = material("oil", Purpose::oil);
    Key<Material> paper = material("paper", Purpose::wrapping, HeldAs::count);
    Key<Material> plain_bar = made("plain bar", MaterialKind::bar);
    Key<Material> bought_bar = made("bar with bought blue", MaterialKind::bar);
    Key<Material> own_bar = made("bar with our blue", MaterialKind::bar);
    Key<Recipe> loaf = recipe(10);
    Key<Lot> powder_2025, powder_2026, own_bars, plain_bars;
    Day as_of = day_of(2026, 10, 31);

    BlueShop() {
        about();
        garden_and_vats();
        bench();
        stall();
    }

    Ledger ledger() const { return replay(shop(), as_of); }
    Verdict verdict(int months = kVerdictMonths) const { return dyestead::verdict(shop(), ledger(), blue, months); }

    Key<Vat> vat(Day day, Key<Lot> of, std::int64_t leaf_grams, std::int64_t hands_on, std::int64_t watt_hours) {
        auto& fact = add<Vat>();
        fact.date = day;
        fact.colour = blue;
        const auto key = fact.key;
        if (leaf_grams > 0) uses<VatUse>(key, leaf, grams(leaf_grams), of);
        add<VatStep>(key).hands_on = minutes(hands_on);
        if (watt_hours > 0)
            add<VatHeat>(key).energy = Amount{Quantity::watt_hours(watt_hours), Unit::kwh, Mark::measured};
        return key;
    }
    // Nothing weighed: it gave nothing.
    std::optional<Key<Lot>> dry(Day day, Key<Vat> vat, std::int64_t powder_grams, std::int64_t time) {
        std::optional<Key<Lot>> dried;
        if (powder_grams > 0) dried = lot(powder);
        auto& fact = add<Drying>();
        fact.date = day;
        fact.lot = dried;
        if (dried) fact.amount = grams(powder_grams);
        if (time > 0) fact.time = minutes(time);
        add<DryingVat>(fact.key).vat = vat;
        return dried;
    }
    void shade_test(Day day, Key<Lot> of, Ratio needed) {
        auto& fact = add<ShadeTest>();
        fact.date = day;
        fact.lot = of;
        fact.against = bought_blue;
        fact.needed_for_same = needed;
    }
    void tend(Day day, Key<Planting> planting, std::int64_t time) {
        auto& fact = add<Tending>();
        fact.date = day;
        fact.planting = planting;
        fact.time = minutes(time);
    }
    void price(Key<Material> bar, Money shelf) {
        auto& fact = add<Price>();
        fact.from = day_of(2026, 1, 1);
        fact.bar = bar;
        fact.shelf = shelf;
    }
    Key<Planting> blue_planting(Day sown, std::int64_t expected_grams) {
        const auto key = planting(sown, square_metres(10), grams(expected_grams));
        at(at(key).plant).colour = blue;
        return key;
    }
    void bill(Day day, Money amount, DyeOnly dye_only, Ratio avoidable) {
        auto& fact = add<PaidOut>();
        fact.date = day;
        fact.amount = amount;
        fact.dye_only = dye_only;
        fact.colour = blue;
        fact.avoidable = avoidable;
    }

    // Its records are about the colour; for a price the soap has to be complete: lye and water for its kilogram of
    // oil. Returns all that a supplier has to offer for it.
    std::vector<Key<Material>> complete_the_soap() {
        at(oil).saponification = Ratio{140, 1};
        const auto lye = material("lye", Purpose::lye);
        const auto water = material("water", Purpose::water);
        auto& part = add<RecipePart>(loaf);
        part.material = oil;
        part.amount = grams(1'000);
        return {oil, lye, water};
    }

private:
    void about() {
        auto& tariff = add<Tariff>();
        tariff.from = day_of(2025, 1, 1);
        tariff.per_kwh = Money::hundredths(25);
        auto& overhead = add<Overhead>();
        overhead.from = day_of(2025, 1, 1);
        overhead.per_year = Money::units(360);
        overhead.normal_bars = 360;
        auto& card = add<ChannelFee>();
        card.from = day_of(2025, 1, 1);
        card.channel = Channel::card;
        card.share = Ratio{2, 100};
        card.per_payment = Money::hundredths(10);
        auto& bags = add<ChannelFee>();
        bags.from = day_of(2025, 1, 1);
        bags.channel = Channel::cash;
        bags.per_bar = Money::hundredths(5);
    }

    // 2025: 10 of 20 kg cut, two vats of 5 kg, one of which gives nothing. 2026: one vat of 10 kg.
    void garden_and_vats() {
        delivery(day_of(2025, 3, 1), seed, grams(10), Money::units(2));
        delivery(day_of(2025, 3, 1), soda, grams(1'000), Money::units(4));
        delivery(day_of(2025, 3, 1), bought_blue, grams(100), Money::units(30), Money::units(2));

        const auto first = blue_planting(day_of(2025, 4, 1), 20'000);
        uses<PlantingUse>(first, seed, grams(10));
        tend(day_of(2025, 5, 1), first, 120);
        const auto cut_2025 = harvest(day_of(2025, 8, 1), first, leaf, grams(10'000));
        last_harvest().time = minutes(30);
        auto& end = add<PlantingEnd>();
        end.date = day_of(2025, 12, 1);
        end.planting = first;

        const auto good = vat(day_of(2025, 8, 2), cut_2025, 5'000, 60, 2'000);
        uses<VatUse>(good, soda, grams(100));
        powder_2025 = *dry(day_of(2025, 8, 10), good, 10, 6);
        dry(day_of(2025, 8, 11), vat(day_of(2025, 8, 3), cut_2025, 5'000, 30, 2'000), 0, 0);

        const auto second = blue_planting(day_of(2026, 4, 1), 10'000);
        tend(day_of(2026, 5, 1), second, 60);
        const auto cut_2026 = harvest(day_of(2026, 8, 1), second, leaf, grams(10'000));
        powder_2026 = *dry(day_of(2026, 8, 9), vat(day_of(2026, 8, 2), cut_2026, 10'000, 54, 0), 30, 0);

        shade_test(day_of(2025, 9, 1), powder_2025, {1, 1});
        shade_test(day_of(2026, 9, 1), powder_2026, {2, 1});
    }

    void bench() {
        delivery(day_of(2026, 1, 5), oil, grams(10'000), Money::units(50));
        delivery(day_of(2026, 1, 5), paper, pieces(100), Money::units(10));
        for (const auto colouring : {Colouring::plain, Colouring::bought, Colouring::own}) {
            auto& line = add<RecipeColouring>(loaf);
            line.colouring = colouring;
            line.bar = colouring == Colouring::plain    ? plain_bar
                       : colouring == Colouring::bought ? bought_bar
                                                        : own_bar;
            if (colouring == Colouring::plain) continue;
            line.colour = blue;
            line.dose = grams(2);
        }
        const auto coloured = batch(day_of(2026, 9, 1), loaf, own_bar);
        uses<BatchUse>(coloured, oil, grams(1'000));
        uses<BatchUse>(coloured, powder, grams(4), powder_2025);
        bench_time(coloured, BenchTask::pour, 60);
        bench_time(coloured, BenchTask::colour, 10);
        own_bars = cut(day_of(2026, 9, 2), coloured, 10, 0, day_of(2026, 10, 1));
        last_cut().time = minutes(10);
        const auto plain = batch(day_of(2026, 9, 1), loaf, plain_bar);
        uses<BatchUse>(plain, oil, grams(1'000));
        bench_time(plain, BenchTask::pour, 40);
        plain_bars = cut(day_of(2026, 9, 2), plain, 10, 2, day_of(2026, 10, 1));
        wrap(own_bars, 10, 18);
        wrap(plain_bars, 8, 7);
    }

    // Four plain bars and three of our blue are sold.
    void stall() {
        price(plain_bar, Money::units(5));
        price(bought_bar, Money::hundredths(550));
        price(own_bar, Money::units(6));
        auto& fair = add<Fair>();
        fair.date = day_of(2026, 10, 10);
        fair.fee = Money::units(14);
        fair.travel = Money::units(7);
        fair.change_float = Money::units(10);
        fair.cash_in_tin = Money::units(28);
        fair.card_takings = Money::units(20);
        fair.card_payments = 4;
        const auto key = fair.key;
        take(key, plain_bar, 5, 1);
        take(key, own_bar, 5, 2);
        add<FairTime>(key).time = minutes(140);
    }

    void bench_time(Key<Batch> batch, BenchTask task, std::int64_t time) {
        auto& line = add<BatchTime>(batch);
        line.task = task;
        line.time = minutes(time);
    }
    void wrap(Key<Lot> bars, int count, std::int64_t time) {
        auto& fact = add<Wrapping>();
        fact.date = day_of(2026, 9, 30);
        fact.lot = bars;
        fact.bars = count;
        fact.time = minutes(time);
        uses<WrappingUse>(fact.key, paper, pieces(count));
    }
    void take(Key<Fair> fair, Key<Material> bar, int taken, int back) {
        auto& line = add<FairLine>(fair);
        line.bar = bar;
        line.taken = taken;
        line.back = back;
    }
    Harvest& last_harvest() { return at(shop().all<Harvest>().back().key); }
    Cut& last_cut() { return at(shop().all<Cut>().back().key); }
};

}  // namespace dyestead::test
