// file_words.h - what is said of the shop file itself, in window and console alike.
#pragma once

#include <string>

namespace dyestead::reports {

// A file of an earlier version was brought up to this one.
std::string brought_up_sentence(const std::string& shop, const std::string& backup);

// A window has the shop open, so the console does not write to it. Program and host are blank where they are not known.
std::string held_sentence(const std::string& shop, const std::string& program, const std::string& host);

}  // namespace dyestead::reports
