// keys_page.h - every key of the window, as a list.
#pragma once

#include <wx/panel.h>

namespace dyestead::gui {

class Table;

class KeysPage : public wxPanel {
public:
    explicit KeysPage(wxWindow* parent);
    Table* table() { return table_; }

private:
    Table* table_;
};

}  // namespace dyestead::gui
