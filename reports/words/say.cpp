#include "reports/words/say.h"

#include <fmt/args.h>

namespace dyestead::reports {
namespace {

Translation& translation() {
    static Translation in_use;
    return in_use;
}

std::string filled(std::string_view translated, std::string_view english, const std::vector<Arg>& args) {
    fmt::dynamic_format_arg_store<fmt::format_context> store;
    for (const Arg& each : args) store.push_back(fmt::arg(each.name, each.value));
    try {
        return fmt::vformat(translated, store);
    } catch (const fmt::format_error&) {
        return fmt::vformat(english, store);
    }
}

}  // namespace

void set_translation(Translation new_one) {
    translation() = new_one;
}

std::string tr(std::string_view english) {
    // A catalogue keeps its heading under the empty text.
    return translation().sentence && !english.empty() ? translation().sentence(english) : std::string{english};
}

std::string say_with(std::string_view english, const std::vector<Arg>& args) {
    return filled(tr(english), english, args);
}

std::string say_count_with(std::string_view one, std::string_view many, std::uint64_t count, std::vector<Arg> args) {
    args.push_back(arg("count", count));
    const std::string_view english = count == 1 ? one : many;
    if (!translation().counted) return filled(english, english, args);
    return filled(translation().counted(one, many, count), english, args);
}

}  // namespace dyestead::reports
