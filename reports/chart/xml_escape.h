// xml_escape.h - text that may stand in HTML or SVG, in an element or a quoted attribute.
#pragma once

#include <string>
#include <string_view>

namespace dyestead::reports {

// Control characters that no such file may hold become the replacement character U+FFFD.
std::string xml_escape(std::string_view text);

}  // namespace dyestead::reports
