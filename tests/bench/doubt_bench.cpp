// How long do a hundred thousand seasons take to draw, and all that is read off them? Ten vats of three summers, five
// in the season to come, as in the sample shop. Beside it, in one run on one machine:
//
//     dyestead_bench --benchmark_filter=doubt; python3 tests/bench/doubt_numpy.py
#include <benchmark/benchmark.h>

#include "domain/decisions/season_draws.h"

using namespace dyestead;

namespace {

DoubtInput ten_vats() {
    DoubtInput input;
    Model& model = input.model;
    model.dose = 0.1;
    model.strength = 0.5;
    model.yield = 1.5;
    model.kg_per_vat = 4;
    model.vat_cash_per_kg = 0.3;
    model.garden_cash_per_kg = 0.5;
    model.garden_minutes_per_kg = 20;
    model.vat_minutes_fixed = 140;
    model.hourly_target = 12;
    model.bought_price_per_gram = 1;
    model.home_price = 6.5;
    model.bought_price = 6;
    model.plain_price = 5.5;
    input.plain_price_known = true;
    input.crop_can_fail = true;
    input.plantings = 3;
    input.target = 12;
    input.hurdle = 20;
    input.cash_margin = 3;
    input.full_margin = 1;
    for (int i = 0; i < 10; ++i)
        input.vats.push_back({i < 2   ? 2024
                              : i < 5 ? 2025
                                      : 2026,
                              4, i == 4 ? 0 : 4 + i * 0.7, 120.0 + 5 * i,
                              i % 3 == 0 ? std::nullopt : std::optional{0.4 + 0.02 * i}});
    return input;
}

void drawn(benchmark::State& state) {
    const DoubtInput input = ten_vats();
    const VatSpread spread = vat_spread(input);
    for (auto _ : state) benchmark::DoNotOptimize(draw_seasons(input, spread, 5, static_cast<int>(state.range(0))));
}

void doubt_in_full(benchmark::State& state) {
    const DoubtInput input = ten_vats();
    for (auto _ : state) benchmark::DoNotOptimize(doubt(input, static_cast<int>(state.range(0))));
}

}  // namespace

BENCHMARK(drawn)->Name("doubt_drawn")->Arg(100'000)->Unit(benchmark::kMillisecond);
BENCHMARK(doubt_in_full)->Arg(100'000)->Unit(benchmark::kMillisecond);
