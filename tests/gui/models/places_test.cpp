#include "gui/models/places.h"

#include <doctest/doctest.h>

#include <set>

namespace dyestead::gui {

TEST_CASE("a place is found by its name in any case") {
    CHECK(place_named("verdict") == Place::verdict);
    CHECK(place_named("Verdict") == Place::verdict);
    CHECK(place_named("CUPBOARD") == Place::cupboard);
    CHECK_FALSE(place_named("verdic"));
    CHECK_FALSE(place_named("verdicts"));
    CHECK_FALSE(place_named(""));
}

TEST_CASE("every place has a name and a purpose of its own") {
    std::set<std::string> names;
    std::set<std::string> purposes;
    for (const Place place : kPlaces) {
        names.insert(place_name(place));
        purposes.insert(place_purpose(place));
        CHECK(place_named(place_name(place)) == place);
    }
    CHECK(names.size() == kPlaces.size());
    CHECK(purposes.size() == kPlaces.size());
    CHECK_FALSE(purposes.contains(""));
}

}  // namespace dyestead::gui
