// cupboard_page.h - the Cupboard: what is in hand, and the lots of what is selected.
#pragma once

#include <optional>

#include "gui/models/cupboard.h"
#include "gui/places/page.h"

class wxTextCtrl;

namespace dyestead::gui {

class Table;
class WrappedText;

class CupboardPage : public Page {
public:
    explicit CupboardPage(wxWindow* parent);

    void show(const Books& books) override;
    std::string state() const override;
    std::vector<wxWindow*> parts() override;
    void find() override;

private:
    void show_list();
    void show_lots();

    std::optional<Books> books_;
    std::vector<Key<Material>> materials_;
    std::optional<Key<Material>> chosen_;

    wxTextCtrl* find_;
    Table* list_;
    WrappedText* which_;
    Table* lots_;
    WrappedText* caution_;
};

}  // namespace dyestead::gui
