#include "gui/models/today/today_place.h"

#include <algorithm>

#include "domain/decisions/records.h"
#include "domain/ledger/notes.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/note_form.h"
#include "gui/models/today/due.h"
#include "gui/models/today/jotting_form.h"
#include "gui/models/today/work_form.h"
#include "reports/words/fact_words.h"
#include "reports/words/finding_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::say;
using reports::say_count;

namespace {

constexpr int kSoon = 7;  // days that count beside the place's name
constexpr int kAhead = 30;

enum List : std::size_t { kDue, kJottings, kNotAddingUp, kTime, kNotes };

Listing due_list(const std::vector<Due>& all, std::string_view find) {
    Listing list{.name = say("To see to"),
                 .table = {.title = say("To see to"), .columns = {{say("when")}, {say("what")}, {say("where")}}},
                 .empty = say("Nothing is waiting. Jot down what you did today; a few words are enough.")};
    for (const Due& each : all) {
        if (!holds({each.what, each.advice}, find)) continue;
        list.table.rows.push_back({day_cell(each.day), words_cell(each.what), words_cell(place_name(each.place))});
        list.rows.push_back(each.about);
    }
    return list;
}

Listing jotting_list(const Books& books, std::string_view find) {
    Listing list{.name = say("Jottings"),
                 .table = {.title = say("Still to be entered"), .columns = {{say("on")}, {say("what")}}},
                 .empty = say("Nothing jotted down. Ctrl+J takes ten words from anywhere; enter them properly later.")};
    std::vector<const Jotting*> open;
    for (const Jotting& jotting : books.shop.all<Jotting>())
        if (!jotting.done && holds({jotting.text}, find)) open.push_back(&jotting);
    std::ranges::stable_sort(open, [](const auto* one, const auto* other) { return one->date > other->date; });
    for (const Jotting* jotting : open) {
        list.table.rows.push_back({day_cell(jotting->date), words_cell(jotting->text)});
        list.rows.push_back(ref(*jotting));
    }
    return list;
}

// One finding for each line that is shown: the first with its words.
FactRef fact_called(const Books& books, const reports::FindingLine& line) {
    for (const Finding& finding : books.ledger.findings)
        if (reports::code_of(finding.code) == line.code && name_of(books.shop, finding.about) == line.fact)
            return finding.about;
    return {};
}

Listing finding_list(const Books& books, std::string_view find) {
    Listing list{.name = say("Does not add up"),
                 .table = {.title = say("Does not add up"), .columns = {{say("what")}, {say("where")}}},
                 .empty = say("Everything adds up.")};
    for (const reports::FindingLine& line : reports::finding_lines(books.shop, books.ledger.findings)) {
        if (!holds({line.text, line.fact}, find)) continue;
        list.table.rows.push_back({words_cell(line.text), words_cell(line.fact)});
        list.rows.push_back(fact_called(books, line));
    }
    return list;
}

Listing time_list(const Books& books, std::string_view find) {
    Listing list{.name = say("Time"),
                 .table = {.title = say("Time that belongs to nothing else"),
                           .columns = {{say("on")}, {say("what")}, {say("how long"), Align::right}, {say("who")}}},
                 .empty = say("No such time yet. Ctrl+T notes cleaning, paperwork and posting from anywhere.")};
    std::vector<const Work*> all;
    for (const Work& work : books.shop.all<Work>())
        if (holds({work.what}, find)) all.push_back(&work);
    std::ranges::stable_sort(all, [](const auto* one, const auto* other) { return one->date > other->date; });
    for (const Work* work : all) {
        const double minutes = number(work->time.time);
        list.table.rows.push_back({day_cell(work->date), words_cell(work->what),
                                   number_cell(minutes, reports::shown_minutes(minutes)),
                                   work->who ? words_cell(reports::called(books.shop, *work->who)) : no_cell()});
        list.rows.push_back(ref(*work));
    }
    return list;
}

Listing note_list(const Books& books, std::string_view find) {
    Listing list{
        .name = say("Notes"),
        .table = {.title = say("Notes"),
                  .columns = {{say("on")}, {say("of what")}, {say("where")}, {say("note")}, {say("file")}}},
        .empty = say("No note yet. Select a line at any place; Ctrl+M writes a note on it, or keeps the name of a "
                     "photograph or bill.")};
    std::vector<const Note*> all;
    for (const Note& note : books.shop.all<Note>())
        if (holds({note.text.value_or(""), note.file.value_or("")}, find)) all.push_back(&note);
    std::ranges::stable_sort(all, [](const auto* one, const auto* other) { return one->date > other->date; });
    for (const Note* note : all) {
        const auto about = fact_ref(note->about);
        const bool there = about && !name_of(books.shop, *about).empty();
        list.table.rows.push_back(
            {day_cell(note->date),
             words_cell(there ? reports::fact_words(books.shop, *about) : say("a record that is gone")),
             there ? words_cell(reports::fact_place(books.shop, *about)) : no_cell(),
             words_cell(note->text.value_or("")), words_cell(note->file.value_or(""))});
        list.rows.push_back(ref(*note));
    }
    return list;
}

class TodayPlace : public PlaceModel {
public:
    explicit TodayPlace(std::function<std::vector<RunningClock>()> clocks) : clocks_{std::move(clocks)} {}

    std::string state(const Books& books) const override {
        const std::size_t soon = waiting(books);
        const std::size_t wrong = reports::finding_lines(books.shop, books.ledger.findings).size();
        std::string things = soon == 0 ? say("Nothing has to be seen to within a week.")
                                       : say_count("One thing to see to within a week.",
                                                   "{count} things to see to within a week.", soon);
        if (wrong == 0) return things;
        const std::string lines = say_count("One thing does not add up.", "{count} things do not add up.", wrong);
        return say("{things} {lines}", arg("things", things), arg("lines", lines));
    }

    std::size_t waiting(const Books& books) const override { return all_due(books, kSoon).size(); }

    std::vector<Listing> listings(const Books& books, std::string_view find) const override {
        return {due_list(all_due(books), find), jotting_list(books, find), finding_list(books, find),
                time_list(books, find), note_list(books, find)};
    }

    std::vector<Doing> doings(std::size_t listing) const override {
        const Doing jot{.label = say("&Jot something down"),
                        .begin = [](const Writing& writing, std::optional<FactRef>) -> std::optional<Form> {
                            return jotting_form(writing);
                        }};
        const Doing time{.label = say("&Time for something else"),
                         .begin = [](const Writing& writing, std::optional<FactRef>) -> std::optional<Form> {
                             return work_form(writing);
                         }};
        const Doing done{.label = say("&Seen to, or not needed"),
                         .to_selected = true,
                         .at_once = [](const Writing& writing, std::optional<FactRef> row) {
                             return jotting_done(writing, Key<Jotting>{row->key});
                         }};
        switch (listing) {
            case kJottings: return {jot, done, time};
            case kTime: return {time, jot};
            default: return {jot, time};
        }
    }

    Detail detail(const Books& books, std::size_t listing, FactRef row) const override {
        Detail told;
        if (listing == kDue) {
            const auto all = all_due(books);
            const auto found = std::ranges::find(all, row, &Due::about);
            if (found != all.end())
                told.sentence = say("{what}. {advice}", arg("what", found->what), arg("advice", found->advice));
        } else if (listing == kNotAddingUp) {
            for (const reports::FindingLine& line : reports::finding_lines(books.shop, books.ledger.findings))
                if (fact_called(books, line) == row) told.sentence = line.text;
        } else if (listing == kJottings) {
            if (const Jotting* jotting = books.shop.find(Key<Jotting>{row.key})) told.sentence = jotting->text;
        } else if (listing == kNotes) {
            if (const Note* note = books.shop.find(Key<Note>{row.key})) told.sentence = note->text.value_or("");
        } else if (const Work* work = books.shop.find(Key<Work>{row.key})) {
            told.sentence = say("{what}, {time}.", arg("what", work->what),
                                arg("time", reports::shown_minutes(number(work->time.time))));
        }
        return told;
    }

    std::optional<Place> leads_to(const Books& books, std::size_t listing, FactRef row) const override {
        if (listing != kDue) return std::nullopt;
        const auto all = all_due(books);
        const auto found = std::ranges::find(all, row, &Due::about);
        return found == all.end() ? std::nullopt : std::optional{found->place};
    }

    std::optional<Form> correct(const Writing& writing, FactRef row) const override {
        if (row.kind == kKindOf<Jotting>) return jotting_form(writing, Key<Jotting>{row.key});
        if (row.kind == kKindOf<Note>) return note_form(writing, Key<Note>{row.key});
        if (row.kind == kKindOf<Work>) return work_form(writing, Key<Work>{row.key});
        return std::nullopt;
    }

private:
    std::vector<Due> all_due(const Books& books, int days = kAhead) const {
        return due(books, days, clocks_ ? clocks_() : std::vector<RunningClock>{});
    }

    std::function<std::vector<RunningClock>()> clocks_;
};

}  // namespace

std::unique_ptr<PlaceModel> today_place(std::function<std::vector<RunningClock>()> clocks) {
    return std::make_unique<TodayPlace>(std::move(clocks));
}

}  // namespace dyestead::gui
