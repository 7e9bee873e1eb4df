#include "gui/commands.h"

#include <fmt/format.h>

#include "gui/models/places.h"
#include "gui/widgets/text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

void add(wxMenu& menu, int id, const std::string& label, std::string_view key) {
    menu.Append(id, shown(key.empty() ? label : fmt::format("{}\t{}", label, key)));
}

wxMenu* file_menu(wxFileHistory& recent) {
    auto* menu = new wxMenu;
    auto* opened = new wxMenu;
    add(*menu, wxID_NEW, say("&Begin a new shop..."), "Ctrl+Shift+N");
    add(*menu, wxID_OPEN, say("&Open a shop file..."), "Ctrl+O");
    menu->AppendSubMenu(opened, shown(say("Opened be&fore")));
    add(*menu, kReadAgain, say("&Read again"), "F5");
    add(*menu, kWriteAnyway, write_anyway_label(), "");
    menu->AppendSeparator();
    add(*menu, kSavePage, say("&Save page as..."), "Ctrl+S");
    add(*menu, kPrintPage, say("&Print..."), "Ctrl+P");
    add(*menu, kPreviewPage, say("&Look at the pages to print"), "Ctrl+Shift+P");
    menu->AppendSeparator();
    add(*menu, wxID_EXIT, say("&Quit"), "Ctrl+Q");
    recent.UseMenu(opened);
    return menu;
}

// The letter to press with Alt in an open menu: no two places begin alike, but for these.
std::string place_label(Place place) {
    switch (place) {
        case Place::today: return say("&Today");
        case Place::garden: return say("&Garden");
        case Place::vat: return say("V&at");
        case Place::bench: return say("&Bench");
        case Place::cupboard: return say("&Cupboard");
        case Place::stall: return say("&Stall");
        case Place::verdict: return say("&Verdict");
        case Place::books: return say("Boo&ks");
    }
    return {};
}

wxMenu* go_menu() {
    auto* menu = new wxMenu;
    for (std::size_t i = 0; i < kPlaces.size(); ++i) {
        add(*menu, kFirstPlace + static_cast<int>(i), place_label(kPlaces[i]), fmt::format("Ctrl+{}", i + 1));
    }
    menu->AppendSeparator();
    add(*menu, kNextPart, say("&Next part of the window"), "F6");
    add(*menu, wxID_FIND, say("Find &in this place"), "Ctrl+F");
    add(*menu, kFigures, say("&Figures of the picture as a list"), "Ctrl+G");
    add(*menu, kBackToRecords, say("Back to the &records"), "Ctrl+B");
    return menu;
}

wxMenu* edit_menu() {
    auto* menu = new wxMenu;
    add(*menu, wxID_UNDO, say("&Undo"), "Ctrl+Z");
    add(*menu, wxID_REDO, say("&Redo"), "Ctrl+Shift+Z");
    return menu;
}

wxMenu* record_menu() {
    auto* menu = new wxMenu;
    add(*menu, kNewHere, say("&New here"), "Ctrl+N");
    add(*menu, kNoteThis, say("A note on what is &selected"), "Ctrl+M");
    add(*menu, kJot, say("&Jot something down"), "Ctrl+J");
    add(*menu, kNoteTime, say("&Time that belongs to nothing else"), "Ctrl+T");
    add(*menu, kAtThePan, say("&Work a vat at the pan"), "F11");
    add(*menu, kNoteLoss, say("Something &lost"), "Ctrl+L");
    return menu;
}

wxMenu* help_menu() {
    auto* menu = new wxMenu;
    add(*menu, kKeys, say("&Keys"), "F1");
    add(*menu, kAbout, say("&About this program"), "");
    return menu;
}

}  // namespace

std::optional<int> command_of(int key, int modifiers) {
    if (modifiers != wxMOD_CONTROL) return std::nullopt;
    switch (key) {
        case 'N': return kNewHere;
        case 'M': return kNoteThis;
        case 'J': return kJot;
        case 'T': return kNoteTime;
        case 'L': return kNoteLoss;
        case 'F': return wxID_FIND;
        case 'P': return kPrintPage;
        default: return std::nullopt;
    }
}

std::vector<int> recording_commands() {
    return {wxID_UNDO, wxID_REDO, kNewHere, kNoteThis, kJot, kNoteTime, kAtThePan, kNoteLoss};
}

std::string write_anyway_label() {
    return say("Open for &writing anyway");
}

wxMenuBar* make_menus(wxFileHistory& recent) {
    auto* bar = new wxMenuBar;
    bar->Append(file_menu(recent), shown(say("&File")));
    bar->Append(edit_menu(), shown(say("&Edit")));
    bar->Append(record_menu(), shown(say("&Record")));
    bar->Append(go_menu(), shown(say("&Go")));
    bar->Append(help_menu(), shown(say("&Help")));
    return bar;
}

}  // namespace dyestead::gui
