#include "reports/words/language.h"

#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

bool digit(char c) {
    return c >= '0' && c <= '9';
}

}  // namespace

std::string language_here() {
    // TRANSLATORS: the code of the language you translate into, as BCP 47 has it: de, fr, pt-BR.
    return tr("en");
}

Marks marks_here() {
    // TRANSLATORS: the same number as your language writes it: 1.234,5 or 1 234,5. All numbers shown follow it.
    const std::string sample = tr("1,234.5");
    const auto second = sample.find("234");
    const auto tenths = sample.rfind('5');
    if (second == std::string::npos || second == 0 || tenths == std::string::npos || tenths <= second + 3)
        return {.thousands = ",", .decimal = "."};
    return {.thousands = sample.substr(1, second - 1), .decimal = sample.substr(second + 3, tenths - second - 3)};
}

std::string in_marks_here(std::string_view text) {
    const std::string decimal = marks_here().decimal;
    std::string out;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const bool mark =
            text[at] == '.' && at > 0 && digit(text[at - 1]) && at + 1 < text.size() && digit(text[at + 1]);
        if (mark)
            out += decimal;
        else
            out += text[at];
    }
    return out;
}

}  // namespace dyestead::reports
