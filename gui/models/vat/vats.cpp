#include "gui/models/vat/vats.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "domain/decisions/pigment_pool.h"
#include "domain/facts/lines_of.h"
#include "domain/text/amounts.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/vat/powder.h"
#include "reports/words/language.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::Cell;
using reports::say;
using reports::say_count;

namespace {

std::map<Key<Vat>, FinishedVat> all_finished(const Books& books) {
    std::map<Key<Vat>, FinishedVat> all;
    for (const Colour& colour : books.shop.all<Colour>()) {
        for (const FinishedVat& vat : finished_vats({books.shop, books.ledger}, colour.key)) all[vat.vat->key] = vat;
    }
    return all;
}

// What has gone into a vat so far: kg of harvest, and the minutes spent at it.
struct WentIn {
    double kg = 0;
    Minutes hands_on{};
};

// One for each of shop.all<Vat>().
std::vector<WentIn> went_in(const Books& books) {
    const Records records{books.shop, books.ledger};
    std::vector<WentIn> all(books.shop.all<Vat>().size());
    for (const Movement& movement : books.ledger.movements) {
        if (records.kind(movement.to) != AccountKind::vat) continue;
        WentIn& in = all[books.ledger.accounts.index(movement.to)];
        if (records.kind(movement.from) == AccountKind::boundary) in.hands_on += movement.cost.hands_on;
        if (movement.quantity == 0) continue;
        const Material& material = records.material(movement);
        if (material.kind == MaterialKind::harvest) in.kg += grams(material, movement.quantity).value_or(0) / 1000;
    }
    return all;
}

std::size_t place_of(const Shop& shop, const Vat& vat) {
    return static_cast<std::size_t>(&vat - shop.all<Vat>().data());
}

// "~" where the harvest was not weighed.
bool about(const LinesOf<VatUse>& uses, const Vat& vat) {
    return std::ranges::any_of(uses(vat.key), [](const VatUse* use) { return use->amount.mark != Mark::measured; });
}

Cell weight_cell(double amount, bool about) {
    const std::string shown = reports::shown_number(amount);
    return number_cell(amount, about ? fmt::format("~{}", shown) : shown);
}

std::string state_of(const FinishedVat* finished) {
    if (finished == nullptr) return say("standing");
    if (finished->grams <= 0) return say("gave nothing");
    return finished->shared_plate ? say("dry, shared") : say("dry");
}

bool newer(const Vat* one, const Vat* other) {
    return std::tuple{one->date, one->key} > std::tuple{other->date, other->key};
}

std::vector<const Vat*> vats_to(const Books& books) {
    std::vector<const Vat*> vats;
    for (const Vat& vat : books.shop.all<Vat>()) {
        if (vat.date <= books.as_of()) vats.push_back(&vat);
    }
    std::ranges::sort(vats, newer);
    return vats;
}

std::vector<Cell> row_of(const Books& books, const Vat& vat, const WentIn& in, const FinishedVat* finished,
                         bool about) {
    const std::string currency = reports::currency_of(books.shop);
    const Minutes spent = finished != nullptr ? finished->own.hands_on : in.hands_on;
    const bool gave = finished != nullptr && finished->grams > 0;
    const bool plate = gave && finished->plate_grams > 0;
    const double each = plate ? number(finished->booked.full()) / finished->plate_grams : 0;
    return {day_cell(vat.date),
            words_cell(reports::called(books.shop, vat.colour)),
            words_cell(state_of(finished)),
            in.kg > 0 ? weight_cell(in.kg, about) : no_cell(),
            finished != nullptr ? number_cell(finished->grams, reports::shown_number(finished->grams)) : no_cell(),
            gave && in.kg > 0 ? number_cell(finished->grams / in.kg, reports::shown_number(finished->grams / in.kg))
                              : no_cell(),
            plate ? money_cell(each, currency) : no_cell(),
            number_cell(number(spent), reports::shown_minutes(number(spent)))};
}

}  // namespace

VatList vat_list(const Books& books) {
    const std::string currency = reports::currency_of(books.shop);
    const auto finished = all_finished(books);
    const auto in = went_in(books);
    const LinesOf<VatUse> uses{books.shop};
    VatList list{.table = {.title = say("Vats"),
                           .columns = {{say("begun")},
                                       {say("colour")},
                                       {say("state")},
                                       {say("harvest, kg"), Align::right},
                                       {say("powder, g"), Align::right},
                                       {say("g a kg"), Align::right},
                                       {say("{currency} a g", arg("currency", currency)), Align::right},
                                       {say("hands-on"), Align::right}},
                           .rows = {}},
                 .vats = {}};
    for (const Vat* vat : vats_to(books)) {
        const auto found = finished.find(vat->key);
        list.vats.push_back(vat->key);
        list.table.rows.push_back(row_of(books, *vat, in[place_of(books.shop, *vat)],
                                         found != finished.end() ? &found->second : nullptr, about(uses, *vat)));
    }
    return list;
}

reports::Table step_list(const Books& books, Key<Vat> vat) {
    reports::Table table{.title = say("As it was worked"),
                         .columns = {{say("step")},
                                     {say("begun at"), Align::right},
                                     {say("hands-on"), Align::right},
                                     {say("waiting"), Align::right},
                                     {say("\u00b0C"), Align::right},
                                     {say("pH"), Align::right}},
                         .rows = {}};
    const LinesOf<VatStep> steps{books.shop};
    const auto time = [](const std::optional<Span>& span) {
        if (!span) return no_cell();
        return number_cell(number(span->time), reports::shown_minutes(number(span->time)));
    };
    for (const VatStep* step : steps(vat)) {
        table.rows.push_back(
            {words_cell(step->what), step->begun ? words_cell(reports::shown_clock(*step->begun)) : no_cell(),
             time(step->hands_on), time(step->waiting),
             step->temperature
                 ? number_cell(step->temperature->tenths, reports::in_marks_here(print(*step->temperature)))
                 : no_cell(),
             step->acidity ? number_cell(step->acidity->hundredths, reports::in_marks_here(print(*step->acidity)))
                           : no_cell()});
    }
    return table;
}

std::string vat_sentence(const Books& books, Key<Vat> key) {
    const Vat* vat = books.shop.find(key);
    if (vat == nullptr) return {};
    Minutes waited;
    const LinesOf<VatStep> steps{books.shop};
    for (const VatStep* step : steps(key)) {
        if (step->waiting) waited += step->waiting->time;
    }
    return say("Vat of {day}, {colour}: {hands_on} hands-on, {waiting} waiting.",
               arg("day", reports::shown_date(vat->date)),
               arg("colour", reports::colour_in_a_sentence(books.shop, vat->colour)),
               arg("hands_on", reports::shown_minutes(number(went_in(books)[place_of(books.shop, *vat)].hands_on))),
               arg("waiting", reports::shown_minutes(number(waited))));
}

std::string vat_state(const Books& books) {
    const auto finished = all_finished(books);
    const auto vats = vats_to(books);
    if (vats.empty()) return say("No vat is on record yet.");
    const auto standing = static_cast<std::uint64_t>(
        std::ranges::count_if(vats, [&](const Vat* vat) { return !finished.contains(vat->key); }));
    std::string powder;
    for (const auto& [colour, left] : powder_in_hand(books)) {
        const std::string amount = reports::shown_grams(left);
        const auto next = say("{amount} {colour}", arg("amount", amount), arg("colour", colour));
        powder = powder.empty() ? next : say("{some}, {more}", arg("some", powder), arg("more", next));
    }
    const auto in_hand = arg("powder", powder);
    if (powder.empty()) {
        if (standing == 0) return say("No vat is standing, and no powder is in hand.");
        return say_count(
            "One vat is standing; no powder is in hand.", "{count} vats are standing; no powder is in hand.", standing);
    }
    if (standing == 0) return say("No vat is standing. Powder in hand: {powder}.", in_hand);
    return say_count("One vat is standing. Powder in hand: {powder}.",
                     "{count} vats are standing. Powder in hand: {powder}.", standing, in_hand);
}

}  // namespace dyestead::gui
