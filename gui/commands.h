// commands.h - every command of the window: its id, and the menus that offer it.
#pragma once

#include <wx/filehistory.h>
#include <wx/menu.h>

namespace dyestead::gui {

enum Command : int {
    kFirstPlace = wxID_HIGHEST + 1,  // one for each place, in order
    kLastPlace = kFirstPlace + 7,
    kReadAgain,
    kSavePage,
    kPrintPage,
    kNextPart,
    kFigures,
    kBackToRecords,
    kKeys,
    kAbout,
};

// `recent` puts the files opened before into the File menu.
wxMenuBar* make_menus(wxFileHistory& recent);

}  // namespace dyestead::gui
