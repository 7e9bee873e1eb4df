// letters.h - which letter does Alt go with a label by, so that no two on one screen are alike?
#pragma once

#include <string>
#include <string_view>

namespace dyestead::gui {

// The label with its letter marked: the one wished for by `&` when it is free, else the first free one of its words,
// none when all are taken. `taken`: lower-case letters in use; the one chosen is added.
std::string with_letter(std::string_view label, std::string& taken);

// Those of the menus and of what every place and every form has, as the reader's language marks them.
std::string menu_letters();
std::string place_letters();  // Find, Correct it, Delete it
std::string form_letters();   // Keep it, Put back

}  // namespace dyestead::gui
