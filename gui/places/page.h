// page.h - what every place offers the frame: it shows the books it is given, and says in one sentence how things
// stand.
#pragma once

#include <wx/panel.h>
#include <string>
#include <vector>

#include "gui/models/form/form.h"
#include "gui/models/places.h"
#include "gui/widgets/text_scale.h"
#include "reports/document.h"

namespace dyestead::gui {

// What a place asks of the window it stands in.
class Host {
public:
    virtual ~Host() = default;
    virtual Writing writing() = 0;
    // Saves the entry and says what it means; false when it could not be saved, and then why is said.
    virtual bool keep(const Kept& kept) = 0;
    virtual void say(std::string_view sentence) = 0;
    // Whether anything can be kept at all: the file may be there only to be looked at. The second says why not.
    virtual bool can_record() const = 0;
    virtual bool may_record() = 0;
    virtual void go_to(Place place) = 0;
    // And there to the record's line.
    virtual void go_to(Place place, FactRef record) = 0;
    // Whether some place has a form for the record; going there with it open.
    virtual bool can_correct(FactRef record) = 0;
    virtual void correct(FactRef record) = 0;
    // A vat worked live, over the whole window, and back: the one selected if it stands, else the one begun first.
    virtual void work_at_the_pan(std::optional<FactRef> selected) = 0;
    // How it will look on paper, with the ways to print it.
    virtual void show_paper(const reports::Document& document) = 0;
    // What stands in a form that is not yet kept, by the form's code; without fields there is none.
    virtual void keep_draft(const std::string& form, std::vector<std::pair<std::string, std::string>> fields) = 0;
    virtual std::vector<std::pair<std::string, std::string>> draft_of(const std::string& form) = 0;
};

class Page : public wxPanel {
public:
    explicit Page(wxWindow* parent) : wxPanel(parent, wxID_ANY) {
        // What wraps learns its width in the first layout and gets its height in the second.
        Bind(wxEVT_SIZE, [this](wxSizeEvent&) { lay_out(); });
    }

    // The books stay valid until the next call.
    virtual void show(const Books& books) = 0;
    // How things stand here, for the heading.
    virtual std::string state() const = 0;
    // What F6 walks through, in order; the keyboard goes to the first when the place is entered from the list.
    virtual std::vector<wxWindow*> parts() = 0;
    // What is selected in its list.
    virtual std::optional<FactRef> selected() const { return std::nullopt; }
    // Shows the line of the record, in whichever list it stands. Places without lines stay still.
    virtual void select(FactRef /*record*/) {}
    // Ctrl+F, and Ctrl+G: the figures of the picture as a list, and back. Places without either stay still.
    virtual void find() {}
    virtual void show_figures() {}
    // Ctrl+N: a new record of the kind the place is for.
    virtual void begin_new() {}
    // Whether there is a form here that corrects the record, and that form, opened.
    virtual bool can_correct(FactRef /*record*/) const { return false; }
    virtual void correct(FactRef /*record*/) {}
    // Ctrl+M: a note on the selected line. Places without lines stay still.
    virtual void note_selected() {}
    // Opens a form here. Places without forms stay still.
    virtual void begin(Form&& /*form*/) {}
    // What is shown, as it goes on paper; nothing where there is no page.
    virtual std::optional<reports::Document> paper() const { return std::nullopt; }
    // How many things here want doing; beside the place's name.
    virtual std::size_t waiting(const Books& /*books*/) const { return 0; }

protected:
    // Whether there is too little width for two columns of which the first is a table of six.
    bool narrow() const { return GetSize().x < for_text(*this, kTwoColumns); }
    // Puts the parts where the room they now have asks for. Places that stand alike at every width stay still.
    virtual void arrange() {}
    void lay_out() {
        if (GetSize().x < FromDIP(kNoRoom)) return;  // not on the screen yet: GTK complains of rooms below nought
        arrange();
        Layout();
        Layout();
    }

private:
    static constexpr int kTwoColumns = 980;
    static constexpr int kNoRoom = 100;
};

}  // namespace dyestead::gui
