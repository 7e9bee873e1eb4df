// How long do a hundred thousand seasons take to draw, and all that is read off them? Ten vats of three summers, five
// in the season to come, as in the sample shop. Beside it, in one run on one machine:
//
//     dyestead_bench --benchmark_filter=doubt; python3 tests/bench/doubt_numpy.py
#include <benchmark/benchmark.h>

#include "domain/decisions/season_draws.h"
#include "tests/support/invented_season.h"

using namespace dyestead;

namespace {

DoubtInput ten_vats() {
    std::vector<VatPoint> vats;
    for (int i = 0; i < 10; ++i)
        vats.push_back({i < 2   ? 2024
                        : i < 5 ? 2025
                                : 2026,
                        5, i == 4 ? 0 : 5 + i * 0.9, 120.0 + 5 * i,
                        i % 3 == 0 ? std::nullopt : std::optional{0.4 + 0.02 * i}});
    DoubtInput input = test::invented(std::move(vats));
    input.crop_can_fail = true;
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
