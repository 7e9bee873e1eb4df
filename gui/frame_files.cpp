// The frame's part that has to do with files: which shop is open, and pages written from it.
#include <wx/infobar.h>
#include <fstream>

#include "db/new_key.h"
#include "db/open_shop.h"
#include "db/restore.h"
#include "db/trouble.h"
#include "gui/commands.h"
#include "gui/frame.h"
#include "gui/language.h"
#include "gui/models/new_shop.h"
#include "gui/models/settings/settings_forms.h"
#include "gui/paper/paper_frame.h"
#include "gui/paper/printing.h"
#include "gui/places/empty_page.h"
#include "gui/places/verdict_page.h"
#include "gui/today.h"
#include "gui/widgets/text.h"
#include "reports/words/file_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/trouble_words.h"
#include "reports/write/html.h"
#include "reports/write/ics.h"
#include "reports/write/pdf.h"
#include "reports/write/xlsx.h"

namespace dyestead::gui {

using reports::arg;

namespace {

// Throws: db::ShopTrouble when the page cannot be written in full.
void write_page(const std::filesystem::path& path, const reports::Document& document) {
    const std::string bytes = path.extension() == ".html"                   ? reports::write_html(document)
                              : path.extension() == ".xlsx"                 ? reports::write_xlsx(document)
                              : path.extension() == ".ics" && document.days ? reports::write_ics(document)
                                                                            : reports::write_pdf(document);
    std::ofstream file(path, std::ios::binary);
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    file.close();
    if (!file) throw db::ShopTrouble(TroubleId::cannot_write, path);
}

}  // namespace

void Frame::open(const std::filesystem::path& path, db::Claiming claiming) {
    leave_pan();
    bar_->Dismiss();
    try {
        open_.emplace(std::filesystem::absolute(path), today(), claiming);
    } catch (const db::ShopTrouble& trouble) {
        open_.reset();
        show_what_can_be_recorded();
        const std::string sentence = reports::trouble_sentence(trouble.trouble);
        empty_->say(sentence);
        offer_backup(path);
        say(sentence);
        show_place();
        empty_->focus_button();
        return;
    }
    empty_->offer_backup({}, {});
    recent_.AddFileToHistory(shown(open_->path().string()));
    recent_.Save(settings_);
    settings_.Flush();
    show_books();
    take_focus();
    say_what_opening_did();
    look_at_the_clock();
}

void Frame::say_what_opening_did() {
    if (const auto& brought_up = open_->brought_up())
        return say(reports::brought_up_sentence(open_->path().filename().string(), brought_up->backup.string()));
    if (!open_->can_write()) say_why_not_to_record();
}

void Frame::say_why_not_to_record() {
    const auto& holder = open_->held_by();
    if (!holder)
        return say(reports::say(
            "This shop file cannot be written to, so here it is only to be looked at; to record something, "
            "copy it to a folder of your own and open it there."));
    if (holder->host.empty() || holder->since == 0)
        return say_with(
            reports::say(
                "Another window has this shop open, so here it is only to be looked at. Close it there and press "
                "F5, or open it for writing anyway."),
            kWriteAnyway, write_anyway_label());
    const Moment since = wall_clock().local(Instant{std::chrono::seconds{holder->since}});
    say_with(reports::say(
                 "{program} on {host} has had this shop open since {time}, so here it is only to be looked at. "
                 "Close it there and press F5, or open it for writing anyway.",
                 arg("program", holder->program), arg("host", holder->host), arg("time", reports::shown_moment(since))),
             kWriteAnyway, write_anyway_label());
}

// Only a courtesy stood in the way: what is saved is right with two windows as with one.
void Frame::write_anyway() {
    if (!open_ || !open_->held_by()) return;
    open(std::filesystem::path{open_->path()}, db::Claiming::anyway);
    if (can_record())
        say(reports::say(
            "Here this shop can be written to now. What the other window saves is shown when you come back "
            "to this one."));
}

void Frame::show_what_can_be_recorded() {
    for (const int command : recording_commands()) GetMenuBar()->Enable(command, !open_ || can_record());
    GetMenuBar()->Enable(kWriteAnyway, open_ && open_->held_by());
}

// Of a file that cannot be read: its newest backup, beside it as a file of its own.
void Frame::offer_backup(const std::filesystem::path& path) {
    const auto backup = db::newest_backup(path);
    if (!backup) return empty_->offer_backup({}, {});
    const std::string day = reports::shown_date(backup->taken);
    empty_->offer_backup(reports::say("Open the bac&kup of {day}", arg("day", day)), [this, path, backup, day] {
        try {
            const auto beside = db::lay_beside(*backup, path);
            open(beside);
            if (open_)
                say(reports::say(
                    "This is the backup of {day}, now in {path}. What was entered after it has to be entered "
                    "again; the damaged file is still where it was.",
                    arg("day", day), arg("path", beside.string())));
        } catch (const db::ShopTrouble& trouble) {
            say(reports::trouble_sentence(trouble.trouble));
        }
    });
}

void Frame::ask_and_open() {
    if (const auto path = chooser_->shop_to_open(this)) open(*path);
}

// A shop has a name and a currency from the start; both are asked for at once and can be corrected later.
void Frame::make_new() {
    const auto path = chooser_->shop_to_make(this);
    if (!path) return;
    try {
        db::OpenShop::create(*path, {std::string{reports::message("the shop begun")}, {}},
                             first_records(path->stem().string(), currency_here(), db::new_key_number()));
    } catch (const db::ShopTrouble& trouble) {
        return say(reports::trouble_sentence(trouble.trouble));
    }
    open(*path);
    if (!open_) return;
    go_to(Place::books);
    page()->begin(about_form(writing()));
    say(reports::say(
        "The shop is begun. Say what it is called and which money it counts in; then put down what is already "
        "here at the Cupboard, or enter the last delivery."));
}

void Frame::open_recent(int which) {
    open(typed(recent_.GetHistoryFile(static_cast<std::size_t>(which))));
}

void Frame::read_again(bool say_if_same) {
    if (!open_) return;
    if (say_if_same && open_->held_by()) {
        open(std::filesystem::path{open_->path()});
        if (can_record()) say(reports::say("No other window has this shop open any more; here it can be written to."));
        return;
    }
    try {
        if (open_->read_if_changed(today())) {
            show_books();
            say(reports::say("The shop file had changed; what you see is what it holds now."));
        } else if (say_if_same) {
            say(reports::say("Read again: the shop file holds what you see."));
        }
    } catch (const db::ShopTrouble& trouble) {
        say(reports::say("{trouble} What you see is as it was read before.",
                         arg("trouble", reports::trouble_sentence(trouble.trouble))));
    }
}

std::optional<reports::Document> Frame::paper() {
    auto document = open_ ? page()->paper() : std::nullopt;
    if (!document) say(reports::say("There is nothing here to put on paper yet; open a shop, or ask for something."));
    return document;
}

void Frame::save_page() {
    const auto document = paper();
    if (!document) return;
    if (const std::string told = save(this, *document); !told.empty()) say(told);
}

void Frame::print_page() {
    const auto document = paper();
    if (!document) return;
    if (const std::string told = print(this, *document); !told.empty()) say(told);
}

void Frame::preview_page() {
    if (const auto document = paper()) show_paper(*document);
}

void Frame::show_paper(const reports::Document& document) {
    auto* preview = new PaperFrame(
        this, document, [this](wxWindow* parent, const reports::Document& of) { return print(parent, of); },
        [this](wxWindow* parent, const reports::Document& of) { return save(parent, of); });
    preview->Show();
}

std::string Frame::save(wxWindow* parent, const reports::Document& document) {
    const auto path = chooser_->page_to_save(parent, document.report, document.days.has_value());
    if (!path) return {};
    write_page(*path, document);
    return reports::say("The page is in {path}.", arg("path", path->string()));
}

std::string Frame::print(wxWindow* parent, const reports::Document& document) {
    switch (print_document(parent, document)) {
        case Printed::yes: return reports::say("Sent to the printer: {title}.", arg("title", document.title));
        case Printed::thought_better: return {};
        case Printed::no:
            return reports::say(
                "It could not be printed. Look whether a printer is set up on this computer, or save the page as a PDF "
                "and print that.");
    }
    return {};
}

}  // namespace dyestead::gui
