// heading.h - the head of a place: its name, one sentence of how things stand, and the day the books stand at.
#pragma once

#include <wx/panel.h>
#include <string>

#include "gui/models/places.h"

class wxStaticText;

namespace dyestead::gui {

class WrappedText;

class Heading : public wxPanel {
public:
    explicit Heading(wxWindow* parent);

    // `place` colours the strip.
    void say(Place place, const std::string& name, const std::string& state, const std::string& day);

private:
    void paint_band(wxWindow& band);

    Place place_ = Place::today;
    wxWindow* band_;
    wxStaticText* name_;
    WrappedText* state_;
    wxStaticText* day_;
};

}  // namespace dyestead::gui
