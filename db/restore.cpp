#include "db/restore.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>

#include <algorithm>
#include <system_error>
#include <tuple>

#include "db/backup.h"
#include "db/trouble.h"
#include "domain/text/amounts.h"

namespace dyestead::db {
namespace {

constexpr std::size_t kDate = 10;
constexpr std::string_view kEnding = ".dyestead";

// Blank when it cannot be read, or is none that could name a folder.
std::string id_of(const std::filesystem::path& path) {
    const SQLite::Database file{path.string(), SQLite::OPEN_READONLY};
    SQLite::Statement query{file, "SELECT id FROM file"};
    const std::string id = query.executeStep() ? query.getColumn(0).getString() : std::string{};
    return is_file_id(id) ? id : std::string{};
}

}  // namespace

std::optional<Backup> newest_backup(const std::filesystem::path& path) noexcept {
    try {
        const std::string id = id_of(path);
        if (id.empty()) return std::nullopt;
        std::optional<Backup> newest;
        std::error_code error;
        for (const auto& entry : std::filesystem::directory_iterator{backup_folder(id), error}) {
            const std::string name = entry.path().filename().string();
            const auto day = read_day(std::string_view{name}.substr(0, std::min(kDate, name.size())));
            if (!day || !name.ends_with(kEnding)) continue;
            // 2026-07-03.dyestead, then 2026-07-03-2, -3 ... -10.
            const auto order = [](Day taken, const std::string& of) { return std::tuple{taken, of.size(), of}; };
            const bool newer = !newest || order(*day, name) > order(newest->taken, newest->path.filename().string());
            if (newer) newest = Backup{entry.path(), *day};
        }
        return newest;
    } catch (const std::exception&) {
        return std::nullopt;
    }
}

std::filesystem::path lay_beside(const Backup& backup, const std::filesystem::path& damaged) {
    const std::string stem = fmt::format("{}, backup of {}", damaged.stem().string(), print(backup.taken));
    auto target = damaged.parent_path() / (stem + std::string{kEnding});
    std::error_code error;
    for (int number = 2; std::filesystem::exists(target, error); ++number)
        target = damaged.parent_path() / fmt::format("{} {}{}", stem, number, kEnding);
    if (!std::filesystem::copy_file(backup.path, target, error)) throw ShopTrouble{TroubleId::cannot_write, target};
    return target;
}

}  // namespace dyestead::db
