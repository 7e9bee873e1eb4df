#include "reports/write/text.h"

#include <algorithm>

#include "reports/overloaded.h"
#include "reports/write/column_widths.h"
#include "reports/write/labels.h"
#include "reports/write/text_wrap.h"

namespace dyestead::reports {
namespace {

constexpr int kLine = 80;
constexpr int kColumnGap = 2;

std::string repeated(char c, int count) {
    return std::string(static_cast<std::size_t>(std::max(count, 0)), c);
}

void add_wrapped(std::string& out, std::string_view text, std::string_view first = "", std::string_view later = "") {
    std::string_view lead = first;
    for (const std::string& line : wrap_text(text, kLine - text_width(first))) {
        if (!line.empty()) out.append(lead).append(line);
        out += '\n';
        lead = later;
    }
}

void add_heading(std::string& out, std::string_view text, char rule) {
    int widest = 0;
    for (const std::string& line : wrap_text(text, kLine)) {
        out.append(line) += '\n';
        widest = std::max(widest, text_width(line));
    }
    out.append(repeated(rule, widest)) += '\n';
}

using Texts = std::vector<std::string>;

void add_row(std::string& out, const Texts& cells, const Table& table, const std::vector<int>& widths) {
    std::vector<Texts> lines;
    std::size_t height = 1;
    for (std::size_t c = 0; c < widths.size(); ++c) {
        lines.push_back(wrap_text(cells[c], widths[c]));
        height = std::max(height, lines.back().size());
    }
    for (std::size_t l = 0; l < height; ++l) {
        std::string line;
        for (std::size_t c = 0; c < widths.size(); ++c) {
            const std::string shown = l < lines[c].size() ? lines[c][l] : std::string{};
            const std::string pad = repeated(' ', widths[c] - text_width(shown));
            if (c > 0) line += repeated(' ', kColumnGap);
            switch (table.columns[c].align) {
                case Align::left: line += shown + pad; break;
                case Align::right: line += pad + shown; break;
            }
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out.append(line) += '\n';
    }
}

void add_labels(std::string& out, const Table& table) {
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        out += '\n';
        const std::vector<std::string> lines = label_lines(table, row);
        for (std::size_t i = 0; i < lines.size(); ++i)
            add_wrapped(out, lines[i], i == 0 ? "" : "  ", i == 0 ? "" : "    ");
    }
    if (!table.note.empty()) add_wrapped(out, table.note);
}

// What has to be written by hand is a line to write on.
std::string to_write_on(const Column& column, const std::string& shown) {
    constexpr int kMillimetresALetter = 3;
    return column.room > 0 && shown.empty()
               ? std::string(static_cast<std::size_t>(column.room / kMillimetresALetter) + 1, '_')
               : shown;
}

void add_table(std::string& out, const Table& table) {
    if (!table.title.empty()) add_wrapped(out, table.title);
    if (table.columns.empty()) return;
    if (table.as_labels) return add_labels(out, table);
    std::vector<Texts> rows(1);
    for (const Column& column : table.columns) rows[0].push_back(column.heading);
    for (const auto& row : table.rows) {
        Texts& texts = rows.emplace_back();
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            texts.push_back(to_write_on(table.columns[c], c < row.size() ? row[c].shown : std::string{}));
        }
    }
    std::vector<ColumnNeed> needs(table.columns.size());
    for (const Texts& row : rows) {
        for (std::size_t c = 0; c < row.size(); ++c) {
            needs[c].natural = std::max(needs[c].natural, text_width(row[c]));
            needs[c].least = std::max(needs[c].least, longest_word(row[c]));
        }
    }
    const int gaps = kColumnGap * (static_cast<int>(table.columns.size()) - 1);
    const std::vector<int> widths = fit_columns(needs, kLine - gaps);
    Texts rules;
    for (const int width : widths) rules.push_back(repeated('-', width));
    add_row(out, rows[0], table, widths);
    add_row(out, rules, table, widths);
    for (std::size_t r = 1; r < rows.size(); ++r) {
        if (table.emphasise_last_row && r + 1 == rows.size()) add_row(out, rules, table, widths);
        add_row(out, rows[r], table, widths);
    }
    if (!table.note.empty()) add_wrapped(out, table.note);
}

void add_paragraph(std::string& out, const Paragraph& paragraph) {
    switch (paragraph.tone) {
        case Tone::plain:
        case Tone::small: add_wrapped(out, paragraph.text); break;
        case Tone::caution:
            add_wrapped(out, caution_word(), "! ", "! ");
            add_wrapped(out, paragraph.text, "! ", "! ");
            break;
    }
}

}  // namespace

std::string write_text(const Document& document) {
    std::string out;
    add_heading(out, document.title, '=');
    add_wrapped(out, standing_line(document));
    for (const Block& block : document.blocks) {
        out += '\n';
        std::visit(Overloaded{[&](const Headline& b) { add_wrapped(out, b.text, "  ", "  "); },
                              [&](const Paragraph& b) { add_paragraph(out, b); },
                              [&](const Section& b) { add_heading(out, b.text, '-'); },
                              [&](const Table& b) { add_table(out, b); },
                              [&](const Chart& b) { add_wrapped(out, b.sentence); }},
                   block);
    }
    if (!document.findings.empty()) {
        out += '\n';
        add_heading(out, findings_heading(), '-');
        for (const FindingLine& finding : document.findings) {
            add_wrapped(out, finding.text, "- ", "  ");
        }
    }
    return out;
}

}  // namespace dyestead::reports
