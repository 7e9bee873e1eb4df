#include "gui/frame.h"

#include <wx/display.h>
#include <wx/infobar.h>
#include <wx/listbox.h>
#include <wx/persist/toplevel.h>
#include <wx/simplebook.h>
#include <wx/sizer.h>
#include <algorithm>

#include "gui/commands.h"
#include "gui/desktop/desktop.h"
#include "gui/guarded.h"
#include "gui/models/bench/bench_place.h"
#include "gui/models/cupboard/cupboard_place.h"
#include "gui/models/cupboard/shelf_forms.h"
#include "gui/models/garden/garden_place.h"
#include "gui/models/stall/stall_place.h"
#include "gui/models/today/jotting_form.h"
#include "gui/models/today/today_place.h"
#include "gui/models/today/work_form.h"
#include "gui/models/vat/vat_place.h"
#include "gui/places/books_page.h"
#include "gui/places/empty_page.h"
#include "gui/places/keys_page.h"
#include "gui/places/verdict_page.h"
#include "gui/places/work_page.h"
#include "gui/widgets/heading.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/roomy.h"
#include "gui/widgets/table.h"
#include "gui/widgets/text.h"
#include "gui/widgets/text_scale.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;

namespace {

const wxSize kFirstSize{1200, 760};
const wxSize kLeastSize{760, 520};
constexpr int kListWidth = 138;

}  // namespace

Frame::Frame(std::unique_ptr<FileChooser> chooser, Place first)
    : wxFrame(nullptr, wxID_ANY, "Dyestead", wxDefaultPosition, wxDefaultSize, wxDEFAULT_FRAME_STYLE, "dyestead_frame"),
      chooser_{std::move(chooser)},
      settings_{"dyestead"},
      place_{first} {
    recent_.Load(settings_);
    SetMenuBar(make_menus(recent_));
    build();
    bind_commands();
    SetIcons(program_picture());
    SetMinSize(FromDIP(kLeastSize));
    SetSize(FromDIP(kFirstSize));
    wxPersistentRegisterAndRestore(this, "frame");
    const wxRect screen = wxDisplay(this).GetClientArea();
    SetSize(std::min(GetSize().x, screen.width), std::min(GetSize().y, screen.height));
    empty_->say({});
    show_place();
    Layout();
}

void Frame::build() {
    auto* all = new wxPanel(this);
    list_ = new Roomy<wxListBox>(all, wxID_ANY, wxDefaultPosition, wxSize{for_text(*this, kListWidth), -1}, 0, nullptr,
                                 wxLB_SINGLE | wxBORDER_NONE);
    for (const Place place : kPlaces) list_->Append(shown(place_name(place)));
    list_->SetFont(list_->GetFont().Scaled(1.1F));
    set_accessible_name(*list_, reports::say("Places"));
    switch_off_type_ahead(*list_);
    give_rows_room(*list_, FromDIP(kApart), FromDIP(kNear));

    auto* right = new wxPanel(all);
    heading_ = new Heading(right);
    heading_->on_writing_day = [this](const std::string& day) { write_for(day); };
    bar_ = new wxInfoBar(right);
    pages_ = new wxSimplebook(right);
    for (const Place place : kPlaces) {
        Page* made = nullptr;
        switch (place) {
            case Place::cupboard: made = new WorkPage(pages_, *this, cupboard_place()); break;
            case Place::vat: made = new WorkPage(pages_, *this, vat_place()); break;
            case Place::verdict: made = verdict_ = new VerdictPage(pages_, *this); break;
            case Place::today:
                made =
                    new WorkPage(pages_, *this,
                                 today_place([this] { return open_ ? open_->clocks() : std::vector<RunningClock>{}; }));
                break;
            case Place::bench: made = new WorkPage(pages_, *this, bench_place()); break;
            case Place::garden: made = new WorkPage(pages_, *this, garden_place()); break;
            case Place::stall: made = new WorkPage(pages_, *this, stall_place()); break;
            case Place::books: made = new BooksPage(pages_, *this); break;
        }
        places_[static_cast<std::size_t>(place)] = made;
        pages_->AddPage(made, shown(place_name(place)));
    }
    empty_ = new EmptyPage(
        pages_, [this] { ask_and_open(); }, [this] { make_new(); });
    pages_->AddPage(empty_, shown(nothing_open()));
    keys_ = new KeysPage(pages_);
    pages_->AddPage(keys_, shown(reports::say("Keys")));
    build_pan();

    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(heading_, wxSizerFlags{}.Expand().Border(wxLEFT | wxRIGHT | wxTOP, FromDIP(kEdge)));
    column->AddSpacer(FromDIP(kNear));
    column->Add(bar_, wxSizerFlags{}.Expand());
    column->Add(pages_, wxSizerFlags{1}.Expand());
    right->SetSizer(column);
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    row->Add(list_, wxSizerFlags{}.Expand());
    row->Add(right, wxSizerFlags{1}.Expand());
    all->SetSizer(row);
    auto* whole = new wxBoxSizer(wxVERTICAL);
    whole->Add(all, wxSizerFlags{1}.Expand());
    SetSizer(whole);
}

void Frame::bind_commands() {
    const auto on = [this](int id, std::string_view what, auto act) {
        Bind(
            wxEVT_MENU, [this, what, act](wxCommandEvent&) { guarded(what, [&] { (this->*act)(); }); }, id);
    };
    on(wxID_OPEN, "opening a shop file", &Frame::ask_and_open);
    on(wxID_NEW, "beginning a new shop", &Frame::make_new);
    on(kNextPart, "going to the next part", &Frame::next_part);
    on(kKeys, "showing the keys", &Frame::show_keys);
    on(kAbout, "showing what the program is", &Frame::show_about);
    on(kSavePage, "saving a page", &Frame::save_page);
    on(kPrintPage, "printing", &Frame::print_page);
    on(kPreviewPage, "showing pages to print", &Frame::preview_page);
    on(kNewHere, "beginning an entry", &Frame::begin_new);
    on(kNoteThis, "beginning a note", &Frame::note_selected);
    on(wxID_UNDO, "undoing", &Frame::undo);
    on(wxID_REDO, "redoing", &Frame::redo);
    on(kWriteAnyway, "opening for writing", &Frame::write_anyway);
    // The bar's own buttons send events of their own.
    bar_->Bind(
        wxEVT_BUTTON, [this](wxCommandEvent&) { guarded("undoing", [this] { undo(); }); }, wxID_UNDO);
    bar_->Bind(
        wxEVT_BUTTON,
        [this](wxCommandEvent&) { CallAfter([this] { guarded("opening for writing", [this] { write_anyway(); }); }); },
        kWriteAnyway);
    const auto record = [this](int id, Place place, Form (*form)(const Writing&)) {
        Bind(
            wxEVT_MENU,
            [this, place, form](wxCommandEvent&) { guarded("beginning an entry", [&] { begin_at(place, form); }); },
            id);
    };
    record(kJot, Place::today, [](const Writing& now) { return jotting_form(now); });
    record(kNoteTime, Place::today, [](const Writing& now) { return work_form(now); });
    record(kNoteLoss, Place::cupboard, [](const Writing& now) { return loss_form(now); });
    Bind(
        wxEVT_MENU, [this](wxCommandEvent&) { guarded("reading again", [&] { read_again(true); }); }, kReadAgain);
    Bind(
        wxEVT_MENU, [this](wxCommandEvent&) { guarded("closing", [&] { Close(); }); }, wxID_EXIT);
    Bind(
        wxEVT_MENU,
        [this](wxCommandEvent&) {
            guarded("showing figures", [&] {
                if (open_) page()->show_figures();
            });
        },
        kFigures);
    Bind(
        wxEVT_MENU,
        [this](wxCommandEvent&) { guarded("going back to the records", [&] { verdict_->back_to_records(); }); },
        kBackToRecords);
    Bind(
        wxEVT_MENU,
        [this](wxCommandEvent&) {
            guarded("finding", [&] {
                if (open_) page()->find();
            });
        },
        wxID_FIND);
    Bind(
        wxEVT_MENU,
        [this](wxCommandEvent& event) {
            guarded("going to a place", [&] {
                go_to(kPlaces[static_cast<std::size_t>(event.GetId() - kFirstPlace)]);
                take_focus();
            });
        },
        kFirstPlace, kLastPlace);
    Bind(
        wxEVT_MENU,
        [this](wxCommandEvent& event) {
            guarded("opening a shop file", [&] { open_recent(event.GetId() - recent_.GetBaseId()); });
        },
        wxID_FILE1, wxID_FILE9);
    // Before the control that has the keyboard: lists and fields have uses of their own for some of these.
    Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
        const auto command = command_of(event.GetKeyCode(), event.GetModifiers());
        if (!command) return event.Skip();
        wxCommandEvent chosen(wxEVT_MENU, *command);
        ProcessWindowEvent(chosen);
    });
    list_->Bind(wxEVT_LISTBOX, [this](wxCommandEvent& event) {
        guarded("going to a place", [&] {
            if (event.GetSelection() >= 0) go_to(kPlaces[static_cast<std::size_t>(event.GetSelection())]);
        });
    });
    // Back from another program, perhaps the one that wrote to the file.
    Bind(wxEVT_ACTIVATE, [this](wxActivateEvent& event) {
        event.Skip();
        if (event.GetActive()) guarded("looking for changes", [&] { read_again(false); });
    });
}

Page* Frame::page() const {
    return places_[static_cast<std::size_t>(place_)];
}

void Frame::go_to(Place place) {
    leave_pan();
    place_ = place;
    bar_->Dismiss();  // what it said was about where one was
    show_place();
}

void Frame::go_to(Place place, FactRef record) {
    go_to(place);
    if (open_) page()->select(record);
}

void Frame::show_place() {
    if (pan_) return show_pan();
    const auto index = static_cast<std::size_t>(place_);
    if (list_->GetSelection() != static_cast<int>(index)) choose_row(*list_, static_cast<int>(index));
    if (open_) {
        if (behind_[index]) {
            behind_[index] = false;
            page()->show(open_->books());
        }
        heading_->say(place_, place_name(place_), page()->state(), day_sentence(open_->books()));
        heading_->show_writing_day(reports::shown_date(writing().day));
        pages_->ChangeSelection(index);
    } else {
        heading_->show_writing_day({});
        heading_->say(place_, place_name(place_), place_purpose(place_), {});
        pages_->ChangeSelection(kEmptyPage);
    }
    heading_->GetParent()->Layout();
}

void Frame::show_books() {
    const Books books = open_->books();
    // The other places are shown the books when they are gone to.
    behind_.fill(true);
    show_undo();
    show_what_can_be_recorded();
    show_waiting(books);
    const std::string name = shop_name(books.shop);
    SetTitle(shown(name.empty()   ? std::string{"Dyestead"}
                   : can_record() ? reports::say("{shop} - Dyestead", arg("shop", name))
                                  : reports::say("{shop}, only to be looked at - Dyestead", arg("shop", name))));
    show_place();
}

void Frame::show_waiting(const Books& books) {
    for (std::size_t i = 0; i < kPlaces.size(); ++i) {
        const std::size_t waiting = places_[i]->waiting(books);
        const std::string name = place_name(kPlaces[i]);
        const std::string line =
            waiting == 0 ? name : reports::say("{place}  {count}", arg("place", name), arg("count", waiting));
        if (typed(list_->GetString(static_cast<unsigned>(i))) != line)
            list_->SetString(static_cast<unsigned>(i), shown(line));
    }
}

void Frame::say(std::string_view sentence) {
    say_with(sentence, wxID_NONE, {});
}

void Frame::say_with(std::string_view sentence, int command, const std::string& label) {
    for (const int other : {static_cast<int>(wxID_UNDO), static_cast<int>(kWriteAnyway)})
        if (other != command && bar_->HasButtonId(other)) bar_->RemoveButton(other);
    if (command != wxID_NONE && !bar_->HasButtonId(command))
        bar_->AddButton(command, wxControl::RemoveMnemonics(shown(label)));
    bar_->ShowMessage(shown(sentence), wxICON_INFORMATION);
}

void Frame::show_keys() {
    leave_pan();
    pages_->ChangeSelection(kKeysPage);
    heading_->say(place_, reports::say("Keys"), reports::say("Everything can be done without a mouse."), {});
    keys_->table()->SetFocus();
}

void Frame::show_about() {
    say(reports::say(
        "Dyestead: what a bar of soap cost, and whether growing its colour is worth the hours. It keeps the "
        "records; a safety assessor and an accountant give the answers that are theirs."));
}

// The keyboard goes where work begins; from a place without controls back to the list.
void Frame::take_focus() {
    if (!open_) return empty_->focus_button();
    const auto parts = page()->parts();
    if (parts.empty()) {
        list_->SetFocus();
    } else {
        parts.front()->SetFocus();
    }
}

void Frame::next_part() {
    std::vector<wxWindow*> parts{list_};
    if (open_) {
        std::ranges::copy(page()->parts(), std::back_inserter(parts));
    }
    const wxWindow* focused = FindFocus();
    std::size_t next = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        for (const wxWindow* at = focused; at != nullptr; at = at->GetParent()) {
            if (at == parts[i]) next = (i + 1) % parts.size();
        }
    }
    if (!open_ && focused != nullptr && next == 0) return empty_->focus_button();
    parts[next]->SetFocus();
}

}  // namespace dyestead::gui
