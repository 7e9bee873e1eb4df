// labels_report.h - a label for each lot of bars: what it is, from which batch, ready when, and what went in as far as
// it is on record. For the crate and the shelf; what must stand on a bar that is sold is for the law of the place to
// say.
#pragma once

#include <optional>
#include <variant>

#include "domain/ledger/ledger.h"
#include "domain/text/trouble.h"
#include "reports/document.h"

namespace dyestead::reports {

// `of`: the code of a batch or of a lot of bars; all lots of which bars are here without it.
std::variant<Document, Trouble> labels_report(const Shop& shop, const Ledger& ledger,
                                              const std::optional<std::string>& of);

}  // namespace dyestead::reports
