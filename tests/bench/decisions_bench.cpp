// How long does each question take on a shop of a hundred thousand movements? Wanted of every one: under 20 ms on one
// core. The replay is none of it: the window has the books replayed already. Looking ahead replays a copy of the shop
// at today's prices.
//
//     dyestead_bench --benchmark_filter=asked
#include <benchmark/benchmark.h>

#include "domain/decisions/can_make.h"
#include "domain/decisions/dye_hours.h"
#include "domain/decisions/earns_best.h"
#include "domain/decisions/fair_plan.h"
#include "domain/decisions/improve.h"
#include "domain/decisions/plants_compared.h"
#include "domain/decisions/price_changes.h"
#include "domain/decisions/recall.h"
#include "domain/decisions/reorder.h"
#include "domain/decisions/shop_hour.h"
#include "domain/decisions/sowing.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/stock_value.h"
#include "domain/ledger/write_down.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day kOpened = day_of(2008, 1, 1);
constexpr int kDays = 9'400;  // some ten movements and two thirds each

// Twenty-five years: a loaf a day of plain or blue bars, sold at a fair every other week and by post; a bed of dye
// plants and four vats a year.
class BigShop : public ShopBuilder {
public:
    Key<Person> who = person(kOpened, Money::units(15));
    Key<Material> lye = material("lye", Purpose::lye);
    Key<Material> water = material("water", Purpose::water, HeldAs::volume);
    Key<Material> band = material("band", Purpose::wrapping, HeldAs::count);
    Key<Material> bought_blue = material("bought blue", Purpose::colourant);
    std::array<Key<Material>, 3> oils{oil("olive oil", {190, 1}), oil("coconut oil", {257, 1}), oil("shea", {180, 1})};
    Key<Material> leaf = made("leaf", MaterialKind::harvest);
    Key<Material> powder = made("powder", MaterialKind::pigment);
    Key<Material> plain = made("plain bar", MaterialKind::bar);
    Key<Material> own = made("bar with our blue", MaterialKind::bar);
    Key<Material> bought = made("bar with bought blue", MaterialKind::bar);
    Key<Recipe> loaf = recipe(12);
    Key<Colour> blue{};
    Day last = kOpened;

    BigShop() {
        auto& about = add<About>();
        about.name = "Bench";
        about.currency = "GBP";
        colour_and_recipe();
        for (int day = 0; day < kDays; ++day) a_day(day);
        plans();
    }

private:
    void colour_and_recipe() {
        auto& colour = add<Colour>();
        colour.name = "blue";
        colour.bought_match = bought_blue;
        blue = colour.key;
        at(powder).colour = blue;
        for (const auto oil : oils) {
            auto& part = add<RecipePart>(loaf);
            part.material = oil;
            part.amount = grams(300);
        }
        auto& wrap = add<RecipeWrapping>(loaf);
        wrap.material = band;
        wrap.per_bar = pieces(1);
        for (const auto& [colouring, bar] :
             {std::pair{Colouring::plain, plain}, {Colouring::bought, bought}, {Colouring::own, own}}) {
            auto& line = add<RecipeColouring>(loaf);
            line.colouring = colouring;
            line.bar = bar;
            if (colouring != Colouring::plain) line.colour = blue;
            if (colouring != Colouring::plain) line.dose = grams(2);
            auto& price = add<Price>();
            price.from = kOpened;
            price.bar = bar;
            price.shelf = Money::hundredths(colouring == Colouring::own ? 700 : 600);
        }
        for (const auto each : {oils[0], oils[1], oils[2], lye, bought_blue})
            offer(kOpened, each, grams(5'000), Money::units(40)).lead_days = 5;
        offer(kOpened, band, pieces(1'000), Money::units(20)).lead_days = 5;
        offer(kOpened, water, {Quantity::microlitres(5'000'000), Unit::l, Mark::measured}, Money::units(1));
    }

    void a_day(int day) {
        last = kOpened + Days{day};
        const bool coloured = day % 3 == 0 && powder_lot_;
        const auto bar = coloured ? own : plain;
        const auto poured = batch(last, loaf, bar);
        for (const auto oil : oils) {
            if (day % 5 == 0) delivery(last, oil, grams(1'500), Money::hundredths(2'400 + day % 13));
            uses<BatchUse>(poured, oil, grams(300));
        }
        if (day % 10 == 0) delivery(last, lye, grams(1'300), Money::units(6));
        uses<BatchUse>(poured, lye, grams(126));
        if (coloured) uses<BatchUse>(poured, powder, grams(1));
        auto& time = add<BatchTime>(poured);
        time.who = who;
        time.time = minutes(60);
        const auto bars = cut(last, poured, 12, 1, last + Days{28});
        if (day % 30 == 0) delivery(last, band, pieces(330), Money::units(8));
        auto& wrapped = add<Wrapping>();
        wrapped.date = last;
        wrapped.lot = bars;
        wrapped.bars = 11;
        uses<WrappingUse>(wrapped.key, band, pieces(11));
        if (day % 14 == 0 && day > 28) fair();
        if (day % 3 == 0 && day > 28) sold(sale(last), plain, 9, Money::units(6));
        const std::chrono::year_month_day ymd{last};
        if (ymd.month() == std::chrono::April && ymd.day() == std::chrono::day{1}) sow();
        if (ymd.month() == std::chrono::August && static_cast<unsigned>(ymd.day()) % 7 == 1 && bed_) a_vat();
        if (day % 7 == 0 && bed_) {
            auto& tended = add<Tending>();
            tended.date = last;
            tended.planting = *bed_;
            tended.time = minutes(30);
        }
    }

    void fair() {
        auto& fact = add<Fair>();
        fact.name = "Market";
        fact.date = last;
        fact.fee = Money::units(30);
        fact.open = minutes(300);
        const auto key = fact.key;
        for (const auto bar : {plain, own}) {
            auto& line = add<FairLine>(key);
            line.bar = bar;
            line.taken = 40;
            line.back = static_cast<int>((last - kOpened).count() % 9);
        }
        auto& time = add<FairTime>(key);
        time.who = who;
        time.time = minutes(360);
    }

    void sow() {
        bed_ = planting(last, square_metres(6), grams(12'000));
        auto& plant = at(at(*bed_).plant);
        plant.colour = blue;
        plant.usual = grams(2'000);
        plant.days_to_harvest = 100;
    }

    void a_vat() {
        const auto cut = harvest(last, *bed_, leaf, grams(3'000));
        auto& fact = add<Vat>();
        fact.date = last;
        fact.colour = blue;
        const auto key = fact.key;
        uses<VatUse>(key, leaf, grams(3'000), cut);
        auto& step = add<VatStep>(key);
        step.what = "strain";
        step.hands_on = minutes(100 + (last - kOpened).count() % 30);
        const auto dried = lot(powder);
        powder_lot_ = dried;
        auto& drying = add<Drying>();
        drying.date = last + Days{1};
        drying.lot = dried;
        drying.amount = grams(20 + (last - kOpened).count() % 11);
        add<DryingVat>(drying.key).vat = key;
        auto& test = add<ShadeTest>();
        test.date = last + Days{2};
        test.lot = dried;
        test.against = bought_blue;
        test.needed_for_same = Ratio{2, 1};
    }

    void plans() {
        for (int week = 1; week <= 8; ++week) {
            auto& plan = add<Plan>();
            plan.noted = last;
            plan.date = last + Days{7 * week};
            plan.recipe = loaf;
            plan.bar = week % 2 == 0 ? own : plain;
            plan.loaves = 2;
        }
        auto& coming = add<Fair>();
        coming.name = "Market";
        coming.noted = last;
        coming.date = last + Days{10};
    }

    std::optional<Key<Planting>> bed_;
    std::optional<Key<Lot>> powder_lot_;
};

struct Asked {
    BigShop builder;
    const Shop& shop = builder.shop();
    Day day = builder.last;
    Ledger ledger = replay(shop, day);
    Verdict seen = verdict(shop, ledger, builder.blue, kVerdictMonths, 0);
};

const Asked& books() {
    static const Asked asked;
    return asked;
}

template <class Ask>
void asked(benchmark::State& state, Ask ask) {
    const Asked& it = books();
    for (auto _ : state) {
        auto answer = ask(it);
        benchmark::DoNotOptimize(answer);
    }
    state.counters["movements"] = static_cast<double>(it.ledger.movements.size());
}

Fair next(const Asked& it) {
    return *it.shop.find(*next_fair(it.shop, it.day));
}

#define ASKED(name, ...) \
    BENCHMARK_CAPTURE(asked, name, [](const Asked& it) { return __VA_ARGS__; })->Unit(benchmark::kMillisecond)

ASKED(replay, replay(it.shop, it.day));
ASKED(verdict, verdict(it.shop, it.ledger, it.builder.blue, kVerdictMonths, 0));
ASKED(look_ahead, look_ahead(it.shop, it.day, it.builder.blue, Stand::before_sowing, kVerdictMonths, 0));
ASKED(plants_compared, plants_compared(it.shop, it.ledger));
ASKED(improvements, improvements(it.shop, it.ledger, it.seen));
ASKED(dye_hours, dye_hours(it.shop, it.seen));
ASKED(prices, prices(it.shop, it.ledger));
ASKED(price_changes, price_changes(it.shop, it.ledger, prices(it.shop, it.ledger), months_before(it.day, 3)));
ASKED(reorder, reorder(it.shop, it.ledger));
ASKED(sowing, sowing(it.shop, it.ledger));
ASKED(earns_best, earns_best(it.shop, it.ledger));
ASKED(fair_plan, fair_plan(it.shop, it.ledger, next(it).key));
ASKED(fair_result, fair_result(it.shop, it.ledger, *last_fair(it.shop, it.day)));
ASKED(can_make, can_make(it.shop, it.ledger, it.builder.own, 4, it.day));
ASKED(recall, recall(it.shop, it.ledger, {it.ledger.accounts.lots}));
ASKED(stock_value, stock_value(it.shop, it.ledger, it.day));
ASKED(write_down, write_down(it.shop, it.ledger, it.day));
ASKED(shop_hour, shop_hour(it.shop, it.ledger, Period::year_to(it.day, 1)));

}  // namespace
