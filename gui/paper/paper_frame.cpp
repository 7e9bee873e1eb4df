#include "gui/paper/paper_frame.h"

#include <wx/button.h>
#include <wx/display.h>
#include <wx/panel.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <algorithm>

#include "gui/guarded.h"
#include "gui/paper/page_view.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"
#include "reports/write/labels.h"

namespace dyestead::gui {

using reports::say;

namespace {

const wxSize kFirstSize{760, 820};

}  // namespace

PaperFrame::PaperFrame(wxWindow* parent, const reports::Document& document, Done print, Done save)
    : wxFrame(parent, wxID_ANY, shown(document.title), wxDefaultPosition, wxDefaultSize,
              wxDEFAULT_FRAME_STYLE | wxFRAME_FLOAT_ON_PARENT, "dyestead_paper"),
      pages_{document},
      print_{std::move(print)},
      save_{std::move(save)} {
    build();
    const wxRect screen = wxDisplay(this).GetClientArea();
    SetSize(std::min(FromDIP(kFirstSize.x), screen.width), std::min(FromDIP(kFirstSize.y), screen.height));
    turn_to(0);
    Layout();
    printing_->SetFocus();
}

void PaperFrame::build() {
    auto* all = new wxPanel(this);
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    const auto button = [&](const std::string& label, std::string_view what, auto act) {
        auto* made = new wxButton(all, wxID_ANY, shown(label));
        made->Bind(wxEVT_BUTTON, [what, act](wxCommandEvent&) { guarded(what, act); });
        row->Add(made, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, FromDIP(kNear)));
        return made;
    };
    printing_ = button(say("&Print..."), "printing", [this] { tell(print_(this, pages_.document())); });
    button(say("&Save the page as..."), "saving a page", [this] { tell(save_(this, pages_.document())); });
    before_ = button(say("Page &before"), "turning the page", [this] { turn_to(page_ - 1); });
    after_ = button(say("Page &after"), "turning the page", [this] { turn_to(page_ + 1); });
    button(say("&Close"), "closing", [this] { Close(); });
    which_ = new wxStaticText(all, wxID_ANY, wxString{});
    row->Add(which_, wxSizerFlags{}.CentreVertical().Border(wxLEFT, FromDIP(kNear)));
    told_ = new WrappedText(all, TextSize::plain);
    view_ = new PageView(all, pages_);

    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(row, wxSizerFlags{}.Border(wxALL, FromDIP(kApart)));
    column->Add(told_, wxSizerFlags{}.Expand().Border(wxLEFT | wxRIGHT, FromDIP(kApart)));
    column->Add(view_, wxSizerFlags{1}.Expand());
    all->SetSizer(column);
    auto* whole = new wxBoxSizer(wxVERTICAL);
    whole->Add(all, wxSizerFlags{1}.Expand());
    SetSizer(whole);
    Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) { guarded("a key", [&] { take_key(event); }); });
}

void PaperFrame::turn_to(std::size_t page) {
    if (page >= pages_.count()) return;
    page_ = page;
    view_->show(page);
    // A button that has the keyboard keeps it only while it can be pressed.
    if (page == 0 && before_->HasFocus()) after_->SetFocus();
    if (page + 1 == pages_.count() && after_->HasFocus()) (page == 0 ? printing_ : before_)->SetFocus();
    before_->Enable(page > 0);
    after_->Enable(page + 1 < pages_.count());
    which_->SetLabel(shown(reports::page_of(page + 1, pages_.count())));
    which_->GetParent()->Layout();
}

void PaperFrame::take_key(wxKeyEvent& event) {
    switch (event.GetKeyCode()) {
        case WXK_ESCAPE: Close(); break;
        case WXK_PAGEUP: turn_to(page_ - 1); break;  // from the first page on there is none before
        case WXK_PAGEDOWN: turn_to(page_ + 1); break;
        default: event.Skip();
    }
}

void PaperFrame::tell(const std::string& sentence) {
    told_->say(sentence);
    told_->GetParent()->Layout();
    told_->GetParent()->Layout();
}

}  // namespace dyestead::gui
