// language.h - what is the language of the sentences, and how does it write a number?
// Read from the translation itself, so that a sentence and the figures in it are always of one language, whatever the
// machine's region. English while nothing is translated.
#pragma once

#include <string>
#include <string_view>

namespace dyestead::reports {

// As BCP 47 has it: "en", "de".
std::string language_here();

// What stands between thousands, and before the tenths.
struct Marks {
    std::string thousands;
    std::string decimal;
};
Marks marks_here();

// A number written with a decimal point, or a text of the records with such numbers in it, in the reader's marks:
// "1.5 kg" is "1,5 kg" in German. Only a point between two digits is one.
std::string in_marks_here(std::string_view text);

}  // namespace dyestead::reports
