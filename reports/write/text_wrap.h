// text_wrap.h - plain text in columns of characters: its width, and its lines.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace dyestead::reports {

// Code points, combining marks and joiners counted as none. Invalid UTF-8 counts a byte as one.
int text_width(std::string_view text);

// The widest run of text without a space.
int longest_word(std::string_view text);

// Lines no wider than `width` (at least 1): broken at spaces, inside a word only where the word
// alone is wider, never between a letter and its combining mark. A line break in the text
// stays one. Always at least one line.
std::vector<std::string> wrap_text(std::string_view text, int width);

}  // namespace dyestead::reports
