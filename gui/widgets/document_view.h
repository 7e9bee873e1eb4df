// document_view.h - shows a report on the screen: the same blocks that go on paper, as native texts and tables.
#pragma once

#include <wx/scrolwin.h>
#include <vector>

#include "reports/document.h"

namespace dyestead::gui {

class Table;

class DocumentView : public wxScrolledWindow {
public:
    explicit DocumentView(wxWindow* parent);

    void show(const reports::Document& document);
    void clear();

private:
    void add(wxSizer& column, const reports::Block& block);
    void add_labels(wxSizer& column, const reports::Table& table);
    void lay_out();

    std::vector<Table*> tables_;
};

}  // namespace dyestead::gui
