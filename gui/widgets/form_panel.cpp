#include "gui/widgets/form_panel.h"

#include <wx/button.h>
#include <wx/collpane.h>
#include <wx/sizer.h>
#include <algorithm>

#include "gui/guarded.h"
#include "gui/models/letters.h"
#include "gui/widgets/lines_part.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

FormPanel::FormPanel(wxWindow* parent)
    : wxScrolledWindow(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxVSCROLL | wxTAB_TRAVERSAL) {
    SetScrollRate(0, FromDIP(kApart));
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        lay_out();
    });
}

FormPanel::~FormPanel() = default;

void FormPanel::show(Form form, std::function<Writing()> writing, std::string letters) {
    form_ = std::move(form);
    letters_ = std::move(letters) + form_letters();
    writing_ = std::move(writing);
    build();
}

void FormPanel::close() {
    form_.reset();
    rows_.clear();
    lines_.clear();
    summary_ = nullptr;
    more_ = nullptr;
    DestroyChildren();
}

FieldRow& FormPanel::add_field(wxWindow* parent, wxFlexGridSizer& grid, std::size_t field) {
    FormField lettered = form_->fields[field];
    lettered.label = with_letter(lettered.label, letters_);
    rows_[field] = std::make_unique<FieldRow>(parent, grid, lettered, true);
    FieldRow& row = *rows_[field];
    row.on_typed = [this, field] { typed_into(field); };
    row.on_enter = [this, &row] { row.control()->Navigate(); };
    return row;
}

void FormPanel::build() {
    Freeze();
    rows_.clear();
    lines_.clear();
    DestroyChildren();
    more_ = nullptr;
    rows_.resize(form_->fields.size());

    auto* column = new wxBoxSizer(wxVERTICAL);
    auto* title = new WrappedText(this, TextSize::heading);
    title->say(form_->title);
    column->Add(title, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kNear)));
    for (const std::string& caution : form_->cautions) {
        auto* line = new WrappedText(this, TextSize::plain);
        line->say(caution);
        column->Add(line, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kNear)));
    }
    const auto new_grid = [this] {
        auto* grid = new wxFlexGridSizer(2, wxSize{0, FromDIP(2)});
        grid->AddGrowableCol(1);
        return grid;
    };
    auto* needed = new_grid();
    for (std::size_t i = 0; i < form_->fields.size(); ++i) {
        if (!form_->fields[i].more) add_field(this, *needed, i);
    }
    column->Add(needed, wxSizerFlags{}.Expand());
    for (const FormLines& each : form_->lines) {
        lines_.push_back(std::make_unique<LinesPart>(this, *column, each));
        lines_.back()->on_change = [this, id = each.id](std::vector<std::vector<std::string>> rows) {
            form_->lines_of(id).rows = std::move(rows);
            if (form_->look) form_->look(*form_, writing_());
            look_again();
            if (on_typed) on_typed();
        };
    }
    if (std::ranges::any_of(form_->fields, &FormField::more)) {
        // Left to itself it would size the whole window anew.
        more_ = new wxCollapsiblePane(this, wxID_ANY, shown(say("More, if you know it")), wxDefaultPosition,
                                      wxDefaultSize, wxCP_DEFAULT_STYLE | wxCP_NO_TLW_RESIZE);
        wxWindow* pane = more_->GetPane();
        auto* grid = new_grid();
        bool filled = false;
        for (std::size_t i = 0; i < form_->fields.size(); ++i) {
            if (!form_->fields[i].more) continue;
            add_field(pane, *grid, i);
            filled = filled || (!form_->fields[i].text.empty() && form_->fact);
        }
        pane->SetSizer(grid);
        if (filled) more_->Expand();
        more_->Bind(wxEVT_COLLAPSIBLEPANE_CHANGED,
                    [this](wxCollapsiblePaneEvent&) { guarded("showing more fields", [this] { lay_out(); }); });
        column->Add(more_, wxSizerFlags{}.Expand().Border(wxTOP | wxBOTTOM, FromDIP(kNear)));
    }
    summary_ = new WrappedText(this, TextSize::plain);
    summary_->say(form_->summary);
    column->Add(summary_, wxSizerFlags{}.Expand().Border(wxBOTTOM, FromDIP(kNear)));
    auto* keep = new wxButton(
        this, wxID_ANY, shown(form_->keep_label.empty() ? say("&Keep it  (Ctrl+Enter)") : form_->keep_label));
    auto* back = new wxButton(this, wxID_ANY, shown(say("Put &back")));
    keep->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) {
        CallAfter([this] {
            guarded("keeping an entry", [this] {
                if (on_keep) on_keep();
            });
        });
    });
    back->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) {
        CallAfter([this] {
            guarded("putting a form back", [this] {
                if (on_put_back) on_put_back();
            });
        });
    });
    auto* buttons = new wxBoxSizer(wxHORIZONTAL);
    buttons->Add(keep, wxSizerFlags{}.Border(wxRIGHT, FromDIP(kApart)));
    buttons->Add(back, wxSizerFlags{});
    column->Add(buttons, wxSizerFlags{}.Border(wxTOP | wxBOTTOM, FromDIP(kNear)));
    auto* edge = new wxBoxSizer(wxVERTICAL);
    edge->Add(column, wxSizerFlags{1}.Expand().Border(wxRIGHT, FromDIP(kApart)));
    SetSizer(edge);
    Thaw();
    lay_out();
    Scroll(0, 0);
}

void FormPanel::typed_into(std::size_t field) {
    form_->type(form_->fields[field].id, rows_[field]->text(), writing_());
    look_again();
    if (on_typed) on_typed();
}

void FormPanel::look_again(bool to_trouble) {
    bool moved = summary_->say(form_->summary);
    FieldRow* first = nullptr;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const FormField& field = form_->fields[i];
        rows_[i]->put(field);
        moved = rows_[i]->remark(field) || moved;
        if (!field.trouble.empty() && first == nullptr) {
            first = rows_[i].get();
            if (to_trouble && field.more && more_ != nullptr && more_->IsCollapsed()) more_->Expand();
        }
    }
    for (std::size_t i = 0; i < lines_.size(); ++i) lines_[i]->show(form_->lines[i]);
    if (moved) lay_out();
    if (to_trouble && first != nullptr) first->focus();
}

void FormPanel::focus_first() {
    const auto blank =
        std::ranges::find_if(form_->fields, [](const FormField& field) { return !field.more && field.text.empty(); });
    const std::size_t at = blank == form_->fields.end() ? 0 : static_cast<std::size_t>(blank - form_->fields.begin());
    if (at < rows_.size()) rows_[at]->focus();
}

void FormPanel::finish_lines() {
    for (const auto& part : lines_) part->add_what_is_typed();
}

// What wraps learns its width in the first layout and gets its height in the second.
void FormPanel::lay_out() {
    if (!form_) return;
    FitInside();
    Layout();
    if (more_ != nullptr) more_->GetPane()->Layout();
    FitInside();
    Layout();
}

}  // namespace dyestead::gui
