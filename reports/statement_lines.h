// statement_lines.h - what is each line of the statements called where it is asked for: "stock.pigment",
// "losses.spilled", "hours.garden", "in.online", "out.goods"? As its figure is, in every language.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/ledger/follow.h"

namespace dyestead::reports {

struct NamedLine {
    std::string name;
    StatementLine line;
};

// All of them: first the terms of the books (in, stock, sold ...), then line by line.
const std::vector<NamedLine>& statement_lines();
std::optional<StatementLine> line_called(std::string_view name);
// As people say it.
std::string line_words(const StatementLine& line);

}  // namespace dyestead::reports
