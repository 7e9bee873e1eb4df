// sheet_parts.h - what the sheets to write on have in common: empty rows, questions with room for an answer, cautions.
#pragma once

#include <string>
#include <vector>

#include "reports/document.h"

namespace dyestead::reports {

// In millimetres of paper, of what is written into a column.
inline constexpr int kRoomForFigure = 13;
inline constexpr int kRoomForTime = 15;
inline constexpr int kRoomForDay = 20;
inline constexpr int kRoomForName = 24;
inline constexpr int kRoomForWords = 45;

inline void add_empty_rows(Table& table, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i) table.rows.emplace_back(table.columns.size());
}

// Each question on a line of its own, with room beside it.
Table questions(std::string title, const std::vector<std::string>& asked);

// All in one frame, so that the sheet does not become a page of frames.
Paragraph cautions(const std::vector<std::string>& sentences);

}  // namespace dyestead::reports
