#include "domain/values/unit.h"

#include <doctest/doctest.h>

#include <numeric>
#include <set>

using namespace dyestead;

static_assert(std::is_trivially_copyable_v<Amount>);
static_assert(!std::is_convertible_v<Quantity, Amount>);

TEST_CASE("every unit stands at its own place, with a code of its own and more than nothing in it") {
    std::set<std::string_view> codes;
    for (const UnitInfo& unit : kUnits) {
        CHECK(&info(unit.unit) == &unit);
        CHECK(codes.insert(unit.code).second);
        CHECK(unit.base.top > 0);
        CHECK(unit.base.bottom > 0);
    }
    CHECK(codes.size() == static_cast<std::size_t>(Unit::kwh) + 1);
}

TEST_CASE("an amount is the same only with the unit and the mark it was stated in") {
    const Amount kilo{Quantity::grams(1'000), Unit::kg, Mark::measured};
    CHECK(kilo == Amount{Quantity::grams(1'000), Unit::kg, Mark::measured});
    CHECK(kilo != Amount{Quantity::grams(1'000), Unit::g, Mark::measured});
    CHECK(kilo != Amount{Quantity::grams(1'000), Unit::kg, Mark::about});
}

TEST_CASE("larger measures of one family are whole numbers of the smaller") {
    const auto times_larger = [](Unit large, Unit small, std::int64_t n) {
        const Ratio a = info(large).base;
        const Ratio b = info(small).base;
        return static_cast<Wide>(a.top) * b.bottom == static_cast<Wide>(b.top) * a.bottom * n;
    };
    CHECK(times_larger(Unit::lb, Unit::oz, 16));
    CHECK(times_larger(Unit::kg, Unit::g, 1'000));
    CHECK(times_larger(Unit::us_tbsp, Unit::us_tsp, 3));
    CHECK(times_larger(Unit::us_fl_oz, Unit::us_tbsp, 2));
    CHECK(times_larger(Unit::us_cup, Unit::us_fl_oz, 8));
    CHECK(times_larger(Unit::us_pt, Unit::us_cup, 2));
    CHECK(times_larger(Unit::us_gal, Unit::us_pt, 8));
    CHECK(times_larger(Unit::uk_pt, Unit::uk_fl_oz, 20));
    CHECK(times_larger(Unit::uk_gal, Unit::uk_pt, 8));
    CHECK(times_larger(Unit::tbsp, Unit::tsp, 3));
    CHECK(times_larger(Unit::m2, Unit::cm2, 10'000));
    CHECK(times_larger(Unit::kwh, Unit::wh, 1'000));
    CHECK_FALSE(times_larger(Unit::lb, Unit::oz, 12));
}
