#include "reports/verdict_report.h"

#include <iterator>

#include "reports/add_blocks.h"
#include "reports/begin_document.h"
#include "reports/memory_report.h"
#include "reports/verdict_figures.h"
#include "reports/verdict_tables.h"
#include "reports/words/caution_words.h"
#include "reports/words/doubt_words.h"
#include "reports/words/improve_words.h"
#include "reports/words/names.h"
#include "reports/words/powder_words.h"
#include "reports/words/say.h"
#include "reports/words/verdict_finding_words.h"
#include "reports/words/verdict_notes.h"
#include "reports/words/verdict_words.h"

namespace dyestead::reports {
namespace {

void add_answer(Document& to, const Shop& shop, const Verdict& verdict) {
    to.blocks.push_back(Headline{verdict_headline(shop, verdict)});
    add_paragraphs(to, too_soon_lines(shop, verdict));
    add_paragraph(to, each_bar_line(shop, verdict));
    add_paragraph(to, your_hours_line(shop, verdict));
    add_paragraph(to, what_would_turn_it_line(shop, verdict));
    add_paragraphs(to, doubt_lines(shop, verdict));
    add_paragraph(to, powder_line(shop, verdict));
    add_paragraph(to, stands_on_line(shop, verdict), Tone::small);
    add_paragraph(to, verdict_is_a_sum(), Tone::small);
    add_paragraphs(to, verdict_cautions(shop, verdict), Tone::caution);
    add_paragraph(to, powder_caution(verdict), Tone::caution);
}

void add_one_bar(Document& to, const Shop& shop, const Verdict& verdict) {
    const auto colour = arg("colour", colour_in_a_sentence(shop, verdict.colour));
    if (!verdict.if_weaker) {
        add_table(to, side_by_side(shop, verdict.figures, say("Side by side: one bar at the same {colour}", colour)));
    } else {
        add_table(
            to, side_by_side(shop, verdict.figures,
                             say("Side by side: one bar, if your {colour} is as strong as the bought-in", colour)));
        add_table(to, side_by_side(shop, *verdict.if_weaker,
                                   say("Side by side: one bar, if your {colour} is a third as strong", colour)));
    }
    if (auto chart = cost_chart(shop, verdict.figures)) to.blocks.push_back(std::move(*chart));
    if (verdict.figures.model) add_table(to, what_would_turn_it(shop, verdict));
    add_table(to, what_matters(shop, verdict));
}

// Only looking back: they are changes to what was.
void add_what_would_help(Document& to, const Shop& shop, const Ledger& ledger, const Verdict& verdict) {
    auto lines = improvement_lines(shop, ledger, verdict);
    if (!lines.empty())
        to.blocks.push_back(
            Section{tr("What would help most, one change at a time, over all the bars this powder colours")});
    add_paragraphs(to, std::move(lines));
    add_table(to, hours_table(shop, verdict));
}

void add_records(Document& to, const Shop& shop, const Verdict& verdict) {
    to.blocks.push_back(Section{tr("What it stands on")});
    add_paragraphs(to, powder_notes(shop, verdict));
    add_table(to, vats_table(shop, verdict));
    add_table(to, seasons_table(shop, verdict));
    add_table(to, sold_table(shop, verdict));
    auto left_out = left_out_notes(shop, verdict);
    if (!left_out.empty()) to.blocks.push_back(Section{tr("What is left out")});
    add_paragraphs(to, std::move(left_out));
    if (verdict.if_weaker) add_table(to, at_both_strengths(verdict));
}

}  // namespace

Document verdict_report(const Shop& shop, const Ledger& ledger, const Verdict& verdict) {
    if (verdict.from_memory) return memory_report(shop, ledger, verdict);
    Document out = begin_document(shop, ledger, "verdict", verdict_title(shop, verdict));
    add_answer(out, shop, verdict);
    add_one_bar(out, shop, verdict);
    add_what_would_help(out, shop, ledger, verdict);
    add_records(out, shop, verdict);
    out.figures = all_figures(verdict);
    auto first = verdict_finding_lines(shop, verdict.findings);
    std::ranges::move(out.findings, std::back_inserter(first));
    out.findings = std::move(first);
    return out;
}

}  // namespace dyestead::reports
