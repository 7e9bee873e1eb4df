#include "gui/app.h"

#include <fmt/format.h>

#include <wx/cmdline.h>
#include <wx/filename.h>
#include <wx/log.h>
#include <wx/stdpaths.h>
#include <cstdio>

#include "gui/desktop/desktop.h"
#include "gui/desktop/memory.h"
#include "gui/frame.h"
#include "gui/guarded.h"
#include "gui/language.h"
#include "gui/widgets/text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

App::App() {
    keep_memory();
    set_program_name("dyestead");
    SetAppName("dyestead");
    SetAppDisplayName("Dyestead");
}

bool App::OnInit() {
    // The library's own complaints go to the terminal: in a box they would have to be answered.
    delete wxLog::SetActiveTarget(new wxLogStderr);
    wxStandardPaths::Get().SetFileLayout(wxStandardPaths::FileLayout_XDG);
    choose_language();
    if (!wxApp::OnInit()) return false;
    // A new account has no folder for settings yet.
    wxFileName::Mkdir(wxStandardPaths::Get().GetUserConfigDir(), wxS_DIR_DEFAULT, wxPATH_MKDIR_FULL);
    auto* frame = new Frame(std::make_unique<DesktopFileChooser>(), place_);
    set_failure_sink([frame](std::string_view sentence) { frame->say(sentence); });
    frame->Show();
    // The window first: a large shop takes a moment to read.
    if (shop_) {
        frame->CallAfter([frame, path = *shop_] { guarded("opening a shop file", [&] { frame->open(path); }); });
    }
    return true;
}

void App::OnInitCmdLine(wxCmdLineParser& parser) {
    using reports::say;
    wxApp::OnInitCmdLine(parser);
    parser.AddLongOption(
        "place", shown(say("the place to begin at: today, garden, vat, bench, cupboard, stall, verdict, "
                           "books")));
    parser.AddParam(shown(say("shop file")), wxCMD_LINE_VAL_STRING, wxCMD_LINE_PARAM_OPTIONAL);
}

bool App::OnCmdLineParsed(wxCmdLineParser& parser) {
    using reports::arg;
    using reports::say;
    wxString text;
    if (parser.Found("place", &text)) {
        const auto place = place_named(typed(text));
        if (!place) {
            fmt::print(stderr, "{}\n",
                       say("dyestead: there is no place called {name}; --place takes today, garden, vat, "
                           "bench, cupboard, stall, verdict or books.",
                           arg("name", typed(text))));
            return false;
        }
        place_ = *place;
    }
    if (parser.GetParamCount() > 0) shop_ = std::filesystem::path{typed(parser.GetParam(0))};
    return wxApp::OnCmdLineParsed(parser);
}

bool App::OnExceptionInMainLoop() {
    report_failure("handling an event", std::current_exception());
    return true;
}

}  // namespace dyestead::gui
