#include "gui/widgets/picture.h"

#include <cairo.h>

#include <wx/dcclient.h>
#include <wx/settings.h>
#include <cmath>

#include "gui/desktop/desktop.h"
#include "gui/guarded.h"
#include "gui/widgets/text.h"
#include "gui/widgets/text_scale.h"

namespace dyestead::gui {

namespace {

constexpr double kLowest = 0.8;  // of the height it would like: bars stay thick enough for their figures

reports::Colour of(const wxColour& colour) {
    return {colour.Red() / 255.0, colour.Green() / 255.0, colour.Blue() / 255.0};
}

// Paper and words are the theme's, so that the picture does not stand in the window like a postage stamp.
reports::ChartColours theme_colours() {
    const bool dark = wxSystemSettings::GetAppearance().IsDark();
    reports::ChartColours colours = dark ? reports::dark_chart_colours() : reports::light_chart_colours();
    colours.paper = of(wxSystemSettings::GetColour(wxSYS_COLOUR_BTNFACE));
    colours.text = of(wxSystemSettings::GetColour(wxSYS_COLOUR_WINDOWTEXT));
    return colours;
}

}  // namespace

Picture::Picture(wxWindow* parent, const std::string& accessible_name) : wxPanel(parent, wxID_ANY) {
    set_accessible_name(*this, accessible_name);
    Bind(wxEVT_PAINT, [this](wxPaintEvent&) { guarded("drawing a picture", [&] { paint(); }); });
    Bind(wxEVT_MOTION, [this](wxMouseEvent& event) { guarded("showing a tip", [&] { show_tip(event); }); });
    Bind(wxEVT_SYS_COLOUR_CHANGED, [this](wxSysColourChangedEvent& event) {
        event.Skip();
        Refresh();
    });
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        Refresh();
    });
}

void Picture::show(reports::Drawing drawing) {
    drawing_ = std::move(drawing);
    Refresh();
}

bool Picture::InformFirstDirection(int direction, int size, int /*available_other*/) {
    if (direction != wxHORIZONTAL || size <= 0) return false;
    const double scale = text_scale(*this);
    const double wanted = reports::drawing_height(size / scale, drawing_) * scale;
    const int height = static_cast<int>(std::ceil(low_ ? wanted * kLowest : wanted));
    if (height == GetMinHeight()) return false;
    SetMinSize({-1, height});
    return true;
}

void Picture::paint() {
    wxPaintDC canvas(this);  // on the theme's own ground
    const wxSize size = GetClientSize();
    auto* cr = static_cast<cairo_t*>(canvas.GetHandle());
    const double scale = text_scale(*this);  // its words grow with the desktop's
    cairo_save(cr);
    cairo_scale(cr, scale, scale);
    reports::draw(cr, size.x / scale, size.y / scale, drawing_, theme_colours());
    cairo_restore(cr);
}

void Picture::show_tip(wxMouseEvent& event) {
    const wxSize size = GetClientSize();
    const double scale = text_scale(*this);
    const wxString tip = shown(
        reports::drawing_tip(event.GetX() / scale, event.GetY() / scale, size.x / scale, size.y / scale, drawing_));
    if (tip == GetToolTipText()) return;
    if (tip.empty()) {
        UnsetToolTip();
    } else {
        SetToolTip(tip);
    }
}

}  // namespace dyestead::gui
