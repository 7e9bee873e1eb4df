#include "gui/places/work_page.h"

#include <wx/button.h>
#include <wx/notebook.h>
#include <wx/simplebook.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <algorithm>

#include "gui/guarded.h"
#include "gui/models/columns_told.h"
#include "gui/models/letters.h"
#include "gui/models/note_form.h"
#include "gui/models/place_paper.h"
#include "gui/models/removal.h"
#include "gui/places/form_keeper.h"
#include "gui/places/work_page_layout.h"
#include "gui/widgets/form_panel.h"
#include "gui/widgets/picture.h"
#include "gui/widgets/table.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/drawing_figures.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

WorkPage::WorkPage(wxWindow* parent, Host& host, std::unique_ptr<PlaceModel> model)
    : Page(parent), host_{host}, model_{std::move(model)} {
    parts_ = std::make_unique<WorkParts>(lay_out_work(*this, model_->cautions()));
    parts_->find->Bind(wxEVT_TEXT, [this](wxCommandEvent&) { guarded("finding", [this] { show_lists(); }); });
    parts_->tabs->Bind(wxEVT_NOTEBOOK_PAGE_CHANGED, [this](wxBookCtrlEvent& event) {
        event.Skip();
        guarded("showing another list", [this] {
            make_buttons();
            show_selected();
        });
    });
    parts_->correct->Bind(
        wxEVT_BUTTON, [this](wxCommandEvent&) { guarded("correcting", [this] { correct_selected(); }); });
    parts_->remove->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { guarded("deleting", [this] { delete_selected(); }); });
    keeper_ = std::make_unique<FormKeeper>(*parts_->form, host_, [this] { closed_form(); });
    Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
        guarded("a key", [&] {
            if (!keeper_->takes(event)) event.Skip();
        });
    });
}

WorkPage::~WorkPage() = default;

// A form needs the height more than the lists need the width.
void WorkPage::arrange() {
    if (!narrow()) return stand_side_by_side(*parts_, Wider::lists);
    parts_->form->is_open() ? stand_side_by_side(*parts_, Wider::form) : stand_stacked(*parts_);
}

void WorkPage::show(const Books& books) {
    books_.emplace(books);
    show_lists();
}

std::string WorkPage::state() const {
    return books_ ? model_->state(*books_) : std::string{};
}

std::size_t WorkPage::waiting(const Books& books) const {
    return model_->waiting(books);
}

std::size_t WorkPage::tab() const {
    return static_cast<std::size_t>(std::max(0, parts_->tabs->GetSelection()));
}

std::optional<FactRef> WorkPage::selected() const {
    if (tab() >= tables_.size()) return std::nullopt;
    const auto row = tables_[tab()]->selected();
    const auto& rows = listings_[tab()].rows;
    return row && *row < rows.size() ? std::optional{rows[*row]} : std::nullopt;
}

void WorkPage::make_tabs() {
    for (std::size_t i = 0; i < listings_.size(); ++i) {
        auto* page = new wxPanel(parts_->tabs);
        auto* table = new Table(page, listings_[i].name, Sorting::by_heading);
        auto* empty = new WrappedText(page, TextSize::plain);
        auto* column = new wxBoxSizer(wxVERTICAL);
        column->Add(empty, wxSizerFlags{}.Expand().Border(wxALL, FromDIP(6)));
        column->Add(table, wxSizerFlags{1}.Expand());
        page->SetSizer(column);
        table->on_select = [this] { show_selected(); };
        table->Bind(wxEVT_DATAVIEW_ITEM_ACTIVATED,
                    [this](wxDataViewEvent&) { guarded("opening a line", [this] { open_selected(); }); });
        tables_.push_back(table);
        empties_.push_back(empty);
        parts_->tabs->AddPage(page, shown(listings_[i].name));
    }
    make_buttons();
}

// What was chosen stays chosen, as long as it is still there.
void WorkPage::show_lists() {
    if (!books_) return;
    const auto kept = listings_.empty() ? std::nullopt : selected();
    listings_ = model_->listings(*books_, typed(parts_->find->GetValue()));
    if (tables_.empty()) make_tabs();
    for (std::size_t i = 0; i < tables_.size() && i < listings_.size(); ++i) {
        const bool none = listings_[i].rows.empty();
        empties_[i]->say(!none                     ? std::string{}
                         : parts_->find->IsEmpty() ? listings_[i].empty
                                                   : say("Nothing here has these letters."));
        empties_[i]->Show(none);
        tables_[i]->Show(!none);
        tables_[i]->show(listings_[i].table);
        if (i == tab() && !none) {
            const auto& rows = listings_[i].rows;
            const auto found = kept ? std::ranges::find(rows, *kept) : rows.end();
            tables_[i]->select(found == rows.end() ? 0 : static_cast<std::size_t>(found - rows.begin()));
        }
        tables_[i]->GetParent()->Layout();
    }
    show_selected();
}

void WorkPage::make_buttons() {
    parts_->buttons->DestroyChildren();
    doings_ = model_->doings(tab());
    auto* row = parts_->buttons->GetSizer();
    letters_ = menu_letters() + place_letters();
    for (std::size_t i = 0; i < doings_.size(); ++i) {
        auto* button = new wxButton(parts_->buttons, wxID_ANY, shown(with_letter(doings_[i].label, letters_)));
        button->Bind(wxEVT_BUTTON, [this, i](wxCommandEvent&) {
            CallAfter([this, i] {
                guarded("beginning an entry", [this, i] {
                    if (i < doings_.size()) do_it(doings_[i]);
                });
            });
        });
        row->Add(button, wxSizerFlags{}.Border(wxRIGHT | wxBOTTOM, FromDIP(4)));
    }
    parts_->buttons->MoveAfterInTabOrder(parts_->find);  // Tab learns anew what can be reached in it
    lay_out();
}

void WorkPage::show_selected() {
    if (!books_) return;
    const auto row = selected();
    const Detail detail = row ? model_->detail(*books_, tab(), *row) : Detail{};
    std::string sentence = row ? detail.sentence : std::string{};
    if (row)
        for (const std::string& note : notes_told(*books_, *row)) sentence += (sentence.empty() ? "" : "\n") + note;
    parts_->sentence->say(sentence);
    parts_->detail->Show(detail.table.has_value());
    parts_->detail->show(columns_told(detail.table.value_or(reports::Table{})));
    std::string cautions;
    for (const std::string& each : detail.cautions) cautions += (cautions.empty() ? "" : "\n") + each;
    parts_->caution->say(cautions);
    const bool ours = row && can_correct(*row);
    const bool seen_to_elsewhere = row && model_->leads_to(*books_, tab(), *row).has_value();
    parts_->correct->Show(ours || (row && !seen_to_elsewhere && host_.can_correct(*row)));
    parts_->remove->Show(ours);
    const bool records = host_.can_record();
    parts_->correct->Enable(records);
    parts_->remove->Enable(records);
    for (std::size_t i = 0; i < doings_.size(); ++i) {
        const bool can = (row || !doings_[i].to_selected) && (records || doings_[i].paper);
        if (auto* button = parts_->buttons->GetSizer()->GetItem(i)->GetWindow()) button->Enable(can);
    }
    parts_->told->Layout();
    show_picture();
}

void WorkPage::show_picture() {
    const auto chart = parts_->form->is_open() ? std::nullopt : model_->picture(*books_, tab(), selected());
    const bool any = chart.has_value();
    parts_->below->Show(any);
    parts_->picture_says->Show(any);
    parts_->picture_says->say(any ? chart->sentence : std::string{});
    if (any) {
        parts_->picture->show(chart->data);
        parts_->figures->show(reports::figures_of(chart->data));
    }
    lay_out();
}

void WorkPage::do_it(const Doing& doing) {
    const auto row = selected();
    if (doing.to_selected && !row) return host_.say(say("Select a line first: this is done to what is selected."));
    if (doing.at_the_pan) return host_.work_at_the_pan(row);
    const Writing writing = host_.writing();
    if (doing.begin) {
        if (auto form = doing.begin(writing, row)) begin(std::move(*form));
    } else if (doing.paper) {
        host_.show_paper(doing.paper(writing.books, row));
    } else if (doing.at_once) {
        if (const auto kept = doing.at_once(writing, row)) host_.keep(*kept);
    }
}

std::optional<reports::Document> WorkPage::paper() const {
    if (!books_ || tab() >= listings_.size()) return std::nullopt;
    return place_paper(*model_, *books_, tab(), listings_[tab()], tables_[tab()]->selected());
}

void WorkPage::begin_new() {
    if (!books_ || doings_.empty()) return;
    do_it(doings_.front());
}

void WorkPage::note_selected() {
    const auto row = selected();
    if (!row) return host_.say(say("Select a line first: the note is kept with what is selected."));
    begin(note_form(host_.writing(), *row));
}

void WorkPage::begin(Form&& form) {
    if (!host_.may_record()) return;
    keeper_->begin(std::move(form), letters_);
    parts_->right->SetSelection(1);
    parts_->below->Hide();  // the form needs the room
    parts_->picture_says->Hide();
    parts_->form->MoveAfterInTabOrder(parts_->told);  // Tab learns anew what can be reached in it
    lay_out();
    parts_->form->focus_first();
}

// Enter on a line, or a double click: what waits elsewhere leads there, else the record is corrected.
void WorkPage::open_selected() {
    const auto row = selected();
    if (!row || !books_) return;
    if (const auto place = model_->leads_to(*books_, tab(), *row)) {
        CallAfter([this, place, record = *row] { guarded("going to a place", [&] { host_.go_to(*place, record); }); });
        return;
    }
    correct_selected();
}

void WorkPage::correct_selected() {
    const auto row = selected();
    if (!row) return;
    if (can_correct(*row)) return correct(*row);
    // A record of another place's: what does not add up is mended where it was written down.
    CallAfter([this, record = *row] { guarded("correcting", [&] { host_.correct(record); }); });
}

bool WorkPage::can_correct(FactRef record) const {
    return model_->correct(host_.writing(), record).has_value();
}

void WorkPage::correct(FactRef record) {
    if (auto form = model_->correct(host_.writing(), record)) begin(std::move(*form));
}

void WorkPage::delete_selected() {
    const auto row = selected();
    if (!row) return;
    std::string why_not;
    const auto kept = delete_fact(host_.writing(), *row, why_not);
    if (!kept) return host_.say(why_not);
    host_.keep(*kept);
}

void WorkPage::closed_form() {
    parts_->right->SetSelection(0);
    show_picture();
    if (tab() < tables_.size()) tables_[tab()]->SetFocus();
}

// Letters that were looked for could hide it.
void WorkPage::select(FactRef record) {
    const auto look = [&] {
        for (std::size_t i = 0; i < listings_.size() && i < tables_.size(); ++i) {
            const auto& rows = listings_[i].rows;
            const auto found = std::ranges::find(rows, record);
            if (found == rows.end()) continue;
            parts_->tabs->SetSelection(i);
            tables_[i]->select(static_cast<std::size_t>(found - rows.begin()));
            tables_[i]->SetFocus();
            return true;
        }
        return false;
    };
    if (look() || parts_->find->IsEmpty()) return;
    parts_->find->Clear();
    look();
}

void WorkPage::find() {
    parts_->find->SetFocus();
}

void WorkPage::show_figures() {
    if (!parts_->below->IsShown()) return host_.say(say("There is no picture here whose figures could be listed."));
    const bool listed = parts_->below->GetSelection() == 1;
    parts_->below->ChangeSelection(listed ? 0 : 1);
    if (!listed) parts_->figures->SetFocus();
    lay_out();
}

std::vector<wxWindow*> WorkPage::parts() {
    std::vector<wxWindow*> all;
    if (tab() < tables_.size() && tables_[tab()]->IsShown()) all.push_back(tables_[tab()]);
    if (parts_->form->is_open()) {
        all.push_back(parts_->form);
    } else if (parts_->detail->IsShown()) {
        all.push_back(parts_->detail);
    }
    all.push_back(parts_->buttons);
    all.push_back(parts_->find);
    return all;
}

}  // namespace dyestead::gui
