#include "reports/margins_report.h"

#include <algorithm>

#include "domain/decisions/records.h"
#include "domain/ledger/margins.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/statement_parts.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

double whole(std::int64_t thousandths) {
    return static_cast<double>(thousandths) / 1e3;
}

// What an hour of making brought in, selling aside; nothing where no hours went into the bars.
std::optional<double> per_hour(const KindMargin& kind) {
    const double made_in = hours(kind.made.hands_on);
    return made_in > 0 ? std::optional{units(kind.left_without_labour()) / made_in} : std::nullopt;
}

std::optional<double> per_bar(const KindMargin& kind, Money money) {
    return kind.bars > 0 ? std::optional{units(money) / whole(kind.bars)} : std::nullopt;
}

class MarginsReport {
public:
    MarginsReport(const Shop& shop, const Ledger& ledger, Period period)
        : shop_{shop}, currency_{currency_of(shop)}, kinds_{kind_margins(shop, ledger, period)} {
        document_ = begin_document(shop, ledger, "margins",
                                   say("What each kind of bar brought in from {first} to {last}",
                                       arg("first", shown_date(period.first)), arg("last", shown_date(period.last))));
        std::ranges::stable_sort(kinds_, {}, [&](const KindMargin& kind) {
            return std::pair{!kind.kind.has_value(), name_of(kind)};
        });
        for (const KindMargin& kind : kinds_) {
            add_to(all_, kind);
            if (!is_powder(kind)) add_to(bars_, kind);
        }
        document_.blocks.push_back(Headline{headline()});
        document_.blocks.push_back(in_all());
        document_.blocks.push_back(a_bar());
        document_.blocks.push_back(Paragraph{
            tr("What was taken is without sales tax and as it came in: bundles and reductions are off, shared over the "
               "kinds sold that day. Stalls, travel, postage and the hours of selling belong to no kind and are not "
               "taken off; the report year has them."),
            Tone::small});
        document_.blocks.push_back(tie_line(shop, ledger, period));
        figures();
    }

    Document take() && { return std::move(document_); }

private:
    bool is_powder(const KindMargin& kind) const {
        return kind.kind && shop_.find(*kind.kind)->kind == MaterialKind::pigment;
    }

    static void add_to(KindMargin& sum, const KindMargin& kind) {
        sum.bars += kind.bars;
        sum.net += kind.net;
        sum.fees += kind.fees;
        sum.made += kind.made;
    }

    std::string name_of(const KindMargin& kind) const {
        return kind.kind ? called(shop_, *kind.kind) : tr("of no kind");
    }

    std::string headline() const {
        const KindMargin* best = nullptr;
        for (const KindMargin& kind : kinds_)
            if (!is_powder(kind) && per_hour(kind) && (best == nullptr || *per_hour(kind) > *per_hour(*best)))
                best = &kind;
        if (all_.bars == 0) return tr("No bar was sold in these days.");
        const auto sold = arg("bars", shown_number(whole(bars_.bars)));
        const auto left = arg("left", shown_money(bars_.left_without_labour(), currency_));
        if (best == nullptr) return say("{bars} bars left {left} once their materials and fees were paid.", sold, left);
        return say(
            "{bars} bars left {left} once their materials and fees were paid; an hour of making earned most in "
            "{bar}: {hour}.",
            sold, left, arg("bar", name_of(*best)), arg("hour", shown_money(*per_hour(*best), currency_)));
    }

    Cell money(Money amount) const { return money_cell(units(amount), currency_); }
    Cell money(std::optional<double> amount) const { return amount ? money_cell(amount, currency_) : none_cell(); }
    static Cell bars(std::int64_t thousandths) { return number_cell(whole(thousandths)); }
    // Powder is weighed, not counted.
    Cell sold(const KindMargin& kind) const {
        if (!is_powder(kind)) return bars(kind.bars);
        const Quantity weight{kind_of(shop_.find(*kind.kind)->held_as), kind.powder};
        return {.shown = shown_quantity(weight)};
    }

    static void right_but_first(Table& table) {
        for (std::size_t i = 1; i < table.columns.size(); ++i) table.columns[i].align = Align::right;
    }

    Table in_all() const {
        Table table{.title = say("In all, {currency}", arg("currency", currency_)),
                    .columns = {{tr("kind")},
                                {tr("sold")},
                                {tr("money taken")},
                                {tr("fees")},
                                {tr("made for, without your hours")},
                                {tr("left before your time")},
                                {tr("your hours in them")},
                                {tr("left after your time")}},
                    .emphasise_last_row = true};
        right_but_first(table);
        const auto add = [&](std::string name, const KindMargin& kind) {
            table.rows.push_back({Cell{.shown = std::move(name)}, sold(kind), money(kind.net), money(-kind.fees),
                                  money(-kind.made.cash()), money(kind.left_without_labour()), money(-kind.made.labour),
                                  money(kind.left())});
        };
        for (const KindMargin& kind : kinds_) add(name_of(kind), kind);
        add(tr("all kinds"), all_);
        return table;
    }

    Table a_bar() const {
        Table table{.title = say("A bar, {currency}", arg("currency", currency_)),
                    .columns = {{tr("bar")},
                                {tr("money taken")},
                                {tr("left before your time")},
                                {tr("left after your time")},
                                {tr("left of what was taken")},
                                {tr("an hour of making earned")}}};
        right_but_first(table);
        for (const KindMargin& kind : kinds_) {
            if (!kind.kind || is_powder(kind)) continue;
            table.rows.push_back({Cell{.shown = name_of(kind)}, money(per_bar(kind, kind.net)),
                                  money(per_bar(kind, kind.left_without_labour())), money(per_bar(kind, kind.left())),
                                  kind.net > Money{}
                                      ? cell_of(units(kind.left_without_labour()) / units(kind.net), shown_percent)
                                      : none_cell(),
                                  money(per_hour(kind))});
        }
        return table;
    }

    void figures() {
        const auto add = [&](const std::string& of, const KindMargin& kind) {
            document_.figures.push_back({of + ".bars", whole(kind.bars)});
            document_.figures.push_back({of + ".taken", units(kind.net)});
            document_.figures.push_back({of + ".fees", units(kind.fees)});
            add_figures(document_, of + ".made", two(kind.made));
            add_figures(document_, of + ".left", {kind.left_without_labour(), kind.left()});
            document_.figures.push_back({of + ".earned_per_hour", per_hour(kind)});
        };
        add("all", all_);
        for (const KindMargin& kind : kinds_) {
            if (!kind.kind) continue;
            const Material& material = *shop_.find(*kind.kind);
            const std::string of = (is_powder(kind) ? "powder." : "bar.") + material.code;
            add(of, kind);
            if (is_powder(kind)) document_.figures.push_back({of + ".grams", grams(material, kind.powder)});
        }
    }

    const Shop& shop_;
    std::string currency_;
    std::vector<KindMargin> kinds_;
    KindMargin all_;
    KindMargin bars_;  // all but powder
    Document document_;
};

}  // namespace

Document margins_report(const Shop& shop, const Ledger& ledger, Period period) {
    return MarginsReport{shop, ledger, period}.take();
}

}  // namespace dyestead::reports
