// recall_report.h - where did these goods go, what is in them, and what is to be done?
#pragma once

#include <string>
#include <variant>

#include "domain/ledger/ledger.h"
#include "domain/text/trouble.h"
#include "reports/document.h"

namespace dyestead::reports {

// `of`: what recall_start() understands; `from`: only lots that came or were made since, where `of` means several.
std::variant<Document, Trouble> recall_report(const Shop& shop, const Ledger& ledger,
                                              const std::optional<std::string>& of, std::optional<Day> from);

}  // namespace dyestead::reports
