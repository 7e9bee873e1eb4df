// sheets_report.h - the sheets to write on by hand, as one paper: each begins a page of its own.
#pragma once

#include <optional>
#include <variant>

#include "domain/text/trouble.h"
#include "reports/sheets/sheet.h"

namespace dyestead::reports {

// Those of one kind. Without a choice: a vat sheet for every method, a card for every planting that stands, the next
// fair; a blank one where there is none.
Document vat_sheets(const Shop& shop, const Ledger& ledger, std::optional<Key<Method>> method = std::nullopt);
Document garden_cards(const Shop& shop, const Ledger& ledger, std::optional<Key<Planting>> planting = std::nullopt);
Document count_sheets(const Shop& shop, const Ledger& ledger);
Document fair_sheets(const Shop& shop, const Ledger& ledger, std::optional<Key<Fair>> fair = std::nullopt);

// `of`: vat, garden, count or fair; or the code of a method, planting or fair. Without it all of them.
std::variant<Document, Trouble> sheets_report(const Shop& shop, const Ledger& ledger,
                                              const std::optional<std::string>& of);

}  // namespace dyestead::reports
