// removal.h - what goes when a record is deleted, and what keeps it from going?
// Its own lines go with it, the lots it made and the notes on them. What refers to it from elsewhere holds it: those
// users are named.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/facts/change.h"
#include "domain/ledger/finding.h"
#include "gui/models/form/form.h"

namespace dyestead::gui {

struct Removal {
    Change change;
    std::vector<FactRef> users{};  // of the record or of what would go with it; when there are any it cannot go
};

Removal removal_of(const Shop& shop, FactRef fact);

// The removal as an entry that Undo takes back; nothing when it has users, and then `why_not` names them.
std::optional<Kept> delete_fact(const Writing& writing, FactRef fact, std::string& why_not);

}  // namespace dyestead::gui
