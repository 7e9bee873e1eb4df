#include "reports/statement_lines.h"

#include <fmt/format.h>

#include <algorithm>

#include "reports/overloaded.h"
#include "reports/words/say.h"
#include "reports/words/statement_words.h"

namespace dyestead::reports {
namespace {

PaidFor paid_for(SellingPart part) {
    switch (part) {
        case SellingPart::stalls: return PaidFor::stalls;
        case SellingPart::travel: return PaidFor::travel;
        case SellingPart::postage: return PaidFor::postage;
        case SellingPart::payment_fees: return PaidFor::payment_fees;
        case SellingPart::people: return PaidFor::wages;
    }
    return PaidFor::wages;
}

std::string term_words(Term term) {
    switch (term) {
        case Term::in: return tr("what came in");
        case Term::stock: return tr("stock");
        case Term::in_progress: return tr("still in the making");
        case Term::sold: return tr("cost of what was sold");
        case Term::lost: return tr("lost");
        case Term::given: return tr("given away");
        case Term::period: return tr("costs of the period");
    }
    return {};
}

std::string earned_words(EarnedPart part) {
    switch (part) {
        case EarnedPart::takings: return tr("takings");
        case EarnedPart::sales_tax: return tr("sales tax in the takings");
        case EarnedPart::net_takings: return tr("takings without sales tax");
        case EarnedPart::tin_difference: return tr("more in the tin than the bars sold should have brought");
        case EarnedPart::overhead_accrued: return tr("running costs that fell on these days");
        case EarnedPart::overhead_absorbed: return tr("running costs that good bars took up");
        case EarnedPart::under_absorbed: return tr("general running costs that no bar took up");
        case EarnedPart::over_absorbed_in_stock: return tr("taken up beyond what there was, in bars still here");
        case EarnedPart::over_absorbed_in_sales: return tr("taken up beyond what there was, in bars sold");
        case EarnedPart::gross_margin: return tr("gross margin");
        case EarnedPart::earned: return tr("earned");
    }
    return {};
}

std::string_view earned_key(EarnedPart part) {
    switch (part) {
        case EarnedPart::takings: return "takings.gross";
        case EarnedPart::sales_tax: return "takings.sales_tax";
        case EarnedPart::net_takings: return "takings.net";
        case EarnedPart::tin_difference: return "takings.tin_difference";
        case EarnedPart::overhead_accrued: return "overhead.accrued";
        case EarnedPart::overhead_absorbed: return "overhead.absorbed";
        case EarnedPart::under_absorbed: return "overhead.under_absorbed";
        case EarnedPart::over_absorbed_in_stock: return "overhead.over_absorbed_in_stock";
        case EarnedPart::over_absorbed_in_sales: return "overhead.over_absorbed_in_sales";
        case EarnedPart::gross_margin: return "gross_margin";
        case EarnedPart::earned: return "earned";
    }
    return {};
}

template <class Each>
void add_all(std::vector<NamedLine>& lines, std::string_view group, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i)
        lines.push_back({fmt::format("{}.{}", group, key_of(static_cast<Each>(i))), static_cast<Each>(i)});
}

std::vector<NamedLine> all_lines() {
    std::vector<NamedLine> lines{
        {"in", Term::in},         {"stock", Term::stock},        {"in-progress", Term::in_progress},
        {"sold", Term::sold},     {"lost", Term::lost},          {"given", Term::given},
        {"period", Term::period}, {"cost_of_sales", Term::sold}, {"gifts", Term::given}};
    for (std::size_t i = 0; i < kStockKinds; ++i) {
        const auto kind = static_cast<StockKind>(i);
        lines.push_back({fmt::format("{}.{}", is_in_progress(kind) ? "in_progress" : "stock", key_of(kind)), kind});
    }
    add_all<LossKind>(lines, "losses", kLossKinds);
    for (std::size_t i = 0; i < kSellingParts; ++i) {
        const auto part = static_cast<SellingPart>(i);
        const bool people = part == SellingPart::people;
        lines.push_back({fmt::format("selling.{}", people ? "people" : key_of(paid_for(part))), part});
    }
    for (Account each = 0; each < kBoundaries; ++each) {
        const auto boundary = static_cast<Boundary>(each);
        if (term_of(boundary) != Term::period) continue;
        const bool selling = boundary == Boundary::selling;
        lines.push_back({selling ? "selling" : fmt::format("period.{}", key_of(boundary)), boundary});
    }
    add_all<Stage>(lines, "hours", kStages);
    add_all<TakenAt>(lines, "in", kTakenAt);
    add_all<PaidFor>(lines, "out", kPaidFor);
    for (std::size_t i = 0; i < kEarnedParts; ++i) {
        const auto part = static_cast<EarnedPart>(i);
        lines.push_back({std::string{earned_key(part)}, part});
    }
    return lines;
}

}  // namespace

const std::vector<NamedLine>& statement_lines() {
    static const std::vector<NamedLine> kLines = all_lines();
    return kLines;
}

std::optional<StatementLine> line_called(std::string_view name) {
    const auto found = std::ranges::find(statement_lines(), name, &NamedLine::name);
    return found == statement_lines().end() ? std::nullopt : std::optional{found->line};
}

std::string line_words(const StatementLine& line) {
    return std::visit(
        Overloaded{[](Term term) { return term_words(term); },
                   [](SellingPart part) {
                       return part == SellingPart::people ? std::string{tr("people at fairs and packing")}
                                                          : name_of(paid_for(part));
                   },
                   [](EarnedPart part) { return earned_words(part); }, [](auto each) { return name_of(each); }},
        line);
}

}  // namespace dyestead::reports
