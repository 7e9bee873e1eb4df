#include "db/import.h"

#include <system_error>

#include "db/backup.h"
#include "db/csv_folder.h"
#include "db/trouble.h"

namespace dyestead::db {

std::optional<BroughtUp> import_folder(const std::filesystem::path& folder, const std::filesystem::path& shop_file,
                                       Existing existing) {
    const Shop records = read_csv_folder(folder);
    const Title title{"folder_imported", {{"folder", folder.string()}}};
    std::error_code ignored;
    if (!std::filesystem::exists(shop_file, ignored)) {
        OpenShop::create(shop_file, title, records);
        return std::nullopt;
    }
    if (existing == Existing::refuse) throw ShopTrouble{TroubleId::already_there, shop_file};
    OpenShop open = OpenShop::open(shop_file, Access::read_write);
    const Change change = difference(open.shop(), records);
    if (change.is_empty()) return open.brought_up();
    take_backup(open);
    if (open.commit(title, change) == Committed::file_had_changed) throw ShopTrouble{TroubleId::shop_busy, shop_file};
    return open.brought_up();
}

}  // namespace dyestead::db
