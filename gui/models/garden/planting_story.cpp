#include "gui/models/garden/planting_story.h"

#include <algorithm>
#include <array>

#include "domain/decisions/records.h"
#include "domain/facts/lines_of.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/field_values.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::say;

namespace {

template <class Fact, class Visit>
void each_of(const Books& books, Key<Planting> planting, const Visit& visit) {
    for (const Fact& fact : books.shop.all<Fact>())
        if (fact.planting == planting && fact.date <= books.as_of()) visit(fact);
}

const Material* material_of(const Shop& shop, Key<Lot> lot) {
    const Lot* found = shop.find(lot);
    return found == nullptr ? nullptr : shop.find(found->material);
}

std::string amount_of(const Shop& shop, Key<Lot> lot, const Amount& amount) {
    return said_back(amount, {.material = material_of(shop, lot)});
}

}  // namespace

PlantingFigures planting_figures(const Books& books, const Planting& planting) {
    PlantingFigures figures;
    const Shop& shop = books.shop;
    const Account account =
        books.ledger.accounts.plantings + static_cast<Account>(&planting - shop.all<Planting>().data());
    for (const Movement& movement : books.ledger.movements)
        if (movement.to == account) figures.spent += movement.cost;
    each_of<Harvest>(books, planting.key, [&](const Harvest& harvest) {
        figures.cuts.push_back(harvest.date);
        figures.cut_about = figures.cut_about || harvest.amount.mark != Mark::measured;
        const Material* material = material_of(shop, harvest.lot);
        const auto held = material != nullptr ? as_held(*material, harvest.amount) : std::nullopt;
        if (held && held->kind() == Kind::mass) figures.cut += held->in_base();
    });
    std::ranges::sort(figures.cuts);
    each_of<PlantingEnd>(books, planting.key, [&](const PlantingEnd& end) {
        if (!figures.ended || end.date < *figures.ended) figures.ended = end.date;
    });
    const Bed* bed = shop.find(planting.bed);
    if (planting.area)
        figures.area = planting.area->quantity.in_base();
    else if (bed != nullptr)
        figures.area = bed->area.quantity.in_base();
    each_of<BedLost>(books, planting.key, [&](const BedLost& lost) { figures.area -= lost.area.quantity.in_base(); });
    figures.area = std::max<std::int64_t>(0, figures.area);
    return figures;
}

std::optional<std::int64_t> expected_of(const Shop& shop, const Planting& planting, Day day) {
    const ExpectedTotal* revised = nullptr;
    for (const ExpectedTotal& each : shop.all<ExpectedTotal>())
        if (each.planting == planting.key && each.date <= day && (revised == nullptr || each.date >= revised->date))
            revised = &each;
    if (revised != nullptr) return revised->amount.quantity.in_base();
    if (planting.expected) return planting.expected->quantity.in_base();
    const Plant* plant = shop.find(planting.plant);
    const Bed* bed = shop.find(planting.bed);
    if (plant == nullptr || bed == nullptr || plant->usual.quantity.is_zero()) return std::nullopt;
    const Amount& area = planting.area ? *planting.area : bed->area;
    constexpr std::int64_t kSquareMetre = 10'000;
    return scaled(plant->usual.quantity.in_base(), area.quantity.in_base(), kSquareMetre) * std::max(plant->crops, 1);
}

std::optional<Day> first_cut_about(const Shop& shop, const Planting& planting) {
    const Plant* plant = shop.find(planting.plant);
    if (plant == nullptr) return std::nullopt;
    if (plant->days_to_harvest) return planting.sown + Days{*plant->days_to_harvest};
    constexpr int kMonths = 12;
    if (plant->years_to_first > 0) return months_before(planting.sown, -kMonths * plant->years_to_first);
    return std::nullopt;
}

std::string week_of(Day day) {
    const std::chrono::year_month_day date{day};
    const auto month = arg("month", reports::month_name(static_cast<unsigned>(date.month())));
    const auto year = arg("year", year_of(day));
    switch ((static_cast<unsigned>(date.day()) - 1) / 7) {
        case 0: return say("the first week of {month} {year}", month, year);
        case 1: return say("the second week of {month} {year}", month, year);
        case 2: return say("the third week of {month} {year}", month, year);
        default: return say("the end of {month} {year}", month, year);
    }
}

std::string planting_sentence(const Books& books, Key<Planting> key) {
    const Planting* planting = books.shop.find(key);
    if (planting == nullptr) return {};
    const PlantingFigures figures = planting_figures(books, *planting);
    const auto sown = arg("day", reports::shown_date(planting->sown));
    const auto hours = arg("hours", reports::shown_minutes(number(figures.spent.hands_on)));
    const std::string weight = reports::shown_grams(static_cast<double>(figures.cut) / 1e3);
    const auto cut = arg("cut", figures.cut_about ? say("about {amount}", arg("amount", weight)) : weight);
    if (figures.ended) {
        const auto end = arg("end", reports::shown_date(*figures.ended));
        if (figures.cuts.empty())
            return say("Sown {day}, {hours} in it; done with on {end}, nothing cut.", sown, hours, end);
        return say("Sown {day}, {hours} in it, {cut} cut; done with on {end}.", sown, hours, cut, end);
    }
    if (!figures.cuts.empty())
        return say("Sown {day}, {hours} so far, {cut} cut; last cut on {last}.", sown, hours, cut,
                   arg("last", reports::shown_date(figures.cuts.back())));
    const auto due = first_cut_about(books.shop, *planting);
    if (!due) return say("Sown {day}, {hours} so far, nothing cut yet.", sown, hours);
    return say("Sown {day}, {hours} so far, nothing cut yet; first cut about {week}.", sown, hours,
               arg("week", week_of(*due)));
}

reports::Table planting_events(const Books& books, Key<Planting> key) {
    const Shop& shop = books.shop;
    reports::Table table{
        .title = say("What happened to it"),
        .columns = {{say("on")}, {say("what")}, {say("how much"), Align::right}, {say("time"), Align::right}},
        .rows = {}};
    std::vector<std::pair<Day, std::vector<reports::Cell>>> events;
    const auto event = [&](Day day, std::string what, std::string amount, const std::optional<Span>& time) {
        events.push_back(
            {day,
             {day_cell(day), words_cell(std::move(what)), amount.empty() ? no_cell() : words_cell(std::move(amount)),
              time ? number_cell(number(time->time), said_back(*time, {})) : no_cell()}});
    };
    const auto used = [&]<class Use>(Day day, std::string_view what, std::span<const Use* const> uses) {
        for (const Use* use : uses)
            event(day, std::string{what}, said_back(use->amount, {.material = shop.find(use->material)}), std::nullopt);
    };
    if (const Planting* planting = shop.find(key)) {
        event(planting->sown, say("sown"), {}, std::nullopt);
        used(planting->sown, say("went in"), LinesOf<PlantingUse>{shop}(key));
    }
    const LinesOf<TendingUse> given{shop};
    each_of<StandingBed>(
        books, key, [&](const StandingBed& bed) { event(bed.date, say("stood already"), {}, bed.time); });
    each_of<Tending>(books, key, [&](const Tending& tending) {
        if (tending.time || given(tending.key).empty() || tending.what)
            event(tending.date, tending.what.value_or(say("time in the garden")), {}, tending.time);
        used(tending.date, say("given"), given(tending.key));
    });
    each_of<Harvest>(books, key, [&](const Harvest& harvest) {
        event(harvest.date, say("cut"), amount_of(shop, harvest.lot, harvest.amount), harvest.time);
    });
    each_of<SeedKept>(books, key, [&](const SeedKept& kept) {
        event(kept.date, say("seed kept"), amount_of(shop, kept.lot, kept.amount), kept.time);
    });
    each_of<BedLost>(books, key, [&](const BedLost& lost) {
        event(lost.date, say("part lost"), said_back(lost.area, {}), std::nullopt);
    });
    each_of<ExpectedTotal>(books, key, [&](const ExpectedTotal& total) {
        event(total.date, say("expected in all"), said_back(total.amount, {}), std::nullopt);
    });
    each_of<PlantingEnd>(books, key, [&](const PlantingEnd& end) {
        event(end.date, end.note.value_or(say("done with")), {}, std::nullopt);
    });
    std::ranges::stable_sort(events, [](const auto& one, const auto& other) { return one.first > other.first; });
    for (auto& [day, cells] : events) table.rows.push_back(std::move(cells));
    return table;
}

SeasonLines season_rows(const Books& books) {
    SeasonLines lines{.today = books.as_of()};
    for (const Planting& planting : books.shop.all<Planting>()) {
        if (planting.sown > books.as_of()) continue;
        PlantingFigures figures = planting_figures(books, planting);
        if (figures.ended && year_of(*figures.ended) != year_of(books.as_of())) continue;
        SeasonLine line{.planting = planting.key,
                        .name = say("{plant}, {bed}", arg("plant", reports::called(books.shop, planting.plant)),
                                    arg("bed", reports::called(books.shop, planting.bed))),
                        .from = planting.sown,
                        .to = figures.ended,
                        .cuts = std::move(figures.cuts)};
        if (!line.to && line.cuts.empty()) line.cut_about = first_cut_about(books.shop, planting);
        lines.rows.push_back(std::move(line));
    }
    std::ranges::stable_sort(lines.rows, [](const SeasonLine& one, const SeasonLine& other) {
        return std::tuple{one.to.has_value(), one.from} < std::tuple{other.to.has_value(), other.from};
    });
    return lines;
}

}  // namespace dyestead::gui
