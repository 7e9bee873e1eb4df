#include "gui/models/garden/planting_forms.h"

#include "domain/decisions/records.h"
#include "gui/models/garden/garden_choices.h"
#include "gui/models/garden/planting_story.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

// What left the planting's bed by this fact, for the lost or the garden's year.
Cost gone_with(const Books& books, FactRef fact) {
    Cost gone;
    for (const Movement& movement : books.ledger.movements) {
        const bool out = books.ledger.accounts.kind(movement.from) == AccountKind::planting &&
                         books.ledger.accounts.kind(movement.to) == AccountKind::boundary;
        if (out && books.ledger.sources[movement.source].fact == fact) gone += movement.cost;
    }
    return gone;
}

reports::Arg money_arg(const Writing& after, const Cost& cost) {
    return arg("money", reports::shown_money(cost.cash(), reports::currency_of(after.shop())));
}

reports::Arg hours_arg(const Cost& cost) {
    return arg("hours", reports::shown_minutes(number(cost.hands_on)));
}

std::string after_end(const Writing& after, Key<PlantingEnd> key) {
    const PlantingEnd* end = after.shop().find(key);
    const Planting* planting = end != nullptr ? after.shop().find(end->planting) : nullptr;
    if (planting == nullptr) return {};
    const PlantingFigures figures = planting_figures(after.books, *planting);
    const Cost gone = gone_with(after.books, ref(*end));
    if (figures.cuts.empty())
        return say("Done with, and nothing was cut: {money} and {hours} are lost with it.", money_arg(after, gone),
                   hours_arg(gone));
    return say(
        "Done with: {cut} in all. {money} and {hours} in the bed that no cut had taken stay with the garden's year.",
        arg("cut", reports::shown_grams(static_cast<double>(figures.cut) / 1e3)), money_arg(after, gone),
        hours_arg(gone));
}

template <class Fact>
void begin(FactForm<Fact>& form, const Writing& writing, std::optional<Key<Fact>> corrected) {
    if (form.is_new()) form.fact().date = writing.day;
    form.add("date", say("&On"), &Fact::date)
        .add("planting", say("Which &planting"), &Fact::planting,
             {.choices = plantings_to_choose(writing, planting_of(writing.shop(), corrected))});
}

// Nothing befalls a planting before it is sown.
template <class Fact>
bool after_sowing_day(const Fact& fact, Form& form, const Writing& writing) {
    const Planting* planting = writing.shop().find(fact.planting);
    if (planting == nullptr || fact.date >= planting->sown) return true;
    form.field("date").trouble =
        say("It was sown on {day} only; put a later day.", arg("day", reports::shown_date(planting->sown)));
    return false;
}

}  // namespace

Form planting_end_form(const Writing& writing, std::optional<Key<Planting>> selected,
                       std::optional<Key<PlantingEnd>> corrected) {
    FactForm<PlantingEnd> form{writing, "planting_end", say("It failed, or was dug up"), corrected};
    begin(form, writing, corrected);
    form.add("note", say("&What happened"), &PlantingEnd::note, {.help = say("Failed, dug up, lifted, made room.")});
    if (form.is_new()) guess_planting(form, writing, selected);
    return std::move(form).done([](PlantingEnd& end, Form& filled, const Writing& in, Kept& kept) {
        if (!after_sowing_day(end, filled, in)) return false;
        kept.title = reports::message("end of {planting}");
        kept.args = {{"planting", planting_in_short(in.shop(), end.planting)}};
        kept.consequence = [key = end.key](const Writing& after) { return after_end(after, key); };
        return true;
    });
}

namespace {

std::string after_loss(const Writing& after, Key<BedLost> key) {
    const BedLost* lost = after.shop().find(key);
    const Planting* planting = lost != nullptr ? after.shop().find(lost->planting) : nullptr;
    if (planting == nullptr) return {};
    const PlantingFigures figures = planting_figures(after.books, *planting);
    const Cost gone = gone_with(after.books, ref(*lost));
    return say("{area} lost, and {money} and {hours} with it; {left} still stand.",
               arg("area", reports::shown_quantity(lost->area.quantity)), money_arg(after, gone), hours_arg(gone),
               arg("left", reports::shown_quantity(Quantity::square_centimetres(figures.area))));
}

// No more can be lost than stands; what a corrected record itself took off stands again.
bool stands(const BedLost& lost, Form& form, const Writing& writing) {
    const Planting* planting = writing.shop().find(lost.planting);
    if (planting == nullptr) return true;
    const BedLost* before = writing.shop().find(lost.key);
    std::int64_t standing = planting_figures(writing.books, *planting).area;
    if (before != nullptr && before->planting == lost.planting) standing += before->area.quantity.in_base();
    if (lost.area.quantity.in_base() <= standing) return true;
    form.field("area").trouble = say("Only {area} of it stand; write no more than that.",
                                     arg("area", reports::shown_quantity(Quantity::square_centimetres(standing))));
    return false;
}

}  // namespace

Form bed_lost_form(const Writing& writing, std::optional<Key<Planting>> selected,
                   std::optional<Key<BedLost>> corrected) {
    FactForm<BedLost> form{writing, "bed_lost", say("Part of it lost"), corrected};
    begin(form, writing, corrected);
    form.add("area", say("How &much of it"), &BedLost::area,
             {.help = say("The ground that is bare now, like 1 m2."), .measuring = in_square_metres})
        .add("note", say("&What happened"), &BedLost::note, {.help = say("Frost, slugs, a ball.")});
    if (form.is_new()) guess_planting(form, writing, selected);
    return std::move(form).done([](BedLost& lost, Form& filled, const Writing& in, Kept& kept) {
        if (!after_sowing_day(lost, filled, in) || !stands(lost, filled, in)) return false;
        kept.title = reports::message("{area} of {planting} lost");
        kept.args = {{"area", reports::shown_quantity(lost.area.quantity)},
                     {"planting", planting_in_short(in.shop(), lost.planting)}};
        kept.consequence = [key = lost.key](const Writing& after) { return after_loss(after, key); };
        return true;
    });
}

namespace {

std::string after_expecting(const Writing& after, Key<ExpectedTotal> key) {
    const ExpectedTotal* total = after.shop().find(key);
    const Planting* planting = total != nullptr ? after.shop().find(total->planting) : nullptr;
    if (planting == nullptr) return {};
    const PlantingFigures figures = planting_figures(after.books, *planting);
    const auto cut = arg("cut", reports::shown_grams(static_cast<double>(figures.cut) / 1e3));
    const auto index = static_cast<Account>(planting - after.shop().all<Planting>().data());
    const Cost rest = after.books.ledger.balances[after.books.ledger.accounts.plantings + index];
    const std::int64_t more = total->amount.quantity.in_base() - figures.cut;
    if (more <= 0)
        return say("{cut} are cut already: the next cut carries all that is left in the bed, {money} and {hours}.", cut,
                   money_arg(after, rest), hours_arg(rest));
    return say("{more} still to come, after {cut} cut; that carries {money} and {hours}. Earlier cuts keep their cost.",
               arg("more", reports::shown_grams(static_cast<double>(more) / 1e3)), cut, money_arg(after, rest),
               hours_arg(rest));
}

}  // namespace

Form expected_total_form(const Writing& writing, std::optional<Key<Planting>> selected,
                         std::optional<Key<ExpectedTotal>> corrected) {
    FactForm<ExpectedTotal> form{writing, "expected_total", say("What to expect"), corrected};
    begin(form, writing, corrected);
    form.add("amount", say("&Harvest in all"), &ExpectedTotal::amount,
             {.help = say("Over its whole life, what is cut already too. It changes only what is still to come."),
              .measuring = in_weight});
    if (form.is_new()) guess_planting(form, writing, selected);
    return std::move(form).done([](ExpectedTotal& total, Form& filled, const Writing& in, Kept& kept) {
        if (!after_sowing_day(total, filled, in)) return false;
        kept.title = reports::message("{amount} expected of {planting}");
        kept.args = {{"amount", reports::shown_quantity(total.amount.quantity)},
                     {"planting", planting_in_short(in.shop(), total.planting)}};
        kept.consequence = [key = total.key](const Writing& after) { return after_expecting(after, key); };
        return true;
    });
}

}  // namespace dyestead::gui
