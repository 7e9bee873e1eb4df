// labels.h - the few words that the writers themselves put on paper.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "reports/document.h"

namespace dyestead::reports {

std::string findings_heading();
std::string caution_word();

// Under the title: which day the report is about, and what its amounts are in.
std::string standing_line(const Document& document);

// A row of a table as a label: the first cell, then the cells that say something, each with its column's heading.
std::vector<std::string> label_lines(const Table& table, std::size_t row);

// A column that is written into by hand stands in the table.
bool is_written_on(const Table& table);

std::string page_of(std::size_t page, std::size_t pages);

}  // namespace dyestead::reports
