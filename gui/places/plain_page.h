// plain_page.h - a place that is not furnished yet: one sentence of what it will hold.
#pragma once

#include "gui/models/places.h"
#include "gui/places/page.h"

namespace dyestead::gui {

class PlainPage : public Page {
public:
    PlainPage(wxWindow* parent, Place place);

    void show(const Books& books) override;
    std::string state() const override;
    std::vector<wxWindow*> parts() override;
};

}  // namespace dyestead::gui
