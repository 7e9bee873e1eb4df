#include "reports/stock_report.h"

#include <algorithm>

#include "domain/facts/material_amount.h"
#include "domain/ledger/write_down.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/statement_parts.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/statement_words.h"

namespace dyestead::reports {
namespace {

class StockReport {
public:
    StockReport(const Shop& shop, const Ledger& ledger)
        : shop_{shop},
          ledger_{ledger},
          currency_{currency_of(shop)},
          value_{stock_value(shop, ledger, ledger.as_of)},
          written_down_{write_down(shop, ledger, ledger.as_of)} {
        document_ =
            begin_document(shop, ledger, "stock-value",
                           say("Stock on {day} at cost, without your own hours", arg("day", shown_date(ledger.as_of))));
    }

    Document take() {
        document_.blocks.push_back(Headline{headline()});
        for (std::size_t i = 0; i < kStockKinds; ++i) {
            const auto kind = static_cast<StockKind>(i);
            if (is_in_progress(kind)) continue;
            add_table(
                name_of(kind), [&](StockKind each) { return each == kind; }, value_[kind]);
        }
        add_table(tr("Still in the making"), is_in_progress, value_.in_progress());
        add_write_down();
        add_all_figures();
        document_.blocks.push_back(Paragraph{
            tr("What is worth less than it cost is written down on this page only; the books go on at cost. Ask "
               "your accountant which figure counts."),
            Tone::small});
        document_.blocks.push_back(tie_line(shop_, ledger_, period_of(shop_, ledger_, std::nullopt)));
        return std::move(document_);
    }

private:
    Cost total() const { return value_.stock() + value_.in_progress(); }

    std::string headline() const {
        return say("In stock {stock}, still in the making {making}: {total} at cost, {full} with your own hours.",
                   arg("stock", shown_money(value_.stock().cash(), currency_)),
                   arg("making", shown_money(value_.in_progress().cash(), currency_)),
                   arg("total", shown_money(total().cash(), currency_)),
                   arg("full", shown_money(total().full(), currency_)));
    }

    struct Words {
        std::string what;
        std::string code;
        Cell amount{};
    };

    Words words(const StockItem& item) const {
        const std::uint32_t index = ledger_.accounts.index(item.account);
        switch (ledger_.accounts.kind(item.account)) {
            case AccountKind::boundary: return {};
            case AccountKind::lot: {
                const Lot& lot = shop_.all<Lot>()[index];
                const Material* material = shop_.find(lot.material);
                if (material == nullptr) return {{}, lot.code};
                return {material->name, lot.code,
                        Cell{.shown = shown_quantity({kind_of(material->held_as), item.quantity})}};
            }
            case AccountKind::planting: return {tr("planting"), shop_.all<Planting>()[index].code};
            case AccountKind::vat: return {tr("vat"), shop_.all<Vat>()[index].code};
            case AccountKind::batch: return {tr("batch not cut"), shop_.all<Batch>()[index].code};
            case AccountKind::out: {
                const OutAtShop& out = shop_.all<OutAtShop>()[index];
                return {called(shop_, out.bar), out.where, Cell{.shown = shown_quantity({Kind::count, item.quantity})}};
            }
            case AccountKind::pool: return {shop_.all<Material>()[index].name, {}};
        }
        return {};
    }

    template <class Wanted>
    void add_table(std::string title, Wanted wanted, const Cost& sum) {
        const auto money = arg("currency", currency_);
        Table table{.title = std::move(title),
                    .columns = {{tr("what")},
                                {tr("lot")},
                                {tr("how much"), Align::right},
                                {say("{currency} without your hours", money), Align::right},
                                {say("{currency} with your hours", money), Align::right}},
                    .emphasise_last_row = true};
        struct Row {
            StockKind kind;
            Words words;
            Cost cost;
        };
        std::vector<Row> rows;
        for (const StockItem& item : value_.items)
            if (wanted(item.kind)) rows.push_back({item.kind, words(item), item.cost});
        if (rows.empty()) return;
        std::ranges::sort(rows, {}, [](const Row& row) { return std::tie(row.kind, row.words.what, row.words.code); });
        rows.push_back({{}, {tr("in all"), {}}, sum});
        for (Row& row : rows)
            table.rows.push_back({Cell{.shown = std::move(row.words.what)}, Cell{.shown = std::move(row.words.code)},
                                  std::move(row.words.amount), money_cell(units(row.cost.cash()), currency_),
                                  money_cell(units(row.cost.full()), currency_)});
        document_.blocks.push_back(std::move(table));
    }

    static std::string how(WorthBy by) {
        switch (by) {
            case WorthBy::fetches: return tr("what they should fetch, less wrapping and fees");
            case WorthBy::replacement: return tr("what it would cost to buy again");
            case WorthBy::cost: return tr("cost");
            case WorthBy::not_known: return tr("no price known, so at cost");
        }
        return {};
    }

    void add_write_down() {
        Table table{.title = tr("Worth less than it cost"),
                    .columns = {{tr("what")},
                                {tr("lot")},
                                {say("{currency} at cost", arg("currency", currency_)), Align::right},
                                {say("{currency} worth", arg("currency", currency_)), Align::right},
                                {say("{currency} written down", arg("currency", currency_)), Align::right},
                                {tr("worth by")}},
                    .emphasise_last_row = true};
        Money cost;
        for (const Valued& each : written_down_.items) {
            if (each.write_down().is_zero()) continue;
            const Words name = words(each.item);
            table.rows.push_back({Cell{.shown = name.what}, Cell{.shown = name.code},
                                  money_cell(units(each.cost), currency_), money_cell(units(*each.worth), currency_),
                                  money_cell(units(each.write_down()), currency_), Cell{.shown = how(each.by)}});
            cost += each.cost;
        }
        const Money down = written_down_.total();
        if (!table.rows.empty()) {
            table.rows.push_back({Cell{.shown = tr("in all")},
                                  {},
                                  money_cell(units(cost), currency_),
                                  money_cell(units(cost - down), currency_),
                                  money_cell(units(down), currency_),
                                  {}});
            document_.blocks.push_back(std::move(table));
        }
        document_.blocks.push_back(Paragraph{say("At cost {cost}, of which {down} is to be written down: {net}.",
                                                 arg("cost", shown_money(total().cash(), currency_)),
                                                 arg("down", shown_money(down, currency_)),
                                                 arg("net", shown_money(total().cash() - down, currency_)))});
    }

    void add_all_figures() {
        for (std::size_t i = 0; i < kStockKinds; ++i) {
            const auto kind = static_cast<StockKind>(i);
            const std::string_view term = is_in_progress(kind) ? "in_progress" : "stock";
            add_figures(document_, fmt::format("{}.{}", term, key_of(kind)), two(value_[kind]));
        }
        add_figures(document_, "stock", two(value_.stock()));
        add_figures(document_, "in_progress", two(value_.in_progress()));
        add_figures(document_, "total", two(total()));
        document_.figures.push_back({"write_down", units(written_down_.total())});
        document_.figures.push_back({"net", units(total().cash() - written_down_.total())});
    }

    const Shop& shop_;
    const Ledger& ledger_;
    std::string currency_;
    StockValue value_;
    WriteDown written_down_;
    Document document_;
};

}  // namespace

Document stock_report(const Shop& shop, const Ledger& ledger) {
    return StockReport{shop, ledger}.take();
}

}  // namespace dyestead::reports
