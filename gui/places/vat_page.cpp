#include "gui/places/vat_page.h"

#include <wx/notebook.h>
#include <wx/sizer.h>

#include "gui/models/cautions.h"
#include "gui/models/powder.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/table.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

VatPage::VatPage(wxWindow* parent) : Page(parent) {
    list_ = new Table(this, say("Vats"), Sorting::by_heading);
    below_ = new wxNotebook(this, wxID_ANY);
    powder_ = new Table(below_, say("Powder by lot"), Sorting::by_heading);
    auto* worked = new wxPanel(below_);
    which_ = new WrappedText(worked, TextSize::plain);
    steps_ = new Table(worked, say("Steps of the selected vat"), Sorting::as_given);
    below_->AddPage(powder_, shown(say("Powder by lot")));
    below_->AddPage(worked, shown(say("How the selected vat was worked")));
    list_->on_select = [this] { show_steps(); };

    auto* steps = new wxBoxSizer(wxVERTICAL);
    steps->Add(which_, wxSizerFlags{}.Expand().Border(wxALL, FromDIP(kNear)));
    steps->Add(steps_, wxSizerFlags{1}.Expand());
    worked->SetSizer(steps);
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(list_, wxSizerFlags{1}.Expand().Border(wxBOTTOM, FromDIP(kApart)));
    column->Add(below_, wxSizerFlags{1}.Expand().Border(wxBOTTOM, FromDIP(kApart)));
    for (const std::string& caution : vat_cautions()) {
        auto* line = new WrappedText(this, TextSize::small);
        line->say(caution);
        column->Add(line, wxSizerFlags{}.Expand());
    }
    auto* edge = new wxBoxSizer(wxVERTICAL);
    edge->AddSpacer(FromDIP(kNear));
    edge->Add(column, wxSizerFlags{1}.Expand().Border(wxLEFT | wxRIGHT | wxBOTTOM, FromDIP(kEdge)));
    SetSizer(edge);
}

void VatPage::show(const Books& books) {
    books_.emplace(books);
    VatList found = vat_list(books);
    vats_ = std::move(found.vats);
    list_->show(std::move(found.table));
    powder_->show(powder_list(books));
    if (!list_->selected() && !vats_.empty()) list_->select(0);
    show_steps();
}

void VatPage::show_steps() {
    const auto row = list_->selected();
    if (!books_ || !row || *row >= vats_.size()) {
        which_->say(say("As the selected vat was worked"));
        steps_->show({});
    } else {
        which_->say(vat_sentence(*books_, vats_[*row]));
        steps_->show(step_list(*books_, vats_[*row]));
    }
    which_->GetParent()->Layout();
    lay_out();
}

std::string VatPage::state() const {
    return books_ ? vat_state(*books_) : std::string{};
}

std::vector<wxWindow*> VatPage::parts() {
    return {list_, below_->GetSelection() == 0 ? powder_ : steps_};
}

}  // namespace dyestead::gui
