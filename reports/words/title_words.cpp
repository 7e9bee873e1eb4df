#include "reports/words/title_words.h"

#include "reports/words/say.h"

namespace dyestead::reports {

std::string title_words(std::string_view code, const std::vector<TroubleArg>& args) {
    if (code == "folder_imported") code = message("records brought in from {folder}");
    std::vector<Arg> given;
    for (const auto& [name, value] : args) given.push_back({name.c_str(), value});
    // A log may hold a title of another version, or of another hand.
    try {
        return say_with(code, given);
    } catch (const fmt::format_error&) {
        return std::string{code};
    }
}

}  // namespace dyestead::reports
