#include "gui/models/verdict_view.h"

#include <algorithm>

#include "gui/models/amounts_shown.h"
#include "gui/models/trial.h"
#include "reports/drawing_figures.h"
#include "reports/memory_report.h"
#include "reports/verdict_tables.h"
#include "reports/words/caution_words.h"
#include "reports/words/doubt_words.h"
#include "reports/words/improve_words.h"
#include "reports/words/memory_words.h"
#include "reports/words/names.h"
#include "reports/words/powder_words.h"
#include "reports/words/say.h"
#include "reports/words/verdict_notes.h"
#include "reports/words/verdict_words.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::Cell;
using reports::say;

namespace {

using Part = std::optional<double> Alternative::*;

// One line of the sum: a part of a plain bar, or what the colour adds to it.
class Sum {
public:
    Sum(const VerdictFigures& figures, std::string currency) : figures_{figures}, currency_{std::move(currency)} {}

    void base(std::string label, Part part) {
        const auto& plain = figures_.plain.*part;
        rows_.push_back({words_cell(std::move(label)), cell(plain), cell(figures_.bought.*part ? plain : std::nullopt),
                         cell(plain)});
    }
    void colour(std::string label, Part part) {
        rows_.push_back({words_cell(std::move(label)), cell(over(figures_.home, part)),
                         cell(over(figures_.bought, part)), cell(over(figures_.plain, part))});
    }
    void all(std::string label, Part part) {
        rows_.push_back({words_cell(std::move(label)), cell(figures_.home.*part), cell(figures_.bought.*part),
                         cell(figures_.plain.*part)});
    }
    std::vector<std::vector<Cell>> take() { return std::move(rows_); }

private:
    std::optional<double> over(const Alternative& bar, Part part) const {
        if (!(bar.*part) || !(figures_.plain.*part)) return std::nullopt;
        return *(bar.*part) - *(figures_.plain.*part);
    }
    Cell cell(std::optional<double> value) const { return value ? money_cell(*value, currency_) : no_cell(); }

    const VerdictFigures& figures_;
    std::string currency_;
    std::vector<std::vector<Cell>> rows_;
};

reports::Table adds_up(const Shop& shop, const VerdictFigures& figures) {
    const std::string currency = reports::currency_of(shop);
    Sum sum{figures, currency};
    sum.base(say("plain bar: materials"), &Alternative::materials_per_bar);
    sum.base(say("plain bar: energy"), &Alternative::energy_per_bar);
    sum.base(say("plain bar: running costs"), &Alternative::overhead_per_bar);
    sum.base(say("plain bar: our time"), &Alternative::labour_per_bar);
    sum.colour(say("colour: materials"), &Alternative::materials_per_bar);
    sum.colour(say("colour: energy"), &Alternative::energy_per_bar);
    sum.colour(say("colour: its own bills"), &Alternative::overhead_per_bar);
    sum.colour(say("colour: our time"), &Alternative::labour_per_bar);
    sum.all(say("adds up to"),
            figures.plain.full_cost_per_bar ? &Alternative::full_cost_per_bar : &Alternative::cash_cost_per_bar);
    return {.title = say("How it adds up"),
            .columns = {{say("{currency} a bar", arg("currency", currency))},
                        {say("our own"), Align::right},
                        {say("bought in"), Align::right},
                        {say("plain"), Align::right}},
            .rows = sum.take(),
            .emphasise_last_row = true};
}

std::string joined(const std::vector<std::string>& sentences) {
    std::string all;
    for (const std::string& sentence : sentences) all += (all.empty() ? "" : " ") + sentence;
    return all;
}

void add_tables(VerdictView& view, const Shop& shop, const VerdictFigures& figures) {
    view.side_by_side = reports::side_by_side(shop, figures, say("Side by side"));
    view.adds_up = adds_up(shop, figures);
    view.chart = reports::cost_chart(shop, figures);
    if (view.chart) view.figures = reports::figures_of(view.chart->data);
}

void add_lines(VerdictView& view, const Shop& shop, const Verdict& verdict) {
    const std::string each_bar =
        verdict.from_memory ? reports::memory_bar_line(shop, verdict) : reports::each_bar_line(shop, verdict);
    for (auto line :
         {each_bar, reports::your_hours_line(shop, verdict), reports::what_would_turn_it_line(shop, verdict)}) {
        if (!line.empty()) view.lines.push_back(std::move(line));
    }
}

reports::Table would_help(const Books& books, const Verdict& verdict) {
    reports::Table table{.title = say("What would help"),
                         .columns = {{say("one change at a time, over all the bars this powder colours")}}};
    for (std::string& line : reports::improvement_lines(books.shop, books.ledger, verdict))
        table.rows.push_back({words_cell(std::move(line))});
    if (auto powder = reports::powder_line(books.shop, verdict); !powder.empty())
        table.rows.push_back({words_cell(std::move(powder))});
    return table;
}

}  // namespace

VerdictView verdict_view(const Books& books, const Verdict& verdict) {
    VerdictView view;
    view.headline = reports::verdict_headline(books.shop, verdict);
    view.lines = reports::too_soon_lines(books.shop, verdict);
    add_lines(view, books.shop, verdict);
    view.stands_on = say("{stands_on} {caution}", arg("stands_on", reports::stands_on_line(books.shop, verdict)),
                         arg("caution", reports::verdict_is_a_sum()));
    view.caution = joined(reports::verdict_cautions(books.shop, verdict));
    add_tables(view, books.shop, verdict.figures);
    if (verdict.from_memory) {
        view.stands_on = joined(reports::memory_stands_on(verdict));
        view.chart.reset();
        view.answers = reports::answers_table(books.shop, books.ledger.as_of, verdict.colour);
        return view;
    }
    // One of them fits among the sentences; the others are the table's.
    if (auto sure = reports::doubt_lines(books.shop, verdict); !sure.empty())
        view.lines.push_back(std::move(sure.front()));
    view.how_sure = reports::what_matters(books.shop, verdict);
    view.would_help = would_help(books, verdict);
    view.hours = reports::hours_table(books.shop, verdict);
    return view;
}

std::vector<std::string> ways_of_looking() {
    return {say("back at what was"), say("ahead, before sowing"), say("ahead, with leaf standing"),
            say("ahead, with powder dry")};
}

std::optional<Stand> stand_of(std::size_t way) {
    switch (way) {
        case 1: return Stand::before_sowing;
        case 2: return Stand::leaf_standing;
        case 3: return Stand::pigment_dry;
        default: return std::nullopt;
    }
}

VerdictView tried_view(const Books& books, const Verdict& verdict, const Model& tried) {
    Verdict as_if = verdict;
    as_if.figures = tried_figures(verdict, tried);
    if (tried.hourly_target > 0) as_if.hourly_target = tried.hourly_target;
    VerdictView view = verdict_view(books, verdict);
    view.headline = tried_headline(
        reports::colour_in_a_sentence(books.shop, verdict.colour), as_if.figures, reports::currency_of(books.shop));
    view.lines.clear();
    add_lines(view, books.shop, as_if);
    add_tables(view, books.shop, as_if.figures);
    return view;
}

ColourChoice colour_choice(const Books& books) {
    ColourChoice choice;
    const auto begin = most_worked_colour(books.shop, books.ledger);
    std::vector<const Colour*> colours;
    for (const Colour& colour : books.shop.all<Colour>()) colours.push_back(&colour);
    std::ranges::sort(colours, {}, &Colour::name);
    for (const Colour* colour : colours) {
        if (begin == colour->key) choice.first = choice.colours.size();
        choice.names.push_back(colour->name);
        choice.colours.push_back(colour->key);
    }
    return choice;
}

std::string no_colour_sentence() {
    return say(
        "No colour is on record yet. Ten questions, answered from memory, say in five minutes whether growing one is "
        "worth the hours; records of a vat and a loaf say it better.");
}

std::string trying_out_sentence() {
    return say("You are trying things out; this is not from your records.");
}

std::string no_dials_sentence() {
    return say("Nothing to try yet: that takes a dried vat, its harvest weighed, and the prices.");
}

}  // namespace dyestead::gui
