#include "gui/models/today/due.h"

#include <algorithm>
#include <set>

#include "domain/decisions/fair_plan.h"
#include "domain/decisions/reorder.h"
#include "domain/decisions/shelf.h"
#include "gui/models/vat/next_step.h"
#include "reports/words/names.h"
#include "reports/words/reorder_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::called;
using reports::say;
using reports::say_count;
using reports::shown_date;

namespace {

std::uint64_t whole_bars(std::int64_t thousandths) {
    return static_cast<std::uint64_t>(thousandths / 1'000);
}

std::string to_do_at(const Shop& shop, const Vat& vat) {
    if (!vat.method) return say("Note the steps as they are done, then dry and weigh.");
    const MethodStep* next = next_step(shop, vat);
    if (next == nullptr) return say("No step of the method is left: dry and weigh when it is ready.");
    const std::string target = target_of(*next);
    if (target.empty()) return say("Next: {step}. F11 keeps each step with one key.", arg("step", next->what));
    return say(
        "Next: {step}. {target} F11 keeps each step with one key.", arg("step", next->what), arg("target", target));
}

// With the day where that is another one.
std::string since(Moment moment, Day today) {
    return moment.day == today ? reports::shown_clock(moment) : reports::shown_moment(moment);
}

void standing_vats(const Books& books, const std::vector<RunningClock>& clocks, std::vector<Due>& all) {
    std::set<Key<Vat>> dried;
    for (const DryingVat& line : books.shop.all<DryingVat>()) {
        const Drying* drying = books.shop.find(line.head);
        if (drying != nullptr && drying->date <= books.as_of()) dried.insert(line.vat);
    }
    for (const Vat& vat : books.shop.all<Vat>()) {
        if (vat.date > books.as_of() || dried.contains(vat.key)) continue;
        const auto clock = std::ranges::find(clocks, vat.key, &RunningClock::vat);
        const bool runs = clock != clocks.end();
        const auto day = arg("day", shown_date(vat.date));
        const auto colour = arg("colour", reports::colour_in_a_sentence(books.shop, vat.colour));
        all.push_back(
            {.day = vat.date,
             .what = runs ? say("Clock still running: vat of {day}, {colour}, since {since}", day, colour,
                                arg("since", since(clock->since, books.as_of())))
                          : say("Vat of {day}, {colour}, is standing", day, colour),
             .place = Place::vat,
             .advice = (runs ? say("F11 at the Vat goes back to the pan: S stops the clock, Space keeps the step.")
                             : to_do_at(books.shop, vat)) +
                       " " +
                       say("Careful: it may still be hot or alkaline; gloves and goggles, lid on, out of reach of "
                           "children and animals."),
             .about = ref(vat)});
    }
}

void bars_curing(const Books& books, Day until, std::vector<Due>& all) {
    for (const ShelfLot& lot : shelf({books.shop, books.ledger}).lots) {
        const std::string bar = called(books.shop, lot.bar);
        if (lot.state == BarState::in_cure && lot.ready <= until) {
            all.push_back({.day = lot.ready,
                           .what = say_count("One bar out of cure: {bar}", "{count} bars out of cure: {bar}",
                                             whole_bars(lot.bars), arg("bar", bar)),
                           .place = Place::bench,
                           .advice = say("From {day} on they may be sold; wrap and label them. Weigh three together "
                                         "first: the weight on the label is to be true on the day they are sold.",
                                         arg("day", shown_date(lot.ready))),
                           .about = {kKindOf<Lot>, lot.lot.number}});
        }
        if (lot.state == BarState::past_best) {
            all.push_back({.day = lot.best_before.value_or(books.as_of()),
                           .what = say_count("One bar past its best: {bar}", "{count} bars past their best: {bar}",
                                             whole_bars(lot.bars), arg("bar", bar)),
                           .place = Place::bench,
                           .advice = say("Look at them, smell them; sell what is good soon, and note what is lost."),
                           .about = {kKindOf<Lot>, lot.lot.number}});
        }
        if (lot.state == BarState::held) {
            all.push_back({.day = lot.held ? lot.held->since : books.as_of(),
                           .what = say_count("One bar on hold: {bar}", "{count} bars on hold: {bar}",
                                             whole_bars(lot.bars), arg("bar", bar)),
                           .place = Place::bench,
                           .advice = say("They are in no ready number. Handle them with gloves, give none away; "
                                         "release them at the Bench when you know they are safe, or note the loss."),
                           .about = {kKindOf<Lot>, lot.lot.number}});
        }
    }
}

void to_order(const Reorder& answer, const Books& books, Day until, std::vector<Due>& all) {
    for (const DraftOrder& order : answer.orders) {
        if (order.send_by > until || order.rows.empty()) continue;
        std::string things;
        for (const std::size_t row : order.rows)
            things += (things.empty() ? "" : ", ") + called(books.shop, answer.rows[row].material);
        all.push_back({.day = order.send_by,
                       .what = say("Order from {supplier}", arg("supplier", called(books.shop, order.supplier))),
                       .place = Place::cupboard,
                       .advice = say("{things}. The draft of the order is at the Cupboard, ready to send.",
                                     arg("things", things)),
                       .about = {kKindOf<Material>, answer.rows[order.rows.front()].material.number}});
    }
    for (const ReorderRow& row : answer.rows) {
        if (!row.wanted || row.order) continue;
        all.push_back({.day = row.order_by.value_or(books.as_of()),
                       .what = say("Find a supplier for {what}", arg("what", called(books.shop, row.material))),
                       .place = Place::cupboard,
                       .advice = say("It runs short and nobody's price for it is on record; note one at the Cupboard."),
                       .about = {kKindOf<Material>, row.material.number}});
    }
    for (const ColourShort& each : answer.colours) {
        std::string advice;
        for (const std::string& sentence : reports::colour_short_sentences(books.shop, each))
            advice += (advice.empty() ? "" : " ") + sentence;
        if (each.runs_out <= until)
            all.push_back({.day = each.runs_out,
                           .what = say("{what} runs out", arg("what", called(books.shop, each.material))),
                           .place = Place::cupboard,
                           .advice = std::move(advice),
                           .about = {kKindOf<Material>, each.material.number}});
    }
    for (const GoingOff& each : answer.going_off) {
        const Lot* lot = books.shop.find(each.lot);
        if (lot == nullptr || each.best_before > until) continue;
        const Material* material = books.shop.find(lot->material);
        if (material == nullptr) continue;
        std::string bars;
        for (const Key<Material> bar : each.bars) bars += (bars.empty() ? "" : ", ") + called(books.shop, bar);
        const auto left = arg("left", reports::shown_quantity({kind_of(material->held_as), each.left}));
        all.push_back({.day = each.best_before,
                       .what = say("{what} goes off", arg("what", material->name)),
                       .place = Place::cupboard,
                       .advice = bars.empty() ? say("{left} left of the lot {lot}.", left, arg("lot", lot->code))
                                              : say("{left} left of the lot {lot}; it could go into: {bars}.", left,
                                                    arg("lot", lot->code), arg("bars", bars)),
                       .about = ref(*lot)});
    }
}

void fairs_ahead(const Books& books, Day until, std::vector<Due>& all) {
    for (const Fair& fair : books.shop.all<Fair>()) {
        if (fair.date < books.as_of() || fair.date > until || fair.ended == FairEnded::did_not_happen) continue;
        if (fair.noted && *fair.noted > books.as_of()) continue;
        all.push_back({.day = fair.date,
                       .what = say("Fair: {fair}", arg("fair", fair.name)),
                       .place = Place::stall,
                       .advice = say("Wrap and label what goes, the oldest batches first; what to take is at the "
                                     "Stall."),
                       .about = ref(fair)});
    }
}

}  // namespace

std::vector<Due> due(const Books& books, int days, const std::vector<RunningClock>& clocks) {
    std::vector<Due> all;
    const Day until = books.as_of() + Days{days};
    standing_vats(books, clocks, all);
    bars_curing(books, until, all);
    to_order(reorder(books.shop, books.ledger), books, until, all);
    fairs_ahead(books, until, all);
    std::ranges::stable_sort(all, {}, &Due::day);
    return all;
}

}  // namespace dyestead::gui
