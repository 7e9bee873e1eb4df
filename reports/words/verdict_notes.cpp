#include "reports/words/verdict_notes.h"

#include <map>

#include "reports/words/caution_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

using Sentences = std::vector<std::string>;

void add(Sentences& to, std::string sentence) {
    if (!sentence.empty()) to.push_back(std::move(sentence));
}

// "bed one, bed two": a list, no sentence.
template <class Keys>
std::string list_of(const Shop& shop, const Keys& keys) {
    std::string list;
    for (const auto key : keys) {
        if (!list.empty()) list += ", ";
        list += called(shop, key);
    }
    return list;
}

std::string gram_cost(const Shop& shop, const Verdict& verdict) {
    const PigmentFigures& pigment = verdict.figures.pigment;
    if (!pigment.cash_cost_per_gram || !pigment.hands_on_minutes_per_gram) return {};
    const std::string currency = currency_of(shop);
    const auto cash = arg("cash", fine_money(*pigment.cash_cost_per_gram, currency));
    const auto time = arg("time", shown_minutes(*pigment.hands_on_minutes_per_gram));
    const auto bought = arg(
        "bought", verdict.bought_price_per_gram ? fine_money(*verdict.bought_price_per_gram, currency) : not_known());
    if (verdict.ahead == Stand::pigment_dry)
        return say("A gram of the bought-in costs {bought}; what your own powder took is spent either way.", bought);
    if (verdict.ahead && pigment.full_cost_per_gram) {
        return say(
            "From here on a gram of your powder would cost {cash} and {time} of your time, {full} in all; a gram of "
            "the bought-in costs {bought}.",
            cash, time, arg("full", fine_money(*pigment.full_cost_per_gram, currency)), bought);
    }
    if (!pigment.full_cost_per_gram) {
        return say("A gram of your powder cost {cash} and {time} of your time; a gram of the bought-in costs {bought}.",
                   cash, time, bought);
    }
    return say(
        "A gram of your powder cost {cash} and {time} of your time, {full} in all; a gram of the bought-in costs "
        "{bought}.",
        cash, time, arg("full", fine_money(*pigment.full_cost_per_gram, currency)), bought);
}

std::string for_the_same_shade(const Verdict& verdict) {
    const auto& dose = verdict.dose_per_loaf;
    const auto& model = verdict.figures.model;
    if (!dose || !model || !verdict.figures.pigment.strength) return {};
    return say("For the same shade a loaf takes {own} of yours or {bought} of the bought-in.",
               arg("own", shown_grams(*dose / model->strength)),
               arg("bought", shown_grams(*dose / model->bought_strength)));
}

std::string powder_used(const StandsOn& on) {
    if (on.grams_dried <= 0) return {};
    const auto used = arg("used", shown_grams(on.grams_used));
    const auto dried = arg("dried", shown_grams(on.grams_dried));
    const auto left = arg("left", shown_grams(on.grams_left));
    if (on.grams_left <= 0) return say("{used} of {dried} of powder is used; none is left.", used, dried);
    if (!on.loaves_left) return say("{used} of {dried} of powder is used; {left} is left.", used, dried, left);
    return say("{used} of {dried} of powder is used; the {left} left would colour {loaves} loaves.", used, dried, left,
               arg("loaves", shown_number(*on.loaves_left)));
}

void add_failures(const Shop& shop, const StandsOn& on, Sentences& out) {
    const std::string currency = currency_of(shop);
    if (on.vats_failed > 0) {
        add(out, say_count("Includes one vat that gave nothing: {hours}, {money}.",
                           "Includes {count} vats that gave nothing: {hours}, {money}.",
                           static_cast<std::uint64_t>(on.vats_failed), arg("hours", shown_hours(on.failed_hours)),
                           arg("money", shown_money(on.failed_cash, currency))));
    }
    if (on.plantings_closed_hours > 0 || on.plantings_closed_cash > 0) {
        const auto hours = arg("hours", shown_hours(on.plantings_closed_hours));
        const auto money = arg("money", shown_money(on.plantings_closed_cash, currency));
        add(out,
            on.plantings_lost.empty()
                ? say("Includes what beds ended or lost in part had cost and no harvest carried: {hours}, {money}.",
                      hours, money)
                : say("Includes what beds ended or lost in part had cost and no harvest carried: {hours}, {money}. "
                      "Never cut at all: "
                      "{plantings}.",
                      hours, money, arg("plantings", list_of(shop, on.plantings_lost))));
    }
    if (on.leaf_lost_hours > 0 || on.leaf_lost_cash > 0) {
        add(out,
            say("Includes harvest that spoiled before it came into a vat: {hours}, {money}.",
                arg("hours", shown_hours(on.leaf_lost_hours)), arg("money", shown_money(on.leaf_lost_cash, currency))));
    }
    if (on.bills_cash > 0) {
        add(out, say("Includes bills for this colour that came while no bed or vat was in hand: {money}.",
                     arg("money", shown_money(on.bills_cash, currency))));
    }
    if (on.grams_lost > 0) {
        add(out, say("{lost} of dried powder was lost; its cost is carried by the rest.",
                     arg("lost", shown_grams(on.grams_lost))));
    }
    if (on.grams_given > 0) {
        add(out, say("{given} of powder was given away or went into tests; it counts as made.",
                     arg("given", shown_grams(on.grams_given))));
    }
    if (on.grams_sold > 0) {
        add(out,
            say("{sold} of powder was sold as it is; it counts as made.", arg("sold", shown_grams(on.grams_sold))));
    }
}

template <class Keys>
bool has(const Keys& keys) {
    return !keys.empty();
}

}  // namespace

Sentences powder_notes(const Shop& shop, const Verdict& verdict) {
    Sentences out;
    add(out, gram_cost(shop, verdict));
    add(out, for_the_same_shade(verdict));
    add(out, powder_used(verdict.stands_on));
    add_failures(shop, verdict.stands_on, out);
    return out;
}

Sentences left_out_notes(const Shop& shop, const Verdict& verdict) {
    const StandsOn& on = verdict.stands_on;
    Sentences out;
    if (on.already_spent > 0) {
        add(out, say("Already spent either way, and not counted: {money}.",
                     arg("money", shown_money(on.already_spent, currency_of(shop)))));
    }
    if (has(on.standing_beds)) {
        add(out, say("Left out, for they still stand: the plantings {plantings}.",
                     arg("plantings", list_of(shop, on.standing_beds))));
    }
    if (on.leaf_kg > 0) {
        add(out,
            say("Left out, for it is in no vat yet: {kilos} of harvest.", arg("kilos", shown_kilograms(on.leaf_kg))));
    }
    if (has(on.vats_not_dry)) {
        add(out,
            say("Left out, for they are not dry yet: the vats {vats}.", arg("vats", list_of(shop, on.vats_not_dry))));
    }
    return out;
}

Sentences verdict_cautions(const Shop& shop, const Verdict& verdict) {
    Sentences out;
    const auto& allowed = verdict.stands_on.allowed;
    add(out, allowed_sentence(colour_in_a_sentence(shop, verdict.colour), allowed ? &*allowed : nullptr));
    std::map<Caution, std::string> things;
    const auto note = [&](Caution caution, const std::string& name) {
        std::string& list = things[caution];
        list += (list.empty() ? "" : "; ") + name;
    };
    for (const Plant& plant : shop.all<Plant>())
        if (plant.colour == verdict.colour) note(plant.caution, plant.name);
    for (const Material& material : shop.all<Material>())
        if (material.colour == verdict.colour) note(material.caution, material.name);
    for (const auto& [caution, names] : things) add(out, caution_sentence(caution, names));
    return out;
}

}  // namespace dyestead::reports
