// value_sitting.h - into which account does a sitting's time go? Into what was worked at, if that still
// holds something; with what is worked at the very same day before anything else becomes of it.
#pragma once

#include <map>

#include "domain/ledger/sittings.h"
#include "domain/ledger/value.h"

namespace dyestead {

class SittingBook {
public:
    SittingBook(Bookkeeper& books, const GardenBook& garden, const VatBook& vats, const BenchBook& bench);
    // The time of this day's sittings at the fact of the event, which was just posted.
    void same_day(const Event& event);
    // The time at what had been before this day.
    void post(const Sitting& fact);
    void post(const Work& fact);
    void post(const Equipment& fact);

private:
    void post(const SittingShare& share);
    Account account_of(const SittingShare& share);
    Account made(const SittingShare& share, std::optional<Key<Lot>> lot, Account otherwise);
    Account gone(const SittingShare& share, std::string code);

    Bookkeeper& books_;
    const GardenBook& garden_;
    const VatBook& vats_;
    const BenchBook& bench_;
    std::vector<SharedSitting> sittings_;
    std::map<std::pair<FactKind, std::int64_t>, std::vector<SittingShare>> same_day_;
};

}  // namespace dyestead
