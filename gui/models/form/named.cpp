#include "gui/models/form/named.h"

#include <algorithm>

namespace dyestead::gui {

bool same_name(std::string_view one, std::string_view other) {
    const auto folded = [](char letter) {
        return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    };
    return std::ranges::equal(one, other, {}, folded, folded);
}

}  // namespace dyestead::gui
