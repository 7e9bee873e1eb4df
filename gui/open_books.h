// open_books.h - the shop file that the window shows, read only, and the ledger its facts come to.
#pragma once

#include <filesystem>

#include "db/open_shop.h"
#include "domain/ledger/ledger.h"
#include "gui/models/books.h"

namespace dyestead::gui {

class OpenBooks {
public:
    // Throws: db::ShopTrouble; the file is left as it is.
    OpenBooks(const std::filesystem::path& path, Day today);

    Books books() const { return {file_.shop(), ledger_}; }
    const std::filesystem::path& path() const { return file_.path(); }

    // Looks whether another program has changed the file; when it has, replays and says true.
    // Throws: db::ShopTrouble; what was read before stays.
    bool read_if_changed(Day today);

private:
    db::OpenShop file_;
    Ledger ledger_;
};

}  // namespace dyestead::gui
