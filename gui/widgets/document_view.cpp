#include "gui/widgets/document_view.h"

#include <wx/sizer.h>
#include <algorithm>

#include "gui/guarded.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/picture.h"
#include "gui/widgets/table.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/overloaded.h"
#include "reports/words/say.h"
#include "reports/write/labels.h"

namespace dyestead::gui {

namespace {

constexpr int kTallestTable = 420;
constexpr int kPicture = 200;

}  // namespace

DocumentView::DocumentView(wxWindow* parent)
    : wxScrolledWindow(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxVSCROLL | wxTAB_TRAVERSAL) {
    SetScrollRate(0, FromDIP(kApart));
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        guarded("laying out a page", [this] { lay_out(); });
    });
}

void DocumentView::clear() {
    tables_.clear();
    DestroyChildren();
    SetSizer(nullptr);
}

void DocumentView::show(const reports::Document& document) {
    Freeze();
    clear();
    auto* column = new wxBoxSizer(wxVERTICAL);
    auto* title = new WrappedText(this, TextSize::heading);
    title->say(document.title);
    column->Add(title, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kNear)));
    for (const reports::Block& block : document.blocks) add(*column, block);
    if (!document.findings.empty()) {
        auto* heading = new WrappedText(this, TextSize::heading);
        heading->say(reports::say("Does not add up"));
        column->Add(heading, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(kApart)));
        for (const reports::FindingLine& line : document.findings) {
            auto* text = new WrappedText(this, TextSize::plain);
            text->say(line.text);
            column->Add(text, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(2)));
        }
    }
    auto* edge = new wxBoxSizer(wxVERTICAL);
    edge->Add(column, wxSizerFlags{1}.Expand().Border(wxLEFT | wxRIGHT, FromDIP(kApart)));
    SetSizer(edge);
    Thaw();
    lay_out();
    Scroll(0, 0);
    // The desktop gives new texts their fonts only when it first draws them; until then large ones measure too low.
    CallAfter([this] { guarded("laying out a page", [this] { lay_out(); }); });
}

void DocumentView::add(wxSizer& column, const reports::Block& block) {
    const auto text = [&](const std::string& words, TextSize size, int above) {
        auto* shown_text = new WrappedText(this, size);
        shown_text->say(words);
        column.Add(shown_text, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(above)));
    };
    std::visit(
        reports::Overloaded{[&](const reports::Headline& headline) { text(headline.text, TextSize::headline, kNear); },
                            [&](const reports::Paragraph& paragraph) {
                                text(paragraph.text,
                                     paragraph.tone == reports::Tone::small ? TextSize::small : TextSize::plain, kNear);
                            },
                            [&](const reports::Section& section) { text(section.text, TextSize::heading, kApart); },
                            [&](const reports::Table& table) {
                                if (!table.title.empty()) text(table.title, TextSize::heading, kApart);
                                if (table.as_labels) return add_labels(column, table);
                                auto* list = new Table(this, table.title, Sorting::as_given);
                                list->show(table);
                                list->SetMinSize({-1, std::min(list->full_height(), FromDIP(kTallestTable))});
                                tables_.push_back(list);
                                column.Add(list, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(kNear)));
                                if (!table.note.empty()) text(table.note, TextSize::small, 2);
                            },
                            [&](const reports::Chart& chart) {
                                if (!chart.title.empty()) text(chart.title, TextSize::heading, kApart);
                                auto* picture = new Picture(this, chart.title);
                                picture->show(chart.data);
                                picture->SetMinSize(FromDIP(wxSize{-1, kPicture}));
                                column.Add(picture, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(kNear)));
                                text(chart.sentence, TextSize::small, 2);
                            }},
        block);
}

void DocumentView::add_labels(wxSizer& column, const reports::Table& table) {
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const std::vector<std::string> lines = reports::label_lines(table, row);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            auto* line = new WrappedText(this, i == 0 ? TextSize::heading : TextSize::plain);
            line->say(lines[i]);
            column.Add(line, wxSizerFlags{}.Expand().Border(wxTOP, FromDIP(i == 0 ? kApart : 2)));
        }
    }
}

// What wraps learns its width in the first layout and gets its height in the second.
void DocumentView::lay_out() {
    if (GetSizer() == nullptr) return;
    FitInside();
    Layout();
    FitInside();
    Layout();
}

}  // namespace dyestead::gui
