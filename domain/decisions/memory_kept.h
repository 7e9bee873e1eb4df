// memory_kept.h - what keeping the answers to the ten questions adds to the records: one Guess for each answer, and the
// colour itself when none of that name is on record.
#pragma once

#include <functional>

#include "domain/decisions/memory.h"
#include "domain/facts/change.h"

namespace dyestead {

// The colour of that name, whatever the case of its letters.
std::optional<Key<Colour>> colour_named(const Shop& shop, std::string_view name);
// Whether a vat of it was dried: then memory no longer counts.
bool records_decide(const Shop& shop, const Ledger& ledger, Key<Colour> colour);

struct MemoryKept {
    Change change;
    Key<Colour> colour;
};

// Blank answers are not kept; one given again on the same day is corrected. Requires: the colour is answered.
// `new_key`: numbers no record has yet.
MemoryKept memory_kept(const Shop& shop, const MemoryAnswers& answers, Day day,
                       const std::function<std::int64_t()>& new_key);

// The newest answers on record by a day, as they were typed, the colour's name with them. Empty: none.
MemoryAnswers answers_on_record(const Shop& shop, Key<Colour> colour, Day as_of);

}  // namespace dyestead
