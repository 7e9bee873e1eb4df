#include "reports/calendar_report.h"

#include <algorithm>

#include "domain/decisions/fair_plan.h"
#include "domain/decisions/reorder.h"
#include "domain/decisions/shelf.h"
#include "domain/decisions/sowing.h"
#include "domain/text/amounts.h"
#include "reports/begin_document.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

class Calendar {
public:
    Calendar(const Shop& shop, const Ledger& ledger) : shop_{shop}, ledger_{ledger} {
        cure_ends();
        orders();
        fairs();
        sowings();
        plans();
        std::ranges::stable_sort(days_, {}, &DueDay::day);
    }

    std::vector<DueDay> take() && { return std::move(days_); }

private:
    void add(Day day, std::string id, std::string kind, std::string what, std::string note = {}) {
        if (day < ledger_.as_of) return;
        days_.push_back({.id = std::move(id),
                         .day = print(day),
                         .what = std::move(what),
                         .note = std::move(note),
                         .kind = std::move(kind)});
    }

    void cure_ends() {
        for (const ShelfLot& lot : shelf({shop_, ledger_}).lots) {
            if (lot.state != BarState::in_cure) continue;
            const std::string& code = shop_.find(lot.lot)->code;
            add(lot.ready, "cured-" + code, tr("out of cure"),
                say_count("One bar out of cure: {bar}", "{count} bars out of cure: {bar}",
                          static_cast<std::uint64_t>(lot.bars / 1'000), arg("bar", called(shop_, lot.bar))),
                say("Lot {lot}. Weigh three together before they are labelled.", arg("lot", code)));
        }
    }

    void orders() {
        const Reorder answer = reorder(shop_, ledger_);
        for (const DraftOrder& order : answer.orders) {
            std::string things;
            for (const std::size_t row : order.rows)
                things += (things.empty() ? "" : ", ") + called(shop_, answer.rows[row].material);
            const Supplier* supplier = shop_.find(order.supplier);
            // What is late is due today.
            add(std::max(order.send_by, ledger_.as_of),
                "order-" + (supplier == nullptr ? std::string{} : supplier->code), tr("order"),
                say("Order from {supplier}", arg("supplier", called(shop_, order.supplier))), things);
        }
        for (const GoingOff& each : answer.going_off) {
            const Lot* lot = shop_.find(each.lot);
            if (lot == nullptr) continue;
            add(each.best_before, "best-before-" + lot->code, tr("goes off"),
                say("{what} goes off", arg("what", called(shop_, lot->material))),
                say("Lot {lot}.", arg("lot", lot->code)));
        }
    }

    void fairs() {
        for (const Fair& fair : shop_.all<Fair>()) {
            const bool known = fair.noted.value_or(ledger_.as_of) <= ledger_.as_of;
            if (fair.date < ledger_.as_of || !known || fair.ended == FairEnded::did_not_happen) continue;
            add(fair.date, "fair-" + fair.code, tr("fair"), say("Fair: {fair}", arg("fair", fair.name)));
            for (const TakeBars& bar : fair_plan(shop_, ledger_, fair.key).bars) {
                const Material* kind = shop_.find(bar.bar);
                if (!bar.pour_by || kind == nullptr) continue;
                add(*bar.pour_by, "pour-" + fair.code + "-" + kind->code, tr("last day to pour"),
                    say("Last day to pour {bar} for the {fair}", arg("bar", kind->name), arg("fair", fair.name)),
                    say("Poured later it is still in cure on {day}.", arg("day", shown_date(fair.date))));
            }
        }
    }

    void sowings() {
        for (const ColourSowing& each : sowing(shop_, ledger_).colours) {
            const dyestead::Colour* colour = shop_.find(each.colour);
            if (colour == nullptr || !each.plant) continue;
            const auto plant = arg("plant", called(shop_, *each.plant));
            const std::string can_wait =
                each.can_wait ? tr("It can wait: the powder there lasts until the sowing after it gives more.")
                              : std::string{};
            if (each.days.sow_by)
                add(*each.days.sow_by, fmt::format("sow-{}-{}", colour->code, year_of(*each.days.sow_by)), tr("sowing"),
                    say("Sow {plant}", plant), can_wait);
            if (each.days.last_chance && each.days.last_chance != each.days.sow_by)
                add(*each.days.last_chance,
                    fmt::format("last-sowing-{}-{}", colour->code, year_of(*each.days.last_chance)), tr("sowing"),
                    say("Last day to sow {plant} for one cut", plant));
            if (each.days.last_frost)
                frost(*each.days.last_frost, "last-frost", say("Last frost of a usual year"),
                      say("Seedlings that frost would kill stay under cover until then."));
            if (each.days.first_frost)
                frost(*each.days.first_frost, "first-frost", say("First frost of a usual year"),
                      say("What is to be cut of an annual is cut before it."));
        }
    }

    // Several plants may stand under one frost.
    void frost(Day day, std::string_view id, std::string what, std::string note) {
        std::string dated = fmt::format("{}-{}", id, year_of(day));
        if (std::ranges::find(days_, dated, &DueDay::id) == days_.end())
            add(day, std::move(dated), tr("frost"), std::move(what), std::move(note));
    }

    void plans() {
        for (const Plan& plan : shop_.all<Plan>())
            if (plan.noted <= ledger_.as_of)
                add(plan.date, "plan-" + plan.code, tr("batch planned"),
                    say_count("Pour one loaf of {bar}", "Pour {count} loaves of {bar}",
                              static_cast<std::uint64_t>(plan.loaves), arg("bar", called(shop_, plan.bar))));
    }

    const Shop& shop_;
    const Ledger& ledger_;
    std::vector<DueDay> days_;
};

}  // namespace

Document calendar_report(const Shop& shop, const Ledger& ledger) {
    Document document = begin_document(
        shop, ledger, "calendar", say("What falls due from {day} on", arg("day", shown_date(ledger.as_of))));
    document.days = Calendar{shop, ledger}.take();
    const auto& days = *document.days;
    document.figures = {{"days", static_cast<double>(days.size())}};
    if (days.empty()) {
        document.blocks.push_back(
            Headline{tr("Nothing falls due: no bars are in cure, and no batch, fair or sowing lies ahead.")});
        return document;
    }
    document.blocks.push_back(
        Headline{say("First, on {day}: {what}.", arg("day", shown_date(*read_day(days.front().day))),
                     arg("what", days.front().what))});
    Table table{
        .title = tr("Day by day"), .columns = {{tr("day")}, {tr("what kind")}, {tr("what")}, {tr("what to know")}}};
    for (const DueDay& each : days)
        table.rows.push_back({Cell{.shown = short_date(*read_day(each.day))}, Cell{.shown = each.kind},
                              Cell{.shown = each.what}, Cell{.shown = each.note}});
    document.blocks.push_back(std::move(table));
    document.blocks.push_back(Paragraph{
        tr("A day in a calendar does not move when the books do: write the calendar again after an entry that changes "
           "a day. In it every day keeps its name, so the new one takes the place of the old one."),
        Tone::small});
    return document;
}

}  // namespace dyestead::reports
