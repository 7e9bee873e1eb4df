#include "gui/models/garden/other_list.h"

#include <algorithm>

#include "gui/models/amounts_shown.h"
#include "gui/models/form/field_values.h"
#include "gui/models/garden/garden_choices.h"
#include "gui/models/garden/planting_forms.h"
#include "gui/models/garden/seed_forms.h"
#include "gui/models/garden/sowing_form.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::Cell;
using reports::say;

namespace {

struct Row {
    Day day;
    FactRef fact;
    std::vector<Cell> cells;
};

// The rows of one kind of record up to the day of the books, as `told` tells them: what it was, of what, how much.
struct Told {
    std::string what;
    std::string of;
    std::string amount{};  // blank: none
};

template <class Fact, class Tell>
void add_rows(const Books& books, std::string_view find, std::vector<Row>& rows, const Tell& tell) {
    for (const Fact& fact : books.shop.all<Fact>()) {
        if (fact.date > books.as_of()) continue;
        const Told told = tell(fact);
        if (!holds({told.what, told.of}, find)) continue;
        rows.push_back({fact.date,
                        ref(fact),
                        {day_cell(fact.date), words_cell(told.what), words_cell(told.of),
                         told.amount.empty() ? no_cell() : words_cell(told.amount)}});
    }
}

template <class Fact>
std::optional<Key<Planting>> planting_if(const Shop& shop, FactRef row) {
    if (row.kind != kKindOf<Fact>) return std::nullopt;
    const Fact* fact = shop.find(Key<Fact>{row.key});
    return fact != nullptr ? std::optional{fact->planting} : std::nullopt;
}

}  // namespace

Listing other_list(const Books& books, std::string_view find) {
    const Shop& shop = books.shop;
    Listing list{
        .name = say("What else happened"),
        .table = {.title = say("What else happened"),
                  .columns = {{say("on"), Align::right}, {say("what")}, {say("of")}, {say("how much"), Align::right}}},
        .empty = say("Nothing else yet: seed kept or tried, part of a bed lost, a bed done with.")};
    std::vector<Row> rows;
    const auto at = [&](const auto& fact) { return planting_in_short(shop, fact.planting); };
    add_rows<SeedKept>(books, find, rows, [&](const SeedKept& kept) -> Told {
        return {say("seed kept"), at(kept), reports::shown_quantity(kept.amount.quantity)};
    });
    add_rows<GerminationTry>(books, find, rows, [&](const GerminationTry& tried) -> Told {
        return {say("came up"), reports::called(shop, tried.lot),
                say("{came_up} of {tried}", arg("came_up", tried.came_up), arg("tried", tried.tried))};
    });
    add_rows<BedLost>(books, find, rows, [&](const BedLost& lost) -> Told {
        return {lost.note.value_or(say("part lost")), at(lost), reports::shown_quantity(lost.area.quantity)};
    });
    add_rows<ExpectedTotal>(books, find, rows, [&](const ExpectedTotal& total) -> Told {
        return {say("expected in all"), at(total), said_back(total.amount, {})};
    });
    add_rows<PlantingEnd>(books, find, rows, [&](const PlantingEnd& end) -> Told {
        return {end.note.value_or(say("done with")), at(end)};
    });
    add_rows<StandingBed>(books, find, rows, [&](const StandingBed& standing) -> Told {
        return {say("stood already"), at(standing)};
    });
    std::ranges::stable_sort(rows, [](const Row& one, const Row& other) { return one.day > other.day; });
    for (Row& row : rows) {
        list.table.rows.push_back(std::move(row.cells));
        list.rows.push_back(row.fact);
    }
    return list;
}

std::optional<Form> correct_other(const Writing& writing, FactRef row) {
    if (row.kind == kKindOf<SeedKept>) return seed_kept_form(writing, std::nullopt, Key<SeedKept>{row.key});
    if (row.kind == kKindOf<GerminationTry>) return germination_form(writing, Key<GerminationTry>{row.key});
    if (row.kind == kKindOf<BedLost>) return bed_lost_form(writing, std::nullopt, Key<BedLost>{row.key});
    if (row.kind == kKindOf<ExpectedTotal>)
        return expected_total_form(writing, std::nullopt, Key<ExpectedTotal>{row.key});
    if (row.kind == kKindOf<PlantingEnd>) return planting_end_form(writing, std::nullopt, Key<PlantingEnd>{row.key});
    if (row.kind == kKindOf<StandingBed>) return standing_bed_form(writing, Key<StandingBed>{row.key});
    return std::nullopt;
}

std::optional<Key<Planting>> planting_of_other(const Shop& shop, FactRef row) {
    for (const auto find : {planting_if<SeedKept>, planting_if<BedLost>, planting_if<ExpectedTotal>,
                            planting_if<PlantingEnd>, planting_if<StandingBed>})
        if (const auto found = find(shop, row)) return found;
    return std::nullopt;
}

}  // namespace dyestead::gui
