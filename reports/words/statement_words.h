// statement_words.h - what the lines of the statements are called.
#pragma once

#include <string>
#include <string_view>

#include "domain/ledger/hours.h"
#include "domain/ledger/losses.h"
#include "domain/ledger/money_flow.h"
#include "domain/ledger/stock_value.h"
#include "domain/ledger/tie_outs.h"

namespace dyestead::reports {

std::string name_of(StockKind kind);
std::string name_of(LossKind kind);
std::string name_of(Stage stage);
std::string name_of(TakenAt at);
std::string name_of(PaidFor what);
std::string name_of(Tie tie);
// As the way by which cost came into the books, or a line of what a period cost.
std::string name_of(Boundary boundary);

// "dye_sunk": the last part of a figure's key, the same in every language.
std::string_view key_of(StockKind kind);
std::string_view key_of(LossKind kind);
std::string_view key_of(Stage stage);
std::string_view key_of(TakenAt at);
std::string_view key_of(PaidFor what);
std::string_view key_of(Boundary boundary);

}  // namespace dyestead::reports
