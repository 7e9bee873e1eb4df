#include "gui/models/bench/shelf_picture.h"

#include <algorithm>

#include "domain/decisions/shelf.h"
#include "gui/models/bench/bars.h"
#include "gui/models/bench/bench_lists.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;
using reports::Shade;

namespace {

reports::TimelineRow row_of(const Books& books, const ShelfLot& lot) {
    const Day today = books.as_of();
    const Day cut = lot.cut.value_or(today);
    const Day last = std::max(cut, lot.ready - Days{1});
    reports::TimelineRow row{.label = say("{bar}, {lot}", arg("bar", reports::called(books.shop, lot.bar)),
                                          arg("lot", reports::called(books.shop, lot.lot)))};
    if (lot.state == BarState::held) {
        row.spans.push_back({cut, last, Shade::hatched, bar_state_words(books, lot)});
        row.figure = say("on hold");
    } else {
        if (cut < today) row.spans.push_back({cut, std::min(last, today - Days{1}), Shade::solid, say("in cure")});
        if (today <= last)
            row.spans.push_back({std::max(cut, today), last, Shade::light,
                                 say("until {day}", arg("day", reports::shown_date(lot.ready)))});
        row.figure = say_count("one day to go", "{count} days to go",
                               static_cast<std::uint64_t>(std::max(0, static_cast<int>((lot.ready - today).count()))));
    }
    for (const Weighing& weighing : books.shop.all<Weighing>())
        if (weighing.lot == lot.lot && weighing.date <= today && weighing.bars > 0)
            row.signs.push_back(
                {weighing.date, reports::Sign::dot,
                 say("{weight} a bar", arg("weight", reports::shown_quantity({weighing.total.quantity.kind(),
                                                                              scaled(weighing.total.quantity.in_base(),
                                                                                     1, weighing.bars)})))});
    return row;
}

}  // namespace

std::optional<reports::Chart> shelf_picture(const Books& books) {
    reports::Timeline line{.today = books.as_of(),
                           .legend = {{Shade::solid, say("cured so far")},
                                      {Shade::light, say("to go")},
                                      {Shade::hatched, say("on hold")},
                                      {reports::Sign::dot, say("weighed")}}};
    for (const ShelfLot& lot : shelf({books.shop, books.ledger}).lots) {
        if (lot.state != BarState::in_cure && lot.state != BarState::held) continue;
        line.rows.push_back(row_of(books, lot));
    }
    if (line.rows.empty()) return std::nullopt;
    return reports::Chart{.title = say("Curing shelf"), .sentence = bench_state(books), .data = std::move(line)};
}

}  // namespace dyestead::gui
