// in_german.h - while one of these lives, the few sentences that decide how figures look are German.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <utility>

#include "reports/words/say.h"

namespace dyestead::test {

inline std::string in_german(std::string_view english) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 6> kKnown{{
        {"en", "de"},
        {"1,234.5", "1.234,5"},
        {"{minus}{sign}{digits}", "{minus}{digits}\u00a0{sign}"},
        {"{day} {month} {year}", "{day}. {month} {year}"},
        {"July", "Juli"},
        {"March", "März"},
    }};
    for (const auto& [from, to] : kKnown)
        if (from == english) return std::string{to};
    return std::string{english};
}

struct InGerman {
    InGerman() {
        reports::set_translation({in_german, [](std::string_view one, std::string_view many, std::uint64_t count) {
                                      return in_german(count == 1 ? one : many);
                                  }});
    }
    InGerman(const InGerman&) = delete;
    InGerman& operator=(const InGerman&) = delete;
    ~InGerman() { reports::set_translation({}); }
};

}  // namespace dyestead::test
