#include "gui/places/plain_page.h"

#include <wx/sizer.h>

#include "gui/widgets/paddings.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

PlainPage::PlainPage(wxWindow* parent, Place place) : Page(parent) {
    auto* purpose = new WrappedText(this, TextSize::plain);
    purpose->say(place_purpose(place));
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(purpose, wxSizerFlags{}.Expand().Border(wxALL, FromDIP(kEdge)));
    SetSizer(column);
}

void PlainPage::show(const Books& /*books*/) {}

std::string PlainPage::state() const {
    return reports::say("Not furnished yet.");
}

std::vector<wxWindow*> PlainPage::parts() {
    return {};
}

}  // namespace dyestead::gui
