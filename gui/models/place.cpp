#include "gui/models/place.h"

#include <algorithm>

namespace dyestead::gui {

namespace {

char folded(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

}  // namespace

bool holds(std::initializer_list<std::string_view> texts, std::string_view find) {
    const auto same = [](char a, char b) { return folded(a) == folded(b); };
    return find.empty() || std::ranges::any_of(texts, [&](std::string_view text) {
               return std::search(text.begin(), text.end(), find.begin(), find.end(), same) != text.end();
           });
}

}  // namespace dyestead::gui
