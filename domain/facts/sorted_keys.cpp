#include "domain/facts/sorted_keys.h"

#include <algorithm>
#include <bit>

namespace dyestead {

// By how far the key is between the first and the last: keys are made of the time or of a hash, and so spread about
// evenly. A second look goes on from the key that was met. Requires: the key is not outside of the list's.
std::size_t SortedKeys::guess(std::int64_t key) const {
    const auto range = static_cast<std::uint64_t>(at(size_ - 1) - at(0));
    const int shift = std::max(0, static_cast<int>(std::bit_width(range)) - 31);
    const auto last = static_cast<std::int64_t>(size_) - 1;
    // Places for each unit of distance, in parts of 2^32. One at most, for no two keys are the same.
    const std::int64_t slope = (last << 32) / (static_cast<std::int64_t>(range >> shift) + 1);
    const auto steps = [&](std::int64_t distance) { return (distance >> shift) * slope >> 32; };
    constexpr int kLooks = 2;
    std::int64_t place = steps(key - at(0));
    for (int look = 0; look < kLooks; ++look)
        place = std::clamp<std::int64_t>(place + steps(key - at(static_cast<std::size_t>(place))), 0, last);
    return static_cast<std::size_t>(place);
}

std::size_t SortedKeys::find(std::int64_t key) const {
    constexpr std::size_t kFew = 16;  // as quickly halved
    std::size_t low = 0;
    std::size_t high = size_;
    if (size_ > kFew) {
        if (key < at(0) || key > at(size_ - 1)) return size_;
        // Around the guess, and ever wider where the key is not between.
        const std::size_t middle = guess(key);
        low = middle > kFew / 2 ? middle - kFew / 2 : 0;
        high = std::min(size_, middle + kFew / 2);
        for (std::size_t step = kFew; at(low) > key; step *= 2) {
            high = low;
            low = low > step ? low - step : 0;
        }
        for (std::size_t step = kFew; high < size_ && at(high) <= key; step *= 2) {
            low = high;
            high = std::min(size_, high + step);
        }
    }
    // Halved without a branch: which half it is cannot be foretold, and a wrong guess costs more than the step.
    for (std::size_t size = high - low; size > 1;) {
        const std::size_t half = size / 2;
        low = at(low + half) <= key ? low + half : low;
        size -= half;
    }
    return at(low) == key ? low : size_;
}

}  // namespace dyestead
