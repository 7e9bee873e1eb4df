#include "gui/models/cupboard/cupboard_lists.h"

#include <algorithm>

#include "domain/text/amounts.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/form/field_values.h"
#include "reports/words/language.h"
#include "reports/words/names.h"
#include "reports/words/reorder_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::called;
using reports::say;
using reports::shown_date;

namespace {

// All facts of a kind, the latest first.
template <class Fact>
std::vector<const Fact*> latest_first(const Shop& shop, Day Fact::*day) {
    std::vector<const Fact*> all;
    for (const Fact& fact : shop.all<Fact>()) all.push_back(&fact);
    std::ranges::stable_sort(all, [day](const Fact* one, const Fact* other) { return one->*day > other->*day; });
    return all;
}

reports::Cell amount_cell(const Shop& shop, Key<Material> of, const Amount& amount) {
    const Material* material = shop.find(of);
    const auto held = material == nullptr ? std::nullopt : as_held(*material, amount);
    return number_cell(
        static_cast<double>(held ? held->in_base() : amount.quantity.in_base()), reports::in_marks_here(print(amount)));
}

std::string reason_words(LossReason reason) {
    switch (reason) {
        case LossReason::spoiled: return say("spoiled");
        case LossReason::spilled: return say("spilled");
        case LossReason::expired: return say("past its date");
        case LossReason::other: return say("other");
        case LossReason::given: return say("given away");
        case LossReason::sample: return say("a sample");
        case LossReason::own_use: return say("used ourselves");
        case LossReason::test: return say("used for a test");
    }
    return {};
}

const ReorderRow* row_of(const Reorder& answer, Key<Material> material) {
    const auto found = std::ranges::find(answer.rows, material, &ReorderRow::material);
    return found == answer.rows.end() ? nullptr : &*found;
}

}  // namespace

Listing order_list(const Books& books, const Reorder& answer, std::string_view find) {
    Listing list{.name = say("To order"),
                 .table = {.title = say("To order"),
                           .columns = {{say("what")},
                                       {say("there"), Align::right},
                                       {say("order at"), Align::right},
                                       {say("runs out"), Align::right},
                                       {say("order by"), Align::right},
                                       {say("what to do")}}},
                 .empty = say("Nothing is planned and nothing was used in the last twelve months, so there is nothing "
                              "to order. Plan a batch at the Bench.")};
    for (const ReorderRow& row : answer.rows) {
        const std::string name = called(books.shop, row.material);
        if (!holds({name}, find)) continue;
        const std::string doing = !row.wanted  ? say("enough")
                                  : !row.order ? say("find a supplier")
                                  : row.late   ? say("order today; it will be late")
                                               : say("order");
        const Material* material = books.shop.find(row.material);
        if (material == nullptr) continue;
        list.table.rows.push_back({words_cell(name), held_cell(*material, row.there),
                                   row.keep > 0 ? held_cell(*material, row.keep) : no_cell(),
                                   row.runs_out ? day_cell(*row.runs_out) : no_cell(),
                                   row.order_by ? day_cell(*row.order_by) : no_cell(), words_cell(doing)});
        list.rows.push_back(ref(*material));
    }
    return list;
}

std::string colour_told(const Books& books, const Reorder& answer, Key<Material> material) {
    const auto found = std::ranges::find(answer.colours, material, &ColourShort::material);
    if (found == answer.colours.end()) return {};
    std::string told;
    for (const std::string& each : reports::colour_short_sentences(books.shop, *found))
        told += (told.empty() ? "" : " ") + each;
    return told;
}

std::string order_sentence(const Books& books, const Reorder& answer, Key<Material> material) {
    const ReorderRow* row = row_of(answer, material);
    if (row == nullptr) return {};
    const auto what = arg("what", called(books.shop, material));
    if (!row->wanted) return say("{what}: enough for what is planned and what is usual.", what);
    if (!row->order)
        return say("{what} runs short and nobody's price for it is on record; note a supplier's price.", what);
    const Offer* offer = books.shop.find(row->order->offer);
    if (offer == nullptr) return {};
    const auto packs = arg("packs", row->order->packs);
    const auto pack = arg("pack", reports::in_marks_here(print(offer->pack)));
    const auto from = arg("supplier", called(books.shop, offer->supplier));
    const auto days = arg("days", fmt::format("{}-{}", row->lead.usual, row->lead.safe));
    if (!row->order_by || row->late)
        return say("{what}: order {packs} times {pack} from {supplier} now; it takes {days} days.", what, packs, pack,
                   from, days);
    return say("{what}: order {packs} times {pack} from {supplier} by {day}; it takes {days} days.", what, packs, pack,
               from, arg("day", shown_date(*row->order_by)), days);
}

std::optional<reports::Table> draft_order(const Books& books, const Reorder& answer, Key<Material> material) {
    const auto holds_it = [&](const DraftOrder& order) {
        return std::ranges::any_of(order.rows, [&](std::size_t at) { return answer.rows[at].material == material; });
    };
    const auto order = std::ranges::find_if(answer.orders, holds_it);
    if (order == answer.orders.end()) return std::nullopt;
    const std::string currency = reports::currency_of(books.shop);
    reports::Table table{
        .title = say("Draft order to {supplier}", arg("supplier", called(books.shop, order->supplier))),
        .columns = {{say("what")}, {say("packs"), Align::right}, {say("pack"), Align::right}, {currency, Align::right}},
        .emphasise_last_row = true};
    for (const std::size_t at : order->rows) {
        const ReorderRow& row = answer.rows[at];
        const Offer* offer = books.shop.find(row.order->offer);
        if (offer == nullptr) continue;
        table.rows.push_back(
            {words_cell(called(books.shop, row.material)), count_cell(static_cast<std::size_t>(row.order->packs)),
             words_cell(reports::in_marks_here(print(offer->pack))), money_cell(number(row.order->price), currency)});
    }
    table.rows.push_back(
        {words_cell(say("postage and delivery")), no_cell(), no_cell(), money_cell(number(order->carriage), currency)});
    table.rows.push_back({words_cell(say("in all")), no_cell(), no_cell(),
                          money_cell(number(order->goods + order->carriage), currency)});
    return table;
}

Listing delivery_list(const Books& books, std::string_view find) {
    const std::string currency = reports::currency_of(books.shop);
    Listing list{.name = say("Deliveries"),
                 .table = {.title = say("Deliveries"),
                           .columns = {{say("on")},
                                       {say("from")},
                                       {say("what came")},
                                       {say("goods, {currency}", arg("currency", currency)), Align::right},
                                       {say("postage, {currency}", arg("currency", currency)), Align::right}}},
                 .empty = say("Lay the last bill beside you and enter a delivery.")};
    for (const Delivery* delivery : latest_first(books.shop, &Delivery::date)) {
        std::string what;
        Money goods;
        for (const DeliveryLine& line : books.shop.all<DeliveryLine>()) {
            if (line.head != delivery->key) continue;
            const Lot* lot = books.shop.find(line.lot);
            what += (what.empty() ? "" : ", ") + (lot == nullptr ? std::string{} : called(books.shop, lot->material));
            goods += line.price;
        }
        const std::string supplier = called(books.shop, delivery->supplier);
        if (!holds({what, supplier, delivery->code}, find)) continue;
        list.table.rows.push_back({day_cell(delivery->date), words_cell(supplier), words_cell(what),
                                   money_cell(number(goods), currency),
                                   money_cell(number(delivery->carriage), currency)});
        list.rows.push_back(ref(*delivery));
    }
    return list;
}

reports::Table delivery_lines(const Books& books, Key<Delivery> delivery) {
    const std::string currency = reports::currency_of(books.shop);
    const Records records{books.shop, books.ledger};
    reports::Table table{.title = say("What came"),
                         .columns = {{say("what")},
                                     {say("how much"), Align::right},
                                     {say("price, {currency}", arg("currency", currency)), Align::right},
                                     {say("with delivery"), Align::right},
                                     {say("best before"), Align::right},
                                     {say("their lot number")}}};
    for (const DeliveryLine& line : books.shop.all<DeliveryLine>()) {
        if (line.head != delivery) continue;
        const Lot* lot = books.shop.find(line.lot);
        const Material* material = lot == nullptr ? nullptr : books.shop.find(lot->material);
        const LotState* state = records.state(line.lot);
        if (material == nullptr || state == nullptr) continue;
        table.rows.push_back({words_cell(material->name), amount_cell(books.shop, material->key, line.amount),
                              money_cell(number(line.price), currency),
                              price_cell(*material, state->cost_in.cash(), state->received, currency),
                              line.best_before ? day_cell(*line.best_before) : no_cell(),
                              line.supplier_lot ? words_cell(*line.supplier_lot) : no_cell()});
    }
    return table;
}

Listing offer_list(const Books& books, std::string_view find) {
    const std::string currency = reports::currency_of(books.shop);
    Listing list{.name = say("Prices"),
                 .table = {.title = say("Suppliers' prices"),
                           .columns = {{say("from")},
                                       {say("what")},
                                       {say("supplier")},
                                       {say("pack"), Align::right},
                                       {say("price, {currency}", arg("currency", currency)), Align::right},
                                       {say("comes to"), Align::right}}},
                 .empty = say("No supplier's price yet. Note one: what it is, from whom, the pack and its price.")};
    for (const Offer* offer : latest_first(books.shop, &Offer::from)) {
        const Material* material = books.shop.find(offer->material);
        const std::string supplier = called(books.shop, offer->supplier);
        if (material == nullptr || !holds({material->name, supplier}, find)) continue;
        const auto held = as_held(*material, offer->pack);
        list.table.rows.push_back({day_cell(offer->from), words_cell(material->name), words_cell(supplier),
                                   words_cell(reports::in_marks_here(print(offer->pack))),
                                   money_cell(number(offer->price), currency),
                                   held ? price_cell(*material, offer->price, held->in_base(), currency) : no_cell()});
        list.rows.push_back(ref(*offer));
    }
    return list;
}

Listing supplier_list(const Books& books, std::string_view find) {
    const std::string currency = reports::currency_of(books.shop);
    Listing list{.name = say("Suppliers"),
                 .table = {.title = say("Suppliers"),
                           .columns = {{say("name")},
                                       {say("postage, {currency}", arg("currency", currency)), Align::right},
                                       {say("free from, {currency}", arg("currency", currency)), Align::right}}},
                 .empty = say("No supplier yet. A delivery puts one down by itself.")};
    for (const Supplier& supplier : books.shop.all<Supplier>()) {
        if (!holds({supplier.name}, find)) continue;
        list.table.rows.push_back(
            {words_cell(supplier.name),
             supplier.carriage ? money_cell(number(*supplier.carriage), currency) : no_cell(),
             supplier.carriage_free_from ? money_cell(number(*supplier.carriage_free_from), currency) : no_cell()});
        list.rows.push_back(ref(supplier));
    }
    return list;
}

Listing loss_list(const Books& books, std::string_view find) {
    Listing list{.name = say("Lost or given"),
                 .table = {.title = say("Lost or given away"),
                           .columns = {{say("on")}, {say("what")}, {say("how much"), Align::right}, {say("why")}}},
                 .empty = say("Nothing lost yet. Ctrl+L notes what spoiled, was spilled or given away.")};
    for (const Loss* loss : latest_first(books.shop, &Loss::date)) {
        const std::string name = called(books.shop, loss->material);
        if (!holds({name, reason_words(loss->reason)}, find)) continue;
        list.table.rows.push_back({day_cell(loss->date), words_cell(name),
                                   amount_cell(books.shop, loss->material, loss->amount),
                                   words_cell(reason_words(loss->reason))});
        list.rows.push_back(ref(*loss));
    }
    return list;
}

Listing count_list(const Books& books, std::string_view /*find*/) {
    Listing list{.name = say("Stock-takes"),
                 .table = {.title = say("Stock-takes"),
                           .columns = {{say("on")}, {say("lines"), Align::right}, {say("counted"), Align::right}}},
                 .empty = say("No stock-take yet. It lists all there is; write what you find, leave blank what you do "
                              "not count.")};
    for (const Count* count : latest_first(books.shop, &Count::date)) {
        std::size_t lines = 0;
        std::size_t counted = 0;
        for (const CountLine& line : books.shop.all<CountLine>()) {
            if (line.head != count->key) continue;
            ++lines;
            if (line.counted) ++counted;
        }
        list.table.rows.push_back({day_cell(count->date), count_cell(lines), count_cell(counted)});
        list.rows.push_back(ref(*count));
    }
    return list;
}

Listing already_here_list(const Books& books, std::string_view find) {
    const std::string currency = reports::currency_of(books.shop);
    Listing list{.name = say("Already here"),
                 .table = {.title = say("Already here when the books began"),
                           .columns = {{say("as of")},
                                       {say("what")},
                                       {say("how much"), Align::right},
                                       {say("cost, {currency}", arg("currency", currency)), Align::right}}},
                 .empty = say("Put down what is already here, roughly: oils, lye, bands, powder, bars. It takes ten "
                              "minutes and the books stand on it.")};
    for (const AlreadyHere* here : latest_first(books.shop, &AlreadyHere::date)) {
        const Lot* lot = books.shop.find(here->lot);
        const std::string name = lot == nullptr ? std::string{} : called(books.shop, lot->material);
        if (!holds({name}, find)) continue;
        list.table.rows.push_back({day_cell(here->date), words_cell(name),
                                   lot == nullptr ? no_cell() : amount_cell(books.shop, lot->material, here->amount),
                                   here->cost ? money_cell(number(*here->cost), currency) : no_cell()});
        list.rows.push_back(ref(*here));
    }
    return list;
}

Listing measure_list(const Books& books, std::string_view find) {
    Listing list{
        .name = say("Own measures"),
        .table = {.title = say("Measures of your own"),
                  .columns = {{say("name")}, {say("holds"), Align::right}, {say("of what")}}},
        .empty = say("No measure of your own yet. Say what your bucket, scoop or cup holds, and \"2 buckets\" is "
                     "understood.")};
    for (const OwnMeasure& measure : books.shop.all<OwnMeasure>()) {
        if (!holds({measure.name}, find)) continue;
        list.table.rows.push_back(
            {words_cell(measure.name), words_cell(reports::in_marks_here(print(measure.amount))),
             measure.material ? words_cell(called(books.shop, *measure.material)) : words_cell(say("anything"))});
        list.rows.push_back(ref(measure));
    }
    return list;
}

}  // namespace dyestead::gui
