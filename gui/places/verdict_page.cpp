#include "gui/places/verdict_page.h"

#include <wx/button.h>
#include <wx/choice.h>
#include <wx/infobar.h>
#include <wx/notebook.h>
#include <wx/scrolwin.h>
#include <wx/sizer.h>
#include <algorithm>

#include "gui/guarded.h"
#include "gui/models/letters.h"
#include "gui/models/places.h"
#include "gui/models/ten_questions.h"
#include "gui/places/dial_board.h"
#include "gui/places/form_keeper.h"
#include "gui/widgets/form_panel.h"
#include "gui/widgets/picture.h"
#include "gui/widgets/table.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/verdict_report.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

constexpr int kBeside = 780;  // the least width in which dials and figures stand side by side
constexpr int kAtOnce = 640;  // the least height in which nothing has to scroll

}  // namespace

VerdictPage::VerdictPage(wxWindow* parent, Host& host) : Page(parent), host_{host} {
    build();
    keeper_ = std::make_unique<FormKeeper>(*form_, host_, [this] { closed_form(); });
    looking_->Bind(wxEVT_CHOICE, [this](wxCommandEvent&) { guarded("looking another way", [&] { show_colour(); }); });
    ask_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { guarded("asking ten questions", [&] { begin_new(); }); });
    Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
        guarded("a key", [&] {
            if (!keeper_->takes(event)) event.Skip();
        });
    });
    colours_->Bind(wxEVT_CHOICE, [this](wxCommandEvent& event) {
        guarded("choosing a colour", [&] {
            colour_ = choice_.colours[static_cast<std::size_t>(event.GetSelection())];
            show_colour();
        });
    });
    why_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) {
        guarded("showing how it adds up", [&] {
            const int sum = tables_->FindPage(adds_up_);
            if (sum != wxNOT_FOUND) tables_->SetSelection(static_cast<std::size_t>(sum));
            tables_->GetCurrentPage()->SetFocus();
        });
    });
    bar_->Bind(
        wxEVT_BUTTON, [this](wxCommandEvent&) { guarded("going back to the records", [&] { back_to_records(); }); });
    board_->on_type = [this](DialId id, std::string_view text) {
        const Turned turned = dials_->type(id, text);
        if (turned.mistake.empty()) show_verdict();
        return turned.mistake;
    };
    board_->on_slide = [this](DialId id, double value) {
        dials_->slide(id, value);
        show_verdict();
    };
    sheet_->Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        // Once for each size: laying out makes size events of its own.
        if (event.GetSize() == settled_) return;
        settled_ = event.GetSize();
        CallAfter([this] { guarded("laying out the verdict", [&] { settle(); }); });
    });
}

VerdictPage::~VerdictPage() = default;

void VerdictPage::begin_new() {
    if (books_) begin(ten_questions_form(host_.writing(), colour_));
}

void VerdictPage::begin(Form&& form) {
    if (!host_.may_record()) return;
    keeper_->begin(std::move(form), menu_letters());
    sheet_->Hide();
    form_->Show();
    form_->MoveAfterInTabOrder(bar_);
    lay_out();
    form_->focus_first();
}

void VerdictPage::closed_form() {
    form_->Hide();
    sheet_->Show();
    settle();
    colours_->SetFocus();
}

void VerdictPage::show(const Books& books) {
    books_.emplace(books);
    // Answers just kept are what is to be seen next.
    if (form_->is_open())
        if (const auto answered = colour_answered(form_->form(), books)) colour_ = answered;
    ask_->Enable(host_.can_record());
    choice_ = colour_choice(books);
    colours_->Clear();
    for (const std::string& name : choice_.names) colours_->Append(shown(name));
    const auto kept = colour_ ? std::ranges::find(choice_.colours, *colour_) : choice_.colours.end();
    const auto chosen =
        kept != choice_.colours.end() ? static_cast<std::size_t>(kept - choice_.colours.begin()) : choice_.first;
    colour_.reset();
    if (!choice_.colours.empty()) {
        colour_ = choice_.colours[chosen];
        colours_->SetSelection(static_cast<int>(chosen));
    }
    show_colour();
}

void VerdictPage::show_colour() {
    verdict_.reset();
    dials_.reset();
    if (colour_) {
        const auto ahead = stand_of(static_cast<std::size_t>(std::max(0, looking_->GetSelection())));
        verdict_.emplace(ahead ? look_ahead(books_->shop, books_->ledger.as_of, *colour_, *ahead)
                               : verdict(books_->shop, books_->ledger, *colour_));
        if (verdict_->figures.model && !verdict_->from_memory) {
            dials_.emplace(*verdict_->figures.model, reports::currency_of(books_->shop));
        }
    }
    show_verdict();
}

void VerdictPage::show_verdict() {
    if (!verdict_) {
        VerdictView empty;
        empty.headline = no_colour_sentence();
        return show_view(empty);
    }
    const bool trying = dials_ && dials_->turned();
    if (dials_) board_->show(dials_->shown());
    board_->Show(dials_.has_value());
    dials_title_->say(dials_ ? say("Try it") : no_dials_sentence());
    if (trying && !bar_->IsShown()) bar_->ShowMessage(shown(trying_out_sentence()), wxICON_INFORMATION);
    if (!trying && bar_->IsShown()) bar_->Dismiss();
    show_view(trying ? tried_view(*books_, *verdict_, dials_->tried()) : verdict_view(*books_, *verdict_));
}

void VerdictPage::show_view(const VerdictView& view) {
    headline_->say(view.headline);
    const auto say_or_hide = [](WrappedText& text, const std::string& sentence) {
        text.say(sentence);
        text.Show(!sentence.empty());
    };
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        say_or_hide(*lines_[i], i < view.lines.size() ? view.lines[i] : std::string{});
    }
    say_or_hide(*stands_on_, view.stands_on);
    say_or_hide(*caution_,
                view.caution.empty() ? view.caution : say("Careful: {caution}", reports::arg("caution", view.caution)));
    below_->ShowItems(verdict_.has_value());
    if (verdict_) {
        board_->Show(dials_.has_value());
        show_tables(view);
        picture_->show(view.chart ? view.chart->data : reports::Drawing{});
        picture_sentence_->say(view.chart ? view.chart->sentence : std::string{});
        figures_->show(view.figures);
        figures_->SetMinSize({-1, figures_->full_height()});
        figures_->Show(list_of_figures_);
        picture_->Show(!list_of_figures_);
    }
    settle();
}

void VerdictPage::show_tables(const VerdictView& view) {
    side_by_side_->show(view.side_by_side);
    adds_up_->show(view.adds_up);
    how_sure_->show(view.how_sure);
    would_help_->show(view.would_help);
    hours_->show(view.hours);
    answers_->show(view.answers);
    if (verdict_->from_memory) answers_->SetMinSize({-1, answers_->full_height()});
    show_tabs(verdict_->from_memory);
}

// From memory no cost of a bar is known, so there is nothing to lay side by side: the answers stand in its place.
void VerdictPage::show_tabs(bool from_memory) {
    std::vector<std::pair<Table*, std::string>> tabs{{side_by_side_, say("Side by side")},
                                                     {adds_up_, say("Adds up")},
                                                     {how_sure_, say("What matters")},
                                                     {would_help_, say("Would help")},
                                                     {hours_, say("Hours")}};
    if (from_memory) tabs = {{answers_, say("Your answers")}};
    if (tables_->GetPageCount() == tabs.size()) return;
    while (tables_->GetPageCount() > 0) {
        tables_->GetPage(0)->Hide();
        tables_->RemovePage(0);
    }
    for (const auto& [table, name] : tabs) tables_->AddPage(table, shown(name));
}

void VerdictPage::show_figures() {
    list_of_figures_ = !list_of_figures_;
    show_verdict();
    if (list_of_figures_) figures_->SetFocus();
}

void VerdictPage::back_to_records() {
    if (!dials_ || !dials_->turned()) return;
    dials_->back_to_records();
    // The button that was pressed is about to go.
    if (wxWindow* field = board_->first_field()) field->SetFocus();
    show_verdict();
}

// What wraps learns its width in one layout and gets its height in the next; so do the columns below it.
void VerdictPage::settle() {
    const bool beside = GetSize().x >= for_text(*this, kBeside);
    below_->SetOrientation(beside ? wxHORIZONTAL : wxVERTICAL);
    // Where all is seen at once, rows scroll; else the sheet scrolls, and nothing within it: the dials and the table of
    // what decides stand above what is below the edge.
    const bool at_once = beside && GetSize().y >= for_text(*this, kAtOnce);
    picture_->may_be_low(at_once);
    side_by_side_->SetMinSize({-1, at_once ? -1 : side_by_side_->full_height()});
    for (int i = 0; i < 3; ++i) {
        sheet_->Layout();
        sheet_->FitInside();
    }
    lay_out();
}

std::optional<reports::Document> VerdictPage::paper() const {
    if (!books_ || !verdict_) return std::nullopt;
    return reports::verdict_report(books_->shop, books_->ledger, *verdict_);
}

std::string VerdictPage::state() const {
    return place_purpose(Place::verdict);
}

std::vector<wxWindow*> VerdictPage::parts() {
    if (form_->IsShown()) return {form_};
    std::vector<wxWindow*> parts{colours_, tables_->GetCurrentPage()};
    if (list_of_figures_) parts.push_back(figures_);
    if (dials_ && board_->first_field() != nullptr) parts.push_back(board_->first_field());
    return parts;
}

}  // namespace dyestead::gui
