// The learning curve.
//   A management accounting study text in the manner of CIMA, p. 324: Wright's model (the average over all units), 80
//   %, 100 hours for the first. Its increment from 8 to 16 units is printed 254.76; its own averages give 245.76. M.
//   Wideman, appendix 2, on Wright (1936): the second unit alone takes 60 % where the average of two is 80 %. H.
//   Kerzner, table 18-2: at 80 %, four times as many bring 36 % off.
#include <doctest/doctest.h>

#include "domain/decisions/practice.h"

using namespace dyestead;
using doctest::Approx;

TEST_CASE("an 80 % curve: averages, totals and increments of 1, 2, 4, 8 and 16 units") {
    struct Row {
        double units;
        double average;
        double total;
        double increment;
    };
    double before = 0;
    for (const Row& row : {Row{1, 100, 100, 100},
                           {2, 80, 160, 60},
                           {4, 64, 256, 96},
                           {8, 51.2, 409.6, 153.6},
                           {16, 40.96, 655.36, 245.76}}) {
        const double average = on_learning_curve(100, 0.8, row.units);
        CHECK(average == Approx(row.average));
        CHECK(average * row.units == Approx(row.total));
        CHECK(average * row.units - before == Approx(row.increment));
        before = average * row.units;
    }
}

TEST_CASE("the second unit alone takes 60 % where the average falls, 80 % where the unit's own time does") {
    CHECK(2 * on_learning_curve(1, 0.8, 2) - on_learning_curve(1, 0.8, 1) == Approx(0.6));
    CHECK(on_learning_curve(1, 0.8, 2) == Approx(0.8));
}

TEST_CASE("four times as many at 80 % take 36 % less") {
    CHECK(1 - on_learning_curve(1, 0.8, 4) == Approx(0.36));
}
