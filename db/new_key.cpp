#include "db/new_key.h"

#include <chrono>
#include <mutex>
#include <random>

namespace dyestead::db {

std::int64_t key_after(std::int64_t last, std::int64_t seconds, std::uint32_t chance) {
    constexpr int kRandomBits = 31;
    constexpr std::uint32_t kRandom = 0x7FFF'FFFF;
    constexpr std::uint32_t kStep = 0xF'FFFF;  // two thousand keys in a second before they run into the next
    seconds &= 0xFFFF'FFFF;
    if (seconds <= last >> kRandomBits) return last + 1 + (chance & kStep);
    return seconds << kRandomBits | (chance & kRandom);
}

std::int64_t new_key_number() {
    using std::chrono::sys_days;
    constexpr sys_days kStart = std::chrono::year{2020} / 1 / 1;
    static std::mutex one_at_a_time;
    static std::random_device chance;
    static std::int64_t last = 0;
    const std::lock_guard lock{one_at_a_time};
    const auto since = std::chrono::system_clock::now() - kStart;
    last = key_after(last, std::chrono::duration_cast<std::chrono::seconds>(since).count(), chance());
    return last;
}

}  // namespace dyestead::db
