#include "reports/write/html.h"

#include <fmt/format.h>

#include "reports/chart/drawing_svg.h"
#include "reports/chart/xml_escape.h"
#include "reports/overloaded.h"
#include "reports/words/language.h"
#include "reports/write/html_style.h"
#include "reports/write/labels.h"

namespace dyestead::reports {
namespace {

void add_paragraph(std::string& out, const Paragraph& paragraph) {
    const std::string text = xml_escape(paragraph.text);
    switch (paragraph.tone) {
        case Tone::plain: out += fmt::format("<p>{}</p>\n", text); break;
        case Tone::small: out += fmt::format("<p class=\"small\">{}</p>\n", text); break;
        case Tone::caution:
            out += fmt::format("<p class=\"caution\"><strong>{}</strong> {}</p>\n", xml_escape(caution_word()), text);
            break;
    }
}

std::string_view class_of(Align align) {
    switch (align) {
        case Align::left: return "";
        case Align::right: return " class=\"right\"";
    }
    return "";
}

void add_labels(std::string& out, const Table& table) {
    if (!table.title.empty()) out += fmt::format("<h2>{}</h2>\n", xml_escape(table.title));
    out += "<div class=\"labels\">\n";
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        out += "<div class=\"label\">";
        const std::vector<std::string> lines = label_lines(table, row);
        for (std::size_t i = 0; i < lines.size(); ++i)
            out += i == 0 ? fmt::format("<strong>{}</strong>", xml_escape(lines[i]))
                          : fmt::format("<br>{}", xml_escape(lines[i]));
        out += "</div>\n";
    }
    out += "</div>\n";
    if (!table.note.empty()) out += fmt::format("<p class=\"small\">{}</p>\n", xml_escape(table.note));
}

// The first column names the row. A table too wide for the page scrolls by itself, and can be
// reached by the keyboard to do so.
void add_table(std::string& out, const Table& table) {
    if (table.columns.empty()) return;
    if (table.as_labels) return add_labels(out, table);
    out += "<div class=\"wide\" tabindex=\"0\"";
    if (!table.title.empty()) {
        out += fmt::format(
            " role=\"region\" aria-label=\"{0}\">\n<table>\n<caption>{0}</caption>\n", xml_escape(table.title));
    } else {
        out += ">\n<table>\n";
    }
    out += is_written_on(table) ? "<thead class=\"by-hand\"><tr>" : "<thead><tr>";
    for (const Column& column : table.columns) {
        const std::string room =
            column.room > 0 ? fmt::format(" style=\"min-width: {}mm\"", column.room) : std::string{};
        out += fmt::format("<th scope=\"col\"{}{}>{}</th>", class_of(column.align), room, xml_escape(column.heading));
    }
    out += "</tr></thead>\n<tbody>\n";
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        const bool total = table.emphasise_last_row && r + 1 == table.rows.size();
        out += total ? "<tr class=\"total\">" : "<tr>";
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            const std::string text = c < table.rows[r].size() ? xml_escape(table.rows[r][c].shown) : std::string{};
            const std::string_view align = class_of(table.columns[c].align);
            out += c == 0 ? fmt::format("<th scope=\"row\"{}>{}</th>", align, text)
                          : fmt::format("<td{}>{}</td>", align, text);
        }
        out += "</tr>\n";
    }
    out += "</tbody>\n</table>\n</div>\n";
    if (!table.note.empty()) {
        out += fmt::format("<p class=\"small\">{}</p>\n", xml_escape(table.note));
    }
}

// Drawn twice, since a drawing cannot change its colours; the style sheet shows one of them.
void add_chart(std::string& out, const Chart& chart, std::size_t number) {
    out += "<figure>\n";
    if (!chart.title.empty()) {
        out += fmt::format("<p class=\"title\">{}</p>\n", xml_escape(chart.title));
    }
    const std::string light =
        drawing_svg(chart.data, chart.sentence, light_chart_colours(), fmt::format("c{}-light-", number));
    if (!light.empty()) {
        out += fmt::format("<div class=\"chart-light\">{}</div>\n", light);
        out += fmt::format(
            "<div class=\"chart-dark\">{}</div>\n",
            drawing_svg(chart.data, chart.sentence, dark_chart_colours(), fmt::format("c{}-dark-", number)));
    }
    out += fmt::format("<figcaption>{}</figcaption>\n</figure>\n", xml_escape(chart.sentence));
}

void add_findings(std::string& out, const std::vector<FindingLine>& findings) {
    if (findings.empty()) return;
    out += fmt::format("<section class=\"findings\">\n<h2>{}</h2>\n<ul>\n", xml_escape(findings_heading()));
    for (const FindingLine& finding : findings) {
        out += fmt::format("<li>{}</li>\n", xml_escape(finding.text));
    }
    out += "</ul>\n</section>\n";
}

}  // namespace

std::string write_html(const Document& document) {
    const std::string title = xml_escape(document.title);
    std::string out = fmt::format(
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        "<title>{}</title>\n<style>{}</style>\n</head>\n<body>\n<main>\n"
        "<h1>{}</h1>\n<p class=\"standing\">{}</p>\n",
        language_here(), title, kHtmlStyle, title, xml_escape(standing_line(document)));
    std::size_t charts = 0;
    for (const Block& block : document.blocks) {
        std::visit(
            Overloaded{
                [&](const Headline& b) { out += fmt::format("<p class=\"headline\">{}</p>\n", xml_escape(b.text)); },
                [&](const Paragraph& b) { add_paragraph(out, b); },
                [&](const Section& b) {
                    out += fmt::format("<h2{}>{}</h2>\n", b.new_page ? " class=\"sheet\"" : "", xml_escape(b.text));
                },
                [&](const Table& b) { add_table(out, b); }, [&](const Chart& b) { add_chart(out, b, ++charts); }},
            block);
    }
    add_findings(out, document.findings);
    out += "</main>\n</body>\n</html>\n";
    return out;
}

}  // namespace dyestead::reports
