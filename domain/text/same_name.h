// same_name.h - is it the same name, whatever the case of A to Z?
#pragma once

#include <algorithm>
#include <string_view>

namespace dyestead {

inline bool same_name(std::string_view one, std::string_view other) {
    const auto small = [](char letter) {
        return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    };
    return std::ranges::equal(one, other, {}, small, small);
}

}  // namespace dyestead
