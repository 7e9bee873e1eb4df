#include "reports/write/pdf_pieces.h"

#include <cairo.h>

#include <algorithm>
#include <utility>

#include "reports/chart/text_box.h"
#include "reports/overloaded.h"
#include "reports/write/labels.h"
#include "reports/write/pdf_labels.h"
#include "reports/write/pdf_style.h"
#include "reports/write/pdf_table.h"

namespace dyestead::reports {
namespace {

void set_grey(cairo_t* cr, double grey) {
    cairo_set_source_rgb(cr, grey, grey, grey);
}

struct TextPlace {
    double space_before = 0;
    bool keep_with_next = false;  // the last line, with what follows
    double grey = pdf::kInk;
    double indent = 0;
};

// A text as one piece a line. No page ends after its first line or before its last one; short
// ones do not part at all.
void add_text(std::vector<PdfPiece>& pieces, const TextBox& box, TextPlace place) {
    constexpr std::size_t kShort = 4;
    const std::size_t lines = box.line_count();
    for (std::size_t l = 0; l < lines; ++l) {
        const bool last = l + 1 == lines;
        const bool keep = lines <= kShort || l == 0 || l + 2 == lines;
        pieces.push_back({.flow = {.space_before = l == 0 ? place.space_before : 0,
                                   .height = box.line_height(l),
                                   .keep_with_next = last ? place.keep_with_next : keep},
                          .draw = [=](cairo_t* cr, double x, double y) {
                              set_grey(cr, place.grey);
                              box.draw_line(cr, x + place.indent, y, l);
                          }});
    }
}

// A frame with a thick left side and the word itself, so that it stands out in black and white.
void add_caution(std::vector<PdfPiece>& pieces, const std::string& text, double width) {
    constexpr double kPad = 7;
    constexpr double kBar = 5;
    constexpr double kIndent = kBar + 9;
    std::vector<std::pair<TextBox, std::size_t>> lines;
    for (const auto& [part, style] : {std::pair{caution_word(), pdf::kStrong}, std::pair{text, pdf::kBody}}) {
        const TextBox box{part, style, width - kIndent - kPad};
        for (std::size_t l = 0; l < box.line_count(); ++l) lines.emplace_back(box, l);
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const bool first = i == 0;
        const bool last = i + 1 == lines.size();
        const TextBox box = lines[i].first;
        const std::size_t line = lines[i].second;
        const double above = first ? kPad : 0;
        const double seam = first ? 0 : 0.5;  // lines of the frame overlap, or a hair shows between
        const double height = above + box.line_height(line) + (last ? kPad : 0);
        pieces.push_back({.flow = {.space_before = first ? 9.0 : 0.0,
                                   .height = height,
                                   .keep_with_next = !last && (first || lines.size() <= 12)},
                          .draw = [=](cairo_t* cr, double x, double y) {
                              set_grey(cr, pdf::kInk);
                              cairo_rectangle(cr, x, y - seam, kBar, height + seam);
                              cairo_rectangle(cr, x + width - 0.8, y - seam, 0.8, height + seam);
                              if (first) cairo_rectangle(cr, x, y, width, 0.8);
                              if (last) cairo_rectangle(cr, x, y + height - 0.8, width, 0.8);
                              cairo_fill(cr);
                              box.draw_line(cr, x + kIndent, y + above, line);
                          }});
    }
}

void add_paragraph(std::vector<PdfPiece>& pieces, const Paragraph& paragraph, double width) {
    switch (paragraph.tone) {
        case Tone::plain: add_text(pieces, {paragraph.text, pdf::kBody, width}, {.space_before = 6}); break;
        case Tone::small:
            add_text(pieces, {paragraph.text, pdf::kSmall, width}, {.space_before = 6, .grey = pdf::kSoft});
            break;
        case Tone::caution: add_caution(pieces, paragraph.text, width); break;
    }
}

void add_table(std::vector<PdfPiece>& pieces, const Table& table, double width) {
    const std::size_t first = pieces.size();
    if (!table.title.empty()) {
        add_text(pieces, {table.title, pdf::kStrong, width}, {.keep_with_next = true});
    }
    const std::size_t headings = pieces.size();
    if (table.as_labels) {
        add_label_pieces(pieces, table, width);
    } else {
        add_table_pieces(pieces, table, width);
    }
    if (pieces.size() > headings) pieces[headings].flow.space_before = 3;
    if (pieces.size() > first) pieces[first].flow.space_before = 14;
    if (!table.note.empty()) {
        if (pieces.size() > first) pieces.back().flow.keep_with_next = true;
        add_text(pieces, {table.note, pdf::kSmall, width}, {.space_before = 4, .grey = pdf::kSoft});
    }
}

void add_chart(std::vector<PdfPiece>& pieces, const Chart& chart, double width, double height) {
    double space = 14;
    if (!chart.title.empty()) {
        add_text(pieces, {chart.title, pdf::kStrong, width}, {.space_before = space, .keep_with_next = true});
        space = 6;
    }
    // Chart letters are 12 units high; smaller still where many bars would pass a page.
    double scale = 0.8;
    if (drawing_height(width / scale, chart.data) > 0) {
        const double room = height * 0.85 / drawing_height(width / scale, chart.data);
        scale = std::min(scale, room);
        const double drawn = drawing_height(width / scale, chart.data);
        pieces.push_back({.flow = {.space_before = space, .height = drawn * scale, .keep_with_next = true},
                          .draw = [=, &data = chart.data](cairo_t* cr, double x, double y) {
                              cairo_save(cr);
                              cairo_translate(cr, x, y);
                              cairo_scale(cr, scale, scale);
                              draw(cr, width / scale, drawn, data, light_chart_colours());
                              cairo_restore(cr);
                          }});
        space = 6;
    }
    add_text(pieces, {chart.sentence, pdf::kBody, width}, {.space_before = space});
}

void add_findings(std::vector<PdfPiece>& pieces, const std::vector<FindingLine>& findings, double width) {
    if (findings.empty()) return;
    constexpr double kIndent = 12;
    add_text(pieces, {findings_heading(), pdf::kSection, width}, {.space_before = 20, .keep_with_next = true});
    for (const FindingLine& finding : findings) {
        const TextBox dash{"\u2013", pdf::kBody};
        const std::size_t first = pieces.size();
        add_text(pieces, {finding.text, pdf::kBody, width - kIndent}, {.space_before = 4, .indent = kIndent});
        const auto line = pieces[first].draw;
        pieces[first].draw = [=](cairo_t* cr, double x, double y) {
            line(cr, x, y);
            dash.draw(cr, x, y);
        };
    }
}

}  // namespace

std::vector<PdfPiece> pdf_pieces(const Document& document, double width, double height) {
    std::vector<PdfPiece> out;
    add_text(out, {document.title, pdf::kTitle, width}, {.keep_with_next = true});
    add_text(out, {standing_line(document), pdf::kSmall, width}, {.space_before = 3, .grey = pdf::kSoft});
    double space_after_title = 12;
    bool paged = false;
    for (const Block& block : document.blocks) {
        const std::size_t first = out.size();
        std::visit(
            Overloaded{[&](const Headline& b) {
                           add_text(out, {b.text, pdf::kHeadline, width}, {.space_before = 8, .keep_with_next = true});
                       },
                       [&](const Paragraph& b) { add_paragraph(out, b, width); },
                       [&](const Section& b) {
                           const TextStyle style = b.new_page ? pdf::kHeadline : pdf::kSection;
                           add_text(out, {b.text, style, width}, {.space_before = 20, .keep_with_next = true});
                           // The first of them shares its page with the title.
                           if (b.new_page && out.size() > first)
                               out[first].flow.starts_page = std::exchange(paged, true);
                       },
                       [&](const Table& b) { add_table(out, b, width); },
                       [&](const Chart& b) { add_chart(out, b, width, height); }},
            block);
        if (first < out.size()) out[first].flow.space_before += std::exchange(space_after_title, 0);
    }
    add_findings(out, document.findings, width);
    return out;
}

}  // namespace dyestead::reports
