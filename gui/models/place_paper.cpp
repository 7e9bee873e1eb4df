#include "gui/models/place_paper.h"

#include "domain/facts/free_code.h"
#include "reports/add_blocks.h"
#include "reports/begin_document.h"
#include "reports/sheets/sheet_parts.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

void add_selected(reports::Document& to, const Detail& told, const std::vector<reports::Cell>& row) {
    if (told.sentence.empty() && !told.table && told.cautions.empty()) return;
    to.blocks.push_back(reports::Section{row.empty() ? say("What is selected") : row.front().shown});
    reports::add_paragraph(to, told.sentence);
    if (told.table) reports::add_table(to, *told.table);
    for (const std::string& caution : told.cautions) reports::add_paragraph(to, caution, reports::Tone::caution);
}

}  // namespace

reports::Document place_paper(const PlaceModel& model, const Books& books, std::size_t listing, const Listing& shown,
                              std::optional<std::size_t> row) {
    reports::Document paper = reports::begin_document(
        books.shop, books.ledger, code_from(shown.name),
        say("{list}, {day}", arg("list", shown.name), arg("day", reports::shown_date(books.as_of()))));
    paper.findings.clear();  // they stand on Today
    reports::add_paragraph(paper, model.state(books));
    const bool selected = row && *row < shown.rows.size();
    const auto at = selected ? std::optional{shown.rows[*row]} : std::nullopt;
    if (auto picture = model.picture(books, listing, at)) paper.blocks.push_back(std::move(*picture));
    if (shown.rows.empty()) {
        reports::add_paragraph(paper, shown.empty);
    } else {
        reports::Table table = shown.table;
        table.title = shown.name;
        paper.blocks.push_back(std::move(table));
    }
    if (selected) add_selected(paper, model.detail(books, listing, *at), shown.table.rows[*row]);
    const std::vector<std::string> cautions = model.cautions();
    if (!cautions.empty()) paper.blocks.push_back(reports::cautions(cautions));
    return paper;
}

}  // namespace dyestead::gui
