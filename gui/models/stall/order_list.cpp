#include <algorithm>
#include <map>
#include <span>

#include "domain/facts/lines_of.h"
#include "domain/ledger/takings.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/bench/bars.h"
#include "gui/models/stall/sales_earned.h"
#include "gui/models/stall/shop_forms.h"
#include "gui/models/stall/stall_lists.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::say;

namespace {

struct Row {
    Day day{};
    FactRef fact;
    std::string what;
    std::string goods{};
    int bars = 0;
    std::optional<double> paid{};    // by the customers
    std::optional<double> earned{};  // of a sale
};

// "blue bar, 5 g of indigo powder"
std::string goods_of(const Shop& shop, std::span<const SaleLine* const> bars,
                     std::span<const PowderLine* const> powders) {
    std::vector<std::string> bar_names;
    for (const SaleLine* line : bars) {
        const std::string bar = reports::called(shop, line->bar);
        if (std::ranges::find(bar_names, bar) == bar_names.end()) bar_names.push_back(bar);
    }
    std::string kinds;
    for (const std::string& bar : bar_names) kinds += (kinds.empty() ? "" : ", ") + bar;
    for (const PowderLine* line : powders) {
        const std::string powder =
            say("{amount} of {powder}", arg("amount", reports::shown_quantity(line->amount.quantity)),
                arg("powder", reports::called(shop, line->pigment)));
        kinds += (kinds.empty() ? "" : ", ") + powder;
    }
    return kinds;
}

std::string sold_how(const Sale& sale) {
    if (sale.order_number) return say("order {number}", arg("number", *sale.order_number));
    switch (sale.channel) {
        case Channel::cash: return say("sale in cash");
        case Channel::card: return say("sale by card");
        case Channel::online: return say("order");
        case Channel::wholesale: return say("to a shop, for resale");
        case Channel::other: return say("sale");
    }
    return {};
}

std::vector<Row> rows_of(const Books& books) {
    const Shop& shop = books.shop;
    const auto earned = sales_earned(books);
    const auto all = takings(shop, books.ledger, Period::up_to(books.as_of()));
    std::map<std::pair<FactKind, std::int64_t>, double> gross;
    for (const Taking& taking : all) gross[{taking.fact.kind, taking.fact.key}] = number(taking.gross);
    const auto paid = [&](FactRef fact) {
        const auto taking = gross.find({fact.kind, fact.key});
        return taking == gross.end() ? std::nullopt : std::optional{taking->second};
    };
    const LinesOf<SaleLine> bars{shop};
    const LinesOf<PowderLine> powders{shop};
    std::vector<Row> rows;
    for (const Sale& sale : shop.all<Sale>()) {
        Row row{.day = sale.date, .fact = ref(sale), .what = sold_how(sale)};
        row.goods = goods_of(shop, bars(sale.key), powders(sale.key));
        for (const SaleLine* line : bars(sale.key)) row.bars += line->bars;
        row.paid = paid(row.fact);
        if (const auto at = earned.find(sale.key); at != earned.end()) row.earned = at->second.left;
        rows.push_back(std::move(row));
    }
    for (const OutAtShop& out : shop.all<OutAtShop>())
        rows.push_back({out.date, ref(out),
                        say("out at {where}, {left} still there", arg("where", out.where),
                            arg("left", still_out(shop, out, books.as_of()))),
                        reports::called(shop, out.bar), out.bars});
    for (const OutSettled& settled : shop.all<OutSettled>()) {
        const OutAtShop* out = shop.find(settled.out);
        if (out == nullptr) continue;
        rows.push_back({settled.date, ref(settled),
                        say("sold at {where}, {back} back", arg("where", out->where), arg("back", settled.back)),
                        reports::called(shop, out->bar), settled.sold, paid(ref(settled))});
    }
    for (const Returned& returned : shop.all<Returned>()) {
        const Lot* lot = shop.find(returned.lot);
        rows.push_back({returned.date, ref(returned), say("brought back"),
                        lot == nullptr ? std::string{} : reports::called(shop, lot->material), returned.bars,
                        paid(ref(returned))});
    }
    std::ranges::stable_sort(rows, [](const Row& one, const Row& other) { return one.day > other.day; });
    return rows;
}

}  // namespace

Listing order_list(const Books& books, std::string_view find) {
    const std::string currency = reports::currency_of(books.shop);
    const auto money_column = [&](std::string_view what) {
        return reports::Column{say(what, arg("currency", currency)), Align::right};
    };
    Listing list{.name = say("Orders and shops"),
                 .table = {.title = say("Orders and shops"),
                           .columns = {{say("on")},
                                       {say("what")},
                                       {say("goods")},
                                       {say("bars"), Align::right},
                                       money_column("paid, {currency}"),
                                       {say("earned"), Align::right}},
                           .rows = {},
                           .note = say("Earned: after sales tax, fees, post and what the goods had cost to make; your "
                                       "time not paid.")},
                 .rows = {},
                 .empty = say("No order yet. Enter one: its number, the goods, postage in and out.")};
    for (Row& row : rows_of(books)) {
        if (row.day > books.as_of() || !holds({row.what, row.goods}, find)) continue;
        list.rows.push_back(row.fact);
        list.table.rows.push_back({day_cell(row.day), words_cell(std::move(row.what)), words_cell(std::move(row.goods)),
                                   row.bars == 0 && row.fact.kind == kKindOf<Sale>
                                       ? no_cell()
                                       : number_cell(row.bars, fmt::to_string(row.bars)),
                                   row.paid ? money_cell(*row.paid, currency) : no_cell(),
                                   row.earned ? money_cell(*row.earned, currency) : no_cell()});
    }
    return list;
}

}  // namespace dyestead::gui
