#include "reports/write/json.h"

#include <fmt/format.h>

#include <cmath>
#include <nlohmann/json.hpp>
#include <stdexcept>

namespace dyestead::reports {
namespace {

using Json = nlohmann::ordered_json;

Json number(double value, std::string_view where) {
    if (!std::isfinite(value)) {
        throw std::logic_error(fmt::format("{} is not a finite number", where));
    }
    return value;
}

Json figures(const Document& document) {
    Json out = Json::object();
    for (const Figure& figure : document.figures) {
        if (out.contains(figure.key)) {
            throw std::logic_error(fmt::format("figure {} comes twice", figure.key));
        }
        out[figure.key] = figure.value ? number(*figure.value, figure.key) : Json(nullptr);
    }
    return out;
}

Json cell(const Cell& cell, std::string_view table) {
    if (cell.number) return number(*cell.number, table);
    if (cell.no_value || cell.shown.empty()) return nullptr;
    return cell.shown;
}

Json table_object(const Table& table) {
    Json columns = Json::array();
    for (const Column& column : table.columns) columns.push_back(column.heading);
    Json rows = Json::array();
    for (const auto& row : table.rows) {
        Json cells = Json::array();
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            cells.push_back(c < row.size() ? cell(row[c], table.title) : Json(nullptr));
        }
        rows.push_back(std::move(cells));
    }
    Json out = Json::object();
    out["title"] = table.title;
    out["columns"] = std::move(columns);
    out["rows"] = std::move(rows);
    return out;
}

}  // namespace

std::string write_json(const Document& document) {
    Json out = Json::object();
    out["report"] = document.report;
    out["as_of"] = document.as_of;
    out["currency"] = document.currency;
    out["title"] = document.title;
    out["figures"] = figures(document);
    Json tables = Json::array();
    for (const Block& block : document.blocks) {
        if (const auto* table = std::get_if<Table>(&block)) tables.push_back(table_object(*table));
    }
    out["tables"] = std::move(tables);
    Json findings = Json::array();
    for (const FindingLine& finding : document.findings) {
        Json line = Json::object();
        line["code"] = finding.code;
        line["text"] = finding.text;
        line["fact"] = finding.fact;
        findings.push_back(std::move(line));
    }
    out["findings"] = std::move(findings);
    // A stray byte in a name becomes U+FFFD: the report is worth more than the byte.
    return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace dyestead::reports
