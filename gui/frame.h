// frame.h - the one window: the list of places at the left, the chosen place at the right, and what went wrong said
// between heading and place, never in a box that has to be answered.
#pragma once

#include <wx/fileconf.h>
#include <wx/filehistory.h>
#include <wx/frame.h>
#include <wx/timer.h>
#include <array>
#include <filesystem>
#include <memory>
#include <optional>
#include <set>
#include <string>

#include "gui/file_chooser.h"
#include "gui/models/places.h"
#include "gui/models/vat/at_the_pan.h"
#include "gui/open_books.h"
#include "gui/places/page.h"

class wxInfoBar;
class wxListBox;
class wxSimplebook;

namespace dyestead::gui {

class EmptyPage;
class Heading;
class KeysPage;
class PanPage;
class VerdictPage;

class Frame : public wxFrame, public Host {
public:
    Frame(std::unique_ptr<FileChooser> chooser, Place first);

    // Shows the shop, or says in one sentence why it cannot and leaves the window empty.
    void open(const std::filesystem::path& path, db::Claiming claiming = db::Claiming::if_free);
    void go_to(Place place) override;
    void go_to(Place place, FactRef record) override;
    bool can_record() const override;
    bool may_record() override;
    bool can_correct(FactRef record) override;
    void correct(FactRef record) override;
    void show_paper(const reports::Document& document) override;
    void say(std::string_view sentence) override;
    Writing writing() override;
    bool keep(const Kept& kept) override;
    void keep_draft(const std::string& form, std::vector<std::pair<std::string, std::string>> fields) override;
    std::vector<std::pair<std::string, std::string>> draft_of(const std::string& form) override;
    void work_at_the_pan(std::optional<FactRef> selected) override;

private:
    void build();
    void bind_commands();
    void offer_backup(const std::filesystem::path& path);
    void ask_and_open();
    void make_new();
    void open_recent(int which);
    void read_again(bool say_if_same);
    void show_books();
    void show_waiting(const Books& books);
    // With a button beside it, which does what the command of that id does; without for wxID_NONE.
    void say_with(std::string_view sentence, int command, const std::string& label);
    void say_what_opening_did();
    void say_why_not_to_record();
    void write_anyway();
    void show_what_can_be_recorded();
    void begin_new();
    void note_selected();
    void undo();
    void redo();
    void after_undo(db::Committed committed, const std::string& sentence);
    void show_undo();
    void begin_at(Place place, Form (*form)(const Writing&));
    void write_for(const std::string& typed_day);
    void show_place();
    void show_keys();
    void show_about();
    void next_part();
    void take_focus();
    // What is shown as it goes on paper; nothing, and why said, where there is nothing yet.
    std::optional<reports::Document> paper();
    void save_page();
    void print_page();
    void preview_page();
    // Each says what came of it; nothing when the person thought better of it.
    std::string save(wxWindow* parent, const reports::Document& document);
    std::string print(wxWindow* parent, const reports::Document& document);
    Page* page() const;
    void build_pan();
    void show_pan();
    void leave_pan();
    void keep_pan();
    void pan_step_done();
    void look_at_the_clock();

    // Of the pages, those after the places.
    static constexpr std::size_t kEmptyPage = kPlaces.size();
    static constexpr std::size_t kKeysPage = kEmptyPage + 1;
    static constexpr std::size_t kPanPage = kKeysPage + 1;

    std::unique_ptr<FileChooser> chooser_;
    wxFileConfig settings_;
    wxFileHistory recent_{6};
    std::optional<OpenBooks> open_;
    Place place_;
    std::optional<Day> writing_for_;  // none: the day the books stand at

    wxListBox* list_ = nullptr;
    Heading* heading_ = nullptr;
    wxInfoBar* bar_ = nullptr;
    wxSimplebook* pages_ = nullptr;
    std::array<Page*, kPlaces.size()> places_{};
    std::array<bool, kPlaces.size()> behind_{};  // has not been shown the books as they are now
    VerdictPage* verdict_ = nullptr;
    EmptyPage* empty_ = nullptr;
    KeysPage* keys_ = nullptr;

    PanPage* pan_page_ = nullptr;
    std::optional<AtThePan> pan_;  // the vat that is worked live, while it fills the window
    std::set<Key<Vat>> told_it_stood_;
    wxTimer pan_timer_;
};

}  // namespace dyestead::gui
