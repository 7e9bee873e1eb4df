// text.h - our texts are UTF-8 in std::string, the window's are wxString: the two bridges between them.
#pragma once

#include <wx/string.h>
#include <string>
#include <string_view>

namespace dyestead::gui {

inline wxString shown(std::string_view text) {
    return wxString::FromUTF8(text.data(), text.size());
}

inline std::string typed(const wxString& text) {
    return std::string{text.utf8_string()};
}

}  // namespace dyestead::gui
