// vat_page.h - the Vat: every vat with what it gave, how the selected one was worked, and the powder in hand.
#pragma once

#include <optional>

#include "gui/models/vats.h"
#include "gui/places/page.h"

class wxNotebook;

namespace dyestead::gui {

class Table;
class WrappedText;

class VatPage : public Page {
public:
    explicit VatPage(wxWindow* parent);

    void show(const Books& books) override;
    std::string state() const override;
    std::vector<wxWindow*> parts() override;

private:
    void show_steps();

    std::optional<Books> books_;
    std::vector<Key<Vat>> vats_;

    Table* list_;
    wxNotebook* below_;
    Table* powder_;
    WrappedText* which_;
    Table* steps_;
};

}  // namespace dyestead::gui
