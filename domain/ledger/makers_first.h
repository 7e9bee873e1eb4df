// makers_first.h - of the events of a day, which has to wait for a lot that another of that day makes?
#pragma once

#include <cstdint>
#include <vector>

#include "domain/ledger/order.h"

namespace dyestead {

// A lot that an event makes or names. Events are counted as they were gathered, before they were sorted.
struct LotOfEvent {
    std::uint32_t event = 0;
    std::int64_t lot = 0;
};

// Within each day, moves every maker of a lot in front of the first event that names the lot.
// Requires: `events` in order of days; `gathered` says of each as which it was gathered; the lists in order of events.
void makers_first(std::vector<Event>& events, std::vector<std::uint32_t> gathered, const std::vector<LotOfEvent>& made,
                  const std::vector<LotOfEvent>& named);

}  // namespace dyestead
