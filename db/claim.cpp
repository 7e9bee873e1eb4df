#include "db/claim.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <charconv>
#include <ctime>
#include <system_error>

namespace dyestead::db {
namespace {

std::string host_name() {
    std::array<char, 256> name{};
    return gethostname(name.data(), name.size() - 1) == 0 ? name.data() : std::string{};
}

std::string read_all(int file) {
    std::array<char, 1'024> bytes{};
    const ssize_t size = pread(file, bytes.data(), bytes.size(), 0);
    return {bytes.data(), size > 0 ? static_cast<std::size_t>(size) : 0};
}

// Three lines: host, program, seconds.
Holder read_holder(std::string_view text) {
    const auto next_line = [&text] {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        return line;
    };
    Holder holder;
    holder.host = next_line();
    holder.program = next_line();
    const std::string_view since = next_line();
    std::from_chars(since.data(), since.data() + since.size(), holder.since);
    return holder;
}

void write_holder(int file, std::string_view program) {
    const std::string text = fmt::format("{}\n{}\n{}\n", host_name(), program, std::time(nullptr));
    // As much as can be written: a claim without its words is one too.
    if (ftruncate(file, 0) == 0) static_cast<void>(pwrite(file, text.data(), text.size(), 0) == 0);
}

}  // namespace

Claim::Claim(const std::filesystem::path& shop, std::string_view program, Claiming how) noexcept {
    try {
        take(shop, program, how);
    } catch (...) {
        file_ = -1;  // no room even for a name: then there is no claim
    }
}

void Claim::take(const std::filesystem::path& shop, std::string_view program, Claiming how) {
    std::error_code error;
    const auto where = std::filesystem::canonical(shop, error);  // by whatever link it was opened
    if (error || !std::filesystem::is_regular_file(where, error)) return;
    path_ = where.parent_path() / fmt::format(".{}.claim", where.filename().string());
    const int file = open(path_.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0666);
    if (file < 0) return;
    const bool locked = flock(file, LOCK_EX | LOCK_NB) == 0;
    const bool window_lives = !locked && errno == EWOULDBLOCK;
    const std::string text = read_all(file);
    const Holder other = read_holder(text);
    // A lock says nothing about another machine that shares the folder: there the words have to do.
    const bool elsewhere = !text.empty() && other.host != host_name();
    if (how == Claiming::if_free && (window_lives || elsewhere)) holder_ = other;
    if (!locked || holder_) {
        close(file);
        return;
    }
    write_holder(file, program);
    file_ = file;
}

Claim::~Claim() {
    if (file_ < 0) return;
    std::error_code ignored;
    std::filesystem::remove(path_, ignored);
    close(file_);
}

}  // namespace dyestead::db
