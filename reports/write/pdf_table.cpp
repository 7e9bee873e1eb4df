#include "reports/write/pdf_table.h"

#include <cairo.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "reports/chart/text_box.h"
#include "reports/write/column_widths.h"
#include "reports/write/labels.h"
#include "reports/write/pdf_style.h"

namespace dyestead::reports {
namespace {

constexpr double kColumnGap = 14;
constexpr double kPad = 2.5;  // above and below the text of a row
constexpr std::size_t kLongRow = 20;
// Of a table that is written on by hand.
constexpr double kHandGap = 10;
constexpr double kHandRow = 21;  // high, at least
constexpr double kPointsPerMillimetre = 72 / 25.4;
// Column widths are shared out in whole hundredths of a point.
constexpr double kUnit = 100;

using Texts = std::vector<std::string_view>;

int units(double points) {
    return static_cast<int>(std::ceil(points * kUnit)) + 1;
}

double widest_word(std::string_view text, TextStyle style) {
    double widest = 0;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find_first_of(" \n", at), text.size());
        widest = std::max(widest, TextBox{text.substr(at, end - at), style}.width());
        at = end + 1;
    }
    return widest;
}

std::vector<Texts> texts_of(const Table& table) {
    std::vector<Texts> rows(1);
    for (const Column& column : table.columns) rows[0].push_back(column.heading);
    for (const auto& row : table.rows) {
        Texts& texts = rows.emplace_back();
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            texts.push_back(c < row.size() ? std::string_view{row[c].shown} : std::string_view{});
        }
    }
    return rows;
}

bool is_bold(const Table& table, std::size_t row) {
    return row == 0 || (table.emphasise_last_row && row == table.rows.size());
}

struct Columns {
    double size = 9;  // of the text
    std::vector<double> widths{};
    std::vector<double> left{};
    double width = 0;
    double row = 0;  // high, at least
    double gap = kColumnGap;
};

std::vector<ColumnNeed> needs_of(const Table& table, const std::vector<Texts>& rows, double size) {
    std::vector<ColumnNeed> needs(table.columns.size());
    for (std::size_t r = 0; r < rows.size(); ++r) {
        const TextStyle style{.size = size, .bold = is_bold(table, r)};
        for (std::size_t c = 0; c < needs.size(); ++c) {
            needs[c].natural = std::max(needs[c].natural, units(TextBox{rows[r][c], style}.width()));
            needs[c].least = std::max(needs[c].least, units(widest_word(rows[r][c], style)));
        }
    }
    for (std::size_t c = 0; c < needs.size(); ++c)
        needs[c].least = std::max(needs[c].least, units(table.columns[c].room * kPointsPerMillimetre));
    return needs;
}

// What is left of the width goes where there is writing to do.
void widen_for_writing(const Table& table, std::vector<int>& widths, int available) {
    int room = 0;
    for (std::size_t c = 0; c < widths.size(); ++c) {
        available -= widths[c];
        room += table.columns[c].room;
    }
    if (available <= 0 || room == 0) return;
    for (std::size_t c = 0; c < widths.size(); ++c) widths[c] += available / room * table.columns[c].room;
}

// Smaller letters before broken words and before cells of many lines.
Columns columns_for(const Table& table, const std::vector<Texts>& rows, double width) {
    constexpr std::array kSizes{9.0, 8.0, 7.5};
    constexpr int kManyLines = 4;
    const bool by_hand = is_written_on(table);
    Columns out{.row = by_hand ? kHandRow : 0, .gap = by_hand ? kHandGap : kColumnGap};
    const double gaps = out.gap * (static_cast<double>(table.columns.size()) - 1);
    const int available = static_cast<int>((width - gaps) * kUnit);
    std::vector<int> widths;
    for (const double size : kSizes) {
        out.size = size;
        const std::vector<ColumnNeed> needs = needs_of(table, rows, size);
        widths = fit_columns(needs, available);
        bool comfortable = columns_fit(needs, available);
        for (std::size_t c = 0; c < widths.size(); ++c) {
            comfortable = comfortable && needs[c].natural <= kManyLines * widths[c];
        }
        if (comfortable) break;
    }
    if (by_hand) widen_for_writing(table, widths, available);
    double x = 0;
    for (const int column : widths) {
        out.widths.push_back(column / kUnit);
        out.left.push_back(x);
        x += out.widths.back() + out.gap;
    }
    out.width = x - out.gap;
    return out;
}

void rule(cairo_t* cr, double x, double y, double width, double thickness, double grey) {
    cairo_set_source_rgb(cr, grey, grey, grey);
    cairo_rectangle(cr, x, y - thickness, width, thickness);
    cairo_fill(cr);
}

// Between the columns of a table that is written on.
void part_columns(cairo_t* cr, double x, double y, double height, const Columns& columns) {
    cairo_set_source_rgb(cr, pdf::kRule, pdf::kRule, pdf::kRule);
    for (std::size_t c = 1; c < columns.left.size(); ++c)
        cairo_rectangle(cr, x + columns.left[c] - columns.gap / 2, y, 0.5, height);
    cairo_fill(cr);
}

struct Underline {
    double thickness = 0.5;
    double grey = pdf::kRule;
};

// One row; its last line carries the rule under it.
void add_row(std::vector<PdfPiece>& pieces, const Texts& texts, const Table& table, const Columns& columns, bool bold,
             Underline under) {
    std::vector<TextBox> cells;
    std::size_t lines = 1;
    for (std::size_t c = 0; c < texts.size(); ++c) {
        const TextSide side = table.columns[c].align == Align::right ? TextSide::right : TextSide::left;
        cells.emplace_back(texts[c], TextStyle{columns.size, bold}, columns.widths[c], side);
        lines = std::max(lines, cells.back().line_count());
    }
    double so_far = 0;
    for (std::size_t l = 0; l < lines; ++l) {
        double height = 0;
        for (const TextBox& cell : cells) {
            if (l < cell.line_count()) height = std::max(height, cell.line_height(l));
        }
        const bool last = l + 1 == lines;
        const double above = l == 0 ? kPad : 0;
        const double text = above + height + (last ? kPad : 0);
        const double total = last ? std::max(text, columns.row - so_far) : text;
        so_far += total;
        pieces.push_back({.flow = {.height = total, .keep_with_next = !last && lines <= kLongRow},
                          .draw = [=](cairo_t* cr, double x, double y) {
                              cairo_set_source_rgb(cr, pdf::kInk, pdf::kInk, pdf::kInk);
                              for (std::size_t c = 0; c < cells.size(); ++c) {
                                  if (l < cells[c].line_count()) {
                                      cells[c].draw_line(cr, x + columns.left[c], y + above, l);
                                  }
                              }
                              if (columns.row > 0) part_columns(cr, x, y, total, columns);
                              if (last) rule(cr, x, y + total, columns.width, under.thickness, under.grey);
                          }});
    }
}

}  // namespace

void add_table_pieces(std::vector<PdfPiece>& pieces, const Table& table, double width) {
    if (table.columns.empty()) return;
    const std::vector<Texts> rows = texts_of(table);
    const Columns columns = columns_for(table, rows, width);
    constexpr Underline kHeavy{1.0, pdf::kInk};
    PieceFlow::Headings headings{.first = pieces.size(), .last = 0};
    for (std::size_t r = 0; r < rows.size(); ++r) {
        const std::size_t first = pieces.size();
        const bool before_total = table.emphasise_last_row && r + 2 == rows.size();
        const bool heavy = r == 0 || before_total || r + 1 == rows.size();
        add_row(pieces, rows[r], table, columns, is_bold(table, r), heavy ? kHeavy : Underline{});
        if (r == 0) {
            headings.last = pieces.size();
            for (std::size_t i = first; i < pieces.size(); ++i) {
                pieces[i].flow.keep_with_next = rows.size() > 1;
            }
            continue;
        }
        for (std::size_t i = first; i < pieces.size(); ++i) pieces[i].flow.headings = headings;
        if (before_total) pieces.back().flow.keep_with_next = true;
    }
}

}  // namespace dyestead::reports
