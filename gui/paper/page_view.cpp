#include "gui/paper/page_view.h"

#include <cairo.h>

#include <wx/dcclient.h>
#include <wx/settings.h>
#include <algorithm>
#include <cmath>

#include "gui/desktop/desktop.h"
#include "gui/guarded.h"
#include "gui/widgets/paddings.h"
#include "reports/words/say.h"
#include "reports/write/pdf_style.h"

namespace dyestead::gui {

namespace {

constexpr int kStep = 20;

}  // namespace

PageView::PageView(wxWindow* parent, const reports::PaperPages& pages)
    : wxScrolledWindow(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxVSCROLL | wxBORDER_NONE | wxWANTS_CHARS),
      pages_{pages} {
    SetScrollRate(0, FromDIP(kStep));
    Bind(wxEVT_PAINT, [this](wxPaintEvent&) { guarded("drawing a page", [&] { paint(); }); });
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        guarded("fitting a page", [this] { fit(); });
    });
    show(0);
}

void PageView::show(std::size_t page) {
    page_ = page;
    set_accessible_name(*this, reports::say("Page {page} of {pages} as it will be printed",
                                            reports::arg("page", page + 1), reports::arg("pages", pages_.count())));
    Scroll(0, 0);
    Refresh();
}

double PageView::scale() const {
    const int room = std::max(1, GetClientSize().x - 2 * FromDIP(kApart));
    return room / reports::pdf::kPageWidth;
}

void PageView::fit() {
    SetVirtualSize(-1, static_cast<int>(std::ceil(scale() * reports::pdf::kPageHeight)) + 2 * FromDIP(kApart));
    Refresh();
}

// Paper is white whatever the theme.
void PageView::paint() {
    wxPaintDC canvas(this);
    const int above = CalcScrolledPosition(wxPoint{0, 0}).y;
    auto* cr = static_cast<cairo_t*>(canvas.GetHandle());
    cairo_save(cr);
    cairo_translate(cr, FromDIP(kApart), above + FromDIP(kApart));
    cairo_scale(cr, scale(), scale());
    cairo_rectangle(cr, 0, 0, reports::pdf::kPageWidth, reports::pdf::kPageHeight);
    cairo_set_source_rgb(cr, 1, 1, 1);
    cairo_fill_preserve(cr);
    cairo_set_source_rgb(cr, 0.5, 0.5, 0.5);
    cairo_set_line_width(cr, 0.7);
    cairo_stroke(cr);
    pages_.draw(cr, page_);
    cairo_restore(cr);
}

}  // namespace dyestead::gui
