// work_page.h - a place to work at: its lists at the left, what is selected or being written at the right, the picture
// below. Shows any PlaceModel; what is in the lists and the forms is the model's.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "gui/models/place.h"
#include "gui/places/page.h"

namespace dyestead::gui {

class FormKeeper;
class Table;
class WrappedText;
struct WorkParts;

class WorkPage : public Page {
public:
    WorkPage(wxWindow* parent, Host& host, std::unique_ptr<PlaceModel> model);
    ~WorkPage() override;

    void show(const Books& books) override;
    std::string state() const override;
    std::vector<wxWindow*> parts() override;
    void find() override;
    void show_figures() override;
    void begin_new() override;
    void note_selected() override;
    void begin(Form&& form) override;
    bool can_correct(FactRef record) const override;
    void correct(FactRef record) override;
    std::size_t waiting(const Books& books) const override;
    std::optional<FactRef> selected() const override;
    void select(FactRef record) override;
    std::optional<reports::Document> paper() const override;

private:
    void arrange() override;
    void show_lists();
    void make_tabs();
    void make_buttons();
    void show_selected();
    void show_picture();
    void do_it(const Doing& doing);
    void open_selected();
    void correct_selected();
    void delete_selected();
    void closed_form();
    std::size_t tab() const;

    Host& host_;
    std::unique_ptr<PlaceModel> model_;
    std::unique_ptr<WorkParts> parts_;  // its controls
    std::optional<Books> books_;
    std::vector<Listing> listings_;
    std::vector<Doing> doings_;
    std::string letters_;  // that go with Alt here, beside those of a form

    std::vector<Table*> tables_;
    std::vector<WrappedText*> empties_;
    std::unique_ptr<FormKeeper> keeper_;
};

}  // namespace dyestead::gui
