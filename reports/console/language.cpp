#include "reports/console/language.h"

#include <langinfo.h>
#include <libintl.h>
#include <locale.h>

#include <cstdlib>
#include <filesystem>
#include <initializer_list>
#include <string>
#include <system_error>

#include "reports/words/say.h"

namespace dyestead::console {
namespace {

constexpr const char* kCatalogue = "dyestead";

std::string translated(std::string_view english) {
    return dgettext(kCatalogue, std::string{english}.c_str());
}

std::string counted(std::string_view one, std::string_view many, std::uint64_t count) {
    return dngettext(kCatalogue, std::string{one}.c_str(), std::string{many}.c_str(), count);
}

std::string first_set(std::initializer_list<const char*> names) {
    for (const char* name : names)
        if (const char* value = std::getenv(name); value != nullptr && *value != '\0') return value;
    return {};
}

// "de_AT:de"; blank where none is asked for. A script that sets LC_ALL=C wants the English.
std::string asked_for() {
    const std::string region = first_set({"LC_ALL", "LC_MESSAGES", "LANG"});
    if (region == "C" || region == "POSIX") return {};
    std::string languages = first_set({"LANGUAGE"});
    return languages.empty() ? region : languages;
}

// Gettext looks languages up by their names alone, but in no locale called "C"; the one asked for need not be made on
// this machine, and C.UTF-8 always is.
locale_t any_but_c() {
    for (const char* name : {"", "C.UTF-8", "en_US.UTF-8"}) {
        const locale_t messages = newlocale(LC_MESSAGES_MASK, name, locale_t{});
        if (messages == locale_t{}) continue;
        if (std::string_view{nl_langinfo_l(_NL_LOCALE_NAME(LC_MESSAGES), messages)} != "C") return messages;
        freelocale(messages);
    }
    return locale_t{};
}

}  // namespace

void choose_language() {
    const std::string language = asked_for();
    if (language.empty()) return;
    const locale_t messages = any_but_c();
    if (messages == locale_t{}) return;
    std::error_code none;
    // Beside the program, wherever it was put: build/dev/reports and build/dev/share, /usr/bin and /usr/share.
    const auto program = std::filesystem::read_symlink("/proc/self/exe", none);
    const auto catalogues = program.parent_path().parent_path() / "share" / "locale";
    uselocale(messages);
    setenv("LANGUAGE", language.c_str(), 1);
    bindtextdomain(kCatalogue, catalogues.c_str());
    bind_textdomain_codeset(kCatalogue, "UTF-8");
    reports::set_translation({translated, counted});
}

}  // namespace dyestead::console
