#include "reports/batch_cost.h"

#include <algorithm>
#include <map>

#include "domain/decisions/records.h"
#include "domain/ledger/trace.h"
#include "reports/cells.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {

namespace {

// Where the cost of a batch stands, and the bars it is for.
struct Where {
    Account account = 0;
    double bars = 0;
    Cost cost{};
    bool cut = false;
};

std::optional<std::uint32_t> place_of(const Shop& shop, Key<Batch> key) {
    const Batch* batch = shop.find(key);
    if (batch == nullptr) return std::nullopt;
    return static_cast<std::uint32_t>(batch - shop.all<Batch>().data());
}

std::optional<Where> where(const Shop& shop, const Ledger& ledger, Key<Batch> key) {
    const auto place = place_of(shop, key);
    if (!place) return std::nullopt;
    if (const Cut* cut = cut_of(shop, ledger, key)) {
        const Lot* lot = shop.find(cut->lot);
        if (lot == nullptr) return std::nullopt;
        const auto at = static_cast<std::uint32_t>(lot - shop.all<Lot>().data());
        const LotState& state = ledger.lots[at];
        if (state.received <= 0) return std::nullopt;
        return Where{ledger.accounts.lots + at, static_cast<double>(state.received) / 1e3, state.cost_in, true};
    }
    const Batch& batch = *shop.find(key);
    const Recipe* recipe = shop.find(batch.recipe);
    if (recipe == nullptr || recipe->bars_per_loaf <= 0 || batch.loaves <= 0) return std::nullopt;
    const Account account = ledger.accounts.batches + *place;
    return Where{account, double{1} * recipe->bars_per_loaf * batch.loaves, ledger.balances[account], false};
}

template <class Fact>
bool is(FactRef fact) {
    return fact.kind == kKindOf<Fact>;
}

// The material that goods came into the books as.
const Material* material_of(const Shop& shop, FactRef fact) {
    const auto of_lot = [&](Key<Lot> key) -> const Material* {
        const Lot* lot = shop.find(key);
        return lot == nullptr ? nullptr : shop.find(lot->material);
    };
    if (is<DeliveryLine>(fact))
        if (const auto* line = shop.find(Key<DeliveryLine>{fact.key})) return of_lot(line->lot);
    if (is<AlreadyHere>(fact))
        if (const auto* here = shop.find(Key<AlreadyHere>{fact.key})) return of_lot(here->lot);
    if (is<CostCorrection>(fact))
        if (const auto* correction = shop.find(Key<CostCorrection>{fact.key})) {
            const auto& lines = shop.all<DeliveryLine>();
            const auto line = std::ranges::find(lines, correction->delivery, &DeliveryLine::head);
            if (line != lines.end()) return of_lot(line->lot);
        }
    if (is<BatchUse>(fact))
        if (const auto* use = shop.find(Key<BatchUse>{fact.key})) return shop.find(use->material);
    if (is<WrappingUse>(fact))
        if (const auto* use = shop.find(Key<WrappingUse>{fact.key})) return shop.find(use->material);
    return nullptr;
}

BarPart part_of(const Material& material) {
    if (material.kind != MaterialKind::raw) return BarPart::colour;
    switch (material.purpose.value_or(Purpose::other)) {
        case Purpose::oil: return BarPart::oils;
        case Purpose::lye:
        case Purpose::water: return BarPart::lye_and_water;
        case Purpose::scent: return BarPart::scent;
        case Purpose::wrapping: return BarPart::wrapping;
        case Purpose::alkali:
        case Purpose::mordant:
        case Purpose::acid:
        case Purpose::colourant:
        case Purpose::feed: return BarPart::colour;
        case Purpose::other: return BarPart::other;
    }
    return BarPart::other;
}

bool of_bench(FactRef fact) {
    return is<Batch>(fact) || is<BatchTime>(fact) || is<Cut>(fact) || is<Wrapping>(fact);
}

bool of_vat(FactRef fact) {
    return is<Vat>(fact) || is<VatStep>(fact) || is<VatHeat>(fact) || is<Drying>(fact);
}

bool of_garden(FactRef fact) {
    return is<Planting>(fact) || is<PlantingUse>(fact) || is<StandingBed>(fact) || is<Tending>(fact) ||
           is<TendingUse>(fact) || is<Harvest>(fact) || is<SeedKept>(fact);
}

// Where somebody's time was spent.
BarPart time_of(const Shop& shop, FactRef fact) {
    if (of_bench(fact)) return BarPart::bench_time;
    if (of_vat(fact)) return BarPart::vat_time;
    if (is<SittingAt>(fact)) {
        const SittingAt* at = shop.find(Key<SittingAt>{fact.key});
        if (at != nullptr && (at->batch || at->cut || at->wrapping)) return BarPart::bench_time;
        if (at != nullptr && (at->vat || at->drying)) return BarPart::vat_time;
    }
    // Hours in what was already here belong to what it is: bars were made at the bench, all else grew.
    const Material* here = is<AlreadyHere>(fact) ? material_of(shop, fact) : nullptr;
    if (here != nullptr && (here->kind == MaterialKind::bar || here->kind == MaterialKind::raw))
        return BarPart::bench_time;
    return here != nullptr && here->kind == MaterialKind::pigment ? BarPart::vat_time : BarPart::garden_time;
}

bool for_the_colour(const Shop& shop, const Leaf& leaf) {
    if (time_of(shop, leaf.fact) != BarPart::bench_time) return true;
    const BatchTime* time = is<BatchTime>(leaf.fact) ? shop.find(Key<BatchTime>{leaf.fact.key}) : nullptr;
    return time != nullptr && time->task == BenchTask::colour;
}

// What of a leaf is neither time of the shop's own nor running costs.
BarPart goods_of(const Shop& shop, const Leaf& leaf) {
    if (const Material* material = material_of(shop, leaf.fact)) return part_of(*material);
    return of_vat(leaf.fact) || of_garden(leaf.fact) || is<PaidOut>(leaf.fact) ? BarPart::colour : BarPart::other;
}

Cell held(const Material& material, std::int64_t base) {
    return {.shown = shown_quantity({kind_of(material.held_as), base}), .number = static_cast<double>(base)};
}

}  // namespace

std::string part_name(BarPart part) {
    switch (part) {
        case BarPart::oils: return say("oils");
        case BarPart::lye_and_water: return say("lye, water");
        case BarPart::colour: return say("colour");
        case BarPart::scent: return say("scent");
        case BarPart::wrapping: return say("wrapping");
        case BarPart::other: return say("other");
        case BarPart::running_costs: return say("running costs");
        case BarPart::garden_time: return say("time in the garden");
        case BarPart::vat_time: return say("time at the vat");
        case BarPart::bench_time: return say("time at the bench");
    }
    return {};
}

double BatchCost::without_time() const {
    double sum = 0;
    for (std::size_t i = 0; i < kBarParts; ++i)
        if (!is_time(BarPart{static_cast<std::uint8_t>(i)})) sum += parts[i];
    return sum;
}

double BatchCost::with_time() const {
    double sum = 0;
    for (const double part : parts) sum += part;
    return sum;
}

const Cut* cut_of(const Shop& shop, const Ledger& ledger, Key<Batch> batch) {
    const Cut* first = nullptr;
    for (const Cut& cut : shop.all<Cut>())
        if (cut.batch == batch && cut.date <= ledger.as_of && (first == nullptr || cut.date < first->date))
            first = &cut;
    return first;
}

std::optional<BatchCost> batch_cost(const Shop& shop, const Ledger& ledger, Key<Batch> batch) {
    const auto found = where(shop, ledger, batch);
    if (!found) return std::nullopt;
    BatchCost result{.bars = found->bars, .cut = found->cut};
    const auto add = [&](BarPart part, Money money) {
        result.parts[static_cast<std::size_t>(part)] += number(money) / found->bars;
    };
    const auto leaves =
        found->cut ? trace_into(ledger, found->account, ledger.as_of) : trace(ledger, found->account, ledger.as_of);
    for (const Leaf& leaf : leaves) {
        add(goods_of(shop, leaf), leaf.cost.materials + leaf.cost.energy);
        add(BarPart::running_costs, leaf.cost.overhead);
        add(time_of(shop, leaf.fact), leaf.cost.labour);
        const double minutes = number(leaf.cost.hands_on) / found->bars;
        result.minutes += minutes;
        if (for_the_colour(shop, leaf)) result.colour_minutes += minutes;
    }
    return result;
}

std::optional<BarCosts> bar_costs(const Shop& shop, const Ledger& ledger, Key<Batch> batch) {
    const auto found = where(shop, ledger, batch);
    if (!found) return std::nullopt;
    return BarCosts{number(found->cost.cash()) / found->bars, number(found->cost.full()) / found->bars};
}

std::string batch_sentence(const Shop& shop, const Ledger& ledger, Key<Batch> key) {
    const auto cost = batch_cost(shop, ledger, key);
    if (!cost) return {};
    const std::string currency = currency_of(shop);
    const auto bar = arg("bar", called(shop, shop.find(key)->bar));
    const auto cash = arg("cash", shown_money(cost->without_time(), currency));
    const auto full = arg("full", shown_money(cost->with_time(), currency));
    if (!cost->cut)
        return say(
            "{bar}: one comes to about {cash} without your time and {full} with it so far, before it is "
            "cut and wrapped.",
            bar, cash, full);
    if (cost->minutes > 0 && cost->colour_minutes > 0)
        return say(
            "{bar}: one costs {cash} without your time and {full} with it; {share} of the time is the "
            "colour.",
            bar, cash, full, arg("share", shown_percent(cost->colour_minutes / cost->minutes)));
    return say("{bar}: one costs {cash} without your time and {full} with it.", bar, cash, full);
}

Table batch_inputs(const Shop& shop, const Ledger& ledger, Key<Batch> key) {
    const std::string currency = currency_of(shop);
    const auto money = arg("currency", currency);
    Table table{.title = say("What went in"),
                .columns = {{say("what")},
                            {say("how much"), Align::right},
                            {say("lot")},
                            {money.value, Align::right},
                            {say("with hours"), Align::right}},
                .rows = {},
                .emphasise_last_row = true};
    const auto place = place_of(shop, key);
    if (!place) return table;
    const Records records{shop, ledger};
    const Account account = ledger.accounts.batches + *place;
    Cost all;
    Cost time;
    for (const Movement& movement : ledger.movements) {
        if (movement.to != account) continue;
        all += movement.cost;
        const AccountKind from = records.kind(movement.from);
        if (from == AccountKind::boundary && movement.quantity == 0) {
            time += movement.cost;
            continue;
        }
        const bool poured = from == AccountKind::batch;
        const std::string what = poured ? say("poured off {batch}", arg("batch", records.batch(movement.from).code))
                                        : records.material(movement).name;
        table.rows.push_back(
            {Cell{.shown = what}, movement.quantity != 0 ? held(records.material(movement), movement.quantity) : Cell{},
             from == AccountKind::lot ? Cell{.shown = records.lot(movement.from).code} : Cell{},
             money_cell(number(movement.cost.cash()), currency), money_cell(number(movement.cost.full()), currency)});
    }
    if (!time.is_zero())
        table.rows.push_back({Cell{.shown = say("time at the bench")},
                              Cell{.shown = shown_minutes(number(time.hands_on)), .number = number(time.hands_on)},
                              Cell{}, money_cell(number(time.cash()), currency),
                              money_cell(number(time.full()), currency)});
    table.rows.push_back({Cell{.shown = say("all together")}, Cell{}, Cell{}, money_cell(number(all.cash()), currency),
                          money_cell(number(all.full()), currency)});
    return table;
}

std::optional<Chart> batch_chart(const Shop& shop, const Ledger& ledger, Key<Batch> key) {
    const auto cost = batch_cost(shop, ledger, key);
    if (!cost || !(cost->with_time() > 0)) return std::nullopt;
    const std::string currency = currency_of(shop);
    StackedBar bar{.label = called(shop, shop.find(key)->bar), .total_shown = bare_money(cost->with_time(), currency)};
    StackedBars bars{.value_label = say("{currency} a bar", arg("currency", currency))};
    for (std::size_t i = 0; i < kBarParts; ++i) {
        const BarPart part{static_cast<std::uint8_t>(i)};
        if (cost->parts[i] == 0) continue;
        bars.series.push_back({part_name(part), is_time(part) ? SeriesKind::time : SeriesKind::goods});
        bar.values.push_back(cost->parts[i]);
        bar.shown.push_back(bare_money(cost->parts[i], currency));
    }
    bars.bars.push_back(std::move(bar));
    return Chart{
        .title = say("What one bar costs"), .sentence = batch_sentence(shop, ledger, key), .data = std::move(bars)};
}

}  // namespace dyestead::reports
