#include "gui/places/pan_page.h"

#include <wx/button.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <wx/wrapsizer.h>
#include <array>

#include "gui/desktop/desktop.h"
#include "gui/guarded.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/text.h"
#include "gui/widgets/text_scale.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

constexpr float kFromAStepAway = 1.6F;
constexpr int kReadingWidth = 110;

WrappedText* text_in(wxWindow* parent, TextSize size) {
    auto* text = new WrappedText(parent, size);
    text->SetFont(text->GetFont().Scaled(kFromAStepAway));
    return text;
}

}  // namespace

PanPage::PanPage(wxWindow* parent, Acts acts) : wxPanel(parent, wxID_ANY), acts_{std::move(acts)} {
    title_ = text_in(this, TextSize::plain);
    step_ = text_in(this, TextSize::headline);
    target_ = text_in(this, TextSize::plain);
    caution_ = text_in(this, TextSize::plain);
    clock_ = text_in(this, TextSize::heading);
    standing_ = text_in(this, TextSize::plain);
    trouble_ = text_in(this, TextSize::plain);

    auto* readings = new wxBoxSizer(wxHORIZONTAL);
    const auto reading = [&](const std::string& label, const std::string& name) {
        auto* words = new wxStaticText(this, wxID_ANY, shown(label));
        auto* field =
            new wxTextCtrl(this, wxID_ANY, wxString{}, wxDefaultPosition, wxSize{for_text(*this, kReadingWidth), -1});
        words->SetFont(words->GetFont().Scaled(kFromAStepAway));
        field->SetFont(field->GetFont().Scaled(kFromAStepAway));
        set_accessible_name(*field, name);
        readings->Add(words, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, FromDIP(kNear)));
        readings->Add(field, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, FromDIP(kEdge)));
        field->Bind(wxEVT_TEXT, [this](wxCommandEvent&) {
            guarded("a reading", [this] { acts_.read(typed(temperature_->GetValue()), typed(acidity_->GetValue())); });
        });
        return field;
    };
    temperature_ = reading(say("&Temperature, °C"), say("Temperature, °C"));
    acidity_ = reading(say("&pH"), say("pH"));

    auto* buttons = new wxWrapSizer(wxHORIZONTAL);
    const auto add = [&](wxButton* made) {
        made->SetFont(made->GetFont().Scaled(kFromAStepAway));
        buttons->Add(made, wxSizerFlags{}.Border(wxRIGHT | wxBOTTOM, FromDIP(kNear)));
        return made;
    };
    done_ = add(button(say("Done (Space)"), acts_.done));
    stop_ = add(button(say("Stop the clock (S)"), acts_.stop_or_go_on));
    add(button(say("Not measured (-)"), [this] { not_measured(); }));
    once_more_ = add(button(say("The step before once more (M)"), acts_.once_more));
    add(button(say("Correct the steps (B)"), acts_.correct));
    add(button(say("Leave, the clock runs on (Esc)"), acts_.leave));

    auto* column = new wxBoxSizer(wxVERTICAL);
    for (WrappedText* each : {title_, step_, target_, caution_})
        column->Add(each, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kApart)));
    column->AddStretchSpacer();
    for (WrappedText* each : {clock_, standing_, trouble_})
        column->Add(each, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kNear)));
    column->Add(readings, wxSizerFlags{}.Border(wxTOP | wxBOTTOM, FromDIP(kApart)));
    column->Add(buttons, wxSizerFlags{}.Expand());
    auto* edge = new wxBoxSizer(wxVERTICAL);
    edge->Add(column, wxSizerFlags{1}.Expand().Border(wxALL, FromDIP(kEdge)));
    SetSizer(edge);

    Bind(wxEVT_SIZE, [this](wxSizeEvent&) {
        Layout();
        Layout();
    });
    Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
        bool taken = false;
        guarded("a key", [&] { taken = takes(event); });
        if (!taken) event.Skip();
    });
}

wxButton* PanPage::button(const std::string& label, const std::function<void()>& act) {
    auto* made = new wxButton(this, wxID_ANY, shown(label));
    made->Bind(wxEVT_BUTTON, [act](wxCommandEvent&) { guarded("a step at the pan", act); });
    return made;
}

// A button that has the keyboard keeps its Space; in a reading no letter is ever typed.
bool PanPage::takes(const wxKeyEvent& event) {
    if (event.GetModifiers() != wxMOD_NONE) return false;
    const wxWindow* focused = FindFocus();
    const bool in_a_reading = focused == temperature_ || focused == acidity_;
    const bool on_another_button =
        !in_a_reading && focused != done_ && dynamic_cast<const wxButton*>(focused) != nullptr;
    switch (event.GetKeyCode()) {
        case WXK_SPACE:
            if (on_another_button) return false;
            acts_.done();
            return true;
        case 'S': acts_.stop_or_go_on(); return true;
        case 'M':
            if (once_more_->IsShown()) acts_.once_more();
            return true;
        case 'B': acts_.correct(); return true;
        case '-':
        case WXK_NUMPAD_SUBTRACT:
            if (in_a_reading) return false;
            not_measured();
            return true;
        case WXK_ESCAPE: acts_.leave(); return true;
        default: return false;
    }
}

void PanPage::not_measured() {
    acts_.read("-", "-");
}

void PanPage::show(const PanShown& what, const std::string& temperature, const std::string& acidity) {
    bool other = title_->say(what.title);
    const std::array<std::pair<WrappedText*, const std::string*>, 6> texts{{{step_, &what.step},
                                                                            {target_, &what.target},
                                                                            {caution_, &what.caution},
                                                                            {clock_, &what.clock},
                                                                            {standing_, &what.standing},
                                                                            {trouble_, &what.trouble}}};
    for (const auto& [text, sentence] : texts) {
        other = text->say(*sentence) || other;
        text->Show(!sentence->empty());
    }
    if (typed(temperature_->GetValue()) != temperature) temperature_->ChangeValue(shown(temperature));
    if (typed(acidity_->GetValue()) != acidity) acidity_->ChangeValue(shown(acidity));
    const std::string stop = what.running ? say("Stop the clock (S)") : say("Let the clock run on (S)");
    if (typed(stop_->GetLabel()) != stop) stop_->SetLabel(shown(stop));
    done_->Enable(what.can_be_done);
    stop_->Enable(what.can_be_done);
    temperature_->Enable(what.can_be_done);
    acidity_->Enable(what.can_be_done);
    if (once_more_->IsShown() != what.can_be_repeated) {
        once_more_->Show(what.can_be_repeated);
        other = true;
    }
    if (other) {
        Layout();
        Layout();
    }
}

void PanPage::focus_first() {
    done_->SetFocus();
}

}  // namespace dyestead::gui
