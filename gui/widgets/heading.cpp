#include "gui/widgets/heading.h"

#include <wx/dcbuffer.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>

#include "gui/guarded.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/text.h"
#include "gui/widgets/text_scale.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

namespace {

constexpr int kBandWidth = 6;
constexpr int kDayWidth = 150;

// A strip of dyed cloth beside the name: decoration only, it says nothing that words do not say.
wxColour cloth(Place place) {
    switch (place) {
        case Place::today: return {0xb8, 0xa9, 0x8c};     // linen
        case Place::garden: return {0x6f, 0x8f, 0x45};    // leaf
        case Place::vat: return {0x3d, 0x5a, 0x8c};       // indigo
        case Place::bench: return {0xc9, 0x9a, 0x6b};     // soap
        case Place::cupboard: return {0x8a, 0x62, 0x42};  // walnut
        case Place::stall: return {0xb3, 0x4a, 0x3c};     // madder
        case Place::verdict: return {0xcf, 0xa8, 0x2e};   // weld
        case Place::books: return {0x6d, 0x6f, 0x7a};     // iron
    }
    return {};
}

}  // namespace

Heading::Heading(wxWindow* parent) : wxPanel(parent, wxID_ANY) {
    band_ = new wxWindow(this, wxID_ANY, wxDefaultPosition, FromDIP(wxSize{kBandWidth, -1}));
    band_->SetBackgroundStyle(wxBG_STYLE_PAINT);
    band_->Bind(wxEVT_PAINT, [this](wxPaintEvent&) { guarded("painting", [&] { paint_band(*band_); }); });
    name_ = new wxStaticText(this, wxID_ANY, wxString{});
    name_->SetFont(GetFont().Scaled(1.7F).Bold());
    day_ = new wxStaticText(this, wxID_ANY, wxString{});
    writing_for_ = new wxStaticText(this, wxID_ANY, shown(reports::say("Writing for")));
    writing_day_ = new wxTextCtrl(
        this, wxID_ANY, wxString{}, wxDefaultPosition, wxSize{for_text(*this, kDayWidth), -1}, wxTE_PROCESS_ENTER);
    writing_day_->SetToolTip(
        shown(reports::say("The day new records are dated to, until you change it. + is the next day.")));
    writing_day_->Bind(
        wxEVT_TEXT_ENTER, [this](wxCommandEvent&) { guarded("taking another day", [this] { take_day(); }); });
    writing_day_->Bind(wxEVT_KILL_FOCUS, [this](wxFocusEvent& event) {
        event.Skip();
        guarded("taking another day", [this] { take_day(); });
    });
    state_ = new WrappedText(this, TextSize::plain);

    auto* words = new wxBoxSizer(wxVERTICAL);
    auto* top = new wxBoxSizer(wxHORIZONTAL);
    top->Add(name_, wxSizerFlags{}.Bottom());
    top->AddStretchSpacer();
    top->Add(day_, wxSizerFlags{}.CentreVertical());
    top->Add(writing_for_, wxSizerFlags{}.CentreVertical().Border(wxLEFT, FromDIP(kEdge)));
    top->Add(writing_day_, wxSizerFlags{}.CentreVertical().Border(wxLEFT, FromDIP(kNear)));
    words->Add(top, wxSizerFlags{}.Expand());
    words->Add(state_, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(2)));
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(band_, wxSizerFlags{}.Expand());
    row->Add(words, wxSizerFlags{1}.Expand().Border(wxLEFT, FromDIP(kApart)));
    SetSizer(row);
}

void Heading::say(Place place, const std::string& name, const std::string& state, const std::string& day) {
    place_ = place;
    name_->SetLabelText(shown(name));
    state_->say(state);
    day_->SetLabelText(shown(day));
    band_->Refresh();
    Layout();
    Layout();
}

void Heading::show_writing_day(const std::string& day) {
    writing_day_shown_ = day;
    writing_day_->ChangeValue(shown(day));
    writing_for_->Show(!day.empty());
    writing_day_->Show(!day.empty());
    Layout();
}

void Heading::take_day() {
    const std::string now = typed(writing_day_->GetValue());
    if (now == writing_day_shown_ || !on_writing_day) return;
    on_writing_day(now);
}

void Heading::paint_band(wxWindow& band) {
    wxAutoBufferedPaintDC canvas(&band);
    canvas.SetBackground(wxBrush{cloth(place_)});
    canvas.Clear();
}

}  // namespace dyestead::gui
