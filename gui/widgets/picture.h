// picture.h - lends the window's cairo to a drawing of reports/, in the theme's light or dark colours.
#pragma once

#include <wx/panel.h>
#include <string>

#include "reports/chart/drawing.h"

namespace dyestead::gui {

class Picture : public wxPanel {
public:
    Picture(wxWindow* parent, const std::string& accessible_name);

    void show(reports::Drawing drawing);
    // Whether it may be drawn lower than it would like where room is short.
    void may_be_low(bool low) { low_ = low; }
    bool InformFirstDirection(int direction, int size, int available_other) override;

private:
    void paint();
    void show_tip(wxMouseEvent& event);

    reports::Drawing drawing_;
    bool low_ = false;
};

}  // namespace dyestead::gui
