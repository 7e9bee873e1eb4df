#include "gui/places/cupboard_page.h"

#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <algorithm>

#include "gui/guarded.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/table.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/caution_words.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

constexpr int kFindWidth = 260;

}  // namespace

CupboardPage::CupboardPage(wxWindow* parent) : Page(parent) {
    auto* label = new wxStaticText(this, wxID_ANY, shown(say("F&ind")));
    find_ = new wxTextCtrl(this, wxID_ANY, wxString{}, wxDefaultPosition, FromDIP(wxSize{kFindWidth, -1}));
    find_->SetHint(shown(say("a name, or what stands on the jar")));
    list_ = new Table(this, say("Stock"), Sorting::by_heading);
    which_ = new WrappedText(this, TextSize::heading);
    lots_ = new Table(this, say("Lots of what is selected"), Sorting::by_heading);
    caution_ = new WrappedText(this, TextSize::plain);

    find_->Bind(wxEVT_TEXT, [this](wxCommandEvent&) { guarded("finding", [&] { show_list(); }); });
    list_->on_select = [this] { show_lots(); };

    auto* search = new wxBoxSizer(wxHORIZONTAL);
    search->Add(label, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, FromDIP(kNear)));
    search->Add(find_, wxSizerFlags{});
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(search, wxSizerFlags{}.Border(wxBOTTOM, FromDIP(kNear)));
    column->Add(list_, wxSizerFlags{5}.Expand().Border(wxBOTTOM, FromDIP(kApart)));
    column->Add(which_, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kNear)));
    column->Add(lots_, wxSizerFlags{3}.Expand());
    column->Add(caution_, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(kNear)));
    auto* edge = new wxBoxSizer(wxVERTICAL);
    edge->AddSpacer(FromDIP(kNear));
    edge->Add(column, wxSizerFlags{1}.Expand().Border(wxLEFT | wxRIGHT | wxBOTTOM, FromDIP(kEdge)));
    SetSizer(edge);
}

void CupboardPage::show(const Books& books) {
    books_.emplace(books);
    show_list();
}

// What was chosen stays chosen, as long as it is still in the list.
void CupboardPage::show_list() {
    if (!books_) return;
    MaterialList found = cupboard_list(*books_, typed(find_->GetValue()));
    materials_ = std::move(found.materials);
    list_->show(std::move(found.table));
    const auto kept = chosen_ ? std::ranges::find(materials_, *chosen_) : materials_.end();
    if (!materials_.empty()) {
        list_->select(kept != materials_.end() ? static_cast<std::size_t>(kept - materials_.begin()) : 0);
    }
    show_lots();
}

void CupboardPage::show_lots() {
    const auto row = list_->selected();
    if (!books_ || !row || *row >= materials_.size()) {
        which_->say(materials_.empty() ? say("Nothing here has that name.") : std::string{});
        lots_->show({});
        caution_->say({});
    } else {
        chosen_ = materials_[*row];
        const Material* material = books_->shop.find(*chosen_);
        which_->say(material_sentence(*books_, *chosen_));
        lots_->show(lot_list(*books_, *chosen_));
        caution_->say(material != nullptr ? reports::caution_sentence(material->caution, material->name)
                                          : std::string{});
    }
    lay_out();
}

std::string CupboardPage::state() const {
    return books_ ? cupboard_state(*books_) : std::string{};
}

std::vector<wxWindow*> CupboardPage::parts() {
    return {list_, lots_, find_};
}

void CupboardPage::find() {
    find_->SetFocus();
}

}  // namespace dyestead::gui
