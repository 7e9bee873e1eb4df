// notes.h - which notes hang on a record, and what does a note hang on?
#pragma once

#include <optional>
#include <vector>

#include "domain/ledger/finding.h"

namespace dyestead {

AnyKey any_key(FactRef about);
// Nothing when no kind of record has that table. The record itself may be gone.
std::optional<FactRef> fact_ref(const AnyKey& any);

// On the record and on its lines; the oldest first.
std::vector<const Note*> notes_on(const Shop& shop, FactRef about);

}  // namespace dyestead
