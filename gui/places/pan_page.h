// pan_page.h - a vat worked live, over the whole window and in letters to be read from a step away: one key keeps a
// step.
#pragma once

#include <wx/panel.h>
#include <functional>
#include <string>

#include "gui/models/vat/at_the_pan.h"

class wxButton;
class wxTextCtrl;

namespace dyestead::gui {

class WrappedText;

class PanPage : public wxPanel {
public:
    // What a key or a button does. Letters are keys for wet hands: no Ctrl, no Alt.
    struct Acts {
        std::function<void()> done;           // Space
        std::function<void()> stop_or_go_on;  // S
        std::function<void()> once_more;      // M
        std::function<void()> correct;        // B
        std::function<void()> leave;          // Esc
        std::function<void(const std::string& temperature, const std::string& acidity)> read;
    };
    PanPage(wxWindow* parent, Acts acts);

    void show(const PanShown& what, const std::string& temperature, const std::string& acidity);
    void focus_first();

private:
    bool takes(const wxKeyEvent& event);
    void not_measured();
    wxButton* button(const std::string& label, const std::function<void()>& act);

    Acts acts_;
    WrappedText* title_;
    WrappedText* step_;
    WrappedText* target_;
    WrappedText* caution_;
    WrappedText* clock_;
    WrappedText* standing_;
    WrappedText* trouble_;
    wxTextCtrl* temperature_;
    wxTextCtrl* acidity_;
    wxButton* done_;
    wxButton* stop_;
    wxButton* once_more_;
};

}  // namespace dyestead::gui
