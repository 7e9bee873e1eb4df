#include "db/new_key.h"

#include <chrono>
#include <random>

namespace dyestead::db {

std::int64_t new_key_number() {
    using std::chrono::sys_days;
    constexpr sys_days kStart = std::chrono::year{2020} / 1 / 1;
    static thread_local std::random_device chance;
    const auto since = std::chrono::system_clock::now() - kStart;
    const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(since).count() & 0xFFFF'FFFF;
    const std::int64_t random = chance() & 0x7FFF'FFFF;
    const std::int64_t number = (seconds << 31) | random;
    return number == 0 ? 1 : number;
}

}  // namespace dyestead::db
