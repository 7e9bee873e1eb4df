#include "reports/write/pdf_labels.h"

#include <cairo.h>

#include <algorithm>
#include <array>

#include "reports/chart/text_box.h"
#include "reports/write/labels.h"
#include "reports/write/pdf_style.h"

namespace dyestead::reports {
namespace {

constexpr double kPad = 10;
constexpr double kBetween = 12;
constexpr double kBelowName = 4;

// The texts of one label, from the top.
std::vector<TextBox> texts_of(const Table& table, std::size_t row, double width) {
    std::vector<TextBox> texts;
    const std::vector<std::string> lines = label_lines(table, row);
    for (std::size_t i = 0; i < lines.size(); ++i)
        texts.emplace_back(lines[i], i == 0 ? pdf::kSection : TextStyle{.size = 9}, width - 2 * kPad);
    return texts;
}

double height_of(const std::vector<TextBox>& texts) {
    double height = 2 * kPad + kBelowName;
    for (const TextBox& text : texts) height += text.height();
    return height;
}

void draw_label(cairo_t* cr, double x, double y, double width, double height, const std::vector<TextBox>& texts) {
    constexpr std::array kDash{3.0, 3.0};
    cairo_set_source_rgb(cr, pdf::kSoft, pdf::kSoft, pdf::kSoft);
    cairo_set_line_width(cr, 0.6);
    cairo_set_dash(cr, kDash.data(), static_cast<int>(kDash.size()), 0);
    cairo_rectangle(cr, x, y, width, height);
    cairo_stroke(cr);
    cairo_set_dash(cr, nullptr, 0, 0);
    cairo_set_source_rgb(cr, pdf::kInk, pdf::kInk, pdf::kInk);
    double at = y + kPad;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        texts[i].draw(cr, x + kPad, at);
        at += texts[i].height() + (i == 0 ? kBelowName : 0);
    }
}

}  // namespace

void add_label_pieces(std::vector<PdfPiece>& pieces, const Table& table, double width) {
    const double each = (width - kBetween) / 2;
    for (std::size_t row = 0; row < table.rows.size(); row += 2) {
        std::vector<std::vector<TextBox>> pair{texts_of(table, row, each)};
        if (row + 1 < table.rows.size()) pair.push_back(texts_of(table, row + 1, each));
        double height = 0;
        for (const auto& texts : pair) height = std::max(height, height_of(texts));
        pieces.push_back({.flow = {.space_before = row == 0 ? 0 : kBetween, .height = height},
                          .draw = [=](cairo_t* cr, double x, double y) {
                              for (std::size_t i = 0; i < pair.size(); ++i)
                                  draw_label(
                                      cr, x + static_cast<double>(i) * (each + kBetween), y, each, height, pair[i]);
                          }});
    }
}

}  // namespace dyestead::reports
