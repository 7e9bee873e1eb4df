// The verdict's controls and where they stand: sentences over the whole width, below them two columns, or one below
// the other where the window is narrow, all in a sheet that scrolls where it is low.
#include <wx/button.h>
#include <wx/choice.h>
#include <wx/infobar.h>
#include <wx/notebook.h>
#include <wx/scrolwin.h>
#include <wx/sizer.h>
#include <wx/stattext.h>

#include "gui/desktop/desktop.h"
#include "gui/places/dial_board.h"
#include "gui/places/verdict_page.h"
#include "gui/widgets/form_panel.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/picture.h"
#include "gui/widgets/roomy.h"
#include "gui/widgets/table.h"
#include "gui/widgets/text.h"
#include "gui/widgets/text_scale.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

constexpr int kScrollStep = 16;
constexpr std::size_t kLines = 8;  // as many as there ever are
constexpr int kLeastTables = 260;

}  // namespace

void VerdictPage::build() {
    bar_ = new wxInfoBar(this);
    bar_->AddButton(wxID_RESET, shown(say("Back to the records")));
    sheet_ = new wxScrolledWindow(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxVSCROLL | wxTAB_TRAVERSAL);
    sheet_->SetScrollRate(0, FromDIP(kScrollStep));
    sheet_->ShowScrollbars(wxSHOW_SB_NEVER, wxSHOW_SB_DEFAULT);

    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(top_row(), wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(2)));
    headline_ = new WrappedText(sheet_, TextSize::headline);
    column->Add(headline_, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(2)));
    for (std::size_t i = 0; i < kLines; ++i) {
        lines_.push_back(new WrappedText(sheet_, TextSize::plain));
        column->Add(lines_.back(), wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(2)));
    }
    below_ = columns();
    column->Add(below_, wxSizerFlags{1}.Expand().Border(wxTOP, FromDIP(kNear)));
    auto* edge = new wxBoxSizer(wxVERTICAL);
    edge->AddSpacer(FromDIP(kNear));
    edge->Add(column, wxSizerFlags{1}.Expand().Border(wxLEFT | wxRIGHT | wxBOTTOM, FromDIP(kEdge)));
    sheet_->SetSizer(edge);

    auto* whole = new wxBoxSizer(wxVERTICAL);
    whole->Add(bar_, wxSizerFlags{}.Expand());
    whole->Add(sheet_, wxSizerFlags{1}.Expand());
    form_ = new FormPanel(this);
    form_->Hide();
    whole->Add(form_, wxSizerFlags{1}.Expand().Border(wxLEFT, FromDIP(kEdge)));
    SetSizer(whole);
}

wxSizer* VerdictPage::top_row() {
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    auto* label = new wxStaticText(sheet_, wxID_ANY, shown(say("&Colour")));
    colours_ = new wxChoice(sheet_, wxID_ANY);
    auto* looking = new wxStaticText(sheet_, wxID_ANY, shown(say("L&ooking")));
    looking_ = new wxChoice(sheet_, wxID_ANY);
    for (const std::string& way : ways_of_looking()) looking_->Append(shown(way));
    looking_->SetSelection(0);
    ask_ = new wxButton(sheet_, wxID_ANY, shown(say("Ten &questions")));
    why_ = new wxButton(sheet_, wxID_ANY, shown(say("&Why?")));
    row->Add(label, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, FromDIP(kNear)));
    row->Add(colours_, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, FromDIP(kApart)));
    row->Add(looking, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, FromDIP(kNear)));
    row->Add(looking_, wxSizerFlags{}.CentreVertical());
    row->AddStretchSpacer();
    row->Add(ask_, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, FromDIP(kNear)));
    row->Add(why_, wxSizerFlags{}.CentreVertical());
    return row;
}

wxBoxSizer* VerdictPage::columns() {
    dials_title_ = new WrappedText(sheet_, TextSize::heading);
    board_ = new DialBoard(sheet_);
    picture_ = new Picture(sheet_, say("What one bar costs, as a picture; Ctrl+G shows its figures"));
    figures_ = new Table(sheet_, say("The figures of the picture"), Sorting::as_given);
    tables_ = new Roomy<wxNotebook>(sheet_, wxID_ANY);
    tables_->SetMinSize(wxSize{-1, for_text(*this, kLeastTables)});  // what it stands on is seen; rows scroll
    set_accessible_name(*tables_, say("Figures"));
    side_by_side_ = new Table(tables_, say("Side by side"), Sorting::as_given);
    adds_up_ = new Table(tables_, say("How it adds up"), Sorting::as_given);
    how_sure_ = new Table(tables_, say("What matters most"), Sorting::as_given);
    would_help_ = new Table(tables_, say("What would help"), Sorting::as_given);
    hours_ = new Table(tables_, say("Where the hours went"), Sorting::as_given);
    answers_ = new Table(tables_, say("Your answers"), Sorting::as_given);
    answers_->Hide();
    show_tabs(false);
    // After the notebook: a text made right before a control becomes the control's name.
    picture_sentence_ = new WrappedText(sheet_, TextSize::small);
    stands_on_ = new WrappedText(sheet_, TextSize::small);
    caution_ = new WrappedText(sheet_, TextSize::small);

    auto* figures = new wxBoxSizer(wxVERTICAL);
    figures->Add(tables_, wxSizerFlags{1}.Expand());
    figures->Add(caution_, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(kApart)));
    figures->Add(stands_on_, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(kApart)));
    auto* dials = new wxBoxSizer(wxVERTICAL);
    dials->Add(dials_title_, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kNear)));
    dials->Add(board_, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kApart)));
    dials->Add(picture_, wxSizerFlags{1}.Expand());
    dials->Add(figures_, wxSizerFlags{}.Expand());
    dials->Add(picture_sentence_, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(kNear)));
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(dials, wxSizerFlags{1}.Expand());
    row->Add(FromDIP(kEdge), FromDIP(kEdge));
    row->Add(figures, wxSizerFlags{1}.Expand());
    return row;
}

}  // namespace dyestead::gui
