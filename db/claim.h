// claim.h - has another window this shop open to write in it?
// A file beside the shop (.NAME.claim) says who: a courtesy, so that two people do not type the same entry twice.
// Nothing rests on it: what is written is right with or without (open_shop.h). It is locked while its window lives, so
// that one left behind by a crash is taken for what it is; where no file can be laid beside the shop there is no claim.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace dyestead::db {

struct Holder {
    std::string host;
    std::string program;
    std::int64_t since = 0;  // seconds since 1970-01-01 UTC; 0 for not known
};

enum class Claiming : std::uint8_t { if_free, anyway };

// Held while it lives.
class Claim {
public:
    Claim(const std::filesystem::path& shop, std::string_view program, Claiming how) noexcept;
    ~Claim();
    Claim(const Claim&) = delete;
    Claim& operator=(const Claim&) = delete;

    // Who else has it; nothing when it is ours, when there can be none, and when it was asked for anyway.
    const std::optional<Holder>& holder() const { return holder_; }

private:
    void take(const std::filesystem::path& shop, std::string_view program, Claiming how);

    std::filesystem::path path_;
    int file_ = -1;  // open and locked while it is ours
    std::optional<Holder> holder_;
};

}  // namespace dyestead::db
