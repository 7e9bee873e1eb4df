#include "reports/trace_report.h"

#include <algorithm>
#include <array>

#include "domain/facts/material_amount.h"
#include "domain/ledger/trace.h"
#include "domain/ledger/where_used.h"
#include "domain/text/amounts.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/statement_lines.h"
#include "reports/statement_parts.h"
#include "reports/words/fact_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/statement_words.h"

namespace dyestead::reports {
namespace {

std::string term_names() {
    std::string names;
    for (const NamedLine& each : statement_lines())
        if (std::holds_alternative<Term>(each.line)) names += (names.empty() ? "" : ", ") + each.name;
    return names;
}

std::string title(Term term, Period period) {
    const auto first = arg("first", shown_date(period.first));
    const auto last = arg("last", shown_date(period.last));
    switch (term) {
        case Term::in: return say("Where what came in from {first} to {last} comes from", first, last);
        case Term::stock: return say("Where the stock on {last} comes from", last);
        case Term::in_progress: return say("Where what is in the making on {last} comes from", last);
        case Term::sold: return say("Where the cost of what was sold from {first} to {last} comes from", first, last);
        case Term::lost: return say("Where the cost of what was lost from {first} to {last} comes from", first, last);
        case Term::given:
            return say("Where the cost of what was given away from {first} to {last} comes from", first, last);
        case Term::period: return say("Where the costs of the period from {first} to {last} come from", first, last);
    }
    return {};
}

std::string title(const StatementLine& line, Period period) {
    if (const auto* term = std::get_if<Term>(&line)) return title(*term, period);
    const auto* kind = std::get_if<StockKind>(&line);
    const auto of = arg("line", line_words(line));
    const auto last = arg("last", shown_date(period.last));
    if (kind != nullptr) return say("Where \"{line}\" on {last} comes from", of, last);
    return say("Where \"{line}\" from {first} to {last} comes from", of, arg("first", shown_date(period.first)), last);
}

template <class Fact>
std::optional<std::uint32_t> place(const Shop& shop, const std::string& code) {
    const auto& all = shop.all<Fact>();
    const auto found = std::ranges::find(all, code, &Fact::code);
    if (found == all.end()) return std::nullopt;
    return static_cast<std::uint32_t>(found - all.begin());
}

std::optional<Account> account_of(const Shop& shop, const Ledger& ledger, const std::string& code) {
    if (const auto at = place<Lot>(shop, code)) return ledger.accounts.lots + *at;
    if (const auto at = place<Batch>(shop, code)) return ledger.accounts.batches + *at;
    if (const auto at = place<Planting>(shop, code)) return ledger.accounts.plantings + *at;
    if (const auto at = place<Vat>(shop, code)) return ledger.accounts.vats + *at;
    if (const auto at = place<OutAtShop>(shop, code)) return ledger.accounts.outs + *at;
    return std::nullopt;
}

class TraceReport {
public:
    TraceReport(const Shop& shop, const Ledger& ledger) : shop_{shop}, ledger_{ledger}, currency_{currency_of(shop)} {
        document_ = begin_document(shop, ledger, "trace", {});
    }

    Document of_line(const StatementLine& line, Period period) {
        document_.title = title(line, period);
        if (const auto* at = std::get_if<TakenAt>(&line)) came_in_as_ = name_of(*at);
        add_leaves(follow(shop_, ledger_, line, period));
        return finish();
    }

    Document of_account(Account account, const std::string& code) {
        document_.title = say("Where the cost of {code} comes from", arg("code", code));
        std::vector<Leaf> leaves = trace_into(ledger_, account, ledger_.as_of);
        const bool lot = ledger_.accounts.kind(account) == AccountKind::lot;
        const auto pool = lot && leaves.empty() ? pool_of(ledger_.accounts.index(account)) : std::nullopt;
        if (pool) leaves = trace_into(ledger_, *pool, ledger_.as_of);
        add_leaves(leaves);
        if (pool)
            document_.blocks.push_back(
                Paragraph{tr("This lot is costed at the moving average: these are the records of "
                             "all goods of its kind together.")});
        if (lot) add_uses(ledger_.accounts.index(account));
        return finish();
    }

private:
    // Where the cost of a lot at the moving average is; nothing for a lot that cost nothing.
    std::optional<Account> pool_of(std::uint32_t lot) const {
        if (ledger_.lots[lot].cost_in.is_zero()) return std::nullopt;
        const Material* material = shop_.find(shop_.all<Lot>()[lot].material);
        if (material == nullptr) return std::nullopt;
        return ledger_.accounts.pools + static_cast<Account>(material - shop_.all<Material>().data());
    }

    Document finish() { return std::move(document_); }

    void add_leaves(const std::vector<Leaf>& leaves) {
        const auto money = arg("currency", currency_);
        Table table{.title = tr("Record by record"),
                    .columns = {{tr("day")},
                                {tr("what")},
                                {tr("record")},
                                {tr("came in as")},
                                {say("{currency} without your hours", money), Align::right},
                                {say("{currency} with your hours", money), Align::right},
                                {tr("your minutes"), Align::right}},
                    .emphasise_last_row = true};
        const auto add = [&](std::array<std::string, 4> words, const Cost& cost) {
            std::vector<Cell> row;
            for (std::string& each : words) row.push_back({.shown = std::move(each)});
            row.push_back(money_cell(units(cost.cash()), currency_));
            row.push_back(money_cell(units(cost.full()), currency_));
            const double minutes = static_cast<double>(cost.hands_on.in_millionths()) / 1e6;
            row.push_back({.shown = shown_fixed(minutes, 1), .number = minutes});
            table.rows.push_back(std::move(row));
        };
        for (const Leaf& leaf : leaves) {
            const auto day = fact_day(shop_, leaf.fact);
            add({day ? print(*day) : std::string{}, fact_words(shop_, leaf.fact), fact_place(shop_, leaf.fact),
                 came_in_as_.empty() ? name_of(leaf.through) : came_in_as_},
                leaf.cost);
        }
        const Cost total = sum(leaves);
        add({tr("in all"), {}, {}, {}}, total);
        add_figures(document_, "total", two(total));
        document_.figures.push_back({"total.hours", hours(total.hands_on)});
        document_.figures.push_back({"records", static_cast<double>(leaves.size())});
        document_.blocks.push_back(Headline{say_count(
            "{cost} without your own hours, {full} with them, from {count} record.",
            "{cost} without your own hours, {full} with them, from {count} records.", leaves.size(),
            arg("cost", shown_money(total.cash(), currency_)), arg("full", shown_money(total.full(), currency_)))});
        document_.blocks.push_back(std::move(table));
    }

    // What an account is called: the code of its lot, bed, vat or batch; for what left, why.
    std::string where(Account account) const {
        const std::uint32_t index = ledger_.accounts.index(account);
        switch (ledger_.accounts.kind(account)) {
            case AccountKind::boundary: break;
            case AccountKind::lot: return shop_.all<Lot>()[index].code;
            case AccountKind::planting: return shop_.all<Planting>()[index].code;
            case AccountKind::vat: return shop_.all<Vat>()[index].code;
            case AccountKind::batch: return shop_.all<Batch>()[index].code;
            case AccountKind::out: return shop_.all<OutAtShop>()[index].code;
            case AccountKind::pool: return shop_.all<Material>()[index].name;
        }
        switch (term_of(static_cast<Boundary>(account))) {
            case Term::sold: return tr("sold");
            case Term::lost: return tr("lost");
            case Term::given: return tr("given away");
            case Term::in:
            case Term::stock:
            case Term::in_progress:
            case Term::period: break;
        }
        return name_of(static_cast<Boundary>(account));
    }

    void add_uses(std::uint32_t lot) {
        Table table{.title = tr("Where it went, step by step"),
                    .columns = {{tr("day")},
                                {tr("out of")},
                                {tr("into")},
                                {tr("of what")},
                                {tr("how much"), Align::right},
                                {tr("record")},
                                {tr("known how")}},
                    .note = tr("By rule: no record names the lot, so it is the one the shelf's order says. Amounts are "
                               "those of the step: all bars of a batch that has some of the lot in it.")};
        std::size_t named = 0;
        for (const UseStep& step : where_used(ledger_, lot)) {
            const Movement& movement = ledger_.movements[step.movement];
            const Source& source = ledger_.sources[movement.source];
            const bool counted = step.quantity != 0;
            const Material& material = shop_.all<Material>()[source.material];
            if (step.named) ++named;
            table.rows.push_back(
                {Cell{.shown = print(movement.on())}, Cell{.shown = where(step.from)}, Cell{.shown = where(step.to)},
                 Cell{.shown = counted ? material.name : std::string{}},
                 Cell{.shown = counted ? shown_quantity({kind_of(material.held_as), step.quantity}) : std::string{}},
                 Cell{.shown = fact_place(shop_, source.fact)},
                 Cell{.shown = step.named ? tr("named") : tr("by rule")}});
        }
        document_.figures.push_back({"steps", static_cast<double>(table.rows.size())});
        document_.figures.push_back({"steps.named", static_cast<double>(named)});
        if (table.rows.empty()) {
            document_.blocks.push_back(Paragraph{tr("Nothing of it has been used yet.")});
            return;
        }
        document_.blocks.push_back(std::move(table));
    }

    const Shop& shop_;
    const Ledger& ledger_;
    std::string currency_;
    std::string came_in_as_;  // of all leaves; blank: each by its own account
    Document document_;
};

}  // namespace

std::variant<Document, Trouble> trace_report(const Shop& shop, const Ledger& ledger,
                                             const std::optional<std::string>& of, Period period) {
    if (!of) return Trouble{TroubleId::nothing_to_trace, {{"choices", term_names()}}};
    if (const auto account = account_of(shop, ledger, *of)) return TraceReport{shop, ledger}.of_account(*account, *of);
    if (const auto line = line_called(*of)) return TraceReport{shop, ledger}.of_line(*line, period);
    return Trouble{TroubleId::no_such_code, {{"value", *of}, {"choices", term_names()}}};
}

}  // namespace dyestead::reports
