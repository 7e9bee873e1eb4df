#include "gui/places/work_page_layout.h"

#include <wx/button.h>
#include <wx/notebook.h>
#include <wx/simplebook.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>
#include <wx/wrapsizer.h>
#include <algorithm>

#include "gui/desktop/desktop.h"
#include "gui/places/work_page.h"
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

constexpr int kRightWidth = 408;
constexpr int kFindWidth = 180;
constexpr int kDetailHeight = 120;
constexpr int kPictureHeight = 170;
constexpr int kPictureWidth = 300;
constexpr std::size_t kBelowMiddle = 2;  // after the row of buttons and the middle

void told_part(WorkParts& parts, wxWindow& page) {
    parts.told = new wxPanel(parts.right);
    parts.sentence = new WrappedText(parts.told, TextSize::plain);
    parts.detail = new Table(parts.told, say("About what is selected"), Sorting::as_given);
    parts.detail->SetMinSize(wxSize{-1, for_text(page, kDetailHeight)});
    parts.caution = new WrappedText(parts.told, TextSize::small);
    parts.correct = new wxButton(parts.told, wxID_ANY, shown(say("&Correct it...")));
    parts.remove = new wxButton(parts.told, wxID_ANY, shown(say("De&lete it")));
    auto* buttons = new wxBoxSizer(wxHORIZONTAL);
    buttons->Add(parts.correct, wxSizerFlags{}.Border(wxRIGHT, page.FromDIP(kNear)));
    buttons->Add(parts.remove, wxSizerFlags{});
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(parts.sentence, wxSizerFlags{}.Expand().Border(wxBOTTOM, page.FromDIP(kNear)));
    column->Add(parts.detail, wxSizerFlags{1}.Expand().Border(wxBOTTOM, page.FromDIP(kNear)));
    column->Add(parts.caution, wxSizerFlags{}.Expand().Border(wxBOTTOM, page.FromDIP(kNear)));
    column->Add(buttons, wxSizerFlags{});
    parts.told->SetSizer(column);
}

// How the lists share the middle with what stands beside or under them.
void share_out(const WorkParts& parts, int lists, int beside) {
    parts.middle->GetItem(parts.tabs)->SetProportion(lists);
    parts.middle->GetItem(parts.beside)->SetProportion(beside);
}

}  // namespace

WorkParts lay_out_work(WorkPage& page, const std::vector<std::string>& cautions) {
    WorkParts parts{};
    auto* label = new wxStaticText(&page, wxID_ANY, shown(say("F&ind")));
    parts.find = new wxTextCtrl(&page, wxID_ANY, wxString{}, wxDefaultPosition, wxSize{for_text(page, kFindWidth), -1});
    parts.buttons = new wxPanel(&page);
    parts.buttons->SetSizer(new wxWrapSizer(wxHORIZONTAL, wxREMOVE_LEADING_SPACES));
    parts.tabs = new Roomy<wxNotebook>(&page, wxID_ANY);
    set_accessible_name(*parts.tabs, say("Lists"));
    parts.right = new wxSimplebook(&page);
    parts.right->SetMinSize(wxSize{for_text(page, kRightWidth), -1});
    told_part(parts, page);
    parts.form = new FormPanel(parts.right);
    parts.right->AddPage(parts.told, wxString{});
    parts.right->AddPage(parts.form, wxString{});

    parts.below = new wxSimplebook(&page);
    parts.below->SetMinSize(wxSize{-1, for_text(page, kPictureHeight)});
    parts.picture = new Picture(parts.below, say("A picture; Ctrl+G shows its figures"));
    parts.figures = new Table(parts.below, say("The figures of the picture"), Sorting::as_given);
    parts.below->AddPage(parts.picture, wxString{});
    parts.below->AddPage(parts.figures, wxString{});
    parts.below->Hide();
    parts.picture_says = new WrappedText(&page, TextSize::small);

    auto* finding = new wxBoxSizer(wxHORIZONTAL);  // level with the first row of buttons
    finding->SetMinSize(wxSize{-1, wxButton::GetDefaultSize(&page).y});
    finding->Add(label, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, page.FromDIP(kNear)));
    finding->Add(parts.find, wxSizerFlags{}.CentreVertical().Border(wxRIGHT, page.FromDIP(kApart)));
    auto* top = new wxBoxSizer(wxHORIZONTAL);
    top->Add(finding, wxSizerFlags{}.Top());
    top->Add(parts.buttons, wxSizerFlags{1}.Expand());
    parts.beside = new wxBoxSizer(wxHORIZONTAL);
    parts.beside->Add(parts.right, wxSizerFlags{1}.Expand());
    parts.pictured = new wxBoxSizer(wxVERTICAL);
    parts.pictured->Add(parts.below, wxSizerFlags{1}.Expand().Border(wxTOP, page.FromDIP(kNear)));
    parts.pictured->Add(parts.picture_says, wxSizerFlags{}.Expand());
    parts.middle = new wxBoxSizer(wxHORIZONTAL);
    parts.middle->Add(parts.tabs, wxSizerFlags{3}.Expand());
    parts.middle->AddSpacer(page.FromDIP(kApart));
    parts.middle->Add(parts.beside, wxSizerFlags{2}.Expand());
    auto* column = new wxBoxSizer(wxVERTICAL);
    parts.column = column;
    column->Add(top, wxSizerFlags{}.Expand().Border(wxBOTTOM, page.FromDIP(kNear)));
    column->Add(parts.middle, wxSizerFlags{1}.Expand());
    column->Add(parts.pictured, wxSizerFlags{}.Expand());
    for (const std::string& caution : cautions) {
        auto* line = new WrappedText(&page, TextSize::small);
        line->say(caution);
        column->Add(line, wxSizerFlags{}.Expand().Border(wxTOP, page.FromDIP(2)));
    }
    auto* edge = new wxBoxSizer(wxVERTICAL);
    edge->AddSpacer(page.FromDIP(kNear));
    edge->Add(column, wxSizerFlags{1}.Expand().Border(wxLEFT | wxRIGHT | wxBOTTOM, page.FromDIP(kEdge)));
    page.SetSizer(edge);
    return parts;
}

void stand_side_by_side(const WorkParts& parts, Wider wider) {
    share_out(parts, wider == Wider::lists ? 3 : 2, wider == Wider::lists ? 2 : 3);
    parts.right->SetMinSize(wxSize{for_text(*parts.tabs, kRightWidth), -1});
    if (parts.middle->GetOrientation() == wxHORIZONTAL) return;
    parts.beside->Detach(parts.pictured);
    parts.column->Insert(kBelowMiddle, parts.pictured, wxSizerFlags{}.Expand());
    parts.middle->SetOrientation(wxHORIZONTAL);
}

// A few words about what is selected need less height than a table or a picture; and the table's words take what width
// the picture can spare.
void stand_stacked(const WorkParts& parts) {
    const bool words_alone = !parts.detail->IsShown() && !parts.below->IsShown();
    share_out(parts, 3, words_alone ? 1 : 2);
    const int least = for_text(*parts.tabs, kRightWidth);
    const int most = parts.tabs->GetParent()->GetClientSize().x - for_text(*parts.tabs, kPictureWidth);
    const int wanted = parts.detail->IsShown() ? parts.detail->full_width() : 0;
    parts.right->SetMinSize(wxSize{std::max(least, std::min(wanted, most)), -1});
    if (parts.middle->GetOrientation() == wxVERTICAL) return;
    parts.column->Detach(parts.pictured);
    parts.beside->Add(parts.pictured, wxSizerFlags{1}.Expand().Border(wxLEFT, parts.tabs->FromDIP(kApart)));
    parts.middle->SetOrientation(wxVERTICAL);
}

}  // namespace dyestead::gui
