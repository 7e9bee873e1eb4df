// typed_words.h - which word of typed.h is meant by one of another language the program speaks?
// They are understood whatever language the window is in: what was typed once can be read by anybody.
#pragma once

#include <string_view>

namespace dyestead {

// "zwei" is "two". A word that is not known comes back as it is. Small letters, as plain_text() makes them.
std::string_view in_english(std::string_view word);

}  // namespace dyestead
