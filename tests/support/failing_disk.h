// failing_disk.h - SQLite's own file layer, of which the nth write, sync, cut or delete fails, and
// all after it, as on a full disk. For tests of what is left then.
#pragma once

#include <sqlite3.h>

namespace dyestead::test {

class FailingDisk {
public:
    FailingDisk() {
        real_ = sqlite3_vfs_find(nullptr);
        shim_ = *real_;
        shim_.zName = "failing";
        shim_.pNext = nullptr;
        shim_.xOpen = open;
        shim_.xDelete = remove;
        sqlite3_vfs_register(&shim_, 1);
    }
    ~FailingDisk() {
        left_ = -1;
        sqlite3_vfs_unregister(&shim_);
        sqlite3_vfs_register(real_, 1);
    }
    FailingDisk(const FailingDisk&) = delete;
    FailingDisk& operator=(const FailingDisk&) = delete;

    // So many operations still work; then none does, until healed.
    void fail_after(int count) { left_ = count; }
    void heal() { left_ = -1; }

private:
    static bool fails() { return left_ == 0 || (left_ > 0 && --left_ == 0); }

    // SQLite has one table of functions for files that it locks, and one for journals.
    struct Methods {
        sqlite3_io_methods ours;
        const sqlite3_io_methods* real;
    };

    static const sqlite3_io_methods* real(sqlite3_file* file) {
        return file->pMethods == &methods_[0].ours ? methods_[0].real : methods_[1].real;
    }

    static int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* out) {
        const int result = real_->xOpen(real_, name, file, flags, out);
        if (!file->pMethods) return result;
        Methods& methods = methods_[(flags & SQLITE_OPEN_MAIN_DB) != 0 ? 0 : 1];
        methods.real = file->pMethods;
        methods.ours = *methods.real;
        methods.ours.xWrite = [](sqlite3_file* f, const void* bytes, int size, sqlite3_int64 at) {
            return fails() ? SQLITE_FULL : real(f)->xWrite(f, bytes, size, at);
        };
        methods.ours.xSync = [](sqlite3_file* f, int how) {
            return fails() ? SQLITE_IOERR_FSYNC : real(f)->xSync(f, how);
        };
        methods.ours.xTruncate = [](sqlite3_file* f, sqlite3_int64 size) {
            return fails() ? SQLITE_IOERR_TRUNCATE : real(f)->xTruncate(f, size);
        };
        file->pMethods = &methods.ours;
        return result;
    }
    static int remove(sqlite3_vfs*, const char* name, int sync) {
        return fails() ? SQLITE_IOERR_DELETE : real_->xDelete(real_, name, sync);
    }

    static inline int left_ = -1;
    static inline sqlite3_vfs* real_ = nullptr;
    static inline sqlite3_vfs shim_{};
    static inline Methods methods_[2]{};
};

}  // namespace dyestead::test
