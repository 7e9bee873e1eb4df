// add_blocks.h - putting paragraphs and tables into a document; an empty one is left out.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "reports/document.h"

namespace dyestead::reports {

inline void add_paragraph(Document& to, std::string text, Tone tone = Tone::plain) {
    if (!text.empty()) to.blocks.push_back(Paragraph{std::move(text), tone});
}

inline void add_paragraphs(Document& to, std::vector<std::string> texts, Tone tone = Tone::plain) {
    for (std::string& text : texts) add_paragraph(to, std::move(text), tone);
}

inline void add_table(Document& to, Table table) {
    if (!table.rows.empty()) to.blocks.push_back(std::move(table));
}

}  // namespace dyestead::reports
