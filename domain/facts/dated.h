// dated.h - to which day is a fact dated?
#pragma once

#include <optional>
#include <type_traits>

#include "domain/facts/field.h"
#include "domain/values/date.h"

namespace dyestead {

// The first date among its own fields; nothing for a line, which is dated as its head is, or a name.
template <class Fact>
std::optional<Day> dated(const Fact& fact) {
    std::optional<Day> day;
    for_each_field<Fact>([&](const auto& each) {
        if constexpr (std::is_same_v<std::remove_cvref_t<decltype(fact.*each.member)>, Day>)
            if (!day) day = fact.*each.member;
    });
    return day;
}

}  // namespace dyestead
