#include "reports/write/column_widths.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>

using namespace dyestead::reports;

TEST_CASE("columns that fit keep their natural width") {
    CHECK(fit_columns({{10, 5}, {20, 5}}, 30) == std::vector<int>{10, 20});
    CHECK(fit_columns({}, 30).empty());
}

TEST_CASE("a long column gives way, a short one keeps its words whole") {
    const std::vector<int> widths = fit_columns({{8, 8}, {100, 12}, {6, 6}}, 60);
    CHECK(widths == std::vector<int>{8, 46, 6});
    CHECK(columns_fit({{8, 8}, {100, 12}, {6, 6}}, 60));
}

TEST_CASE("one endless word breaks and does not squeeze its neighbours") {
    CHECK(fit_columns({{8, 8}, {300, 300}, {6, 6}}, 60) == std::vector<int>{8, 46, 6});
    CHECK_FALSE(columns_fit({{8, 8}, {300, 300}, {6, 6}}, 60));
}

TEST_CASE("the sum never passes what there is, and no column vanishes") {
    for (int available = 5; available < 200; available += 7) {
        for (int first = 1; first < 120; first += 13) {
            const std::vector<int> widths =
                fit_columns({{first, first / 2}, {90, 40}, {30, 30}, {3, 3}, {7, 1}}, available);
            CHECK(std::accumulate(widths.begin(), widths.end(), 0) <= available);
            CHECK(*std::min_element(widths.begin(), widths.end()) >= 1);
        }
    }
}
