// colours_short.h - which colour does not last for the batches planned, and is it to be bought in or fewer poured?
// The part of reorder.h that is about colourants: powder is not ordered, it is sown for a year or more ahead.
//
// Own powder counts for the plans before the next of it is dry, as usual: what is poured later is coloured by the next
// harvest. Bought in at equal shade: the dose of the standard over the match's strength. Fewer loaves: of the last of
// those plans first, with what their bars would have left over before own time, selling paid.
#pragma once

#include "domain/decisions/reorder.h"
#include "domain/ledger/holds.h"

namespace dyestead {

// `plans`: still to come, by day.
std::vector<ColourShort> colours_short(const Records& records, const Holds& held,
                                       const std::vector<const Plan*>& plans);

}  // namespace dyestead
