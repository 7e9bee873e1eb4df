#include "reports/prices_report.h"

#include <algorithm>

#include "domain/decisions/price_changes.h"
#include "reports/add_blocks.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/words/names.h"
#include "reports/words/price_words.h"
#include "reports/words/say.h"
#include "reports/words/unsaid_words.h"

namespace dyestead::reports {
namespace {

// How far back it looks for what changed, unless it is said.
constexpr int kMonthsOfChange = 3;

// Where they stand in the table of what a price is to bring.
constexpr std::size_t kMarginColumn = 4;
constexpr std::size_t kMarkupColumn = 5;

class PricesReport {
public:
    PricesReport(const Shop& shop, const Ledger& ledger, const Prices& answer, Day since)
        : shop_{shop}, ledger_{ledger}, answer_{answer}, currency_{currency_of(shop)}, since_{since} {
        document_ =
            begin_document(shop, ledger, "prices", say("Prices on {day}", arg("day", shown_date(ledger.as_of))));
    }

    Document take() {
        document_.blocks.push_back(Headline{headline()});
        changed();
        add_table(document_, aims());
        add_paragraph(document_, aim_sentence(answer_, currency_));
        add_table(document_, costs());
        add_table(document_, for_shops());
        bundles();
        missing();
        document_.blocks.push_back(Paragraph{
            tr("Set on what making the bar again would cost today, which is not what the bars on the shelf did cost. "
               "Sales tax and what must stand on the label are for your own adviser to say."),
            Tone::small});
        figures();
        return std::move(document_);
    }

private:
    std::string headline() const {
        const auto known = [](const BarPrice& each) { return each.shelf && each.replacement; };
        if (std::ranges::none_of(answer_.bars, known))
            return tr(
                "No bar has both a price and a cost on record yet: a recipe, what its materials cost and a shelf "
                "price make one.");
        const BarPrice* worst = nullptr;
        int under = 0;
        for (const BarPrice& each : answer_.bars) {
            if (!each.under_aim) continue;
            ++under;
            if (worst == nullptr || *each.advised - *each.shelf > *worst->advised - *worst->shelf) worst = &each;
        }
        if (worst == nullptr) return tr("Every bar with a price and a cost on record brings in what you aim at.");
        return say_count("One kind of bar is under your aim: {bar} sells for {shelf}, and {advised} would reach it.",
                         "{count} kinds of bar are under your aim; {bar} most: it sells for {shelf}, and {advised} "
                         "would reach it.",
                         static_cast<std::uint64_t>(under), arg("bar", called(shop_, worst->bar)),
                         arg("shelf", shown_money(*worst->shelf, currency_)),
                         arg("advised", shown_money(*worst->advised, currency_)));
    }

    // What has moved since the day, those that fell under the aim first.
    void changed() {
        const auto changes = price_changes(shop_, ledger_, answer_, since_);
        if (changes.empty()) return;
        Table table{.title = say("What changed since {day}, {currency} a bar", arg("day", shown_date(since_)),
                                 arg("currency", currency_)),
                    .columns = {{tr("bar")},
                                {tr("to make it then")},
                                {tr("to make it now")},
                                {tr("sells for")},
                                {tr("price that restores it")}}};
        for (std::size_t i = 1; i < table.columns.size(); ++i) table.columns[i].align = Align::right;
        for (const PriceChange& each : changes) {
            const auto price = std::ranges::find(answer_.bars, each.bar, &BarPrice::bar);
            table.rows.push_back({Cell{.shown = called(shop_, each.bar)}, money(each.cost_then), money(each.cost_now),
                                  money(price->shelf), each.fell_under ? money(each.restores) : none_cell()});
        }
        table.note =
            tr("Your hours are in. A price stands in the last column where the bar reached your aim then and "
               "does not now.");
        document_.blocks.push_back(std::move(table));
    }

    Cell money(std::optional<double> value) const { return money_cell(value, currency_); }

    Table aims() const {
        Table table{.title = say("Shelf price of a bar, {currency}", arg("currency", currency_)),
                    .columns = {{tr("bar")},
                                {tr("today")},
                                {tr("floor")},
                                {tr("pays the hour")},
                                {tr("pays the margin")},
                                {tr("pays the markup")},
                                {tr("reaches it all")},
                                {tr("margin today")},
                                {tr("an hour earns today")}}};
        for (std::size_t i = 1; i < table.columns.size(); ++i) table.columns[i].align = Align::right;
        for (const BarPrice& each : answer_.bars)
            table.rows.push_back({Cell{.shown = called(shop_, each.bar)}, money(each.shelf), money(each.floor),
                                  money(each.for_hour), money(each.for_margin), money(each.for_markup),
                                  money(each.advised), cell_of(each.margin, shown_percent), money(each.per_hour)});
        table.note =
            tr("Floor: materials and fees of one more bar come back, your own time does not. Margin is on the "
               "price without sales tax. The hour counts making and selling.");
        // Which of the two is aimed at is the maker's: of the other there is nothing to show.
        if (!answer_.aim.markup) leave_out(table, kMarkupColumn);
        if (!answer_.aim.margin) leave_out(table, kMarginColumn);
        return table;
    }

    static void leave_out(Table& table, std::size_t column) {
        const auto at = static_cast<std::ptrdiff_t>(column);
        table.columns.erase(table.columns.begin() + at);
        for (auto& row : table.rows) row.erase(row.begin() + at);
    }

    Table costs() const {
        Table table{.title = say("To make one good bar, {currency}", arg("currency", currency_)),
                    .columns = {{tr("bar")},
                                {tr("materials")},
                                {tr("of it colour")},
                                {tr("same shade bought in")},
                                {tr("your hours")},
                                {tr("running costs")},
                                {tr("in all today")},
                                {tr("newest bars did cost")}}};
        for (std::size_t i = 1; i < table.columns.size(); ++i) table.columns[i].align = Align::right;
        for (const BarPrice& each : answer_.bars) {
            const auto& cost = each.replacement;
            const auto part = [&](auto of) { return cost ? std::optional{of(*cost)} : std::nullopt; };
            const bool coloured = cost && cost->colour > 0;
            table.rows.push_back({Cell{.shown = called(shop_, each.bar)},
                                  money(part([](const BarCost& c) { return c.materials; })),
                                  coloured ? money(cost->colour) : none_cell(),
                                  each.colour_bought ? money(each.colour_bought) : none_cell(),
                                  money(part([](const BarCost& c) { return c.labour; })),
                                  money(part([](const BarCost& c) { return c.overhead; })),
                                  money(part([](const BarCost& c) { return c.full(); })), money(each.booked_full)});
        }
        return table;
    }

    Table for_shops() const {
        Table table{
            .title = say("For shops that sell on, {currency} a bar", arg("currency", currency_)),
            .columns = {
                {tr("bar")}, {tr("asked of shops")}, {tr("floor")}, {tr("pays your hours")}, {tr("left over of it")}}};
        for (std::size_t i = 1; i < table.columns.size(); ++i) table.columns[i].align = Align::right;
        for (const BarPrice& each : answer_.bars)
            if (each.wholesale.floor)
                table.rows.push_back({Cell{.shown = called(shop_, each.bar)}, money(each.wholesale.price),
                                      money(each.wholesale.floor), money(each.wholesale.full_cost),
                                      money(each.wholesale.left)});
        table.note =
            tr("Asked: the price put down for shops, else that of the last wholesale order. Nobody stands at a stall "
               "for these bars, so no selling time and none of the stall's cost is in; packing is not reckoned. Left "
               "over: before your time.");
        return table;
    }

    void bundles() {
        Table table{.title = say("Several bars for one price, {currency}", arg("currency", currency_)),
                    .columns = {{tr("bundle")},
                                {tr("bars"), Align::right},
                                {tr("price"), Align::right},
                                {tr("a bar"), Align::right},
                                {tr("clears every floor at"), Align::right},
                                {tr("pays your hours at"), Align::right}}};
        for (const BundlePrice& each : answer_.bundles)
            table.rows.push_back({Cell{.shown = each.what},
                                  Cell{.shown = fmt::to_string(each.bars), .number = each.bars}, money(each.price),
                                  money(each.a_bar()), money(each.clears_floor), money(each.clears_cost)});
        table.note = tr(
            "Held against the dearest kind that lay on the table: which bars went into a bundle is not written down.");
        add_table(document_, std::move(table));
        for (const BundlePrice& each : answer_.bundles) add_paragraph(document_, bundle_sentence(shop_, each));
    }

    void missing() {
        for (const BarPrice& each : answer_.bars) {
            const std::string bar = called(shop_, each.bar);
            for (const Key<Material> material : each.without_price)
                document_.blocks.push_back(
                    Paragraph{say("{bar}: no price of {material} is on record; put down an offer or a delivery of it.",
                                  arg("bar", bar), arg("material", called(shop_, material))),
                              Tone::small});
            for (const Unsaid what : each.unsaid)
                document_.blocks.push_back(Paragraph{unsaid_sentence(what, bar), Tone::small});
        }
    }

    void figures() {
        for (const BarPrice& each : answer_.bars) {
            const Material* bar = shop_.find(each.bar);
            if (bar == nullptr) continue;
            const auto add = [&](const char* what, std::optional<double> value) {
                document_.figures.push_back({fmt::format("{}.{}", bar->code, what), value});
            };
            add("shelf", each.shelf);
            add("floor", each.floor);
            add("for_hour", each.for_hour);
            add("for_margin", each.for_margin);
            add("for_markup", each.for_markup);
            add("advised", each.advised);
            add("margin", each.margin);
            add("earned_per_hour", each.per_hour);
            add("replacement_cost", each.replacement ? std::optional{each.replacement->full()} : std::nullopt);
            add("booked_cost", each.booked_full);
            add("wholesale", each.wholesale.price);
            add("wholesale_floor", each.wholesale.floor);
            add("wholesale_full_cost", each.wholesale.full_cost);
            add("wholesale_left", each.wholesale.left);
        }
        int under_floor = 0;
        int under_cost = 0;
        for (const BundlePrice& each : answer_.bundles) {
            under_floor += each.under_floor.empty() ? 0 : 1;
            under_cost += each.under_floor.empty() && !each.under_cost.empty() ? 1 : 0;
        }
        document_.figures.push_back({"bundles", static_cast<double>(answer_.bundles.size())});
        document_.figures.push_back({"bundles.under_floor", under_floor});
        document_.figures.push_back({"bundles.under_cost", under_cost});
    }

    const Shop& shop_;
    const Ledger& ledger_;
    const Prices& answer_;
    std::string currency_;
    Day since_;
    Document document_;
};

}  // namespace

Document prices_report(const Shop& shop, const Ledger& ledger, const Prices& answer, std::optional<Day> since) {
    return PricesReport{shop, ledger, answer, since.value_or(months_before(ledger.as_of, kMonthsOfChange))}.take();
}

}  // namespace dyestead::reports
