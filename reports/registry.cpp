#include "reports/registry.h"

#include <algorithm>
#include <array>

#include "reports/stock_report.h"
#include "reports/verdict_report.h"
#include "reports/words/say.h"
#include "reports/write/csv.h"
#include "reports/write/html.h"
#include "reports/write/json.h"
#include "reports/write/pdf.h"
#include "reports/write/text.h"

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
    const Verdict answer = verdict(question.shop, question.ledger, std::get<Key<dyestead::Colour>>(colour));
    return verdict_report(question.shop, question.ledger, answer);
}

Reply make_stock_value(const Question& question) {
    return stock_report(question.shop, question.ledger);
}

constexpr std::array<Report, 2> kReports{
    {{"verdict", message("is growing a colour worth the hours, next to buying it in"), make_verdict},
     {"stock-value", message("what everything is worth at cost"), make_stock_value}}};

constexpr std::array<Format, 5> kFormats{
    {{"text", write_text}, {"html", write_html}, {"pdf", write_pdf}, {"csv", write_csv}, {"json", write_json}}};

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

}  // namespace dyestead::reports
