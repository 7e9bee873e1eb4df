#include "gui/paper/printing.h"

#include <cairo.h>

#include <wx/dc.h>
#include <wx/print.h>
#include <wx/printdlg.h>
#include <algorithm>

#include "gui/guarded.h"
#include "gui/widgets/text.h"
#include "reports/write/paper_pages.h"
#include "reports/write/pdf_style.h"

namespace dyestead::gui {

namespace {

// The desktop gives the page as a cairo drawing; the paper is fitted onto it, whatever its size.
class Paper : public wxPrintout {
public:
    explicit Paper(const reports::Document& document) : wxPrintout(shown(document.title)), pages_{document} {}

    bool HasPage(int page) override { return page >= 1 && page <= count(); }
    void GetPageInfo(int* first, int* last, int* from, int* to) override {
        *first = *from = 1;
        *last = *to = count();
    }
    bool OnPrintPage(int page) override {
        bool drawn = false;
        guarded("printing a page", [&] { drawn = draw(page); });
        return drawn;
    }

private:
    int count() const { return static_cast<int>(pages_.count()); }

    bool draw(int page) {
        auto* cr = static_cast<cairo_t*>(GetDC()->GetHandle());
        if (cr == nullptr || !HasPage(page)) return false;
        double left = 0;
        double top = 0;
        double right = 0;
        double bottom = 0;
        cairo_clip_extents(cr, &left, &top, &right, &bottom);
        const double scale =
            std::min((right - left) / reports::pdf::kPageWidth, (bottom - top) / reports::pdf::kPageHeight);
        if (!(scale > 0)) return false;
        cairo_save(cr);
        cairo_translate(cr, left, top);
        cairo_scale(cr, scale, scale);
        pages_.draw(cr, static_cast<std::size_t>(page - 1));
        cairo_restore(cr);
        return true;
    }

    reports::PaperPages pages_;
};

}  // namespace

Printed print_document(wxWindow* parent, const reports::Document& document) {
    Paper paper{document};
    wxPrintDialogData asked;
    asked.GetPrintData().SetPaperId(wxPAPER_A4);
    asked.SetMaxPage(1);
    wxPrinter printer{&asked};
    if (printer.Print(parent, &paper, true)) return Printed::yes;
    return wxPrinter::GetLastError() == wxPRINTER_CANCELLED ? Printed::thought_better : Printed::no;
}

}  // namespace dyestead::gui
