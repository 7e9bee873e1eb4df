// commands.h - every command of the window: its id, and the menus that offer it.
#pragma once

#include <wx/filehistory.h>
#include <wx/menu.h>
#include <optional>
#include <string>
#include <vector>

namespace dyestead::gui {

enum Command : int {
    kFirstPlace = wxID_HIGHEST + 1,  // one for each place, in order
    kLastPlace = kFirstPlace + 7,
    kReadAgain,
    kWriteAnyway,
    kSavePage,
    kPrintPage,
    kPreviewPage,
    kNextPart,
    kFigures,
    kBackToRecords,
    kNewHere,
    kNoteThis,
    kJot,
    kNoteTime,
    kNoteLoss,
    kWhereDidItGo,
    kAtThePan,
    kKeys,
    kAbout,
};

// The command that goes with a key which lists and fields would take for themselves.
std::optional<int> command_of(int key, int modifiers);

// Those of the menus that record something, or take back what was recorded.
std::vector<int> recording_commands();

// Of kWriteAnyway, in the menu and in the bar.
std::string write_anyway_label();

// `recent` puts the files opened before into the File menu.
wxMenuBar* make_menus(wxFileHistory& recent);

}  // namespace dyestead::gui
