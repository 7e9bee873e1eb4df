#include "db/backup.h"

#include <fmt/format.h>

#include <cstdlib>
#include <ctime>
#include <system_error>

#include "db/trouble.h"
#include "domain/text/amounts.h"

namespace dyestead::db {
namespace {

std::filesystem::path data_folder() {
    const char* data = std::getenv("XDG_DATA_HOME");
    if (data && std::filesystem::path{data}.is_absolute()) return data;
    const char* home = std::getenv("HOME");
    return std::filesystem::path{home ? home : "/"} / ".local" / "share";
}

// The day on the maker's own calendar.
std::string today() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    localtime_r(&now, &local);
    return print(
        day_of(local.tm_year + 1900, static_cast<unsigned>(local.tm_mon + 1), static_cast<unsigned>(local.tm_mday)));
}

}  // namespace

std::filesystem::path backup_folder(const OpenShop& shop) {
    return data_folder() / "dyestead" / "backups" / shop.file_id();
}

std::filesystem::path take_backup(OpenShop& shop) {
    const auto folder = backup_folder(shop);
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) throw ShopTrouble{TroubleId::cannot_write, folder};
    const std::string day = today();
    auto target = folder / (day + ".dyestead");
    for (int number = 2; std::filesystem::exists(target, error); ++number)
        target = folder / fmt::format("{}-{}.dyestead", day, number);
    shop.copy_to(target);
    return target;
}

}  // namespace dyestead::db
