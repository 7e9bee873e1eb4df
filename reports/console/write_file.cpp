#include "reports/console/write_file.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "db/trouble.h"

namespace dyestead::console {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void failed(const fs::path& path) {
    const bool full = errno == ENOSPC || errno == EDQUOT;
    throw db::ShopTrouble{full ? TroubleId::disk_full : TroubleId::cannot_write, path};
}

void write_all(int file, std::string_view bytes, const fs::path& path) {
    while (!bytes.empty()) {
        const ssize_t written = write(file, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) failed(path);
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
}

class OpenFile {
public:
    OpenFile(const fs::path& path, const fs::path& named, int flags)
        : file_{open(path.c_str(), O_WRONLY | O_CLOEXEC | flags, 0666)} {
        if (file_ < 0) failed(named);
    }
    ~OpenFile() {
        if (file_ >= 0) close(file_);
    }
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;

    int number() const { return file_; }
    int finish() { return close(std::exchange(file_, -1)); }

private:
    int file_;
};

}  // namespace

void write_file(const fs::path& path, std::string_view bytes) {
    std::error_code ignored;
    const auto status = fs::status(path, ignored);
    if (fs::exists(status) && !fs::is_regular_file(status)) {
        OpenFile file{path, path, 0};
        write_all(file.number(), bytes, path);
        return;
    }
    const auto folder = path.has_parent_path() ? path.parent_path() : fs::path{"."};
    if (!fs::is_directory(folder, ignored)) throw db::ShopTrouble{TroubleId::no_such_folder, folder};
    // A link stays a link: its target is what is replaced.
    const fs::path target = fs::is_symlink(fs::symlink_status(path, ignored)) ? fs::canonical(path, ignored) : path;
    fs::path part = target;
    part += fmt::format(".{}.part", getpid());
    try {
        OpenFile file{part, path, O_CREAT | O_EXCL};
        write_all(file.number(), bytes, path);
        if (fsync(file.number()) != 0 || file.finish() != 0) failed(path);
        if (rename(part.c_str(), target.c_str()) != 0) failed(path);
    } catch (const db::ShopTrouble&) {
        fs::remove(part, ignored);
        throw;
    }
}

void write_to_stdout(std::string_view bytes) {
    write_all(STDOUT_FILENO, bytes, "stdout");
}

}  // namespace dyestead::console
