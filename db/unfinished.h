// unfinished.h - a name beside the target, under which a file is made until it is whole. Gone again if it never is.
#pragma once

#include <filesystem>

namespace dyestead::db {

class Unfinished {
public:
    // Throws: ShopTrouble already_there, no_such_folder.
    explicit Unfinished(const std::filesystem::path& target);
    ~Unfinished();
    Unfinished(const Unfinished&) = delete;
    Unfinished& operator=(const Unfinished&) = delete;

    const std::filesystem::path& path() const { return path_; }
    // Gives it the target's name. Throws: ShopTrouble cannot_write.
    void finish();

private:
    std::filesystem::path target_;
    std::filesystem::path path_;
};

}  // namespace dyestead::db
