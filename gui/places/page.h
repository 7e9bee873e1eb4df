// page.h - what every place offers the frame: it shows the books it is given, and says in one sentence how things
// stand.
#pragma once

#include <wx/panel.h>
#include <string>
#include <vector>

#include "gui/models/books.h"

namespace dyestead::gui {

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
    // Ctrl+F, and Ctrl+G: the figures of the picture as a list, and back. Places without either stay still.
    virtual void find() {}
    virtual void show_figures() {}

protected:
    void lay_out() {
        Layout();
        Layout();
    }
};

}  // namespace dyestead::gui
