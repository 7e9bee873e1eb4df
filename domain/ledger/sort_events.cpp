#include "domain/ledger/sort_events.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace dyestead {
namespace {

std::int64_t number(Day day) {
    return day.time_since_epoch().count();
}

// Day, phase and place of each event in one number, sorted: first into heaps of a day or, where the records reach over
// more days than there are of them, of some days; then each heap.
std::vector<std::int64_t> by_moment(const std::vector<Event>& events) {
    if (events.empty()) return {};
    const auto [first, last] = std::ranges::minmax_element(events, {}, &Event::day);
    const std::int64_t begun = number(first->day);
    int shift = 0;
    while ((number(last->day) - begun) >> shift > static_cast<std::int64_t>(events.size())) ++shift;
    const auto heap = [&](const Event& event) {
        return static_cast<std::size_t>((number(event.day) - begun) >> shift);
    };
    std::vector<std::size_t> ends(heap(*last) + 2);  // at first, where each begins
    for (const Event& event : events) ++ends[heap(event) + 1];
    std::partial_sum(ends.begin(), ends.end(), ends.begin());
    std::vector<std::int64_t> order(events.size());
    for (std::size_t i = 0; i < events.size(); ++i) {
        const std::int64_t moment = number(events[i].day) << 8 | static_cast<std::int64_t>(events[i].phase);
        order[ends[heap(events[i])]++] = moment << 32 | static_cast<std::int64_t>(i);
    }
    auto begin = order.begin();
    for (const std::size_t end : ends) {
        const auto until = order.begin() + static_cast<std::ptrdiff_t>(end);
        std::sort(begin, until);
        begin = until;
    }
    return order;
}

}  // namespace

// By day and phase first: events are large, and few share both.
std::vector<std::uint32_t> sort_events(std::vector<Event>& events) {
    const std::vector<std::int64_t> order = by_moment(events);
    std::vector<std::uint32_t> before;
    before.reserve(events.size());
    for (const std::int64_t each : order) before.push_back(static_cast<std::uint32_t>(each & UINT32_MAX));
    const auto by_content = [&](std::uint32_t one, std::uint32_t other) {
        const Event& a = events[one];
        const Event& b = events[other];
        return std::tie(a.content, a.kind, a.key, a.assumed) < std::tie(b.content, b.kind, b.key, b.assumed);
    };
    const auto at = [&](std::size_t place) { return before.begin() + static_cast<std::ptrdiff_t>(place); };
    for (std::size_t begin = 0; begin < order.size();) {
        std::size_t end = begin + 1;
        while (end < order.size() && order[end] >> 32 == order[begin] >> 32) ++end;
        if (end - begin > 1) std::sort(at(begin), at(end), by_content);
        begin = end;
    }
    std::vector<Event> sorted;
    sorted.reserve(events.size());
    for (const std::uint32_t each : before) sorted.push_back(events[each]);
    events = std::move(sorted);
    return before;
}

}  // namespace dyestead
