#include "gui/models/typed_number.h"

#include <doctest/doctest.h>

namespace dyestead::gui {

TEST_CASE("a field takes a comma or a point, and refuses what could mean two numbers") {
    CHECK(as_double(*read_typed("12.5")) == doctest::Approx(12.5));
    CHECK(as_double(*read_typed("12,5")) == doctest::Approx(12.5));
    CHECK(as_double(*read_typed(" -0,04 ")) == doctest::Approx(-0.04));
    CHECK(as_double(*read_typed("1250")) == doctest::Approx(1250));

    CHECK(read_typed("1,234.5").trouble == TroubleId::not_a_number);
    CHECK(read_typed("1,234,5").trouble == TroubleId::not_a_number);
    CHECK(read_typed("about 3").trouble == TroubleId::not_a_number);
    CHECK(read_typed("").trouble == TroubleId::blank);
}

TEST_CASE("what stands in a field has always as many places") {
    CHECK(to_places(12.7, 2) == "12.70");
    CHECK(to_places(5, 0) == "5");
    CHECK(to_places(-0.125, 3) == "-0.125");
}

}  // namespace dyestead::gui
