// form_panel.h - shows a form: the fields that are needed, the rest behind "More", lines below, what it comes to, and
// the two buttons. Every text typed goes straight to the form, which says what it understood.
#pragma once

#include <wx/scrolwin.h>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "gui/models/form/form.h"
#include "gui/widgets/field_row.h"

class wxCollapsiblePane;
class wxFlexGridSizer;

namespace dyestead::gui {

class LinesPart;
class WrappedText;

class FormPanel : public wxScrolledWindow {
public:
    explicit FormPanel(wxWindow* parent);
    ~FormPanel() override;

    // `writing` is asked for at every keystroke: the books may have moved on meanwhile.
    // `letters`: those that are taken already with Alt.
    void show(Form form, std::function<Writing()> writing, std::string letters);
    void close();
    bool is_open() const { return form_.has_value(); }
    Form& form() { return *form_; }
    // Shows the form's texts and remarks again, after somebody else has changed them; the keyboard goes to the first
    // field with a trouble, when `to_trouble`.
    void look_again(bool to_trouble = false);
    void focus_first();
    // What is typed into a line but not yet added to the form is added: nobody means to lose it.
    void finish_lines();

    std::function<void()> on_keep;
    std::function<void()> on_put_back;
    std::function<void()> on_typed;

private:
    void build();
    void typed_into(std::size_t field);
    void lay_out();
    FieldRow& add_field(wxWindow* parent, wxFlexGridSizer& grid, std::size_t field);

    std::optional<Form> form_;
    std::function<Writing()> writing_;
    std::string letters_;
    std::vector<std::unique_ptr<FieldRow>> rows_;  // one for each field of the form, in its order
    std::vector<std::unique_ptr<LinesPart>> lines_;
    wxCollapsiblePane* more_ = nullptr;
    WrappedText* summary_ = nullptr;
};

}  // namespace dyestead::gui
