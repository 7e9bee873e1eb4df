#include "reports/earns_best_report.h"

#include <algorithm>

#include "domain/facts/material_amount.h"
#include "reports/add_blocks.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/words/caution_words.h"
#include "reports/words/earns_best_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

class EarnsBestReport {
public:
    EarnsBestReport(const Shop& shop, const Ledger& ledger, const EarnsBest& answer)
        : shop_{shop}, answer_{answer}, currency_{currency_of(shop)} {
        document_ = begin_document(
            shop, ledger, "earns-best", say("What to make, {day}", arg("day", shown_date(ledger.as_of))));
    }

    Document take() {
        document_.blocks.push_back(Headline{earns_best_headline(shop_, answer_)});
        for (std::string& each : earns_best_sentences(shop_, answer_)) add_paragraph(document_, std::move(each));
        add_table(document_, ranking());
        add_table(document_, plan());
        shortages();
        for (std::string& each : earns_best_missing(shop_, answer_))
            add_paragraph(document_, std::move(each), Tone::small);
        add_paragraph(
            document_,
            tr("Made at today's prices of materials, sold at today's shelf prices; your own hours are not taken off, "
               "for they are what is shared out. Powder of your own on the shelf counts as there and paid for. How "
               "many moulds and how much curing room there is stands in no record, so neither sets a limit here."),
            Tone::small);
        add_paragraph(document_, verdict_is_a_sum(), Tone::small);
        add_paragraph(document_, lye_caution(), Tone::caution);
        figures();
        return std::move(document_);
    }

private:
    std::uint64_t months() const { return static_cast<std::uint64_t>(answer_.months); }
    std::string bar(const BarEarns& each) const { return called(shop_, each.bar); }

    std::string step(const ShelfLimit& limit) const {
        if (!limit.material) return shown_hours(limit.step);
        return quantity(*limit.material, limit.step);
    }
    std::string amount(const ShelfLimit& limit, double of) const {
        return limit.material ? quantity(*limit.material, of) : shown_hours(of);
    }
    std::string quantity(Key<Material> key, double base) const {
        const Material* material = shop_.find(key);
        return material == nullptr ? std::string{}
                                   : shown_quantity({kind_of(material->held_as), static_cast<std::int64_t>(base)});
    }
    std::string named(const ShelfLimit& limit) const {
        return limit.material ? called(shop_, *limit.material) : tr("your own hours");
    }

    Table ranking() const {
        const bool by_hours = !answer_.scarce;
        Table table{.title = by_hours
                                 ? say("What an hour brings, {currency}", arg("currency", currency_))
                                 : say("What {step} of {material} brings, {currency}",
                                       arg("step", quantity(*answer_.scarce, step_of_scarce())),
                                       arg("material", called(shop_, *answer_.scarce)), arg("currency", currency_)),
                    .columns = {{tr("bar")}, {tr("a loaf brings"), Align::right}, {tr("hours a loaf"), Align::right}}};
        if (!by_hours) table.columns.push_back({tr("so much of it brings"), Align::right});
        for (const std::string& heading : {tr("an hour brings"), tr("with selling"), tr("colour grown again")})
            table.columns.push_back({heading, Align::right});
        for (const BarEarns& each : answer_.bars) {
            std::vector<Cell> row{
                Cell{.shown = bar(each)}, money_cell(each.brings, currency_), number_cell(each.hours)};
            if (!by_hours)
                row.push_back(each.per_scarce ? money_cell(*each.per_scarce * step_of_scarce(), currency_)
                                              : none_cell());
            row.push_back(money_cell(each.per_hour, currency_));
            row.push_back(money_cell(each.with_selling, currency_));
            row.push_back(each.grown_again ? money_cell(each.grown_again, currency_) : none_cell());
            table.rows.push_back(std::move(row));
        }
        line_up(table, 2);
        table.note =
            tr("With selling: what stalls, travel and their hours took off, for each bar sold. Colour grown again: the "
               "hours at bed and vat and what they cost counted too, as when the powder on the shelf is gone.");
        return table;
    }

    double step_of_scarce() const {
        for (const ShelfLimit& limit : answer_.limits)
            if (limit.material == answer_.scarce) return limit.step;
        return 1;
    }

    Table plan() const {
        Table table{.title = say_count("What to pour for the next month, in loaves",
                                       "What to pour for the next {count} months, in loaves", months()),
                    .columns = {{tr("bar")},
                                {tr("bars sold in a year"), Align::right},
                                {tr("bars on the shelf"), Align::right},
                                {tr("loaves wanted"), Align::right},
                                {tr("pour"), Align::right},
                                {tr("pour, with what is missing ordered"), Align::right}}};
        const auto count = [](double number) { return Cell{.shown = shown_fixed(number, 0), .number = number}; };
        for (const BarEarns& each : answer_.bars)
            table.rows.push_back({Cell{.shown = bar(each)}, count(each.sold_a_year), count(each.on_shelf),
                                  count(each.wanted), count(each.make), count(each.make_if_ordered)});
        table.note = say_count(
            "Wanted: what sells in a month at last year's rate, less what is on the shelf or in cure, in whole "
            "loaves. The whole plan brings {money}, with what is missing ordered {ordered}.",
            "Wanted: what sells in {count} months at last year's rate, less what is on the shelf or in cure, "
            "in whole loaves. The whole plan brings {money}, with what is missing ordered {ordered}.",
            months(), arg("money", shown_money(answer_.brings, currency_)),
            arg("ordered", shown_money(answer_.brings_if_ordered, currency_)));
        return table;
    }

    void shortages() {
        Table table{.title = tr("What runs short"),
                    .columns = {{tr("what")},
                                {tr("there"), Align::right},
                                {tr("used"), Align::right},
                                {tr("left"), Align::right},
                                {tr("so much more"), Align::right},
                                {say("would bring, {currency}", arg("currency", currency_)), Align::right},
                                {tr("stops another loaf of")}}};
        for (const ShelfLimit& limit : answer_.limits) {
            if (limit.use.stops.empty() && limit.use.step_brings <= 0.005) continue;
            std::string stopped;
            for (const std::size_t at : limit.use.stops)
                stopped += (stopped.empty() ? "" : "; ") + bar(answer_.bars[at]);
            table.rows.push_back({Cell{.shown = named(limit)}, Cell{.shown = amount(limit, limit.there)},
                                  Cell{.shown = amount(limit, limit.use.used)},
                                  Cell{.shown = amount(limit, limit.use.left)}, Cell{.shown = step(limit)},
                                  money_cell(limit.use.step_brings, currency_),
                                  stopped.empty() ? none_cell() : Cell{.shown = stopped}});
        }
        if (table.rows.empty()) {
            if (std::ranges::any_of(answer_.bars, [](const BarEarns& each) { return each.make > 0; }))
                add_paragraph(
                    document_,
                    tr("Nothing runs short: there is enough for all that is wanted. More customers would bring "
                       "more, more stock would not."));
            return;
        }
        table.note =
            tr("Would bring: beyond its own price, reckoned in parts of a loaf; in whole loaves a little more "
               "brings nothing until there is enough for one.");
        document_.blocks.push_back(std::move(table));
    }

    void figures() {
        const auto add = [&](std::string key, std::optional<double> value) {
            document_.figures.push_back({std::move(key), value});
        };
        add("months", answer_.months);
        add("hours", answer_.hours);
        add("brings", answer_.brings);
        add("brings_if_ordered", answer_.brings_if_ordered);
        for (const BarEarns& each : answer_.bars) {
            const Material* material = shop_.find(each.bar);
            if (material == nullptr) continue;
            const auto of_bar = [&](const char* what, std::optional<double> value) {
                add(fmt::format("{}.{}", material->code, what), value);
            };
            of_bar("brings_a_loaf", each.brings);
            of_bar("hours_a_loaf", each.hours);
            of_bar("per_hour", each.per_hour);
            of_bar("per_hour_with_selling", each.with_selling);
            of_bar("per_hour_grown_again", each.grown_again);
            of_bar("wanted", each.wanted);
            of_bar("alone", each.alone);
            of_bar("make", each.make);
            of_bar("make_if_ordered", each.make_if_ordered);
        }
        for (const ShelfLimit& limit : answer_.limits) {
            const Material* material = limit.material ? shop_.find(*limit.material) : nullptr;
            const std::string code = material == nullptr ? "hours" : material->code;
            add(fmt::format("limit.{}.left", code), limit.use.left);
            add(fmt::format("limit.{}.more_brings", code), limit.use.step_brings);
        }
    }

    const Shop& shop_;
    const EarnsBest& answer_;
    std::string currency_;
    Document document_;
};

}  // namespace

Document earns_best_report(const Shop& shop, const Ledger& ledger, const EarnsBest& answer) {
    return EarnsBestReport{shop, ledger, answer}.take();
}

}  // namespace dyestead::reports
