// field_row.h - one field of a form on the screen: its label, its control, and what was understood beside it.
#pragma once

#include <wx/panel.h>
#include <functional>
#include <string>

#include "gui/models/form/form.h"

class wxSizer;
class wxStaticText;

namespace dyestead::gui {

class WrappedText;

class FieldRow {
public:
    // Adds label, control and note to `grid`, which has two columns. `letters`: whether the label has its letter for
    // Alt.
    FieldRow(wxWindow* parent, wxSizer& grid, const FormField& field, bool letters);

    // What stands in the control, as FormField::text has it.
    std::string text() const;
    // Puts a text in without `on_typed`.
    void put(const FormField& field);
    // Shows what was understood, what is wrong or where a guess comes from; true when it takes other room than before.
    bool remark(const FormField& field);
    void focus();
    wxWindow* control() const { return control_; }

    std::function<void()> on_typed;
    std::function<void()> on_enter;  // Enter in it

private:
    void fill_choices(const FormField& field);

    Entry entry_;
    std::vector<Choice> choices_;
    wxWindow* control_ = nullptr;
    WrappedText* note_ = nullptr;
    bool quiet_ = false;
};

}  // namespace dyestead::gui
