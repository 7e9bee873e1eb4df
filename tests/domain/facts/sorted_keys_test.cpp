// A key is found where it stands, however the keys are spread, and nothing else is.
#include <algorithm>
#include <random>
#include <set>
#include <vector>

#include <doctest/doctest.h>

#include "domain/facts/sorted_keys.h"

using namespace dyestead;

namespace {

struct Row {
    char before[24];
    std::int64_t key;
    char after[40];
};

void check_found(const std::set<std::int64_t>& keys) {
    std::vector<Row> rows(keys.size());
    std::transform(keys.begin(), keys.end(), rows.begin(), [](std::int64_t key) { return Row{{}, key, {}}; });
    const SortedKeys sorted{&rows.front().key, sizeof(Row), rows.size()};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CHECK(sorted.find(rows[i].key) == i);
        for (const std::int64_t beside : {rows[i].key - 1, rows[i].key == INT64_MAX ? 1 : rows[i].key + 1})
            CHECK((sorted.find(beside) == rows.size()) == !keys.contains(beside));
    }
}

}  // namespace

TEST_CASE("keys one after another, far apart, in heaps, and at the ends of what there is") {
    for (const std::int64_t size : {1, 2, 3, 15, 16, 17, 18, 100, 1'000}) {
        std::set<std::int64_t> following;
        std::set<std::int64_t> powers;
        std::set<std::int64_t> heaps{1, INT64_MAX};
        for (std::int64_t i = 1; i <= size; ++i) {
            following.insert(i);
            powers.insert(i * i * i * i);
            heaps.insert(i % 2 == 0 ? i : INT64_MAX / 3 * 2 + i);
        }
        check_found(following);
        check_found(powers);
        check_found(heaps);
    }
}

TEST_CASE("keys of a hash, and keys of a time with a number at random behind it") {
    std::mt19937_64 random{7};
    std::set<std::int64_t> hashes;
    std::set<std::int64_t> times;
    std::int64_t second = 1'700'000'000;
    for (int i = 0; i < 3'000; ++i) {
        hashes.insert(static_cast<std::int64_t>(random() >> 1));
        second += static_cast<std::int64_t>(random() % (i % 97 == 0 ? 1'000'000 : 40));
        times.insert(second << 31 | static_cast<std::int64_t>(random() % (std::int64_t{1} << 31)));
    }
    check_found(hashes);
    check_found(times);
}
