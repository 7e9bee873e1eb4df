// begin_document.h - how every report begins: its name, the day it looks at, its currency and its title, and at its
// foot what does not add up.
#pragma once

#include <string>

#include "domain/ledger/ledger.h"
#include "reports/document.h"

namespace dyestead::reports {

Document begin_document(const Shop& shop, const Ledger& ledger, std::string report, std::string title);

}  // namespace dyestead::reports
