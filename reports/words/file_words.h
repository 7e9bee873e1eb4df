// file_words.h - what is said of the shop file itself, in window and console alike.
#pragma once

#include <string>

namespace dyestead::reports {

// A file of an earlier version was brought up to this one.
std::string brought_up_sentence(const std::string& shop, const std::string& backup);

}  // namespace dyestead::reports
