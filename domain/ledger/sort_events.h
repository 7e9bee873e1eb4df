// sort_events.h - in which order do events stand by day, phase of the day, content and key?
#pragma once

#include <cstdint>
#include <vector>

#include "domain/ledger/order.h"

namespace dyestead {

// Gives of each event the place at which it stood before.
std::vector<std::uint32_t> sort_events(std::vector<Event>& events);

}  // namespace dyestead
