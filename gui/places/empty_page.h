// empty_page.h - what stands in the window while no shop is open: why, and what to do next.
#pragma once

#include <wx/panel.h>
#include <functional>
#include <string>

class wxButton;

namespace dyestead::gui {

class WrappedText;

class EmptyPage : public wxPanel {
public:
    EmptyPage(wxWindow* parent, std::function<void()> open, std::function<void()> begin);

    // `reason`: why the file that was asked for is not shown; blank when none was asked for.
    void say(const std::string& reason);
    // A third way on, under the words given: the backup of the file that cannot be read. Without words there is none.
    void offer_backup(const std::string& words, std::function<void()> open);
    void focus_button();

private:
    WrappedText* reason_;
    WrappedText* advice_;
    wxButton* open_;
    wxButton* backup_;
    std::function<void()> open_backup_;
};

}  // namespace dyestead::gui
