// paper_frame.h - a paper before it is printed: its pages one by one, and the ways to print or save it. A window of its
// own rather than wxWidgets' preview: that one's buttons have no names a screen reader could say, and it draws a
// picture of its own of what is printed.
#pragma once

#include <wx/frame.h>
#include <functional>
#include <string>

#include "reports/write/paper_pages.h"

class wxButton;
class wxStaticText;

namespace dyestead::gui {

class PageView;
class WrappedText;

class PaperFrame : public wxFrame {
public:
    // What is done with the paper says what came of it, or nothing when the person thought better of it.
    using Done = std::function<std::string(wxWindow* parent, const reports::Document& document)>;

    PaperFrame(wxWindow* parent, const reports::Document& document, Done print, Done save);

private:
    void build();
    void turn_to(std::size_t page);
    void take_key(wxKeyEvent& event);
    void tell(const std::string& sentence);

    reports::PaperPages pages_;
    Done print_;
    Done save_;
    std::size_t page_ = 0;
    wxButton* printing_ = nullptr;
    wxButton* before_ = nullptr;
    wxButton* after_ = nullptr;
    wxStaticText* which_ = nullptr;
    WrappedText* told_ = nullptr;
    PageView* view_ = nullptr;
};

}  // namespace dyestead::gui
