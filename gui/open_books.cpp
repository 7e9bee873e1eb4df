#include "gui/open_books.h"

#include "domain/ledger/replay.h"

namespace dyestead::gui {

OpenBooks::OpenBooks(const std::filesystem::path& path, Day today)
    : file_{db::OpenShop::open(path, db::Access::read_only)},
      ledger_{replay(file_.shop(), shown_day(file_.shop(), today))} {}

bool OpenBooks::read_if_changed(Day today) {
    if (!file_.refresh()) return false;
    ledger_ = replay(file_.shop(), shown_day(file_.shop(), today));
    return true;
}

}  // namespace dyestead::gui
