// The frame's part that has to do with records: the day they are written for, saving them, and what was saved.
#include <wx/infobar.h>

#include "db/new_key.h"
#include "db/trouble.h"
#include "domain/text/typed.h"
#include "gui/frame.h"
#include "gui/models/form/field_values.h"
#include "gui/today.h"
#include "gui/widgets/heading.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/trouble_words.h"

namespace dyestead::gui {

using reports::arg;

Writing Frame::writing() {
    const Books books = open_->books();
    return {.books = books, .day = writing_for_.value_or(books.as_of()), .new_key_number = db::new_key_number};
}

void Frame::write_for(const std::string& typed_day) {
    if (!open_) return;
    const Day before = writing().day;
    const auto day = read_typed_day(typed_day, before);
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
    if (!open_) return false;
    if (!open_->can_write()) {
        say(
            reports::say("This shop file cannot be written to, so nothing was saved; copy it to a folder of your own "
                         "and open it there."));
        return false;
    }
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
    say_with_undo(kept.consequence ? kept.consequence(writing()) : reports::say("Kept."));
    return true;
}

void Frame::begin_new() {
    if (open_) page()->begin_new();
}

void Frame::begin_at(Place place, Form (*form)(const Writing&)) {
    if (!open_) return;
    go_to(place);
    page()->begin(form(writing()));
}

}  // namespace dyestead::gui
