#include "gui/models/bench/hold_form.h"

#include "domain/decisions/can_make.h"
#include "domain/ledger/holds.h"
#include "gui/models/bench/bars.h"
#include "gui/models/bench/batch_parts.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

// Bars first, then all else there is something left of.
std::vector<Choice> lots_to_hold(const Books& books, Key<Lot> chosen) {
    std::vector<Choice> choices = bar_lot_choices(books, {});
    std::vector<Choice> others;
    for (std::size_t i = 0; i < books.shop.all<Lot>().size() && i < books.ledger.lots.size(); ++i) {
        const Lot& lot = books.shop.all<Lot>()[i];
        const std::string code = KeyCodes{}.code_of(lot.key);
        const bool there = std::ranges::find(choices, code, &Choice::code) != choices.end();
        if (there || (books.ledger.lots[i].left <= 0 && lot.key != chosen)) continue;
        others.push_back({code, say("{material}, lot {lot}", arg("material", reports::called(books.shop, lot.material)),
                                    arg("lot", lot.code))});
    }
    std::ranges::stable_sort(others, {}, &Choice::shown);
    choices.insert(choices.end(), others.begin(), others.end());
    return choices;
}

int held_bars(const Books& books) {
    return whole_bars(shelf({books.shop, books.ledger}).bars(BarState::held));
}

std::string released_meant(const Writing& after, Key<Lot> lot) {
    for (const ShelfLot& each : shelf({after.shop(), after.books.ledger}).lots) {
        if (each.lot != lot) continue;
        return say_count("One bar is free again: {state}.", "{count} bars are free again: {state}.",
                         static_cast<std::uint64_t>(whole_bars(each.bars)),
                         arg("state", bar_state_words(after.books, each)));
    }
    return say("Set free, with all that is made of it.");
}

std::string plan_meant(const Writing& after, const Plan& plan) {
    const CanMake answer = can_make(after.shop(), after.books.ledger, plan.bar, plan.loaves, after.day);
    std::string missing = enough_said(after.shop(), plan.bar, answer);
    if (!missing.empty()) return missing;
    return say_count("Planned; what is in hand is enough for one loaf.",
                     "Planned; what is in hand is enough for {count} loaves.",
                     static_cast<std::uint64_t>(answer.most_loaves));
}

}  // namespace

std::string held_meant(const Writing& after) {
    const auto bars = static_cast<std::uint64_t>(held_bars(after.books));
    if (bars == 0) return say("Put by, with all that is made of it; no bars are held by it.");
    return say_count("One bar is on hold now. It is counted as ready nowhere; give it to nobody, and wear gloves.",
                     "{count} bars are on hold now. They are counted as ready nowhere; give them to nobody, and wear "
                     "gloves.",
                     bars);
}

Form hold_form(const Writing& writing, std::optional<Key<Lot>> lot, std::optional<Key<Hold>> corrected) {
    FactForm<Hold> form{writing, "hold", say("Put on hold"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (lot) form.fact().lot = *lot;
    }
    form.add("lot", say("&What"), &Hold::lot,
             {.choices = lots_to_hold(writing.books, form.fact().lot),
              .help = say("All that was made with it is held too.")})
        .add("why", say("Wh&y"), &Hold::why, {.help = say("Lye-heavy, recalled, smells off: in your own words.")})
        .add("date", say("On hold fr&om"), &Hold::date);
    return std::move(form).done([](Hold& hold, Form&, const Writing& now, Kept& kept) {
        kept.title = reports::message("lot {lot} put on hold: {why}");
        kept.args = {{"lot", reports::called(now.shop(), hold.lot)}, {"why", hold.why}};
        kept.consequence = held_meant;
        return true;
    });
}

Form release_form(const Writing& writing, std::optional<Key<Lot>> lot, std::optional<Key<Release>> corrected) {
    const Books& books = writing.books;
    FactForm<Release> form{writing, "release", say("Set free from hold"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (lot) form.fact().lot = *lot;
    }
    const Holds held = holds(books.shop, books.ledger);
    std::vector<Choice> choices;
    for (std::uint32_t i = 0; i < books.shop.all<Lot>().size(); ++i) {
        const Lot& each = books.shop.all<Lot>()[i];
        const auto why = held.why(i, writing.day);
        if (!why && each.key != form.fact().lot) continue;
        choices.push_back(
            {KeyCodes{}.code_of(each.key),
             say("{material}, lot {lot}, {why}", arg("material", reports::called(books.shop, each.material)),
                 arg("lot", each.code), arg("why", why ? held_words(books.shop, *why) : say("not held")))});
    }
    form.add("lot", say("&What"), &Release::lot, {.choices = std::move(choices)})
        .add("why", say("Wh&y"), &Release::why,
             {.help = say("What you made sure of: weighed again, tested, the supplier's word.")})
        .add("date", say("Free &on"), &Release::date);
    return std::move(form).done([](Release& release, Form&, const Writing& now, Kept& kept) {
        kept.title = reports::message("lot {lot} set free: {why}");
        kept.args = {{"lot", reports::called(now.shop(), release.lot)}, {"why", release.why}};
        kept.consequence = [key = release.lot](const Writing& after) { return released_meant(after, key); };
        return true;
    });
}

Form plan_form(const Writing& writing, std::optional<Key<Material>> bar, std::optional<Key<Plan>> corrected) {
    FactForm<Plan> form{writing, "plan", say("Loaves planned"), corrected};
    if (form.is_new()) {
        form.fact().noted = writing.day;
        if (bar) form.fact().bar = *bar;
    }
    const auto made = [&](const Material& material) { return recipe_of_bar(writing.shop(), material.key) != nullptr; };
    form.add("bar", say("Which &bar"), &Plan::bar, {.choices = material_choices(writing.shop(), made)})
        .add("loaves", say("&Loaves"), &Plan::loaves)
        .add("date", say("To be &poured on"), &Plan::date)
        .more("noted", say("Decided o&n"), &Plan::noted);
    form.look_at([](const Plan& plan, const Change&, Form& shown, const Writing& now) {
        shown.summary.clear();
        if (plan.bar.number == 0 || plan.loaves <= 0) return;
        shown.summary =
            enough_said(now.shop(), plan.bar, can_make(now.shop(), now.books.ledger, plan.bar, plan.loaves, now.day));
    });
    return std::move(form).done([](Plan& plan, Form& shown, const Writing& now, Kept& kept) {
        const Recipe* recipe = recipe_of_bar(now.shop(), plan.bar);
        if (recipe == nullptr) return false;
        if (plan.loaves <= 0) {
            shown.field("loaves").trouble = say("One loaf at least; write how many.");
            return false;
        }
        plan.recipe = recipe->key;
        kept.title = reports::message("{bar} planned for {day}");
        kept.args = {{"bar", reports::called(now.shop(), plan.bar)}, {"day", reports::shown_date(plan.date)}};
        kept.consequence = [plan](const Writing& after) { return plan_meant(after, plan); };
        return true;
    });
}

}  // namespace dyestead::gui
