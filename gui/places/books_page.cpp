#include "gui/places/books_page.h"

#include <wx/button.h>
#include <wx/choice.h>
#include <wx/listbox.h>
#include <wx/notebook.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <wx/wrapsizer.h>

#include <algorithm>

#include "gui/desktop/desktop.h"
#include "gui/guarded.h"
#include "gui/models/ask/hold_recalled.h"
#include "gui/models/settings/settings_place.h"
#include "gui/places/work_page.h"
#include "gui/widgets/document_view.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/roomy.h"
#include "gui/widgets/text.h"
#include "gui/widgets/text_scale.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

constexpr int kListWidth = 290;
constexpr int kDayWidth = 130;
constexpr int kAboutWidth = 220;
// From so many on they are looked for rather than looked through.
constexpr std::size_t kMany = 40;

}  // namespace

BooksPage::BooksPage(wxWindow* parent, Host& host) : Page(parent), host_{host} {
    tabs_ = new Roomy<wxNotebook>(this, wxID_ANY);
    set_accessible_name(*tabs_, say("Books"));
    auto* asking = new wxPanel(tabs_);
    build_ask(*asking);
    settings_ = new WorkPage(tabs_, host, settings_place());
    tabs_->AddPage(asking, shown(say("Ask the books")));
    tabs_->AddPage(settings_, shown(say("What the shop goes by")));
    tabs_->Bind(wxEVT_NOTEBOOK_PAGE_CHANGED, [this](wxBookCtrlEvent& event) {
        event.Skip();
        guarded("showing another page", [this] { lay_out(); });
    });
    auto* edge = new wxBoxSizer(wxVERTICAL);
    edge->AddSpacer(FromDIP(kNear));
    edge->Add(tabs_, wxSizerFlags{1}.Expand().Border(wxLEFT | wxRIGHT | wxBOTTOM, FromDIP(kEdge)));
    SetSizer(edge);
}

void BooksPage::build_ask(wxWindow& page) {
    auto* question = new wxStaticText(&page, wxID_ANY, shown(say("&Question")));
    list_ = new Roomy<wxListBox>(&page, wxID_ANY, wxDefaultPosition, wxSize{for_text(*this, kListWidth), -1});
    set_accessible_name(*list_, say("Question"));
    switch_off_type_ahead(*list_);
    give_rows_room(*list_, FromDIP(kNear), FromDIP(kNear));
    find_label_ = new wxStaticText(&page, wxID_ANY, shown(say("Fi&nd")));
    find_ = new wxTextCtrl(&page, wxID_ANY, wxString{}, wxDefaultPosition, wxSize{for_text(*this, kDayWidth), -1});
    about_label_ = new wxStaticText(&page, wxID_ANY, shown(say("&What")));
    about_ = new wxChoice(&page, wxID_ANY, wxDefaultPosition, wxSize{for_text(*this, kAboutWidth), -1});
    from_label_ = new wxStaticText(&page, wxID_ANY, shown(say("Fr&om")));
    from_ = new wxTextCtrl(
        &page, wxID_ANY, wxString{}, wxDefaultPosition, wxSize{for_text(*this, kDayWidth), -1}, wxTE_PROCESS_ENTER);
    from_->SetHint(shown(say("start of the year")));
    auto* as_of_label = new wxStaticText(&page, wxID_ANY, shown(say("&As of")));
    as_of_ = new wxTextCtrl(
        &page, wxID_ANY, wxString{}, wxDefaultPosition, wxSize{for_text(*this, kDayWidth), -1}, wxTE_PROCESS_ENTER);
    auto* ask_button = new wxButton(&page, wxID_ANY, shown(say("A&sk")));
    trouble_ = new WrappedText(&page, TextSize::plain);
    hold_ = new wxButton(&page, wxID_ANY, shown(say("Hold &what is here")));
    hold_->Hide();
    answer_ = new DocumentView(&page);

    list_->Bind(wxEVT_LISTBOX, [this](wxCommandEvent&) { guarded("asking the books", [this] { choose_question(); }); });
    find_->Bind(wxEVT_TEXT, [this](wxCommandEvent&) {
        guarded("asking the books", [this] {
            offer(asked().about);
            ask();
        });
    });
    about_->Bind(wxEVT_CHOICE, [this](wxCommandEvent&) { guarded("asking the books", [this] { ask(); }); });
    ask_button->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { guarded("asking the books", [this] { ask(); }); });
    hold_->Bind(
        wxEVT_BUTTON, [this](wxCommandEvent&) { guarded("holding what is recalled", [this] { hold_here(); }); });
    for (wxTextCtrl* day : {from_, as_of_})
        day->Bind(wxEVT_TEXT_ENTER, [this](wxCommandEvent&) { guarded("asking the books", [this] { ask(); }); });

    const int near = FromDIP(kNear);
    auto* row = new wxWrapSizer(wxHORIZONTAL, 0);
    const auto add = [&](std::initializer_list<wxWindow*> together) {
        auto* pair = new wxBoxSizer(wxHORIZONTAL);
        for (wxWindow* each : together) pair->Add(each, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, near));
        row->Add(pair, wxSizerFlags{}.CentreVertical().Border(wxBOTTOM, near));
    };
    add({find_label_, find_});
    add({about_label_, about_});
    add({from_label_, from_});
    add({as_of_label, as_of_});
    add({ask_button});
    auto* right = new wxBoxSizer(wxVERTICAL);
    right->Add(row, wxSizerFlags{}.Expand().Border(wxLEFT, FromDIP(kApart)));
    right->Add(hold_, wxSizerFlags{}.Border(wxLEFT | wxBOTTOM, FromDIP(kApart)));
    right->Add(trouble_, wxSizerFlags{}.Expand().Border(wxLEFT, FromDIP(kApart)));
    right->Add(answer_, wxSizerFlags{1}.Expand());
    auto* left = new wxBoxSizer(wxVERTICAL);
    left->Add(question, wxSizerFlags{}.Border(wxBOTTOM, near));
    left->Add(list_, wxSizerFlags{1}.Expand());
    auto* all = new wxBoxSizer(wxHORIZONTAL);
    all->Add(left, wxSizerFlags{}.Expand().Border(wxALL, near));
    all->Add(right, wxSizerFlags{1}.Expand().Border(wxTOP | wxBOTTOM, near));
    page.SetSizer(all);
}

bool BooksPage::at_settings() const {
    return tabs_->GetSelection() == 1;
}

void BooksPage::show(const Books& books) {
    books_.emplace(books);
    const int before = list_->GetSelection();
    const std::string about = before == wxNOT_FOUND ? std::string{} : asked().about;
    questions_ = books_questions(books);
    wxArrayString labels;
    for (const BooksQuestion& each : questions_) labels.Add(shown(each.label));
    if (labels != list_->GetStrings()) list_->Set(labels);  // what is scrolled to stays
    settings_->show(books);
    list_->SetSelection(before == wxNOT_FOUND ? 1 : before);
    if (before == wxNOT_FOUND) CallAfter([this] { list_->EnsureVisible(0); });  // once it knows its height
    choose_question(about);
}

void BooksPage::choose_question(const std::string& asked_about) {
    const int at = list_->GetSelection();
    if (at == wxNOT_FOUND) return;
    const BooksQuestion& question = questions_[static_cast<std::size_t>(at)];
    const bool about = !question.about.empty();
    about_label_->Show(about);
    about_->Show(about);
    const bool many = question.about.size() >= kMany;
    find_label_->Show(many);
    find_->Show(many);
    find_->ChangeValue(wxString{});
    if (many)
        find_->SetHint(shown(say("among {count}", arg("count", static_cast<std::int64_t>(question.about.size())))));
    if (about) about_label_->SetLabel(shown(question.about_label));
    offer(asked_about);
    from_label_->Show(question.period);
    from_->Show(question.period);
    from_->SetHint(shown(question.report == "recall" ? say("any day") : say("start of the year")));
    list_->GetParent()->Layout();
    ask();
}

void BooksPage::offer(const std::string& chosen) {
    const std::vector<Choice>& all = questions_[static_cast<std::size_t>(list_->GetSelection())].about;
    const std::string words = typed(find_->GetValue());
    offered_ = narrowed(all, words);
    auto again = std::ranges::find(offered_, chosen, &Choice::code);
    const auto further = std::ranges::find(all, chosen, &Choice::code);
    if (again == offered_.end() && further != all.end() && words.empty())
        again = offered_.insert(offered_.end(), *further);
    wxArrayString names;
    for (const Choice& each : offered_) names.Add(shown(each.shown));
    about_->Set(names);
    if (!offered_.empty())
        about_->SetSelection(again == offered_.end() ? 0 : static_cast<int>(again - offered_.begin()));
}

void BooksPage::ask() {
    const int at = list_->GetSelection();
    if (!books_ || at == wxNOT_FOUND) return;
    const BooksQuestion& question = questions_[static_cast<std::size_t>(at)];
    const bool nothing_such = !question.about.empty() && offered_.empty();
    Answer found = nothing_such ? Answer{{}, say("Nothing on record has these words in its name; take some away.")}
                                : answer(*books_, question, asked());
    trouble_->say(found.trouble);
    document_ = std::move(found.document);
    if (document_) {
        answer_->show(*document_);
    } else {
        answer_->clear();
    }
    hold_->Enable(host_.can_record());
    hold_->Show(document_ && question.report == "recall" && !recalled_here(*books_, asked()).lots.empty());
    list_->GetParent()->Layout();
    lay_out();
}

// Requires: a question is chosen.
Asked BooksPage::asked() const {
    const BooksQuestion& question = questions_[static_cast<std::size_t>(list_->GetSelection())];
    Asked put{.as_of = typed(as_of_->GetValue()), .from = typed(from_->GetValue()), .about = {}};
    if (!question.about.empty() && about_->GetSelection() != wxNOT_FOUND)
        put.about = offered_[static_cast<std::size_t>(about_->GetSelection())].code;
    return put;
}

void BooksPage::hold_here() {
    if (list_->GetSelection() == wxNOT_FOUND) return;
    const auto kept = hold_recalled(host_.writing(), asked());
    // The button goes with what it was for; the keyboard must not go with it.
    if (kept && host_.keep(*kept)) list_->SetFocus();
}

std::string BooksPage::state() const {
    return books_ ? books_state(*books_) : std::string{};
}

std::vector<wxWindow*> BooksPage::parts() {
    if (at_settings()) return settings_->parts();
    return {list_, answer_};
}

void BooksPage::find() {
    if (at_settings()) settings_->find();
}

void BooksPage::begin_new() {
    tabs_->SetSelection(1);
    settings_->begin_new();
}

void BooksPage::begin(Form&& form) {
    tabs_->SetSelection(1);
    settings_->begin(std::move(form));
}

bool BooksPage::can_correct(FactRef record) const {
    return settings_->can_correct(record);
}

void BooksPage::correct(FactRef record) {
    tabs_->SetSelection(1);
    settings_->correct(record);
}

std::optional<reports::Document> BooksPage::paper() const {
    if (at_settings()) return settings_->paper();
    return document_;
}

}  // namespace dyestead::gui
