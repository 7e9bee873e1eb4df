// places.h - the eight places of the window, in the order material flows through the workshop.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace dyestead::gui {

enum class Place { today, garden, vat, bench, cupboard, stall, verdict, books };

inline constexpr std::array kPlaces{
    Place::today, Place::garden, Place::vat, Place::bench, Place::cupboard, Place::stall, Place::verdict, Place::books};

std::string place_name(Place place);

// The name as it is typed after --place, in any case: "verdict". English whatever the language.
std::optional<Place> place_named(std::string_view name);

// One sentence: what the place is for.
std::string place_purpose(Place place);

// What a window without a shop says, and what to do next.
std::string nothing_open();
std::string how_to_open();

}  // namespace dyestead::gui
