// verdict_page.h - the Verdict: what the records say of a colour, side by side and as a picture, and what they would
// say if something were otherwise.
#pragma once

#include <memory>
#include <optional>

#include "gui/models/dials.h"
#include "gui/models/verdict_view.h"
#include "gui/places/page.h"

class wxBoxSizer;
class wxButton;
class wxChoice;
class wxInfoBar;
class wxNotebook;
class wxScrolledWindow;
class wxStaticText;

namespace dyestead::gui {

class DialBoard;
class FormKeeper;
class FormPanel;
class Picture;
class Table;
class WrappedText;

class VerdictPage : public Page {
public:
    VerdictPage(wxWindow* parent, Host& host);
    ~VerdictPage() override;

    void show(const Books& books) override;
    std::string state() const override;
    std::vector<wxWindow*> parts() override;
    void show_figures() override;
    // The ten questions are the place's own form.
    void begin_new() override;
    void begin(Form&& form) override;
    // What was tried out is forgotten.
    void back_to_records();

    // The verdict from the records, whatever is being tried out; nothing without a colour.
    std::optional<reports::Document> paper() const override;

private:
    void build();
    wxSizer* top_row();
    wxBoxSizer* columns();
    void show_colour();
    void show_verdict();
    void show_view(const VerdictView& view);
    void show_tables(const VerdictView& view);
    void show_tabs(bool from_memory);
    void closed_form();
    void settle();

    Host& host_;

    std::optional<Books> books_;
    ColourChoice choice_;
    std::optional<Key<Colour>> colour_;
    std::optional<Verdict> verdict_;
    std::optional<Dials> dials_;
    bool list_of_figures_ = false;
    wxSize settled_{};

    wxInfoBar* bar_ = nullptr;
    wxScrolledWindow* sheet_ = nullptr;
    wxChoice* colours_ = nullptr;
    wxChoice* looking_ = nullptr;  // back, or ahead from where one stands
    wxButton* ask_ = nullptr;
    wxButton* why_ = nullptr;
    FormPanel* form_ = nullptr;
    std::unique_ptr<FormKeeper> keeper_;
    WrappedText* headline_ = nullptr;
    std::vector<WrappedText*> lines_;
    WrappedText* stands_on_ = nullptr;
    WrappedText* caution_ = nullptr;
    wxNotebook* tables_ = nullptr;
    Table* side_by_side_ = nullptr;
    Table* adds_up_ = nullptr;
    Table* how_sure_ = nullptr;
    Table* would_help_ = nullptr;
    Table* hours_ = nullptr;
    Table* answers_ = nullptr;
    Picture* picture_ = nullptr;
    Table* figures_ = nullptr;
    WrappedText* picture_sentence_ = nullptr;
    WrappedText* dials_title_ = nullptr;
    DialBoard* board_ = nullptr;
    wxBoxSizer* below_ = nullptr;
};

}  // namespace dyestead::gui
