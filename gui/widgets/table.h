// table.h - a table of any length: native rows that a screen reader can read, sorted by a click on a heading, numbers
// to the right. Shows a reports::Table, the same that goes on paper. Not edited in place.
#pragma once

#include <wx/dataview.h>
#include <array>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "gui/widgets/roomy.h"
#include "reports/document.h"

namespace dyestead::gui {

class TableModel;

enum class Sorting { as_given, by_heading };

class Table : public Roomy<wxDataViewCtrl> {
public:
    Table(wxWindow* parent, const std::string& accessible_name, Sorting sorting);

    // The row selected before stays selected.
    void show(reports::Table table);

    // Places in the rows as they were handed to show().
    std::optional<std::size_t> selected() const;
    void select(std::size_t row);

    // Called after a person or select() has chosen another row.
    std::function<void()> on_select;

    // The height that shows every row without scrolling.
    int full_height() const;
    // The width that shows every column whole, its heading over two lines.
    int full_width() const;

private:
    void set_columns();
    void fit(int width);
    void sort_by(wxDataViewEvent& event);

    wxObjectDataPtr<TableModel> model_;
    Sorting sorting_;
    // Of each column: the width its texts ask for; what a list shows of it, or leaves it out; the least that leaves
    // words readable; and the least of all, which shows its figures under a heading cut short.
    struct Width {
        wxString heading;
        int natural = 0;
        int readable = 0;
        int least = 0;
        int tightest = 0;
    };
    static int wanted(const std::vector<Width>& widths);
    std::vector<bool> seen(std::vector<Width>& widths, int there) const;
    void set_widths(std::vector<Width> widths, int there);

    std::array<std::vector<Width>, 3> widths_{};  // with headings over one line, two and three, where that is narrower
    int fitted_ = 0;
};

}  // namespace dyestead::gui
