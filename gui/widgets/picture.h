// picture.h - lends the window's cairo to a drawing of reports/, in the theme's light or dark colours.
#pragma once

#include <wx/panel.h>
#include <string>

#include "reports/chart/stacked_bars.h"

namespace dyestead::gui {

class Picture : public wxPanel {
public:
    Picture(wxWindow* parent, const std::string& accessible_name);

    void show(reports::StackedBars data);
    bool InformFirstDirection(int direction, int size, int available_other) override;

private:
    void paint();
    void show_tip(wxMouseEvent& event);

    reports::StackedBars data_;
};

}  // namespace dyestead::gui
