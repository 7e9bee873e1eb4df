// table_model.h - the rows of a table in the order they are shown. Virtual: only what is on the screen is asked for.
#pragma once

#include <wx/dataview.h>
#include <vector>

#include "reports/document.h"

namespace dyestead::gui {

class TableModel : public wxDataViewVirtualListModel {
public:
    void show(reports::Table table);
    const reports::Table& table() const { return table_; }

    // By the number behind a cell where there is one, else by its text; a total stays at the end.
    void sort_by(unsigned column, bool ascending);

    std::size_t row_at(unsigned shown_row) const { return order_[shown_row]; }
    unsigned shown_row_of(std::size_t row) const;
    unsigned rows() const { return static_cast<unsigned>(order_.size()); }

    void GetValueByRow(wxVariant& value, unsigned row, unsigned column) const override;
    bool GetAttrByRow(unsigned row, unsigned column, wxDataViewItemAttr& attributes) const override;
    bool SetValueByRow(const wxVariant& value, unsigned row, unsigned column) override;

private:
    reports::Table table_;
    std::vector<std::size_t> order_;
};

}  // namespace dyestead::gui
