#include "reports/memory_report.h"

#include "domain/decisions/memory_kept.h"
#include "reports/add_blocks.h"
#include "reports/begin_document.h"
#include "reports/verdict_figures.h"
#include "reports/verdict_tables.h"
#include "reports/words/caution_words.h"
#include "reports/words/memory_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/verdict_notes.h"
#include "reports/words/verdict_words.h"

namespace dyestead::reports {
Table answers_table(const Shop& shop, Day as_of, Key<dyestead::Colour> colour) {
    Table table{.title = tr("Your answers"), .columns = {{tr("asked")}, {tr("from memory")}}};
    const MemoryAnswers answers = answers_on_record(shop, colour, as_of);
    for (std::size_t i = 0; i < kRecalled; ++i) {
        const auto blank = static_cast<Recalled>(i);
        const auto answer = answers.find(blank);
        table.rows.push_back({{.shown = memory_blank(blank)},
                              answer == answers.end() ? Cell{.shown = say("left blank"), .no_value = true}
                                                      : Cell{.shown = answer->second}});
    }
    table.note = tr("What is left blank counts as nothing, a price as that of the bar before it.");
    return table;
}

namespace {

// What the answers cannot tell has no figure. The hurdle is the hourly target itself.
std::vector<Figure> figures_of(const Verdict& verdict) {
    Verdict said = verdict;
    said.figures.extra_dye_hour.hurdle.reset();
    return all_figures(said);
}

}  // namespace

Document memory_report(const Shop& shop, const Ledger& ledger, const Verdict& verdict) {
    Document out = begin_document(shop, ledger, "verdict", verdict_title(shop, verdict));
    out.blocks.push_back(Headline{verdict_headline(shop, verdict)});
    add_paragraphs(out, too_soon_lines(shop, verdict));
    add_paragraph(out, memory_bar_line(shop, verdict));
    add_paragraph(out, your_hours_line(shop, verdict));
    add_paragraph(out, what_would_turn_it_line(shop, verdict));
    add_paragraphs(out, memory_stands_on(verdict), Tone::small);
    add_paragraph(out, verdict_is_a_sum(), Tone::small);
    add_paragraphs(out, verdict_cautions(shop, verdict), Tone::caution);
    add_table(out, what_would_turn_it(shop, verdict));
    add_paragraphs(out, powder_notes(shop, verdict));
    add_table(out, answers_table(shop, ledger.as_of, verdict.colour));
    out.figures = figures_of(verdict);
    return out;
}

}  // namespace dyestead::reports
