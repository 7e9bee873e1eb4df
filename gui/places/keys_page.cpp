#include "gui/places/keys_page.h"

#include <wx/sizer.h>

#include "gui/widgets/paddings.h"
#include "gui/widgets/table.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

std::string ctrl(const char* letter) {
    return say("Ctrl+{letter}", reports::arg("letter", std::string{letter}));
}

reports::Table keys() {
    reports::Table table{.title = {}, .columns = {{say("key")}, {say("what it does")}}, .rows = {}};
    const auto row = [&](const std::string& key, const std::string& what) {
        table.rows.push_back({reports::Cell{key}, reports::Cell{what}});
    };
    row(say("Ctrl+1 to Ctrl+8"), say("go to a place, in the order of the list"));
    row("F6", say("next part of the window: places, list, fields"));
    row(ctrl("N"), say("a new record of what the place is for"));
    row(say("Ctrl+Enter"), say("keep what is in the form"));
    row("Esc", say("back to the list; what is typed is there again when the form is opened"));
    row(say("Enter in a field"), say("go to the next one; in the last field of a line: add the line"));
    row(ctrl("Z"), say("undo the last entry, whatever it was"));
    row(say("Ctrl+Shift+Z"), say("bring it again"));
    row(ctrl("M"), say("a note, or the name of a photograph or bill, on the selected line"));
    row(ctrl("J"), say("jot something down, from anywhere"));
    row(ctrl("T"), say("note time that belongs to nothing else"));
    row(ctrl("L"), say("note something lost or given away"));
    row("F11", say("work a vat live, over the whole window; then Space keeps a step, S stops the clock, Esc leaves"));
    row(say("+ in the day at the top right"), say("write for the next day"));
    row(ctrl("O"), say("open a shop file"));
    row(say("Ctrl+Shift+N"), say("begin a new shop"));
    row("F5", say("read the shop file again"));
    row(ctrl("F"), say("find in this place"));
    row(ctrl("G"), say("the figures of the picture as a list, and back"));
    row(ctrl("B"), say("back to the records after trying something out"));
    row(ctrl("S"), say("save what is shown as a page, to print, for a browser or a spreadsheet"));
    row(ctrl("P"), say("print what is shown"));
    row(say("Ctrl+Shift+P"), say("look at its pages before they are printed"));
    row(ctrl("Q"), say("close the window"));
    row(say("Alt and the underlined letter"), say("go to a field or press a button"));
    row(say("Up, Down in a field of the verdict"), say("try a little more or a little less"));
    return table;
}

}  // namespace

KeysPage::KeysPage(wxWindow* parent) : wxPanel(parent, wxID_ANY) {
    table_ = new Table(this, say("Keys"), Sorting::as_given);
    table_->show(keys());
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(table_, wxSizerFlags{1}.Expand().Border(wxALL, FromDIP(kEdge)));
    SetSizer(column);
}

}  // namespace dyestead::gui
