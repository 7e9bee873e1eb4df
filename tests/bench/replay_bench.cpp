// How long does a shop of n movements take to replay and to load? Beside each time stands a bare one, the least
// that such work can take here: a loop over the movements, and SQLite's own C interface reading every column.
// Wanted at a million movements: load within 1.5 times its bare time, replay within a quarter of the load.
//
//     dyestead_bench --benchmark_filter=/100000
#include <benchmark/benchmark.h>
#include <sqlite3.h>

#include <filesystem>
#include <map>
#include <stdexcept>
#include <string>
#include <system_error>

#include "db/open_shop.h"
#include "domain/ledger/replay.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day kBegun = day_of(2000, 1, 1);

// A loaf a day: what it takes is delivered, poured, cut, and twelve bars are sold.
Shop shop_of(std::int64_t movements) {
    ShopBuilder b;
    auto& about = b.add<About>();
    about.name = "Bench";
    about.currency = "GBP";
    const auto who = b.person(kBegun, Money::units(15));
    const std::array oils{b.oil("olive oil", {190, 1}), b.oil("coconut oil", {257, 1}), b.oil("shea", {180, 1}),
                          b.material("lye", Purpose::lye)};
    const auto bar = b.made("bar", MaterialKind::bar);
    const auto recipe = b.recipe(12);
    // Deliveries waver about what is poured, so that a little always stands open and stock does not grow.
    for (const auto oil : oils) b.already_here(kBegun, oil, grams(20), Money::hundredths(30));
    constexpr std::int64_t kMovementsOfADay = 15;  // four delivered, eight poured, an hour, a cut, a sale
    for (std::int64_t day = 0; day * kMovementsOfADay < movements; ++day) {
        const Day on = kBegun + Days{day};
        const auto batch = b.batch(on, recipe, bar);
        for (const auto oil : oils) {
            b.delivery(on, oil, grams(297 + day % 7), Money::hundredths(480 + day % 13), Money::hundredths(50));
            b.uses<BatchUse>(batch, oil, grams(300));
        }
        auto& time = b.add<BatchTime>(batch);
        time.who = who;
        time.time = minutes(60);
        b.cut(on, batch, 13, 1, on + Days{28});
        const auto sale = b.sale(on);
        if (day >= 28) b.sold(sale, bar, 12, Money::hundredths(650));
    }
    return b.shop();
}

const Shop& shop(std::int64_t movements) {
    static std::map<std::int64_t, Shop> shops;
    const auto [at, fresh] = shops.try_emplace(movements);
    if (fresh) at->second = shop_of(movements);
    return at->second;
}

// The shop as a file that is gone at the end.
class ShopFile {
public:
    explicit ShopFile(std::int64_t movements)
        : path_{std::filesystem::temp_directory_path() / ("bench-" + std::to_string(movements) + ".dyestead")} {
        std::filesystem::remove(path_);
        db::OpenShop::create(path_, {"bench"}, shop(movements));
    }
    ~ShopFile() {
        std::error_code ignored;
        std::filesystem::remove(path_, ignored);
    }
    ShopFile(const ShopFile&) = delete;
    ShopFile& operator=(const ShopFile&) = delete;
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

const std::filesystem::path& file(std::int64_t movements) {
    static std::map<std::int64_t, ShopFile> files;
    return files.try_emplace(movements, movements).first->second.path();
}

void count_movements(benchmark::State& state, std::size_t movements) {
    state.counters["movements"] = static_cast<double>(movements);
    state.counters["each"] = benchmark::Counter(
        static_cast<double>(movements), benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

void replayed(benchmark::State& state) {
    const Shop& facts = shop(state.range(0));
    std::size_t movements = 0;
    for (auto _ : state) {
        const Ledger ledger = replay(facts, kBegun + Days{1'000'000});
        movements = ledger.movements.size();
        benchmark::DoNotOptimize(ledger.balances.data());
    }
    count_movements(state, movements);
}

void bare_loop_over_movements(benchmark::State& state) {
    const Ledger ledger = replay(shop(state.range(0)), kBegun + Days{1'000'000});
    std::vector<Cost> balances(ledger.balances.size());
    for (auto _ : state) {
        std::ranges::fill(balances, Cost{});
        for (const Movement& movement : ledger.movements) {
            balances[movement.from] -= movement.cost;
            balances[movement.to] += movement.cost;
        }
        benchmark::DoNotOptimize(balances.data());
    }
    if (balances != ledger.balances) state.SkipWithError("the loop and the replay do not agree");
    count_movements(state, ledger.movements.size());
}

void loaded(benchmark::State& state) {
    const auto& path = file(state.range(0));
    std::size_t uses = 0;
    for (auto _ : state) {
        const auto open = db::OpenShop::open(path, db::Access::read_only);
        uses = open.shop().all<BatchUse>().size();
    }
    if (uses != shop(state.range(0)).all<BatchUse>().size()) state.SkipWithError("not everything was loaded");
    count_movements(state, static_cast<std::size_t>(state.range(0)));
}

// Every column of every fact, as SQLite hands it out.
std::int64_t step_through(sqlite3* database, const std::string& table) {
    sqlite3_stmt* statement = nullptr;
    const std::string select = "SELECT * FROM " + table + " ORDER BY key";
    if (sqlite3_prepare_v2(database, select.c_str(), -1, &statement, nullptr) != SQLITE_OK)
        throw std::runtime_error{sqlite3_errmsg(database)};
    std::int64_t sum = 0;
    while (sqlite3_step(statement) == SQLITE_ROW) {
        for (int column = 0; column < sqlite3_column_count(statement); ++column) {
            if (sqlite3_column_type(statement, column) == SQLITE_TEXT)
                benchmark::DoNotOptimize(sqlite3_column_text(statement, column));
            else
                sum += sqlite3_column_int64(statement, column);
        }
    }
    sqlite3_finalize(statement);
    return sum;
}

void bare_sqlite(benchmark::State& state) {
    const auto& path = file(state.range(0));
    for (auto _ : state) {
        sqlite3* database = nullptr;
        if (sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READONLY, nullptr) != SQLITE_OK)
            throw std::runtime_error{"the shop file of the bench cannot be opened"};
        std::int64_t sum = 0;
        shop(state.range(0)).for_each_list([&](const auto& list) {
            using Fact = typename std::remove_reference_t<decltype(list)>::value_type;
            sum += step_through(database, std::string{Fact::kTable});
        });
        benchmark::DoNotOptimize(sum);
        sqlite3_close(database);
    }
    count_movements(state, static_cast<std::size_t>(state.range(0)));
}

BENCHMARK(bare_loop_over_movements)->Arg(10'000)->Arg(100'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(replayed)->Arg(10'000)->Arg(100'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(bare_sqlite)->Arg(10'000)->Arg(100'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(loaded)->Arg(10'000)->Arg(100'000)->Arg(1'000'000)->Unit(benchmark::kMillisecond);

}  // namespace
