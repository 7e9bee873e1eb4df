#include "reports/registry.h"

#include <algorithm>
#include <array>

#include "domain/text/amounts.h"
#include "reports/calendar_report.h"
#include "reports/can_make_report.h"
#include "reports/cost_sheet_report.h"
#include "reports/earns_best_report.h"
#include "reports/fair_report.h"
#include "reports/hours_report.h"
#include "reports/labels_report.h"
#include "reports/losses_report.h"
#include "reports/margins_report.h"
#include "reports/money_report.h"
#include "reports/plants_report.h"
#include "reports/prices_report.h"
#include "reports/recall_report.h"
#include "reports/reorder_report.h"
#include "reports/sheets_report.h"
#include "reports/sowing_report.h"
#include "reports/statement_parts.h"
#include "reports/stock_report.h"
#include "reports/trace_report.h"
#include "reports/verdict_report.h"
#include "reports/words/say.h"
#include "reports/write/csv.h"
#include "reports/write/html.h"
#include "reports/write/ics.h"
#include "reports/write/json.h"
#include "reports/write/pdf.h"
#include "reports/write/text.h"
#include "reports/write/xlsx.h"
#include "reports/year_report.h"

namespace dyestead::reports {
namespace {

// "blue, pink, yellow"
std::string listed(std::vector<std::string> names) {
    std::ranges::sort(names);
    std::string list;
    for (const std::string& name : names) {
        if (!list.empty()) list += ", ";
        list += name;
    }
    return list;
}

template <class Each>
std::string names_of(const Each& all) {
    std::vector<std::string> names;
    for (const auto& each : all) names.emplace_back(each.name);
    return listed(std::move(names));
}

std::variant<Key<dyestead::Colour>, Trouble> colour_asked(const Question& question) {
    const auto& colours = question.shop.all<dyestead::Colour>();
    if (colours.empty()) return Trouble{TroubleId::no_colour};
    if (!question.colour) {
        return most_worked_colour(question.shop, question.ledger).value_or(colours.front().key);
    }
    if (const auto found = colour_by_code(question.shop, *question.colour)) return *found;
    std::vector<std::string> codes;
    for (const auto& colour : colours) codes.push_back(colour.code);
    return Trouble{TroubleId::no_such_colour, {{"value", *question.colour}, {"choices", listed(std::move(codes))}}};
}

Reply make_verdict(const Question& question) {
    const auto colour = colour_asked(question);
    if (const auto* trouble = std::get_if<Trouble>(&colour)) return *trouble;
    const auto key = std::get<Key<dyestead::Colour>>(colour);
    const Verdict answer = question.ahead ? look_ahead(question.shop, question.ledger.as_of, key, *question.ahead)
                                          : verdict(question.shop, question.ledger, key);
    return verdict_report(question.shop, question.ledger, answer);
}

// What was named is not there, or nothing was named and nothing comes to mind; or there is none at all.
Trouble none_of(const std::optional<std::string>& named, std::vector<std::string> codes, TroubleId none,
                TroubleId which) {
    if (codes.empty()) return Trouble{none};
    if (!named) return Trouble{which, {{"choices", listed(std::move(codes))}}};
    return Trouble{TroubleId::not_one_of, {{"value", *named}, {"choices", listed(std::move(codes))}}};
}

// The head of that code; the one that stands in for it where none is named.
template <class Fact>
std::variant<Key<Fact>, Trouble> asked_for(const Shop& shop, const std::optional<std::string>& code,
                                           std::optional<Key<Fact>> otherwise, TroubleId none, TroubleId which) {
    std::vector<std::string> codes;
    for (const Fact& fact : shop.all<Fact>()) {
        if (code && fact.code == *code) return fact.key;
        codes.push_back(fact.code);
    }
    if (!code && otherwise) return *otherwise;
    return none_of(code, std::move(codes), none, which);
}

std::variant<Key<Fair>, Trouble> fair_asked(const Question& question, std::optional<Key<Fair>> otherwise) {
    return asked_for<Fair>(question.shop, question.fair, otherwise, TroubleId::no_fair, TroubleId::which_fair);
}

Reply make_prices(const Question& question) {
    if (question.from && *question.from > question.ledger.as_of)
        return Trouble{TroubleId::starts_after_end, {{"value", print(*question.from)}}};
    return prices_report(question.shop, question.ledger, prices(question.shop, question.ledger), question.from);
}

Reply make_reorder(const Question& question) {
    return reorder_report(question.shop, question.ledger, reorder(question.shop, question.ledger));
}

// For all colours; a number of bars is meant for the colour asked about.
Reply make_sowing(const Question& question) {
    SowingTerms terms;
    if (question.bars) {
        const auto colour = colour_asked(question);
        if (const auto* trouble = std::get_if<Trouble>(&colour)) return *trouble;
        terms.bars[std::get<Key<dyestead::Colour>>(colour)] = *question.bars;
    }
    return sowing_report(question.shop, question.ledger, sowing(question.shop, question.ledger, terms));
}

Reply make_earns_best(const Question& question) {
    EarnsBestTerms terms;
    if (question.months) terms.months = *question.months;
    terms.hours = question.hours;
    if (question.of) {
        const auto material = asked_for<Material>(
            question.shop, question.of, std::nullopt, TroubleId::no_material, TroubleId::no_material);
        if (const auto* trouble = std::get_if<Trouble>(&material)) return *trouble;
        terms.scarce = std::get<Key<Material>>(material);
    }
    return earns_best_report(question.shop, question.ledger, earns_best(question.shop, question.ledger, terms));
}

Reply make_fair_plan(const Question& question) {
    const auto fair = fair_asked(question, next_fair(question.shop, question.ledger.as_of));
    if (const auto* trouble = std::get_if<Trouble>(&fair)) return *trouble;
    return fair_plan_report(
        question.shop, question.ledger, fair_plan(question.shop, question.ledger, std::get<Key<Fair>>(fair)));
}

Reply make_fair_result(const Question& question) {
    const auto fair = fair_asked(question, last_fair(question.shop, question.ledger.as_of));
    if (const auto* trouble = std::get_if<Trouble>(&fair)) return *trouble;
    const auto key = std::get<Key<Fair>>(fair);
    return fair_result_report(question.shop, question.ledger, fair_result(question.shop, question.ledger, key),
                              plan_before(question.shop, question.ledger, key));
}

Reply make_can_make(const Question& question) {
    const auto& colourings = question.shop.all<RecipeColouring>();
    const Plan* next = nullptr;
    for (const Plan& plan : question.shop.all<Plan>())
        if (plan.noted <= question.ledger.as_of && plan.date >= question.ledger.as_of &&
            (next == nullptr || plan.date < next->date))
            next = &plan;
    if (!question.bar && next != nullptr)
        return can_make_report(question.shop, question.ledger, next->bar,
                               can_make(question.shop, question.ledger, next->bar, next->loaves, next->date));
    std::vector<std::string> codes;
    for (const RecipeColouring& line : colourings) {
        const Material* bar = question.shop.find(line.bar);
        if (bar == nullptr) continue;
        if (question.bar == bar->code)
            return can_make_report(
                question.shop, question.ledger, bar->key,
                can_make(question.shop, question.ledger, bar->key, question.loaves, question.ledger.as_of));
        codes.push_back(bar->code);
    }
    return none_of(question.bar, std::move(codes), TroubleId::no_bar, TroubleId::which_bar);
}

Reply make_stock_value(const Question& question) {
    return stock_report(question.shop, question.ledger);
}

// The period asked for, given to a report that has one.
template <class Make>
Reply over_period(const Question& question, Make make) {
    const Period period = period_of(question.shop, question.ledger, question.from);
    if (period.first > period.last) return Trouble{TroubleId::starts_after_end, {{"value", print(period.first)}}};
    return make(period);
}

template <Document (*kReport)(const Shop&, const Ledger&, Period)>
Reply make_statement(const Question& question) {
    return over_period(
        question, [&](Period period) -> Reply { return kReport(question.shop, question.ledger, period); });
}

Reply make_trace(const Question& question) {
    return over_period(question, [&](Period period) -> Reply {
        return trace_report(question.shop, question.ledger, question.of, period);
    });
}

Reply make_plants(const Question& question) {
    return plants_report(question.shop, question.ledger, plants_compared(question.shop, question.ledger));
}

Reply make_recall(const Question& question) {
    return recall_report(question.shop, question.ledger, question.of, question.from);
}

// A report about something that may be named with --of.
template <Reply (*kReport)(const Shop&, const Ledger&, const std::optional<std::string>&)>
Reply make_of(const Question& question) {
    return kReport(question.shop, question.ledger, question.of);
}

Reply make_calendar(const Question& question) {
    return calendar_report(question.shop, question.ledger);
}

constexpr std::array<Report, 21> kReports{
    {{"verdict", message("is growing a colour worth the hours, next to buying it in"), make_verdict},
     {"plants", message("which colour is worth most, by the hour, by the bed and by the gram"), make_plants},
     {"prices", message("what a bar costs to make again, and what it should sell for"), make_prices},
     {"reorder", message("what runs out first, what to order and by when"), make_reorder},
     {"sowing", message("what to sow for the bars wanted, on which ground and by when (--bars, --colour)"),
      make_sowing},
     {"earns-best", message("what to make with the hours and stock there are (--hours, --months, --of)"),
      make_earns_best},
     {"can-make", message("is everything there for the next planned batch (or --bar and --loaves)"), make_can_make},
     {"fair-plan", message("how many of each bar to take to the next fair (or --fair)"), make_fair_plan},
     {"fair-result", message("how the last fair went (or --fair)"), make_fair_result},
     {"cost-sheet", message("what one batch cost, part by part (or --of)"), make_of<cost_sheet_report>},
     {"margins", message("what each kind of bar brought in over a period"), make_statement<margins_report>},
     {"calendar", message("what falls due on which day; --format ics for a calendar"), make_calendar},
     {"labels", message("labels for the bars on the shelf (or --of one batch)"), make_of<labels_report>},
     {"sheets", message("sheets to write on by hand: --of vat, garden, count or fair"), make_of<sheets_report>},
     {"stock-value", message("what everything is worth at cost, and what is worth less"), make_stock_value},
     {"year", message("what a period earned, from takings to what was left"), make_statement<year_report>},
     {"hours", message("where your own hours went"), make_statement<hours_report>},
     {"money", message("what money came in and went out, by kind"), make_statement<money_report>},
     {"losses", message("what was lost and given away, and why"), make_statement<losses_report>},
     {"trace", message("from which records a figure comes, and where a lot went"), make_trace},
     {"recall", message("where goods are that hold a lot, who has them, and what is in them"), make_recall}}};

constexpr std::array<Format, 7> kFormats{{{"text", write_text},
                                          {"html", write_html},
                                          {"pdf", write_pdf},
                                          {"csv", write_csv},
                                          {"xlsx", write_xlsx},
                                          {"json", write_json},
                                          {"ics", write_ics}}};

template <class Each>
std::variant<Each, Trouble> named(const auto& all, std::string_view name, TroubleId otherwise) {
    const auto found = std::ranges::find(all, name, &Each::name);
    if (found != all.end()) return *found;
    return Trouble{otherwise, {{"value", std::string{name}}, {"choices", names_of(all)}}};
}

}  // namespace

std::span<const Report> all_reports() {
    return kReports;
}

std::span<const Format> all_formats() {
    return kFormats;
}

std::variant<Report, Trouble> report_named(std::string_view name) {
    return named<Report>(kReports, name, TroubleId::no_such_report);
}

std::variant<Format, Trouble> format_named(std::string_view name) {
    return named<Format>(kFormats, name, TroubleId::no_such_format);
}

bool can_be_written(const Format& format, const Document& document) {
    return format.name != "ics" || document.days.has_value();
}

std::optional<Trouble> not_to_be_written(const Format& format, const Document& document) {
    if (can_be_written(format, document)) return std::nullopt;
    std::vector<std::string> others;
    for (const Format& each : kFormats)
        if (can_be_written(each, document)) others.emplace_back(each.name);
    return Trouble{
        TroubleId::not_one_of, {{"value", std::string{format.name}}, {"choices", listed(std::move(others))}}};
}

}  // namespace dyestead::reports
