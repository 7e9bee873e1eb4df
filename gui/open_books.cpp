#include "gui/open_books.h"

#include "db/trouble.h"
#include "domain/ledger/replay.h"

namespace dyestead::gui {

namespace {

db::OpenShop open_shop(const std::filesystem::path& path, bool& can_write) {
    can_write = true;
    try {
        return db::OpenShop::open(path, db::Access::read_write);
    } catch (const db::ShopTrouble& trouble) {
        if (trouble.trouble.id != TroubleId::cannot_write) throw;
    }
    can_write = false;
    return db::OpenShop::open(path, db::Access::read_only);
}

}  // namespace

OpenBooks::OpenBooks(const std::filesystem::path& path, Day today)
    : file_{open_shop(path, can_write_)}, ledger_{replay(file_.shop(), shown_day(file_.shop(), today))} {}

bool OpenBooks::read_if_changed(Day today) {
    if (!file_.refresh()) return false;
    ledger_ = replay(file_.shop(), shown_day(file_.shop(), today));
    return true;
}

db::Committed OpenBooks::keep(const Kept& kept, Day today) {
    const db::Committed committed = file_.commit({kept.title, kept.args}, kept.change);
    ledger_ = replay(file_.shop(), shown_day(file_.shop(), today));
    return committed;
}

}  // namespace dyestead::gui
