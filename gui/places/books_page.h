// books_page.h - the Books: questions at the left, the answer at the right, ready to print; and what the shop goes by.
#pragma once

#include <optional>
#include <vector>

#include "gui/models/ask/questions.h"
#include "gui/places/page.h"

class wxButton;
class wxChoice;
class wxListBox;
class wxNotebook;
class wxStaticText;
class wxTextCtrl;

namespace dyestead::gui {

class DocumentView;
class WorkPage;
class WrappedText;

class BooksPage : public Page {
public:
    BooksPage(wxWindow* parent, Host& host);

    void show(const Books& books) override;
    std::string state() const override;
    std::vector<wxWindow*> parts() override;
    void find() override;
    void begin_new() override;
    void begin(Form&& form) override;
    bool can_correct(FactRef record) const override;
    void correct(FactRef record) override;
    std::optional<reports::Document> paper() const override;

private:
    void build_ask(wxWindow& page);
    // `about`: what it is about, where the question knows it; else the first.
    void choose_question(const std::string& about = {});
    // Offers what holds the words typed, with this one chosen where it is among all.
    void offer(const std::string& chosen);
    void ask();
    Asked asked() const;
    void hold_here();
    bool at_settings() const;

    Host& host_;
    std::optional<Books> books_;
    std::vector<BooksQuestion> questions_;
    std::optional<reports::Document> document_;

    wxNotebook* tabs_;
    wxListBox* list_;
    std::vector<Choice> offered_;  // of what the question can be about
    wxStaticText* find_label_;
    wxTextCtrl* find_;
    wxStaticText* about_label_;
    wxChoice* about_;
    wxTextCtrl* as_of_;
    wxStaticText* from_label_;
    wxTextCtrl* from_;
    WrappedText* trouble_;
    wxButton* hold_;
    DocumentView* answer_;
    WorkPage* settings_;
};

}  // namespace dyestead::gui
