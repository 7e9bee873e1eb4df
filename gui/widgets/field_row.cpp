#include "gui/widgets/field_row.h"

#include <wx/checkbox.h>
#include <wx/choice.h>
#include <wx/combobox.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <algorithm>

#include "gui/desktop/desktop.h"
#include "gui/guarded.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"

namespace dyestead::gui {

namespace {

constexpr int kLeastControl = 80;

int place_of(const std::vector<Choice>& choices, const std::string& code) {
    const auto found = std::ranges::find(choices, code, &Choice::code);
    return found == choices.end() ? wxNOT_FOUND : static_cast<int>(found - choices.begin());
}

}  // namespace

FieldRow::FieldRow(wxWindow* parent, wxSizer& grid, const FormField& field, bool letters) : entry_{field.entry} {
    const std::string label = letters ? field.label : plain_label(field.label);
    const auto typed_now = [this](wxCommandEvent&) {
        guarded("reading what was typed", [this] {
            if (!quiet_ && on_typed) on_typed();
        });
    };
    const auto entered = [this](wxCommandEvent&) {
        guarded("going on from a field", [this] {
            if (on_enter) on_enter();
        });
    };
    const auto named = [&] {
        auto* name = new wxStaticText(parent, wxID_ANY, shown(label));
        grid.Add(name, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, parent->FromDIP(kNear)));
    };
    switch (field.entry) {
        case Entry::line: {
            named();
            auto* line =
                new wxTextCtrl(parent, wxID_ANY, wxString{}, wxDefaultPosition, wxDefaultSize, wxTE_PROCESS_ENTER);
            line->Bind(wxEVT_TEXT, typed_now);
            line->Bind(wxEVT_TEXT_ENTER, entered);
            control_ = line;
            break;
        }
        case Entry::choice: {
            named();
            auto* choice = new wxChoice(parent, wxID_ANY);
            choice->Bind(wxEVT_CHOICE, typed_now);
            control_ = choice;
            break;
        }
        case Entry::name: {
            named();
            auto* combo = new wxComboBox(parent, wxID_ANY, wxString{}, wxDefaultPosition, wxDefaultSize, 0, nullptr,
                                         wxCB_DROPDOWN | wxTE_PROCESS_ENTER);
            combo->Bind(wxEVT_TEXT, typed_now);
            combo->Bind(wxEVT_COMBOBOX, typed_now);
            combo->Bind(wxEVT_TEXT_ENTER, entered);
            skip_arrow(*combo);
            control_ = combo;
            break;
        }
        case Entry::tick: {
            grid.AddSpacer(0);
            auto* tick = new wxCheckBox(parent, wxID_ANY, shown(label));
            tick->Bind(wxEVT_CHECKBOX, typed_now);
            control_ = tick;
            break;
        }
    }
    control_->SetMinSize(parent->FromDIP(wxSize{kLeastControl, -1}));
    if (!field.help.empty()) control_->SetToolTip(shown(field.help));
    grid.Add(control_, wxSizerFlags{1}.Expand());
    grid.AddSpacer(0);
    note_ = new WrappedText(parent, TextSize::small);
    grid.Add(note_, wxSizerFlags{1}.Expand().Border(wxBOTTOM, parent->FromDIP(2)));
    put(field);
    remark(field);
}

void FieldRow::fill_choices(const FormField& field) {
    const auto same = [](const Choice& a, const Choice& b) { return a.code == b.code && a.shown == b.shown; };
    if (std::ranges::equal(choices_, field.choices, same)) return;
    choices_ = field.choices;
    wxArrayString names;
    for (const Choice& choice : choices_) names.Add(shown(choice.shown));
    if (auto* choice = dynamic_cast<wxChoice*>(control_)) choice->Set(names);
    if (auto* combo = dynamic_cast<wxComboBox*>(control_)) {
        const wxString kept = combo->GetValue();
        combo->Set(names);
        combo->ChangeValue(kept);
    }
}

std::string FieldRow::text() const {
    switch (entry_) {
        case Entry::line: return typed(static_cast<wxTextCtrl*>(control_)->GetValue());
        case Entry::choice: {
            const int at = static_cast<wxChoice*>(control_)->GetSelection();
            return at == wxNOT_FOUND ? std::string{} : choices_[static_cast<std::size_t>(at)].code;
        }
        case Entry::name: {
            const std::string name = typed(static_cast<wxComboBox*>(control_)->GetValue());
            const auto found = std::ranges::find(choices_, name, &Choice::shown);
            return found == choices_.end() ? name : found->code;
        }
        case Entry::tick: return static_cast<wxCheckBox*>(control_)->GetValue() ? std::string{kYes} : std::string{};
    }
    return {};
}

void FieldRow::put(const FormField& field) {
    quiet_ = true;
    fill_choices(field);
    // Nothing chosen and the choice that stands for blank read the same, but do not look the same.
    auto* list = dynamic_cast<wxChoice*>(control_);
    const bool none_chosen = list != nullptr && list->GetSelection() == wxNOT_FOUND;
    if (text() != field.text || none_chosen) {
        switch (entry_) {
            case Entry::line: static_cast<wxTextCtrl*>(control_)->ChangeValue(shown(field.text)); break;
            case Entry::choice: static_cast<wxChoice*>(control_)->SetSelection(place_of(choices_, field.text)); break;
            case Entry::name: {
                const int at = place_of(choices_, field.text);
                const std::string name = at == wxNOT_FOUND ? field.text : choices_[static_cast<std::size_t>(at)].shown;
                static_cast<wxComboBox*>(control_)->ChangeValue(shown(name));
                break;
            }
            case Entry::tick: static_cast<wxCheckBox*>(control_)->SetValue(field.text == kYes); break;
        }
    }
    quiet_ = false;
}

bool FieldRow::remark(const FormField& field) {
    if (!field.trouble.empty()) return note_->say(field.trouble);
    if (!field.understood.empty() && field.understood != field.text) return note_->say(field.understood);
    return note_->say(field.origin);
}

void FieldRow::focus() {
    control_->SetFocus();
}

}  // namespace dyestead::gui
