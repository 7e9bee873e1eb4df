#include "gui/models/garden/garden_lists.h"

#include <algorithm>
#include <map>

#include "domain/decisions/records.h"
#include "domain/ledger/sittings.h"
#include "domain/text/amounts.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/garden/planting_story.h"
#include "reports/words/language.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::called;
using reports::say;

namespace {

constexpr double kCm2PerM2 = 10'000;

// All facts of a kind by the day of the books, the newest first.
template <class Fact>
std::vector<const Fact*> newest_first(const Books& books, Day Fact::*day) {
    std::vector<const Fact*> all;
    for (const Fact& fact : books.shop.all<Fact>())
        if (fact.*day <= books.as_of()) all.push_back(&fact);
    std::ranges::stable_sort(all, [day](const Fact* one, const Fact* other) { return one->*day > other->*day; });
    return all;
}

reports::Cell time_cell(double minutes) {
    return number_cell(minutes, reports::shown_minutes(minutes));
}

reports::Cell span_cell(const std::optional<Span>& span) {
    return span ? time_cell(number(span->time)) : no_cell();
}

reports::Cell weight_cell(std::int64_t milligrams, bool about) {
    if (milligrams == 0) return no_cell();
    const std::string shown = reports::shown_quantity({Kind::mass, milligrams});
    return number_cell(static_cast<double>(milligrams), about ? say("about {amount}", arg("amount", shown)) : shown);
}

std::string place_of(const Shop& shop, Key<Planting> key) {
    const Planting* planting = shop.find(key);
    if (planting == nullptr) return {};
    return say("{plant}, {bed}", arg("plant", called(shop, planting->plant)), arg("bed", called(shop, planting->bed)));
}

}  // namespace

Listing planting_list(const Books& books, std::string_view find) {
    Listing list{
        .name = say("Plantings"),
        .table = {.title = say("Plantings"),
                  .columns = {{say("plant")},
                              {say("bed")},
                              {say("m²"), Align::right},
                              {say("sown"), Align::right},
                              {say("our hours"), Align::right},
                              {say("cut so far"), Align::right}}},
        .empty = say("No bed yet. Note a sowing: which plant, which bed, when. Nothing else is needed. A bed that "
                     "already stands counts too.")};
    for (const Planting* planting : newest_first(books, &Planting::sown)) {
        const std::string plant = called(books.shop, planting->plant);
        const std::string bed = called(books.shop, planting->bed);
        if (!holds({plant, bed}, find)) continue;
        const PlantingFigures figures = planting_figures(books, *planting);
        const double area = static_cast<double>(figures.area) / kCm2PerM2;
        list.table.rows.push_back({words_cell(plant), words_cell(bed), number_cell(area, reports::shown_number(area)),
                                   day_cell(planting->sown), time_cell(number(figures.spent.hands_on)),
                                   weight_cell(figures.cut, figures.cut_about)});
        list.rows.push_back(ref(*planting));
    }
    return list;
}

Listing cut_list(const Books& books, std::string_view find) {
    Listing list{.name = say("Cuts"),
                 .table = {.title = say("Cuts"),
                           .columns = {{say("on"), Align::right},
                                       {say("where")},
                                       {say("how much"), Align::right},
                                       {say("lot")},
                                       {say("left of it"), Align::right},
                                       {say("time"), Align::right}}},
                 .empty = say("Nothing cut yet. Note a cut when it comes in; two buckets will do.")};
    const Records records{books.shop, books.ledger};
    for (const Harvest* cut : newest_first(books, &Harvest::date)) {
        const std::string where = place_of(books.shop, cut->planting);
        const Lot* lot = books.shop.find(cut->lot);
        if (lot == nullptr || !holds({where, lot->code}, find)) continue;
        const Material* material = books.shop.find(lot->material);
        const LotState* state = records.state(cut->lot);
        list.table.rows.push_back(
            {day_cell(cut->date), words_cell(where), words_cell(reports::in_marks_here(print(cut->amount))),
             words_cell(lot->code),
             material == nullptr || state == nullptr ? no_cell() : held_cell(*material, state->left),
             span_cell(cut->time)});
        list.rows.push_back(ref(*cut));
    }
    return list;
}

Listing time_list(const Books& books, std::string_view find) {
    Listing list{
        .name = say("Time here"),
        .table = {.title = say("Time in the garden"),
                  .columns = {{say("on"), Align::right},
                              {say("where")},
                              {say("what")},
                              {say("time"), Align::right},
                              {say("who")}}},
        .empty = say("No time noted yet. One entry for the week over all beds is enough: it is shared by area.")};
    // Time told over several of them stands in a sitting, which the books share by area.
    std::map<Key<Tending>, Minutes> shared;
    for (const SharedSitting& sitting : shared_sittings(books.shop, books.as_of()))
        for (const SittingShare& share : sitting.shares)
            if (share.at.kind == kKindOf<Tending>) shared[Key<Tending>{share.at.key}] += share.time;
    for (const Tending* tending : newest_first(books, &Tending::date)) {
        const std::string where = place_of(books.shop, tending->planting);
        if (!holds({where, tending->what.value_or("")}, find)) continue;
        list.table.rows.push_back({day_cell(tending->date), words_cell(where),
                                   tending->what ? words_cell(*tending->what) : no_cell(),
                                   tending->time                   ? span_cell(tending->time)
                                   : shared.contains(tending->key) ? time_cell(number(shared[tending->key]))
                                                                   : no_cell(),
                                   tending->who ? words_cell(called(books.shop, *tending->who)) : no_cell()});
        list.rows.push_back(ref(*tending));
    }
    return list;
}

Listing bed_list(const Books& books, std::string_view find) {
    Listing list{.name = say("Beds"),
                 .table = {.title = say("Beds"), .columns = {{say("name")}, {say("size"), Align::right}}},
                 .empty = say("No bed yet. A sowing puts one down by itself.")};
    for (const Bed& bed : books.shop.all<Bed>()) {
        if (!holds({bed.name}, find)) continue;
        list.table.rows.push_back({words_cell(bed.name), words_cell(reports::shown_quantity(bed.area.quantity))});
        list.rows.push_back(ref(bed));
    }
    return list;
}

Listing plant_list(const Books& books, std::string_view find) {
    Listing list{.name = say("Plants"),
                 .table = {.title = say("Plants"),
                           .columns = {{say("name")},
                                       {say("in Latin")},
                                       {say("part")},
                                       {say("a bad year, kg/m²"), Align::right},
                                       {say("usual"), Align::right},
                                       {say("good"), Align::right}}},
                 .empty = say("No plant yet. A sowing puts one down by itself.")};
    const auto kg = [](const Amount& amount) {
        const double value = static_cast<double>(amount.quantity.in_base()) / 1e6;
        return number_cell(value, reports::shown_number(value));
    };
    for (const Plant& plant : books.shop.all<Plant>()) {
        if (!holds({plant.name, plant.latin}, find)) continue;
        list.table.rows.push_back({words_cell(plant.name), words_cell(plant.latin), words_cell(plant.part),
                                   kg(plant.low), kg(plant.usual), kg(plant.high)});
        list.rows.push_back(ref(plant));
    }
    return list;
}

}  // namespace dyestead::gui
