// heading.h - the head of a place: its name, one sentence of how things stand, and the day the books stand at.
#pragma once

#include <wx/panel.h>
#include <functional>
#include <string>

#include "gui/models/places.h"

class wxStaticText;
class wxTextCtrl;

namespace dyestead::gui {

class WrappedText;

class Heading : public wxPanel {
public:
    explicit Heading(wxWindow* parent);

    // `place` colours the strip.
    void say(Place place, const std::string& name, const std::string& state, const std::string& day);
    // The day that is being written for; hidden when there is none.
    void show_writing_day(const std::string& day);

    std::function<void(const std::string& typed)> on_writing_day;

private:
    void take_day();

    void paint_band(wxWindow& band);

    Place place_ = Place::today;
    wxWindow* band_;
    wxStaticText* name_;
    WrappedText* state_;
    wxStaticText* day_;
    wxStaticText* writing_for_;
    wxTextCtrl* writing_day_;
    std::string writing_day_shown_;
};

}  // namespace dyestead::gui
