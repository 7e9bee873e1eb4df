#include "gui/models/letters.h"

namespace dyestead::gui {

namespace {

char lower(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

bool is_letter(char letter) {
    return lower(letter) >= 'a' && lower(letter) <= 'z';
}

}  // namespace

std::string with_letter(std::string_view label, std::string& taken) {
    std::string plain;
    std::string wished;
    for (std::size_t i = 0; i < label.size(); ++i) {
        if (label[i] == '&' && i + 1 < label.size()) {
            wished = lower(label[i + 1]);
            continue;
        }
        plain += label[i];
    }
    const auto free = [&](char letter) { return is_letter(letter) && taken.find(lower(letter)) == std::string::npos; };
    const auto marked = [&](std::size_t at) {
        taken += lower(plain[at]);
        return plain.substr(0, at) + "&" + plain.substr(at);
    };
    if (!wished.empty() && free(wished[0])) {
        for (std::size_t i = 0; i < label.size(); ++i)
            if (label[i] == '&') return marked(i);
    }
    for (std::size_t i = 0; i < plain.size(); ++i)
        if (free(plain[i])) return marked(i);
    return plain;
}

}  // namespace dyestead::gui
