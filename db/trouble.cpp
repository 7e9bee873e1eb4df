#include "db/trouble.h"

#include <SQLiteCpp/Exception.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <new>

namespace dyestead::db {
namespace {

std::vector<TroubleArg> with_path(const std::filesystem::path& path, std::vector<TroubleArg> more) {
    more.insert(more.begin(), {"path", path.string()});
    return more;
}

TroubleId in_or_out(int extended) {
    switch (extended) {
        case SQLITE_IOERR_READ:
        case SQLITE_IOERR_SHORT_READ:
        case SQLITE_IOERR_FSTAT:
        case SQLITE_IOERR_ACCESS:
        case SQLITE_IOERR_RDLOCK: return TroubleId::cannot_read;
        default: return TroubleId::cannot_write;
    }
}

TroubleId id_of(const SQLite::Exception& error) {
    const int extended = error.getExtendedErrorCode();
    switch (error.getErrorCode() & 0xFF) {
        case SQLITE_FULL: return TroubleId::disk_full;
        case SQLITE_BUSY:
        case SQLITE_LOCKED: return TroubleId::shop_busy;
        case SQLITE_READONLY:
            return extended == SQLITE_READONLY_DBMOVED ? TroubleId::shop_moved : TroubleId::cannot_write;
        case SQLITE_IOERR: return in_or_out(extended);
        case SQLITE_CANTOPEN: return TroubleId::cannot_read;
        case SQLITE_PERM:
        case SQLITE_AUTH: return TroubleId::cannot_write;
        case SQLITE_NOTADB: return TroubleId::not_a_shop;
        case SQLITE_NOMEM: throw std::bad_alloc{};
        case SQLITE_CONSTRAINT:
            if (extended == SQLITE_CONSTRAINT_FOREIGNKEY) return TroubleId::no_such_reference;
            break;
        case SQLITE_CORRUPT:
        case SQLITE_FORMAT:
        case SQLITE_ERROR:  // a schema that does not parse
            return TroubleId::shop_damaged;
        default: break;
    }
    throw std::logic_error(fmt::format("SQLite {}: {}", extended, error.getErrorStr()));
}

}  // namespace

ShopTrouble::ShopTrouble(TroubleId id, const std::filesystem::path& path, std::vector<TroubleArg> more)
    : ShopTrouble{Trouble{id, with_path(path, std::move(more)), {}, 0, {}}} {}

void throw_trouble(const SQLite::Exception& error, const std::filesystem::path& path) {
    throw ShopTrouble{id_of(error), path};
}

}  // namespace dyestead::db
