#include "gui/models/letters.h"

#include <initializer_list>

#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

char lower(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

bool is_letter(char letter) {
    return lower(letter) >= 'a' && lower(letter) <= 'z';
}

std::string marked_in(std::initializer_list<std::string> labels) {
    std::string letters;
    for (const std::string& label : labels)
        if (const auto at = label.find('&'); at != std::string::npos && at + 1 < label.size())
            letters += lower(label[at + 1]);
    return letters;
}

}  // namespace

std::string menu_letters() {
    return marked_in({say("&File"), say("&Edit"), say("&Record"), say("&Go"), say("&Help")});
}

std::string place_letters() {
    return marked_in({say("F&ind"), say("&Correct it..."), say("De&lete it")});
}

std::string form_letters() {
    return marked_in({say("&Keep it  (Ctrl+Enter)"), say("Put &back")});
}

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
