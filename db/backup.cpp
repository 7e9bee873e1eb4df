#include "db/backup.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>
#include <system_error>

#include "db/trouble.h"
#include "domain/text/amounts.h"

namespace dyestead::db {
namespace {

constexpr std::string_view kEnding = ".dyestead";

std::filesystem::path data_folder() {
    const char* data = std::getenv("XDG_DATA_HOME");
    if (data && std::filesystem::path{data}.is_absolute()) return data;
    const char* home = std::getenv("HOME");
    return std::filesystem::path{home ? home : "/"} / ".local" / "share";
}

// The day on the maker's own calendar.
Day today() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    localtime_r(&now, &local);
    return day_of(local.tm_year + 1900, static_cast<unsigned>(local.tm_mon + 1), static_cast<unsigned>(local.tm_mday));
}

}  // namespace

std::filesystem::path backup_folder(const std::string& file_id) {
    return data_folder() / "dyestead" / "backups" / file_id;
}

bool is_file_id(std::string_view text) {
    constexpr std::size_t kLetters = 32;
    return text.size() == kLetters && std::ranges::all_of(text, [](char letter) {
               return (letter >= '0' && letter <= '9') || (letter >= 'a' && letter <= 'z');
           });
}

std::filesystem::path place_for_backup(const std::string& file_id) {
    const auto folder = backup_folder(file_id);
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) throw ShopTrouble{TroubleId::cannot_write, folder};
    const std::string day = print(today());
    auto target = folder / (day + ".dyestead");
    for (int number = 2; std::filesystem::exists(target, error); ++number)
        target = folder / fmt::format("{}-{}.dyestead", day, number);
    return target;
}

std::filesystem::path take_backup(OpenShop& shop) {
    auto target = place_for_backup(shop.file_id());
    shop.copy_to(target);
    return target;
}

std::vector<std::string> old_backups(std::vector<std::string> names, Day today) {
    constexpr int kAllOf = 14;  // days
    constexpr std::size_t kDate = 10;
    std::ranges::sort(names);
    std::vector<std::string> old;
    std::string month_kept;
    for (const std::string& name : names) {
        const auto day = read_day(std::string_view{name}.substr(0, kDate));
        if (!day || !name.ends_with(kEnding) || *day > today - Days{kAllOf}) continue;
        const std::string month = name.substr(0, 7);
        if (month == month_kept)
            old.push_back(name);
        else
            month_kept = month;
    }
    return old;
}

void back_up_once_a_day(OpenShop& shop) {
    const auto folder = backup_folder(shop.file_id());
    std::error_code error;
    if (std::filesystem::exists(folder / (print(today()) + std::string{kEnding}), error)) return;
    take_backup(shop);
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator{folder, error})
        names.push_back(entry.path().filename().string());
    for (const std::string& name : old_backups(std::move(names), today()))
        std::filesystem::remove(folder / name, error);
}

}  // namespace dyestead::db
