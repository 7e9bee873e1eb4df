// lines_part.h - the lines of a form on the screen: the list of those there are, and below it the one being written.
// Enter in its last field adds it and clears the fields for the next.
#pragma once

#include <wx/panel.h>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "gui/models/form/form.h"
#include "gui/widgets/field_row.h"

class wxButton;
class wxSizer;

namespace dyestead::gui {

class Table;
class WrappedText;

class LinesPart {
public:
    LinesPart(wxWindow* parent, wxSizer& column, const FormLines& lines);

    // What the form has now.
    void show(const FormLines& lines);
    // The rows as they are to be; called when a line was added, changed or taken away.
    std::function<void(std::vector<std::vector<std::string>>)> on_change;
    // True when something is typed that is not yet in a line; then it is added as if by the button.
    void add_what_is_typed();
    wxWindow* list() const;

private:
    void put_line();
    void take_away();
    void choose(std::size_t row);
    void tell();
    void clear();
    std::vector<std::string> typed_line() const;
    std::size_t field_of_focus() const;

    wxWindow* parent_;
    FormLines lines_;
    Table* list_;
    WrappedText* told_ = nullptr;
    std::vector<std::unique_ptr<FieldRow>> fields_;
    wxButton* put_;
    wxButton* take_;
    std::optional<std::size_t> chosen_;  // the line that is being changed; none: a new one
};

}  // namespace dyestead::gui
