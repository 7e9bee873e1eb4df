// hours.h - whose hours went into what, in a period? The shop's own people only: the time of paid ones
// is a wage.
#pragma once

#include <optional>

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"

namespace dyestead {

enum class Stage : std::uint8_t {
    garden,
    harvest,
    vat,
    drying,
    bench,
    wrapping,
    fair,
    packing,
    before_the_books,  // in what was already here
    other,
};
inline constexpr std::size_t kStages = static_cast<std::size_t>(Stage::other) + 1;

// One record's time.
struct HourLine {
    FactRef fact;
    Stage stage{};
    std::optional<Key<Person>> who;  // blank: nobody is on record whose it could be
    Minutes time;
    Money labour;  // at the target in force that day
};

// In the order of the books.
std::vector<HourLine> hour_lines(const Shop& shop, const Ledger& ledger, Period period);

struct StageHours {
    Stage stage{};
    std::optional<Key<Person>> who;  // blank: nobody is on record whose it could be
    Minutes time;
    Money labour;  // at the target in force on each day
};

// One line for each stage and person with any, by stage, then by key. Their sum is what came into the
// books as hours (already here included) on those days.
std::vector<StageHours> hours(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead
