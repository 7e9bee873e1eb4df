#include <doctest/doctest.h>

#include "domain/decisions/memory_kept.h"
#include "tests/domain/decisions/blue_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

// Invented: weld, four vats, 30 g of powder, a third as strong as the bought.
MemoryAnswers weld() {
    return {{Recalled::plant, "weld"},
            {Recalled::colour, "yellow"},
            {Recalled::garden_hours, "15 h"},
            {Recalled::money_out, "24"},
            {Recalled::vats, "4"},
            {Recalled::vat_time, "~2 h"},
            {Recalled::powder, "30 g"},
            {Recalled::dose, "6 g"},
            {Recalled::loaf_bars, "12"},
            {Recalled::strength, "a third"},
            {Recalled::bought_price, "9,50"},
            {Recalled::bought_amount, "50 g"},
            {Recalled::plain_bar, "5"},
            {Recalled::bought_bar, "5.50"},
            {Recalled::own_bar, "6.50"},
            {Recalled::hour, "12"}};
}

Memory read(const MemoryAnswers& answers) {
    return std::get<Memory>(read_memory(answers, "GBP"));
}

Verdict answered(const MemoryAnswers& answers) {
    return verdict_from_memory(read(answers), Key<Colour>{7}, day_of(2026, 11, 1));
}

std::vector<MemoryTrouble> troubles(const MemoryAnswers& answers) {
    return std::get<std::vector<MemoryTrouble>>(read_memory(answers, "GBP"));
}

}  // namespace

TEST_CASE("ten answers from memory make the sums a maker can do by hand") {
    const Verdict verdict = answered(weld());
    const VerdictFigures& figures = verdict.figures;
    CHECK(verdict.from_memory);
    // 30 g at 6 g a loaf of 12 colour 60 bars; 15 h and four times 2 h.
    CHECK(*figures.season.bars == Approx(60));
    CHECK(*figures.season.dye_hours == Approx(23));
    // A bar: 1.00 more for it, 24/60 to grow it, a third of half a gram of bought saved at 0.19.
    const double cash = 1.00 - 0.40 + 0.5 / 3 * 0.19;
    const double hours = 23.0 / 60;
    CHECK(figures.home_less_bought->cash == Approx(cash));
    CHECK(figures.home_less_bought->hours == Approx(hours));
    CHECK(*figures.season.cash_difference == Approx(60 * cash));
    CHECK(*figures.season.full_difference == Approx(60 * (cash - 12 * hours)));
    CHECK(*figures.extra_dye_hour.earned == Approx(cash / hours));
    CHECK(figures.breakeven.hourly_target.value == figures.extra_dye_hour.earned);
    CHECK(*figures.breakeven.premium_per_bar.value == Approx(1.00 - (cash - 12 * hours)));
    CHECK(*figures.breakeven.bought_price_per_gram.value == Approx(0.19 - (cash - 12 * hours) / (0.5 / 3)));
    CHECK(*figures.breakeven.hands_on_minutes_per_vat.value == Approx(120 + (cash - 12 * hours) * 15 / 0.2));
    CHECK(*figures.pigment.cash_cost_per_gram == Approx(0.80));
    CHECK(*figures.pigment.full_cost_per_gram == Approx((24 + 12 * 23) / 30.0));
    CHECK(*figures.pigment.hands_on_minutes_per_gram == Approx(46));
    CHECK(*figures.pigment.strength == Approx(1.0 / 3));
    // Nobody was asked for kilos.
    CHECK_FALSE(figures.pigment.yield_g_per_kg.has_value());
    CHECK_FALSE(figures.breakeven.yield_g_per_kg.value.has_value());
    CHECK_FALSE(figures.breakeven.harvest_kg_per_vat.value.has_value());
    CHECK(verdict.ruling.word == RulingWord::buy_in);
}

TEST_CASE("what is left blank counts as nothing, a price as the one before it") {
    MemoryAnswers answers = weld();
    for (const auto blank : {Recalled::garden_hours, Recalled::money_out, Recalled::bought_bar, Recalled::own_bar,
                             Recalled::hour, Recalled::plant})
        answers[blank] = "  ";
    const Memory memory = read(answers);
    CHECK(memory.blank.size() == 6);
    const Verdict verdict = answered(answers);
    CHECK(*verdict.figures.premium == 0);
    CHECK(*verdict.figures.season.dye_hours == Approx(8));
    CHECK(*verdict.figures.pigment.cash_cost_per_gram == 0);
    CHECK_FALSE(verdict.figures.pigment.full_cost_per_gram.has_value());
    CHECK(verdict.ruling.word == RulingWord::no_target);
    // Two hours for 15 bars earn the bought colour they save.
    CHECK(*verdict.figures.extra_dye_hour.earned == Approx(15 * 0.5 / 3 * 0.19 / 2));
}

TEST_CASE("a strength never tried is answered as a pair, never as one") {
    MemoryAnswers answers = weld();
    answers[Recalled::strength] = "never tried";
    const Verdict verdict = answered(answers);
    CHECK_FALSE(verdict.figures.pigment.strength.has_value());
    CHECK(verdict.ruling.word == RulingWord::too_soon);
    CHECK(verdict.ruling.missing == MissingRecord::shade_test);
    CHECK(verdict.figures.home_less_bought->cash == Approx(1.00 - 0.40 + 0.5 * 0.19));
    CHECK(verdict.if_weaker->home_less_bought->cash == Approx(1.00 - 0.40 + 0.5 / 3 * 0.19));
    answers[Recalled::strength] = "1/3";
    CHECK(answered(answers).figures.home_less_bought->cash == Approx(1.00 - 0.40 + 0.5 / 3 * 0.19));
}

TEST_CASE("every answer that cannot be read is named, and what is needed and missing") {
    MemoryAnswers answers = weld();
    answers[Recalled::powder] = "lots";
    answers[Recalled::dose] = "0 g";
    answers[Recalled::strength] = "sort of";
    answers[Recalled::bought_amount] = "2 l";
    answers[Recalled::hour] = "$12";
    answers[Recalled::plain_bar] = "";
    const auto wrong = troubles(answers);
    const auto of = [&](Recalled blank) {
        for (const MemoryTrouble& each : wrong)
            if (each.blank == blank) return std::optional{each.trouble.id};
        return std::optional<TroubleId>{};
    };
    CHECK(wrong.size() == 6);
    CHECK(of(Recalled::powder).has_value());
    CHECK(of(Recalled::dose) == TroubleId::blank);
    CHECK(of(Recalled::strength) == TroubleId::not_one_of);
    CHECK(of(Recalled::bought_amount) == TroubleId::wrong_kind_of_amount);
    CHECK(of(Recalled::hour) == TroubleId::other_currency);
    CHECK(of(Recalled::plain_bar) == TroubleId::blank);
}

TEST_CASE("answers kept in a shop decide while no vat of the colour is dried, then records do") {
    BlueShop shop;
    std::int64_t next = 1'000'000;
    const auto keep = [&](MemoryAnswers answers, Day day) {
        auto kept = memory_kept(shop.shop(), answers, day, [&] { return ++next; });
        return std::pair{applied(shop.shop(), kept.change), kept.colour};
    };
    const auto [with_yellow, yellow] = keep(weld(), day_of(2026, 10, 1));
    CHECK(with_yellow.all<Colour>().size() == 2);
    const Ledger ledger = replay(with_yellow, shop.as_of);
    const Verdict first = verdict(with_yellow, ledger, yellow);
    CHECK(first.from_memory);
    CHECK(*first.figures.season.bars == Approx(60));
    // Before they were given there is nothing to go by.
    const Ledger before = replay(with_yellow, day_of(2026, 9, 30));
    CHECK_FALSE(verdict(with_yellow, before, yellow).from_memory);
    // The same name in other letters is the same colour, and has vats.
    MemoryAnswers blue = weld();
    blue[Recalled::colour] = "BLUE";
    const auto [with_blue, same] = keep(blue, day_of(2026, 10, 1));
    CHECK(same == shop.blue);
    CHECK_FALSE(verdict(with_blue, replay(with_blue, shop.as_of), same).from_memory);
    // The newest answer counts.
    MemoryAnswers later = weld();
    later[Recalled::powder] = "60 g";
    const auto changed = memory_kept(with_yellow, later, day_of(2026, 10, 20), [&] { return ++next; });
    CHECK(changed.change.put.all<Colour>().empty());
    const Shop twice = applied(with_yellow, changed.change);
    CHECK(*verdict(twice, replay(twice, shop.as_of), yellow).figures.season.bars == Approx(120));
    CHECK(answers_on_record(twice, yellow, shop.as_of).at(Recalled::powder) == "60 g");
}
