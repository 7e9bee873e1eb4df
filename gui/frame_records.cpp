// The frame's part that has to do with records: the day they are written for, saving them, and what was saved.
#include <wx/infobar.h>
#include <wx/menu.h>
#include <algorithm>

#include "db/new_key.h"
#include "db/trouble.h"
#include "domain/text/typed.h"
#include "gui/frame.h"
#include "gui/models/form/field_values.h"
#include "gui/today.h"
#include "gui/widgets/heading.h"
#include "gui/widgets/text.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/trouble_words.h"

namespace dyestead::gui {

using reports::arg;

Writing Frame::writing() {
    const Books books = open_->books();
    return {.books = books,
            .day = writing_for_.value_or(books.as_of()),
            .new_key_number = db::new_key_number,
            .utc_offset = minutes_ahead_of_utc};
}

void Frame::write_for(const std::string& typed_day) {
    if (!open_) return;
    const Day before = writing().day;
    const auto day = read_typed_day(typed_day, before, reports::month_names());
    if (day) {
        writing_for_ = *day;
        if (*day > open_->books().as_of())
            say(
                reports::say("Writing for {day}: what you enter counts from that day on, which is after the day the "
                             "books stand at.",
                             arg("day", reports::shown_date(*day))));
    } else {
        say(field_trouble(*day.trouble, typed_day));
    }
    heading_->show_writing_day(reports::shown_date(writing().day));
}

bool Frame::keep(const Kept& kept) {
    if (!may_record()) return false;
    try {
        if (open_->keep(kept, today()) == db::Committed::file_had_changed) {
            show_books();
            say(
                reports::say("Another program had just changed this shop, so nothing was saved yet; the lists now show "
                             "what it holds. Look again and keep your entry once more."));
            return false;
        }
    } catch (const db::ShopTrouble& trouble) {
        say(reports::trouble_sentence(trouble.trouble));
        return false;
    }
    show_books();
    std::string sentence = kept.consequence ? kept.consequence(writing()) : reports::say("Kept.");
    if (!open_->backup_trouble().empty())
        sentence = reports::say("{sentence} But no backup could be taken today: {trouble}", arg("sentence", sentence),
                                arg("trouble", open_->backup_trouble()));
    say_with(sentence, wxID_UNDO, reports::say("Undo"));
    return true;
}

void Frame::undo() {
    if (!may_record()) return;
    const std::string what = open_->undo_words();
    if (what.empty() && open_->undo_is_closed())
        return say(
            reports::say("There is nothing to undo: what was entered before this file was brought up to this version "
                         "of the program stays, and is corrected where it stands."));
    if (what.empty()) return say(reports::say("There is nothing to undo."));
    try {
        after_undo(open_->undo(today()), reports::say("Undone: {what}. Redo brings it again.", arg("what", what)));
    } catch (const db::ShopTrouble& trouble) {
        say(reports::trouble_sentence(trouble.trouble));
    }
}

void Frame::redo() {
    if (!may_record()) return;
    const std::string what = open_->redo_words();
    if (what.empty()) return say(reports::say("There is nothing to redo."));
    try {
        after_undo(open_->redo(today()), reports::say("Done again: {what}.", arg("what", what)));
    } catch (const db::ShopTrouble& trouble) {
        say(reports::trouble_sentence(trouble.trouble));
    }
}

void Frame::after_undo(db::Committed committed, const std::string& sentence) {
    show_books();
    say(committed == db::Committed::yes
            ? sentence
            : reports::say("Another program had just changed this shop, so nothing was undone; the lists now show what "
                           "it holds."));
}

// The menu names what Undo would take back; what does not fit there is cut.
void Frame::show_undo() {
    constexpr std::size_t kLongest = 60;
    const auto label = [](std::string words, const std::string& with, const std::string& without) {
        if (words.empty()) return without;
        if (words.size() > kLongest) {
            std::size_t end = kLongest;
            while (end > 0 && (static_cast<unsigned char>(words[end]) & 0xC0U) == 0x80U) --end;
            words = reports::say("{beginning}...", arg("beginning", words.substr(0, end)));
        }
        return reports::say(with, arg("what", words));
    };
    if (auto* item = GetMenuBar()->FindItem(wxID_UNDO))
        item->SetItemLabel(shown(label(open_->undo_words(), "&Undo {what}", reports::say("&Undo"))) + "\tCtrl+Z");
    if (auto* item = GetMenuBar()->FindItem(wxID_REDO))
        item->SetItemLabel(shown(label(open_->redo_words(), "&Redo {what}", reports::say("&Redo"))) + "\tCtrl+Shift+Z");
}

void Frame::keep_draft(const std::string& form, std::vector<std::pair<std::string, std::string>> fields) {
    if (!open_) return;
    const auto before = open_->clocks();
    open_->keep_draft({form, std::move(fields)});
    if (open_->clocks() == before) return;
    behind_[static_cast<std::size_t>(Place::today)] = true;
    show_waiting(open_->books());
}

std::vector<std::pair<std::string, std::string>> Frame::draft_of(const std::string& form) {
    if (!open_) return {};
    for (db::Draft& draft : open_->drafts())
        if (draft.form == form) return std::move(draft.fields);
    return {};
}

bool Frame::can_record() const {
    return open_ && open_->can_write();
}

bool Frame::may_record() {
    if (open_ && !can_record()) say_why_not_to_record();
    return can_record();
}

bool Frame::can_correct(FactRef record) {
    return open_ && std::ranges::any_of(places_, [&](const Page* each) { return each->can_correct(record); });
}

void Frame::correct(FactRef record) {
    if (!open_) return;
    const auto at = std::ranges::find_if(places_, [&](const Page* each) { return each->can_correct(record); });
    if (at == places_.end())
        return say(
            reports::say("This record cannot be corrected in a form; Undo takes it back if it was the last entry."));
    go_to(kPlaces[static_cast<std::size_t>(at - places_.begin())]);
    page()->correct(record);
}

void Frame::begin_new() {
    if (may_record()) page()->begin_new();
}

void Frame::note_selected() {
    if (may_record()) page()->note_selected();
}

void Frame::begin_at(Place place, Form (*form)(const Writing&)) {
    if (!may_record()) return;
    go_to(place);
    page()->begin(form(writing()));
}

}  // namespace dyestead::gui
