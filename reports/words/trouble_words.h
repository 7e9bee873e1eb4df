// trouble_words.h - what is wrong, where, and how is it mended? One plain sentence for each TroubleId.
#pragma once

#include <string>

#include "domain/text/trouble.h"

namespace dyestead::reports {

// harvest.csv, line 7, column amount: "3 flurbs" has no unit that is known; write it like 750 g, 1.5 l or 12.
std::string trouble_sentence(const Trouble& trouble);

// Some total of a report cannot be added up (Overflow): a record is far too large.
std::string too_large_sentence();

}  // namespace dyestead::reports
