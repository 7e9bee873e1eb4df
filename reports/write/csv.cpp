#include "reports/write/csv.h"

#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

#include "domain/text/csv.h"
#include "reports/write/labels.h"

namespace dyestead::reports {
namespace {

using Row = std::vector<std::string>;

std::string number(double value, std::string_view where) {
    if (!std::isfinite(value)) {
        throw std::logic_error(fmt::format("{} is not a finite number", where));
    }
    return fmt::format("{}", value);
}

void add_table(std::string& out, const Table& table) {
    add_csv_row(out, {table.title});
    Row headings;
    for (const Column& column : table.columns) headings.push_back(column.heading);
    add_csv_row(out, headings);
    for (const auto& row : table.rows) {
        Row fields;
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            if (c >= row.size()) {
                fields.emplace_back();
            } else if (row[c].number) {
                fields.push_back(number(*row[c].number, table.title));
            } else {
                fields.push_back(row[c].shown);
            }
        }
        add_csv_row(out, fields);
    }
}

}  // namespace

std::string write_csv(const Document& document) {
    std::string out;
    add_csv_row(out, {"report", document.report});
    add_csv_row(out, {"as_of", document.as_of});
    add_csv_row(out, {"currency", document.currency});
    for (const Figure& figure : document.figures) {
        add_csv_row(out, {figure.key, figure.value ? number(*figure.value, figure.key) : ""});
    }
    for (const Block& block : document.blocks) {
        if (const auto* table = std::get_if<Table>(&block)) {
            out += "\r\n";
            add_table(out, *table);
        }
    }
    if (!document.findings.empty()) {
        out += "\r\n";
        add_csv_row(out, {findings_heading()});
        add_csv_row(out, {"code", "text", "fact"});
        for (const FindingLine& finding : document.findings) {
            add_csv_row(out, {finding.code, finding.text, finding.fact});
        }
    }
    return out;
}

}  // namespace dyestead::reports
