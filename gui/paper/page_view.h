// page_view.h - one page of a paper as it will be printed, as wide as there is room.
#pragma once

#include <wx/scrolwin.h>

#include "reports/write/paper_pages.h"

namespace dyestead::gui {

class PageView : public wxScrolledWindow {
public:
    // `pages` must outlive it.
    PageView(wxWindow* parent, const reports::PaperPages& pages);

    void show(std::size_t page);

private:
    void paint();
    void fit();
    double scale() const;

    const reports::PaperPages& pages_;
    std::size_t page_ = 0;
};

}  // namespace dyestead::gui
