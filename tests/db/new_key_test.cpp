#include "db/new_key.h"

#include <doctest/doctest.h>

#include <set>

namespace dyestead::db {

TEST_CASE("keys made one after another rise, and are keys") {
    std::int64_t before = 0;
    for (int i = 0; i < 5'000; ++i) {
        const std::int64_t key = new_key_number();
        REQUIRE(key > before);
        before = key;
    }
    const std::int64_t seconds = before >> 31;  // since 2020
    CHECK(seconds > 200'000'000);
}

TEST_CASE("a second begins at random and goes on from there") {
    constexpr std::int64_t kSecond = 200'000'000;
    const std::int64_t first = key_after(0, kSecond, 0xFFFF'FFFE);
    CHECK(first == (kSecond << 31 | 0x7FFF'FFFE));
    CHECK(key_after(first, kSecond, 0) == first + 1);
    CHECK(key_after(first, kSecond, 0xFFFF'FFFF) == first + 1'048'576);
    CHECK(key_after(first, kSecond + 1, 5) == ((kSecond + 1) << 31 | 5));
}

TEST_CASE("a clock that was set back gives no smaller key") {
    const std::int64_t first = key_after(0, 1'000, 7);
    const std::int64_t second = key_after(first, 10, 7);
    CHECK(second == first + 8);
    CHECK(key_after(second, 1'001, 3) > second);
}

TEST_CASE("two copies that make keys in the same second do not make the same ones") {
    // Of 2^31 places each takes a hundred: about one pair of copies in two hundred thousand would meet.
    std::set<std::int64_t> seen;
    std::uint32_t chance = 12'345;
    const auto any = [&chance] { return chance = chance * 1'664'525 + 1'013'904'223; };
    for (int copy = 0; copy < 20; ++copy) {
        std::int64_t last = 0;
        for (int i = 0; i < 100; ++i) {
            last = key_after(last, 1'000, any());
            CHECK(seen.insert(last).second);
        }
    }
}

}  // namespace dyestead::db
