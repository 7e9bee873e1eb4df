#include "gui/open_books.h"

#include "db/backup.h"
#include "db/trouble.h"
#include "domain/ledger/replay.h"
#include "gui/guarded.h"
#include "gui/today.h"
#include "reports/words/title_words.h"
#include "reports/words/trouble_words.h"

namespace dyestead::gui {

using reports::title_words;

namespace {

db::OpenShop open_shop(const std::filesystem::path& path, bool& can_write) {
    try {
        if (can_write) return db::OpenShop::open(path, db::Access::read_write);
    } catch (const db::ShopTrouble& trouble) {
        if (trouble.trouble.id != TroubleId::cannot_write) throw;
    }
    can_write = false;
    return db::OpenShop::open(path, db::Access::read_only);
}

}  // namespace

OpenBooks::OpenBooks(const std::filesystem::path& path, Day today, db::Claiming claiming)
    : claim_{path, "Dyestead", claiming},
      can_write_{!claim_.holder()},
      file_{open_shop(path, can_write_)},
      ledger_{replay(file_.shop(), shown_day(file_.shop(), today))} {
    look_at_clocks();
}

bool OpenBooks::read_if_changed(Day today) {
    if (!file_.refresh()) return false;
    ledger_ = replay(file_.shop(), shown_day(file_.shop(), today));
    return true;
}

void OpenBooks::back_up() noexcept {
    try {
        db::back_up_once_a_day(file_);
        backup_trouble_.clear();
    } catch (const db::ShopTrouble& trouble) {
        backup_trouble_ = reports::trouble_sentence(trouble.trouble);
    } catch (...) {
        report_failure("taking a backup", std::current_exception());
    }
}

std::string OpenBooks::undo_words() const {
    const auto next = file_.next_undo();
    return next ? title_words(next->code, next->args) : std::string{};
}

std::string OpenBooks::redo_words() const {
    const auto next = file_.next_redo();
    return next ? title_words(next->code, next->args) : std::string{};
}

db::Committed OpenBooks::undo(Day today) {
    back_up();
    const db::Committed committed = file_.undo();
    ledger_ = replay(file_.shop(), shown_day(file_.shop(), today));
    return committed;
}

db::Committed OpenBooks::redo(Day today) {
    back_up();
    const db::Committed committed = file_.redo();
    ledger_ = replay(file_.shop(), shown_day(file_.shop(), today));
    return committed;
}

void OpenBooks::keep_draft(const db::Draft& draft) noexcept {
    if (!can_write_) return;
    try {
        file_.keep_draft(draft);
    } catch (...) {
        report_failure("keeping a draft", std::current_exception());
    }
    look_at_clocks();
}

void OpenBooks::look_at_clocks() noexcept {
    clocks_.clear();
    for (const db::Draft& draft : drafts())
        if (const auto pan = read_pan(draft.form, draft.fields); pan && pan->clock.running)
            clocks_.push_back({pan->vat, wall_clock().local(*pan->clock.running)});
}

std::vector<db::Draft> OpenBooks::drafts() noexcept {
    try {
        return file_.drafts();
    } catch (...) {
        report_failure("reading drafts", std::current_exception());
        return {};
    }
}

db::Committed OpenBooks::keep(const Kept& kept, Day today) {
    back_up();
    const db::Committed committed = file_.commit({kept.title, kept.args}, kept.change);
    ledger_ = replay(file_.shop(), shown_day(file_.shop(), today));
    return committed;
}

}  // namespace dyestead::gui
