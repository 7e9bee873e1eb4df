#include "reports/reorder_report.h"

#include "domain/facts/material_amount.h"
#include "domain/text/amounts.h"
#include "reports/add_blocks.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/words/language.h"
#include "reports/words/names.h"
#include "reports/words/reorder_words.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

double units(Money money) {
    return static_cast<double>(money.in_millionths()) / 1e6;
}

class ReorderReport {
public:
    ReorderReport(const Shop& shop, const Ledger& ledger, const Reorder& answer)
        : shop_{shop}, ledger_{ledger}, answer_{answer}, currency_{currency_of(shop)} {
        document_ =
            begin_document(shop, ledger, "reorder", say("What to order, {day}", arg("day", shown_date(ledger.as_of))));
    }

    Document take() {
        document_.blocks.push_back(Headline{headline()});
        for (const DraftOrder& order : answer_.orders) document_.blocks.push_back(draft(order));
        shelf();
        colours();
        going_off();
        twice();
        figures();
        return std::move(document_);
    }

private:
    std::string headline() const {
        if (answer_.rows.empty())
            return tr(
                "Nothing is planned and nothing was used in the last twelve months, so there is nothing to order.");
        if (answer_.orders.empty()) return tr("There is enough of everything for what is planned and what is usual.");
        const DraftOrder& first = answer_.orders.front();
        if (first.send_by <= ledger_.as_of)
            return say("Order from {supplier} today.", arg("supplier", called(shop_, first.supplier)));
        return say("Order from {supplier} by {day}.", arg("supplier", called(shop_, first.supplier)),
                   arg("day", shown_date(first.send_by)));
    }

    std::string shown(Key<Material> key, std::int64_t base) const {
        const Material* material = shop_.find(key);
        return material == nullptr ? std::string{} : shown_quantity({kind_of(material->held_as), base});
    }

    Table draft(const DraftOrder& order) const {
        Table table{.title = say("Order to {supplier}, to be sent by {day}",
                                 arg("supplier", called(shop_, order.supplier)), arg("day", shown_date(order.send_by))),
                    .columns = {{tr("what")},
                                {tr("packs"), Align::right},
                                {tr("pack"), Align::right},
                                {currency_, Align::right}},
                    .emphasise_last_row = true};
        for (const std::size_t at : order.rows) {
            const ReorderRow& row = answer_.rows[at];
            table.rows.push_back({Cell{.shown = called(shop_, row.material)},
                                  Cell{.shown = fmt::to_string(row.order->packs), .number = row.order->packs},
                                  Cell{.shown = in_marks_here(print(shop_.find(row.order->offer)->pack))},
                                  money_cell(units(row.order->price), currency_)});
        }
        if (!order.carriage.is_zero())
            table.rows.push_back({Cell{.shown = tr("carriage")}, {}, {}, money_cell(units(order.carriage), currency_)});
        table.rows.push_back(
            {Cell{.shown = tr("in all")}, {}, {}, money_cell(units(order.goods + order.carriage), currency_)});
        if (order.to_free_carriage)
            table.note =
                say("Carriage is free from {more} more.", arg("more", shown_money(*order.to_free_carriage, currency_)));
        return table;
    }

    void shelf() {
        Table table{.title = tr("On the shelf"),
                    .columns = {{tr("what")},
                                {tr("there"), Align::right},
                                {tr("after all plans"), Align::right},
                                {tr("order at"), Align::right},
                                {tr("runs out")},
                                {tr("order by")},
                                {tr("days to come"), Align::right},
                                {tr("what to do")}}};
        for (const ReorderRow& row : answer_.rows)
            table.rows.push_back(
                {Cell{.shown = called(shop_, row.material)}, Cell{.shown = shown(row.material, row.there)},
                 Cell{.shown = row.after_plans < 0
                                   ? say("{amount} short", arg("amount", shown(row.material, -row.after_plans)))
                                   : shown(row.material, row.after_plans)},
                 row.keep > 0 ? Cell{.shown = shown(row.material, row.keep)} : none_cell(),
                 row.runs_out ? Cell{.shown = short_date(*row.runs_out)} : none_cell(),
                 row.order_by ? Cell{.shown = short_date(*row.order_by)} : none_cell(),
                 row.lead.known ? Cell{.shown = fmt::format("{}-{}", row.lead.usual, row.lead.safe)} : none_cell(),
                 Cell{.shown = what_to_do(row)}});
        table.note = say_count("One planned batch is counted.", "{count} planned batches are counted.",
                               static_cast<std::uint64_t>(answer_.plans));
        add_table(document_, std::move(table));
        for (const ReorderRow& row : answer_.rows)
            if (row.lead.over_a_year)
                add_paragraph(
                    document_,
                    say("{what}: a delivery is said to take more than a year, or took it; reckoned as one year. "
                        "Look whether the days are typed right.",
                        arg("what", called(shop_, row.material))),
                    Tone::small);
    }

    static std::string what_to_do(const ReorderRow& row) {
        if (!row.wanted) return tr("enough");
        if (!row.order) return tr("find a supplier");
        if (row.late) return tr("order today; it will be late");
        return tr("order");
    }

    void colours() {
        if (answer_.colours.empty()) return;
        document_.blocks.push_back(Section{tr("Colour that runs short: buy it in, or pour fewer")});
        for (const ColourShort& each : answer_.colours) add_paragraphs(document_, colour_short_sentences(shop_, each));
    }

    void twice() {
        if (answer_.twice.empty()) return;
        document_.blocks.push_back(Section{tr("Got in two ways")});
        for (const BoughtTwice& each : answer_.twice) add_paragraphs(document_, bought_twice_sentences(shop_, each));
    }

    void going_off() {
        Table table{
            .title = tr("Goes off soon"),
            .columns = {
                {tr("what")}, {tr("lot")}, {tr("left"), Align::right}, {tr("best before")}, {tr("could go into")}}};
        for (const GoingOff& each : answer_.going_off) {
            const Lot& lot = *shop_.find(each.lot);
            std::string bars;
            for (const Key<Material> bar : each.bars) bars += (bars.empty() ? "" : ", ") + called(shop_, bar);
            table.rows.push_back({Cell{.shown = called(shop_, lot.material)}, Cell{.shown = lot.code},
                                  Cell{.shown = shown(lot.material, each.left)},
                                  Cell{.shown = short_date(each.best_before)},
                                  bars.empty() ? none_cell() : Cell{.shown = bars}});
        }
        if (!table.rows.empty()) document_.blocks.push_back(std::move(table));
    }

    void figures() {
        document_.figures.push_back({"plans", answer_.plans});
        document_.figures.push_back({"orders", static_cast<double>(answer_.orders.size())});
        double goods = 0;
        for (const DraftOrder& order : answer_.orders) goods += units(order.goods + order.carriage);
        document_.figures.push_back({"orders.cost", goods});
        document_.figures.push_back({"going_off", static_cast<double>(answer_.going_off.size())});
        document_.figures.push_back({"bought_twice", static_cast<double>(answer_.twice.size())});
        document_.figures.push_back({"colours_short", static_cast<double>(answer_.colours.size())});
        for (const ColourShort& each : answer_.colours) {
            const Material* material = shop_.find(each.material);
            if (material == nullptr) continue;
            const auto add = [&](const char* what, std::optional<double> value) {
                document_.figures.push_back({fmt::format("{}.{}", material->code, what), value});
            };
            add("short", static_cast<double>(each.short_by) / 1e3);  // g, ml or pieces
            add("buy", each.buy ? std::optional{static_cast<double>(each.buy_quantity) / 1e3} : std::nullopt);
            add("buy_cost", each.buy_cost);
            add("loaves_fewer", each.loaves());
            add("loaves_fewer_left", each.left());
        }
    }

    const Shop& shop_;
    const Ledger& ledger_;
    const Reorder& answer_;
    std::string currency_;
    Document document_;
};

}  // namespace

Document reorder_report(const Shop& shop, const Ledger& ledger, const Reorder& answer) {
    return ReorderReport{shop, ledger, answer}.take();
}

}  // namespace dyestead::reports
