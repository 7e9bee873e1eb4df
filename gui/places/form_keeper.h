// form_keeper.h - a place's form while it is open: what is typed is kept as a draft, Esc goes back and loses nothing,
// Ctrl+Enter keeps it.
#pragma once

#include <wx/timer.h>
#include <functional>
#include <string>

#include "gui/places/page.h"

class wxKeyEvent;

namespace dyestead::gui {

class FormPanel;

class FormKeeper {
public:
    // `closed`: the form is gone, the place shows what it showed before.
    FormKeeper(FormPanel& panel, Host& host, std::function<void()> closed);
    ~FormKeeper();

    // `letters`: those that go with Alt already.
    void begin(Form&& form, const std::string& letters);
    // Esc and Ctrl+Enter, while a form is open; false for any other key.
    bool takes(const wxKeyEvent& event);

private:
    void keep();
    void keep_draft();
    void forget_draft();
    void close();

    FormPanel& panel_;
    Host& host_;
    std::function<void()> closed_;
    wxTimer draft_timer_;
};

}  // namespace dyestead::gui
