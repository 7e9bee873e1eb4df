// labels.h - the few words that the writers themselves put on paper.
#pragma once

#include <cstddef>
#include <string>

#include "reports/document.h"

namespace dyestead::reports {

std::string findings_heading();
std::string caution_word();

// Under the title: which day the report is about, and what its amounts are in.
std::string standing_line(const Document& document);

std::string page_of(std::size_t page, std::size_t pages);

}  // namespace dyestead::reports
