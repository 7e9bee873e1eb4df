// The sample shop counted a second time, by plain SQL over the tables of its file, which knows nothing of lots,
// events or accounts: what is left of each material, the hours, and what each delivered lot cost.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>
#include <sqlite3.h>

#include <array>
#include <cstdlib>
#include <map>

#include "db/import.h"
#include "db/open_shop.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "domain/values/share.h"
#include "tests/support/temp_folder.h"

using namespace dyestead;
using namespace dyestead::db;
using namespace dyestead::test;

namespace {

using Totals = std::map<std::int64_t, std::int64_t>;  // by key

// The one function that SQL lacks: a share of a rest in 128 bits, rounded down.
void share(sqlite3_context* context, int, sqlite3_value** values) {
    const std::int64_t left = sqlite3_value_int64(values[2]);
    const auto part = left == 0 ? 0 : share_of(sqlite3_value_int64(values[0]), sqlite3_value_int64(values[1]), left);
    sqlite3_result_int64(context, part);
}

struct SampleShop {
    SampleShop() {
        setenv("XDG_DATA_HOME", (temp / "data").c_str(), 1);
        import_folder(std::filesystem::path{DYESTEAD_SOURCE_DIR} / "sample-shop" / "shop", file, Existing::refuse);
    }
    ~SampleShop() { unsetenv("XDG_DATA_HOME"); }

    Totals by_key(const std::string& sql, Day day) const {
        SQLite::Database db{file.string(), SQLite::OPEN_READONLY};
        db.createFunction("share", 3, true, nullptr, share);
        SQLite::Statement rows{db, sql};
        if (rows.getIndex(":day") > 0) rows.bind(":day", static_cast<std::int64_t>(day.time_since_epoch().count()));
        Totals totals;
        while (rows.executeStep()) totals[rows.getColumn(0).getInt64()] = rows.getColumn(1).getInt64();
        return totals;
    }

    TempFolder temp;
    std::filesystem::path file = temp / "sample.dyestead";
};

const std::array kDays{day_of(2024, 6, 30), day_of(2024, 12, 31), day_of(2025, 11, 15), day_of(2026, 11, 1)};

// Kinds of fact that the queries below leave out because the sample has none. Once it has, they must be taught.
constexpr std::string_view kLeftOut = R"sql(
    SELECT 1, (SELECT COUNT(*) FROM count_line) + (SELECT COUNT(*) FROM out_at_shop)
            + (SELECT COUNT(*) FROM returned) + (SELECT COUNT(*) FROM waiting_share) + (SELECT COUNT(*) FROM seed_kept)
            + (SELECT COUNT(*) FROM drying_lot) + (SELECT COUNT(*) FROM batch WHERE split_from IS NOT NULL)
            + (SELECT COUNT(*) FROM vat WHERE hands_on IS NOT NULL)
            + (SELECT COUNT(*) FROM delivery WHERE duty IS NOT NULL OR discount IS NOT NULL OR rate_top IS NOT NULL)
)sql";

// In base units as the material is held, by its density where it was stated the other way; a spoon by its own.
constexpr std::string_view kHeld = R"sql(
    CASE WHEN m.held_as = 'mass' AND a.unit IN ('tsp', 'tbsp', 'us tsp', 'us tbsp', 'us cup')
              AND m.spoon_density_top IS NOT NULL
         THEN (2 * a.amount * m.spoon_density_top + m.spoon_density_bottom) / (2 * m.spoon_density_bottom)
         WHEN m.held_as = 'mass' AND a.unit NOT IN ('mg', 'g', 'kg', 'oz', 'lb')
         THEN (2 * a.amount * m.density_top + m.density_bottom) / (2 * m.density_bottom)
         WHEN m.held_as = 'volume' AND a.unit IN ('mg', 'g', 'kg', 'oz', 'lb')
         THEN (2 * a.amount * m.density_bottom + m.density_top) / (2 * m.density_top)
         ELSE a.amount END
)sql";

constexpr std::string_view kAmounts = R"sql(
    came(lot, material, amount, unit, day, sign) AS (
        SELECT x.lot, l.material, x.amount, x.amount_unit, x.date, 1 FROM already_here x JOIN lot l ON l.key = x.lot
        UNION ALL SELECT x.lot, l.material, x.amount, x.amount_unit, d.date, 1
            FROM delivery_line x JOIN delivery d ON d.key = x.head JOIN lot l ON l.key = x.lot
        UNION ALL SELECT x.lot, l.material, x.amount, x.amount_unit, x.date, 1
            FROM harvest x JOIN lot l ON l.key = x.lot
        UNION ALL SELECT x.lot, l.material, x.amount, x.amount_unit, x.date, 1
            FROM drying x JOIN lot l ON l.key = x.lot
        UNION ALL SELECT x.lot, l.material, 1000 * (x.bars - x.rejected), 'piece', x.date, 1
            FROM cut x JOIN lot l ON l.key = x.lot
    ),
    went(lot, material, amount, unit, day, sign) AS (
        SELECT u.lot, u.material, u.amount, u.amount_unit, h.sown, -1 FROM planting_use u JOIN planting h ON h.key = u.head
        UNION ALL SELECT u.lot, u.material, u.amount, u.amount_unit, h.date, -1
            FROM tending_use u JOIN tending h ON h.key = u.head
        UNION ALL SELECT u.lot, u.material, u.amount, u.amount_unit, h.date, -1
            FROM vat_use u JOIN vat h ON h.key = u.head
        UNION ALL SELECT u.lot, u.material, u.amount, u.amount_unit, h.date, -1
            FROM batch_use u JOIN batch h ON h.key = u.head
        UNION ALL SELECT u.lot, u.material, u.amount, u.amount_unit, h.date, -1
            FROM wrapping_use u JOIN wrapping h ON h.key = u.head
        UNION ALL SELECT lot, material, amount, amount_unit, date, -1 FROM loss
        UNION ALL SELECT x.lot, x.bar, 1000 * x.bars, 'piece', h.date, -1 FROM sale_line x JOIN sale h ON h.key = x.head
        UNION ALL SELECT x.lot, x.bar, 1000 * (x.taken - x.back), 'piece', h.date, -1
            FROM fair_line x JOIN fair h ON h.key = x.head
    )
)sql";

std::string left_of_each() {
    return "WITH " + std::string{kAmounts} + "SELECT m.key, SUM(a.sign * " + std::string{kHeld} + R"sql()
        FROM (SELECT * FROM came UNION ALL SELECT * FROM went) a JOIN material m ON m.key = a.material
        WHERE a.day <= :day GROUP BY m.key)sql";
}

// Millionths of a minute of the shop's own people, whoever is named; nobody named: one of them.
constexpr std::string_view kHours = R"sql(
    WITH spent(who, time, day) AS (
        SELECT who, time, date FROM already_here UNION ALL SELECT who, time, date FROM standing_bed
        UNION ALL SELECT who, time, date FROM tending UNION ALL SELECT who, time, date FROM harvest
        UNION ALL SELECT s.who, s.hands_on, v.date FROM vat_step s JOIN vat v ON v.key = s.head
        UNION ALL SELECT who, time, date FROM drying
        UNION ALL SELECT t.who, t.time, b.date FROM batch_time t JOIN batch b ON b.key = t.head
        UNION ALL SELECT who, time, date FROM cut UNION ALL SELECT who, time, date FROM wrapping
        UNION ALL SELECT t.who, t.time, f.date FROM fair_time t JOIN fair f ON f.key = t.head
        UNION ALL SELECT who, time, date FROM sale UNION ALL SELECT who, time, date FROM work
        UNION ALL SELECT who, time, date FROM sitting
    )
    SELECT 1, COALESCE(SUM(time), 0) FROM spent WHERE day <= :day AND COALESCE(
        (SELECT standing FROM pay WHERE person = who AND "from" <= day ORDER BY "from" DESC LIMIT 1), 'own') = 'own'
)sql";

// Price and carriage of every delivered lot. The weights left from each line on come from a window; what is left
// of the carriage goes from line to line.
std::string delivered_cost() {
    return "WITH RECURSIVE weighed AS (SELECT a.key, a.head, a.lot, a.position, a.price, d.carriage, d.share_by, CASE "
           "WHEN m.held_as = 'count' THEN 0 ELSE " +
           std::string{kHeld} + R"sql( END AS weight
            FROM (SELECT *, amount_unit AS unit FROM delivery_line) a JOIN delivery d ON d.key = a.head
            JOIN lot l ON l.key = a.lot JOIN material m ON m.key = l.material WHERE d.date <= :day),
        parts AS (SELECT *, ROW_NUMBER() OVER line AS n,
                CASE WHEN share_by = 'value' AND SUM(price) OVER bill > 0 THEN price
                     WHEN SUM(weight) OVER bill > 0 THEN weight ELSE 1 END AS part
            FROM weighed WINDOW bill AS (PARTITION BY head), line AS (PARTITION BY head ORDER BY position)),
        shared AS (SELECT *, SUM(part) OVER (PARTITION BY head ORDER BY n
                ROWS BETWEEN CURRENT ROW AND UNBOUNDED FOLLOWING) AS parts_left FROM parts),
        given(head, n, lot, price, carriage, rest) AS (
            SELECT head, n, lot, price, share(carriage, part, parts_left), carriage - share(carriage, part, parts_left)
                FROM shared WHERE n = 1
            UNION ALL
            SELECT s.head, s.n, s.lot, s.price, share(g.rest, s.part, s.parts_left),
                   g.rest - share(g.rest, s.part, s.parts_left)
                FROM given g JOIN shared s ON s.head = g.head AND s.n = g.n + 1)
        SELECT lot, SUM(price + carriage) FROM given GROUP BY lot)sql";
}

}  // namespace

TEST_CASE("plain SQL finds the same left of every material as the ledger, at every year's end") {
    const SampleShop sample;
    const OpenShop open = OpenShop::open(sample.file, Access::read_only);
    REQUIRE(sample.by_key(std::string{kLeftOut}, {}).at(1) == 0);
    for (const Day day : kDays) {
        Totals sql = sample.by_key(left_of_each(), day);
        const auto books = quantity_partitions(open.shop(), replay(open.shop(), day), day);
        std::size_t held = 0;
        for (std::size_t i = 0; i < books.size(); ++i) {
            const Material& material = open.shop().all<Material>()[i];
            INFO(material.code << " on " << day.time_since_epoch().count());
            CHECK(sql[material.key.number] == books[i].stock + books[i].in_progress);
            if (books[i].stock > 0) ++held;
        }
        CHECK(held > 10);
    }
}

TEST_CASE("plain SQL adds up the same hours as the ledger") {
    const SampleShop sample;
    const OpenShop open = OpenShop::open(sample.file, Access::read_only);
    for (const Day day : kDays) {
        const std::int64_t sql = sample.by_key(std::string{kHours}, day).at(1);
        const Cost in = cost_partition(open.shop(), replay(open.shop(), day), day).in;
        CHECK(sql > 0);
        CHECK(sql == in.hands_on.in_millionths());
    }
}

TEST_CASE("plain SQL finds the same price and carriage in every delivered lot") {
    const SampleShop sample;
    const OpenShop open = OpenShop::open(sample.file, Access::read_only);
    const Day day = kDays.back();
    const Totals sql = sample.by_key(delivered_cost(), day);
    const Ledger ledger = replay(open.shop(), day);
    CHECK(sql.size() == open.shop().all<DeliveryLine>().size());
    Totals books;  // as it was delivered; later corrections are not in the bill
    for (const Movement& movement : ledger.movements) {
        if (ledger.sources[movement.source].fact.kind != kKindOf<DeliveryLine>) continue;
        if (movement.from != account(Boundary::delivered)) continue;
        books[open.shop().all<Lot>()[ledger.accounts.index(movement.to)].key.number] +=
            movement.cost.materials.in_millionths();
    }
    CHECK(sql == books);
}
