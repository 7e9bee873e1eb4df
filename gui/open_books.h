// open_books.h - the shop file that the window shows and writes to, and the books its facts come to.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "db/claim.h"
#include "db/open_shop.h"
#include "domain/ledger/ledger.h"
#include "gui/models/form/form.h"
#include "gui/models/vat/at_the_pan.h"

namespace dyestead::gui {

class OpenBooks {
public:
    // Where the file cannot be written to, or another window has it, it is opened to be read.
    // Throws: db::ShopTrouble; the file is left as it is.
    OpenBooks(const std::filesystem::path& path, Day today, db::Claiming claiming);

    Books books() const { return {file_.shop(), ledger_}; }
    const std::filesystem::path& path() const { return file_.path(); }
    bool can_write() const { return can_write_; }
    // The other window, where that is why it cannot be written to.
    const std::optional<db::Holder>& held_by() const { return claim_.holder(); }
    // What opening did to a file of an earlier version.
    const std::optional<db::BroughtUp>& brought_up() const { return file_.brought_up(); }

    // Looks whether another program has changed the file; when it has, replays and says true.
    // Throws: db::ShopTrouble; what was read before stays.
    bool read_if_changed(Day today);

    // Saves at once, and reckons the books again. When another program had changed the file nothing is saved: the books
    // then are those of the file as it is now. Throws: db::ShopTrouble; file and books are as before.
    db::Committed keep(const Kept& kept, Day today);

    // What Undo and Redo would do next, in words: blank when there is nothing.
    std::string undo_words() const;
    std::string redo_words() const;
    // Nothing to undo but what was entered before the file was brought up.
    bool undo_is_closed() const { return file_.undo_is_closed(); }
    db::Committed undo(Day today);
    db::Committed redo(Day today);

    // A form half filled in, under its code. Trouble is swallowed: a draft that cannot be kept is no reason to stop.
    void keep_draft(const db::Draft& draft) noexcept;
    std::vector<db::Draft> drafts() noexcept;
    // The vats' clocks, which live among the drafts.
    const std::vector<RunningClock>& clocks() const { return clocks_; }

    // Why no backup could be taken before today's first change; blank when all is well.
    const std::string& backup_trouble() const { return backup_trouble_; }

private:
    void back_up() noexcept;
    void look_at_clocks() noexcept;

    db::Claim claim_;
    bool can_write_ = true;
    std::string backup_trouble_;
    db::OpenShop file_;
    Ledger ledger_;
    std::vector<RunningClock> clocks_;
};

}  // namespace dyestead::gui
