#include "db/unfinished.h"

#include <fmt/format.h>

#include <random>
#include <string_view>
#include <system_error>

#include "db/trouble.h"

namespace dyestead::db {
namespace {

std::filesystem::path with(const std::filesystem::path& path, std::string_view ending) {
    auto longer = path;
    longer += ending;
    return longer;
}

}  // namespace

Unfinished::Unfinished(const std::filesystem::path& target) : target_{target} {
    std::error_code ignored;
    const auto folder = target.has_parent_path() ? target.parent_path() : std::filesystem::path{"."};
    if (!std::filesystem::is_directory(folder, ignored)) throw ShopTrouble{TroubleId::no_such_folder, folder};
    // A journal left behind by another file of this name would be played into the new one.
    for (const auto& taken : {target, with(target, "-journal"), with(target, "-wal")})
        if (std::filesystem::exists(std::filesystem::symlink_status(taken, ignored)))
            throw ShopTrouble{TroubleId::already_there, taken};
    path_ = with(target, fmt::format(".{:08x}.part", std::random_device{}()));
}

Unfinished::~Unfinished() {
    std::error_code ignored;
    std::filesystem::remove(path_, ignored);
    std::filesystem::remove(with(path_, "-journal"), ignored);
}

void Unfinished::finish() {
    std::error_code error;
    std::filesystem::rename(path_, target_, error);
    if (error) throw ShopTrouble{TroubleId::cannot_write, target_};
}

}  // namespace dyestead::db
