#include "gui/models/garden/garden_place.h"

#include <algorithm>
#include <set>

#include "domain/decisions/records.h"
#include "gui/models/garden/cut_form.h"
#include "gui/models/garden/garden_lists.h"
#include "gui/models/garden/ground_forms.h"
#include "gui/models/garden/other_list.h"
#include "gui/models/garden/planting_forms.h"
#include "gui/models/garden/planting_story.h"
#include "gui/models/garden/seed_forms.h"
#include "gui/models/garden/sowing_form.h"
#include "gui/models/garden/tending_form.h"
#include "reports/sheets_report.h"
#include "reports/words/caution_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

using Selected = std::optional<FactRef>;

enum List : std::size_t { kPlantings, kCuts, kTime, kElse, kBeds, kPlants };

constexpr double kCm2PerM2 = 10'000;

std::optional<Key<Planting>> planting_at(const Books& books, const Selected& row) {
    if (!row) return std::nullopt;
    if (row->kind == kKindOf<Planting>) return Key<Planting>{row->key};
    if (row->kind == kKindOf<Harvest>)
        if (const Harvest* cut = books.shop.find(Key<Harvest>{row->key})) return cut->planting;
    if (row->kind == kKindOf<Tending>)
        if (const Tending* tending = books.shop.find(Key<Tending>{row->key})) return tending->planting;
    return planting_of_other(books.shop, *row);
}

using ForPlanting = Form (*)(const Writing&, std::optional<Key<Planting>>);

Doing at_planting(std::string label, ForPlanting form) {
    return {.label = std::move(label), .begin = [form](const Writing& writing, Selected row) -> std::optional<Form> {
                return form(writing, planting_at(writing.books, row));
            }};
}

Doing opens(std::string label, Form (*form)(const Writing&)) {
    return {.label = std::move(label),
            .begin = [form](const Writing& writing, Selected) -> std::optional<Form> { return form(writing); }};
}

// What the season line shows, in words.
std::string season_words(const SeasonLines& season) {
    const auto standing = std::ranges::count_if(season.rows, [](const SeasonLine& row) { return !row.to; });
    const SeasonLine* next = nullptr;
    for (const SeasonLine& row : season.rows)
        if (row.cut_about && (next == nullptr || *row.cut_about < *next->cut_about)) next = &row;
    std::string stand =
        say_count("One planting stands.", "{count} plantings stand.", static_cast<std::uint64_t>(standing));
    if (next == nullptr) return stand;
    return say("{standing} The next first cut: {planting}, about {week}.", arg("standing", stand),
               arg("planting", next->name), arg("week", week_of(*next->cut_about)));
}

class GardenPlace : public PlaceModel {
public:
    std::string state(const Books& books) const override {
        double area = 0;
        double minutes = 0;
        std::set<Key<Bed>> beds;
        const Day year = day_of(year_of(books.as_of()), 1, 1);
        for (const Planting& planting : books.shop.all<Planting>()) {
            if (planting.sown > books.as_of()) continue;
            const PlantingFigures figures = planting_figures(books, planting);
            if (figures.ended && *figures.ended <= books.as_of()) continue;
            beds.insert(planting.bed);
            area += static_cast<double>(figures.area) / kCm2PerM2;
        }
        const Records records{books.shop, books.ledger};
        for (const Movement& movement : books.ledger.movements)
            if (movement.on() >= year && records.kind(movement.to) == AccountKind::planting)
                minutes += number(movement.cost.hands_on);
        if (beds.empty()) return say("No bed is planted.");
        return say_count("One bed planted, {area} m²; {hours} so far this year.",
                         "{count} beds planted, {area} m²; {hours} so far this year.", beds.size(),
                         arg("area", reports::shown_number(area)), arg("hours", reports::shown_hours(minutes / 60)));
    }

    // Plantings whose first cut may be looked for.
    std::size_t waiting(const Books& books) const override {
        std::size_t due = 0;
        for (const SeasonLine& line : season_rows(books).rows)
            if (line.cut_about && *line.cut_about <= books.as_of()) ++due;
        return due;
    }

    std::vector<Listing> listings(const Books& books, std::string_view find) const override {
        return {planting_list(books, find), cut_list(books, find), time_list(books, find),
                other_list(books, find),    bed_list(books, find), plant_list(books, find)};
    }

    std::vector<Doing> doings(std::size_t listing) const override {
        const Doing sow = opens(say("New so&wing"), [](const Writing& writing) { return sowing_form(writing); });
        const Doing cut = at_planting(
            say("C&ut"), [](const Writing& writing, std::optional<Key<Planting>> at) { return cut_form(writing, at); });
        const Doing time = at_planting(say("&Time here"), [](const Writing& writing, std::optional<Key<Planting>> at) {
            return tending_form(writing, at);
        });
        const Doing seed = at_planting(say("&Seed kept"), [](const Writing& writing, std::optional<Key<Planting>> at) {
            return seed_kept_form(writing, at);
        });
        const Doing tried =
            opens(say("Does it come u&p?"), [](const Writing& writing) { return germination_form(writing); });
        switch (listing) {
            case kCuts: return {cut};
            case kTime: return {time};
            case kElse: return {tried, seed};
            case kBeds: return {opens(say("New &bed"), [](const Writing& writing) { return bed_form(writing); })};
            case kPlants: return {opens(say("New &plant"), [](const Writing& writing) { return plant_form(writing); })};
            default: break;
        }
        return {
            sow,
            cut,
            time,
            at_planting(say("Sown &again"),
                        [](const Writing& writing, std::optional<Key<Planting>> at) {
                            return tending_form(writing, at, TendingAs::sown_again);
                        }),
            seed,
            at_planting(say("Part &lost"), [](const Writing& writing,
                                              std::optional<Key<Planting>> at) { return bed_lost_form(writing, at); }),
            at_planting(
                say("Failed or &dug up"),
                [](const Writing& writing, std::optional<Key<Planting>> at) { return planting_end_form(writing, at); }),
            at_planting(
                say("E&xpected"), [](const Writing& writing,
                                     std::optional<Key<Planting>> at) { return expected_total_form(writing, at); }),
            opens(say("Sta&nds already"), [](const Writing& writing) { return standing_bed_form(writing); }),
            tried,
            {.label = say("Print ga&rden cards"),
             .paper = [](const Books& books, Selected) { return reports::garden_cards(books.shop, books.ledger); }}};
    }

    Detail detail(const Books& books, std::size_t, FactRef row) const override {
        Detail told;
        const auto planting = planting_at(books, row);
        if (!planting) return told;
        told.sentence = planting_sentence(books, *planting);
        told.table = planting_events(books, *planting);
        const Planting* found = books.shop.find(*planting);
        const Plant* plant = found == nullptr ? nullptr : books.shop.find(found->plant);
        if (plant != nullptr) {
            const std::string caution = reports::caution_sentence(plant->caution, plant->name);
            if (!caution.empty()) told.cautions.push_back(caution);
        }
        return told;
    }

    std::optional<Form> correct(const Writing& writing, FactRef row) const override {
        if (row.kind == kKindOf<Planting>) return sowing_form(writing, Key<Planting>{row.key});
        if (row.kind == kKindOf<Harvest>) return cut_form(writing, std::nullopt, Key<Harvest>{row.key});
        if (row.kind == kKindOf<Tending>)
            return tending_form(writing, std::nullopt, TendingAs::time, Key<Tending>{row.key});
        if (row.kind == kKindOf<Bed>) return bed_form(writing, Key<Bed>{row.key});
        if (row.kind == kKindOf<Plant>) return plant_form(writing, Key<Plant>{row.key});
        return correct_other(writing, row);
    }

    std::optional<reports::Chart> picture(const Books& books, std::size_t listing, Selected) const override {
        if (listing != kPlantings) return std::nullopt;
        const SeasonLines season = season_rows(books);
        if (season.rows.empty()) return std::nullopt;
        reports::Timeline line{.today = season.today};
        for (const SeasonLine& each : season.rows) {
            reports::TimelineRow row{.label = each.name};
            const Day until = each.to.value_or(std::max(season.today, each.cut_about.value_or(season.today)));
            row.spans.push_back({.from = each.from,
                                 .to = until,
                                 .shade = each.to ? reports::Shade::light : reports::Shade::solid,
                                 .word = each.to ? say("ended") : std::string{}});
            for (const Day cut : each.cuts)
                row.signs.push_back({.on = cut, .sign = reports::Sign::notch, .word = say("cut")});
            if (each.cut_about)
                row.signs.push_back(
                    {.on = *each.cut_about, .sign = reports::Sign::dot, .word = say("first cut, about")});
            line.rows.push_back(std::move(row));
        }
        line.legend = {{reports::Shade::solid, say("stands")},
                       {reports::Shade::light, say("ended")},
                       {reports::Sign::notch, say("a cut")},
                       {reports::Sign::dot, say("first cut expected")}};
        return reports::Chart{.title = say("The season"), .sentence = season_words(season), .data = std::move(line)};
    }

    std::vector<std::string> cautions() const override {
        return {
            say("Some dye plants may not be grown everywhere, and some colours may not be sold in soap everywhere. Ask "
                "first.")};
    }
};

}  // namespace

std::unique_ptr<PlaceModel> garden_place() {
    return std::make_unique<GardenPlace>();
}

}  // namespace dyestead::gui
