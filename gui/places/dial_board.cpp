#include "gui/places/dial_board.h"

#include <wx/sizer.h>
#include <wx/slider.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <algorithm>
#include <cmath>

#include "gui/desktop/desktop.h"
#include "gui/guarded.h"
#include "gui/models/typed_number.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/text.h"
#include "gui/widgets/text_scale.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

namespace {

constexpr int kFieldWidth = 78;
constexpr int kSliderWidth = 60;

int steps_of(const Dial& dial) {
    return std::max(1, static_cast<int>(std::lround((dial.high - dial.low) / dial.step)));
}

int place_of(const Dial& dial) {
    return std::clamp(static_cast<int>(std::lround((dial.value - dial.low) / dial.step)), 0, steps_of(dial));
}

std::string without_ampersand(std::string label) {
    std::erase(label, '&');
    return label;
}

}  // namespace

DialBoard::DialBoard(wxWindow* parent) : wxPanel(parent, wxID_ANY) {}

void DialBoard::build(const std::vector<Dial>& dials) {
    auto* grid = new wxFlexGridSizer(4, FromDIP(wxSize{kNear, 1}));
    grid->AddGrowableCol(3);
    rows_.reserve(dials.size());
    for (const Dial& dial : dials) {
        Row& row = rows_.emplace_back();
        // The label right before its field: so it becomes what a screen reader calls it.
        row.label = new wxStaticText(this, wxID_ANY, shown(dial.label));
        row.field = new wxTextCtrl(
            this, wxID_ANY, wxString{}, wxDefaultPosition, wxSize{for_text(*this, kFieldWidth), -1}, wxTE_RIGHT);
        row.unit = new wxStaticText(this, wxID_ANY, shown(dial.unit));
        row.slider = new wxSlider(this, wxID_ANY, 0, 0, 100, wxDefaultPosition, FromDIP(wxSize{kSliderWidth, -1}));
        set_accessible_name(
            *row.slider, reports::say("{dial}, slider", reports::arg("dial", without_ampersand(dial.label))));
        row.mistake = new WrappedText(this, TextSize::small);
        row.mistake->Hide();
        auto* beside = new wxBoxSizer(wxVERTICAL);
        beside->Add(row.slider, wxSizerFlags{}.Expand());
        beside->Add(row.mistake, wxSizerFlags{}.Expand());
        grid->Add(row.label, wxSizerFlags{}.CentreVertical());
        grid->Add(row.field, wxSizerFlags{}.CentreVertical());
        grid->Add(row.unit, wxSizerFlags{}.CentreVertical());
        grid->Add(beside, wxSizerFlags{1}.Expand().CentreVertical());

        const std::size_t at = rows_.size() - 1;
        row.field->Bind(wxEVT_TEXT, [this, at](wxCommandEvent&) {
            guarded("trying a figure", [&] {
                by_hand_ = true;
                say_mistake(rows_[at], on_type(rows_[at].dial.id, typed(rows_[at].field->GetValue())));
                by_hand_ = false;
            });
        });
        row.field->Bind(wxEVT_KEY_DOWN, [this, at](wxKeyEvent& event) {
            const int steps = event.GetKeyCode() == WXK_UP ? 1 : event.GetKeyCode() == WXK_DOWN ? -1 : 0;
            if (steps == 0) return event.Skip();
            guarded("trying a figure", [&] { step(rows_[at], steps); });
        });
        row.slider->Bind(wxEVT_SLIDER, [this, at](wxCommandEvent& event) {
            guarded("trying a figure", [&] {
                const Dial& turned = rows_[at].dial;
                on_slide(turned.id, turned.low + event.GetInt() * turned.step);
            });
        });
    }
    SetSizer(grid);
}

void DialBoard::show(const std::vector<Dial>& dials) {
    if (rows_.empty()) build(dials);
    for (std::size_t i = 0; i < rows_.size() && i < dials.size(); ++i) show_row(rows_[i], dials[i]);
}

void DialBoard::show_row(Row& row, const Dial& dial) {
    row.dial = dial;
    if (row.unit->GetLabelText() != shown(dial.unit)) row.unit->SetLabelText(shown(dial.unit));
    const int steps = steps_of(dial);
    if (row.slider->GetMax() != steps) row.slider->SetRange(0, steps);
    if (row.slider->GetValue() != place_of(dial)) row.slider->SetValue(place_of(dial));
    if (by_hand_ && row.field->HasFocus()) return;
    const wxString text = shown(to_places(dial.value, dial.places));
    if (row.field->GetValue() != text) row.field->ChangeValue(text);
    say_mistake(row, {});
}

void DialBoard::say_mistake(Row& row, const std::string& mistake) {
    const bool any = !mistake.empty();
    if (!row.mistake->say(mistake) && row.mistake->IsShown() == any) return;
    row.mistake->Show(any);
    row.slider->Show(!any);
    Layout();
    Layout();
}

void DialBoard::step(Row& row, int steps) {
    const Dial dial = row.dial;
    on_slide(dial.id, std::clamp(dial.value + steps * dial.step, dial.low, dial.high));
}

wxWindow* DialBoard::first_field() {
    return rows_.empty() ? nullptr : rows_.front().field;
}

}  // namespace dyestead::gui
