#include "reports/console/arguments.h"

#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <algorithm>
#include <charconv>

#include "reports/words/say.h"

namespace dyestead::console {
namespace {

using reports::arg;
using reports::say;
using reports::tr;

// The command that was named, or else the program.
const CLI::App& command_of(const CLI::App& app) {
    const auto named = app.get_subcommands();
    return named.empty() ? app : *named.front();
}

std::string command_line(const CLI::App& command) {
    return command.get_parent() == nullptr ? command.get_name() : "dyestead-books " + command.get_name();
}

std::string missing(const CLI::App& command) {
    const auto needed = [](const CLI::Option* option) { return option->get_required() && option->count() == 0; };
    const auto options = command.get_options(needed);
    return say("{command} needs {argument}, and it is missing; {command} --help shows what it takes.",
               arg("command", command_line(command)),
               arg("argument", options.empty() ? "" : options.front()->get_name()));
}

std::string not_expected(const CLI::App& app) {
    const CLI::App& command = command_of(app);
    const auto left = app.remaining(true);
    const std::string word = left.empty() ? std::string{} : left.front();
    if (word.starts_with('-'))
        return say("{command} has no option {word}; {command} --help shows what it takes.",
                   arg("command", command_line(command)), arg("word", word));
    if (&command == &app)
        return say(
            "There is no command \"{word}\"; the commands are import, export, check, report and ask. {command} --help "
            "shows "
            "what they do.",
            arg("word", word), arg("command", command_line(command)));
    return say("{command} does not know what to do with \"{word}\"; {command} --help shows what it takes.",
               arg("command", command_line(command)), arg("word", word));
}

// The library names the option in its message and nowhere else.
const CLI::Option* option_in(const CLI::App& command, std::string_view message) {
    const auto options = command.get_options([&](const CLI::Option* option) {
        const std::string name = option->get_name();
        const auto at = message.find(name);
        const auto end = at + name.size();
        const bool whole =
            at != std::string_view::npos && (at == 0 || message[at - 1] == ' ') &&
            (end == message.size() || std::string_view{": ,="}.find(message[end]) != std::string_view::npos);
        return whole;
    });
    return options.empty() ? nullptr : options.front();
}

std::string wrong_values(const CLI::App& command, std::string_view message) {
    const CLI::Option* option = option_in(command, message);
    if (option == nullptr)
        return say("These arguments are not understood; {command} --help shows what there is.",
                   arg("command", command_line(command)));
    const std::string name = option->get_name();
    if (option->get_items_expected_min() == 0)
        return say("{option} stands alone, without a value.", arg("option", name));
    if (option->count() > 1) return say("{option} is given more than once; give it once.", arg("option", name));
    return say("{option} needs a value after it; {command} --help shows which.", arg("option", name),
               arg("command", command_line(command)));
}

template <class Number>
std::string number_trouble(const std::string& option, const std::string& typed, int low, int high,
                           std::string_view sentence) {
    Number number{};
    const auto [end, error] = std::from_chars(typed.data(), typed.data() + typed.size(), number);
    const bool read = error == std::errc{} && end == typed.data() + typed.size();
    if (read && number >= static_cast<Number>(low) && number <= static_cast<Number>(high)) return {};
    return say(sentence, arg("option", option), arg("low", low), arg("high", high), arg("typed", typed));
}

}  // namespace

void name_the_parts_of_help(CLI::App& app) {
    auto words = app.get_formatter();
    words->label("Usage", tr("Usage"));
    words->label("Positionals", tr("Positionals"));
    words->label("OPTIONS", tr("OPTIONS"));
    words->label("SUBCOMMAND", tr("COMMAND"));
    words->label("REQUIRED", tr("(needed)"));
    words->label("TEXT", tr("TEXT"));
    words->label("INT", tr("NUMBER"));
    words->label("FLOAT", tr("NUMBER"));
    app.option_defaults()->group(tr("Options"));
}

std::string wrong_arguments(const CLI::App& app, const CLI::ParseError& wrong) {
    const CLI::App& command = command_of(app);
    const std::string_view message{wrong.what()};
    if (dynamic_cast<const CLI::RequiredError*>(&wrong) != nullptr) return missing(command);
    if (dynamic_cast<const CLI::ExtrasError*>(&wrong) != nullptr) return not_expected(app);
    // Ours, with the option before it.
    if (dynamic_cast<const CLI::ValidationError*>(&wrong) != nullptr)
        return std::string{message.substr(std::min(message.size(), message.find(": ") + 2))};
    return wrong_values(command, message);
}

CLI::Option* takes_whole_number(CLI::Option* option, int low, int high) {
    return option->check([name = option->get_name(), low, high](const std::string& typed) {
        return number_trouble<int>(
            name, typed, low, high,
            reports::message("{option} takes a whole number from {low} to {high}, and not \"{typed}\"."));
    });
}

CLI::Option* takes_number(CLI::Option* option, int low, int high) {
    return option->check([name = option->get_name(), low, high](const std::string& typed) {
        return number_trouble<double>(
            name, typed, low, high,
            reports::message("{option} takes a number from {low} to {high} like 7.5, and not \"{typed}\"."));
    });
}

}  // namespace dyestead::console
