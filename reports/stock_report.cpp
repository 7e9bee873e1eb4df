#include "reports/stock_report.h"

#include <algorithm>
#include <array>

#include "domain/facts/material_amount.h"
#include "domain/ledger/statements.h"
#include "domain/text/amounts.h"
#include "reports/cells.h"
#include "reports/words/finding_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

double number(Money money) {
    return static_cast<double>(money.in_millionths()) / 1e6;
}

constexpr std::array kKinds{
    MaterialKind::raw, MaterialKind::seed, MaterialKind::harvest, MaterialKind::pigment, MaterialKind::bar};

std::string kind_name(MaterialKind kind) {
    switch (kind) {
        case MaterialKind::raw: return tr("Bought in");
        case MaterialKind::seed: return tr("Seed");
        case MaterialKind::harvest: return tr("Harvest");
        case MaterialKind::pigment: return tr("Powder");
        case MaterialKind::bar: return tr("Bars ready");
    }
    return {};
}

class StockReport {
public:
    StockReport(const Shop& shop, const Ledger& ledger) : shop_{shop}, ledger_{ledger}, currency_{currency_of(shop)} {
        document_ = {
            .report = "stock-value",
            .as_of = print(ledger.as_of),
            .currency = currency_,
            .title = say("Stock on {day} at cost, without your own hours", arg("day", shown_date(ledger.as_of)))};
    }

    Document take() {
        Cost stock;
        for (const MaterialKind kind : kKinds) {
            const Cost cost = add_kind(kind);
            stock += cost;
            figures(fmt::format("stock.{}", word(kind)), cost);
        }
        const Cost making = add_in_the_making();
        figures("stock", stock);
        figures("in_progress", making);
        figures("total", stock + making);
        document_.blocks.insert(document_.blocks.begin(), Headline{headline(stock, making)});
        document_.blocks.push_back(
            Paragraph{tr("What is worth less than it cost is not written down here. Ask your accountant which figure "
                         "counts."),
                      Tone::small});
        document_.findings = finding_lines(shop_, ledger_.findings);
        return std::move(document_);
    }

private:
    std::string headline(const Cost& stock, const Cost& making) const {
        return say("In stock {stock}, still in the making {making}: {total} at cost, {full} with your own hours.",
                   arg("stock", shown_money(stock.cash(), currency_)),
                   arg("making", shown_money(making.cash(), currency_)),
                   arg("total", shown_money((stock + making).cash(), currency_)),
                   arg("full", shown_money((stock + making).full(), currency_)));
    }

    void figures(const std::string& key, const Cost& cost) {
        document_.figures.push_back({key + ".cash_cost", number(cost.cash())});
        document_.figures.push_back({key + ".full_cost", number(cost.full())});
    }

    Table table(std::string title) const {
        const auto money = arg("currency", currency_);
        return {.title = std::move(title),
                .columns = {{tr("what")},
                            {tr("lot")},
                            {tr("how much"), Align::right},
                            {say("{currency} without your hours", money), Align::right},
                            {say("{currency} with your hours", money), Align::right}},
                .emphasise_last_row = true};
    }

    void add_row(Table& to, std::string what, std::string lot, Cell amount, const Cost& cost) const {
        to.rows.push_back({Cell{.shown = std::move(what)}, Cell{.shown = std::move(lot)}, std::move(amount),
                           money_cell(number(cost.cash()), currency_), money_cell(number(cost.full()), currency_)});
    }

    void finish(Table table, const Cost& total) {
        if (table.rows.empty()) return;
        add_row(table, tr("in all"), {}, {}, total);
        document_.blocks.push_back(std::move(table));
    }

    Cell amount_of(const Material& material, std::int64_t left) const {
        return {.shown = shown_quantity({kind_of(material.held_as), left})};
    }

    bool in_cure(const Material& material, const LotState& state) const {
        return material.kind == MaterialKind::bar && state.ready > ledger_.as_of;
    }

    // Places of the lots that hold something, by the names of their materials, then by code.
    template <class Wanted>
    std::vector<std::size_t> lots(Wanted wanted) const {
        std::vector<std::size_t> places;
        for (std::size_t at = 0; at < ledger_.lots.size(); ++at) {
            const Material* material = shop_.find(shop_.all<Lot>()[at].material);
            const LotState& state = ledger_.lots[at];
            const bool empty = state.left == 0 && cost_at(at).is_zero();
            if (material != nullptr && !empty && wanted(*material, state)) places.push_back(at);
        }
        std::ranges::sort(places, {}, [&](std::size_t at) {
            const Lot& lot = shop_.all<Lot>()[at];
            return std::pair{shop_.find(lot.material)->name, lot.code};
        });
        return places;
    }

    const Cost& cost_at(std::size_t lot) const { return ledger_.balances[ledger_.accounts.lots + lot]; }

    Cost add_lots(Table& to, const std::vector<std::size_t>& places) const {
        Cost total;
        for (const std::size_t at : places) {
            const Lot& lot = shop_.all<Lot>()[at];
            const Material& material = *shop_.find(lot.material);
            add_row(to, material.name, lot.code, amount_of(material, ledger_.lots[at].left), cost_at(at));
            total += cost_at(at);
        }
        return total;
    }

    Cost add_kind(MaterialKind kind) {
        Table rows = table(kind_name(kind));
        const Cost total = add_lots(rows, lots([&](const Material& material, const LotState& state) {
                                        return material.kind == kind && !in_cure(material, state);
                                    }));
        finish(std::move(rows), total);
        return total;
    }

    template <class Fact>
    void add_open(Table& to, Account first, const std::string& what, Cost& total) const {
        for (std::size_t at = 0; at < shop_.all<Fact>().size(); ++at) {
            const Cost& held = ledger_.balances[first + at];
            if (held.is_zero()) continue;
            add_row(to, what, shop_.all<Fact>()[at].code, {}, held);
            total += held;
        }
    }

    Cost add_in_the_making() {
        Table rows = table(tr("Still in the making"));
        Cost total;
        add_open<Planting>(rows, ledger_.accounts.plantings, tr("planting"), total);
        add_open<Vat>(rows, ledger_.accounts.vats, tr("vat"), total);
        add_open<Batch>(rows, ledger_.accounts.batches, tr("batch not cut"), total);
        total += add_lots(
            rows, lots([&](const Material& material, const LotState& state) { return in_cure(material, state); }));
        finish(std::move(rows), total);
        return total;
    }

    const Shop& shop_;
    const Ledger& ledger_;
    std::string currency_;
    Document document_;
};

}  // namespace

Document stock_report(const Shop& shop, const Ledger& ledger) {
    return StockReport{shop, ledger}.take();
}

}  // namespace dyestead::reports
