// dyestead-books: the same books as in the window, for scripts and machines without a screen.

#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <iostream>

#include "reports/console/arguments.h"
#include "reports/console/commands.h"
#include "reports/console/failures.h"
#include "reports/console/language.h"
#include "reports/words/say.h"

namespace dyestead::console {
namespace {

int run(int argc, char** argv) {
    using reports::tr;
    choose_language();
    CLI::App app{tr("The books of a soap workshop that grows its own colours."), "dyestead-books"};
    name_the_parts_of_help(app);
    app.set_help_flag("-h,--help", tr("Show this help and end"));
    app.get_formatter()->column_width(26);
    app.footer(
        tr("COMMAND --help shows what a command takes.\n"
           "Exit status: 0 done; 1 a check failed; 2 something asked for or read is wrong:\n"
           "one line each on stderr says what, and nothing was written."));
    Run chosen;
    add_import(app, chosen);
    add_export(app, chosen);
    add_check(app, chosen);
    add_report(app, chosen);
    add_ask(app, chosen);
    for (CLI::App* command : app.get_subcommands({})) {
        command->group(tr("Commands"));
        command->get_help_ptr()->group(tr("Options"));
    }
    try {
        app.parse(argc, argv);
    } catch (const CLI::CallForHelp&) {
        // The help that was asked for: the command's own where one was named.
        const auto commands = app.get_subcommands();
        std::cout << (commands.empty() ? app.help() : commands.front()->help("dyestead-books"));
        return kDone;
    } catch (const CLI::ParseError& wrong) {
        say_on_stderr(wrong_arguments(app, wrong));
        return kRefused;
    }
    if (!chosen) {
        say_on_stderr(tr("Say what to do: import, export, check, report or ask; see dyestead-books --help."));
        return kRefused;
    }
    return guarded(chosen);
}

}  // namespace
}  // namespace dyestead::console

int main(int argc, char** argv) {
    try {
        return dyestead::console::run(argc, argv);
    } catch (...) {  // not even the line that says what went wrong could be written
        return dyestead::console::kOwnFault;
    }
}
