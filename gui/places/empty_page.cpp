#include "gui/places/empty_page.h"

#include <wx/button.h>
#include <wx/sizer.h>

#include "gui/guarded.h"
#include "gui/models/places.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

EmptyPage::EmptyPage(wxWindow* parent, std::function<void()> open, std::function<void()> begin)
    : wxPanel(parent, wxID_ANY) {
    reason_ = new WrappedText(this, TextSize::heading);
    advice_ = new WrappedText(this, TextSize::plain);
    open_ = new wxButton(this, wxID_ANY, shown(reports::say("&Open a shop file...")));
    open_->Bind(wxEVT_BUTTON, [open = std::move(open)](wxCommandEvent&) { guarded("opening a shop file", open); });

    auto* begin_button = new wxButton(this, wxID_ANY, shown(reports::say("&Begin a new shop...")));
    begin_button->Bind(
        wxEVT_BUTTON, [begin = std::move(begin)](wxCommandEvent&) { guarded("beginning a new shop", begin); });

    backup_ = new wxButton(this, wxID_ANY, wxString{});
    backup_->Hide();
    backup_->Bind(wxEVT_BUTTON,
                  [this](wxCommandEvent&) { CallAfter([open = open_backup_] { guarded("opening a backup", open); }); });

    auto* column = new wxBoxSizer(wxVERTICAL);
    column->AddSpacer(FromDIP(kEdge));
    column->Add(reason_, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kApart)));
    column->Add(advice_, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kEdge)));
    column->Add(backup_, wxSizerFlags{}.Border(wxBOTTOM, FromDIP(kApart)));
    auto* buttons = new wxBoxSizer(wxHORIZONTAL);
    buttons->Add(open_, wxSizerFlags{}.Border(wxRIGHT, FromDIP(kApart)));
    buttons->Add(begin_button, wxSizerFlags{});
    column->Add(buttons, wxSizerFlags{});
    auto* edge = new wxBoxSizer(wxVERTICAL);
    edge->Add(column, wxSizerFlags{1}.Expand().Border(wxALL, FromDIP(kEdge)));
    SetSizer(edge);
}

void EmptyPage::say(const std::string& reason) {
    reason_->say(reason.empty() ? nothing_open() : reason);
    advice_->say(how_to_open());
    Layout();
}

void EmptyPage::offer_backup(const std::string& words, std::function<void()> open) {
    open_backup_ = std::move(open);
    backup_->SetLabel(shown(words));
    backup_->Show(!words.empty());
    Layout();
}

void EmptyPage::focus_button() {
    (backup_->IsShown() ? backup_ : open_)->SetFocus();
}

}  // namespace dyestead::gui
