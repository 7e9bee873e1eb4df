#include "reports/words/breakeven_words.h"

#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

// Beyond so many times the best on record a break-even is no advice.
constexpr double kOutOfReach = 3;
// Nobody gives more than half as much again for the story.
constexpr double kMostExtra = 0.5;
// A price or a time so many times today's is not printed.
constexpr double kAbsurd = 10;

std::string reason(NoBreakeven why) {
    switch (why) {
        case NoBreakeven::exists: return {};
        case NoBreakeven::not_known: return not_known();
        case NoBreakeven::no_target: return say("not known without what an hour should bring");
        case NoBreakeven::fees_take_all: return say("never: fees and tax take all of a higher price");
        case NoBreakeven::no_difference_in_hours: return say("no difference in hours");
        case NoBreakeven::even_free_would_not_pay: return say("never: even free powder would not pay");
        case NoBreakeven::pigment_costs_nothing: return say("never: the powder costs nothing as it is");
        case NoBreakeven::no_vat_big_enough: return say("never: no vat is big enough");
        case NoBreakeven::size_does_not_matter: return say("never: the size of a vat does not matter");
        case NoBreakeven::no_cash_form: return say("does not matter when time is not counted");
        case NoBreakeven::nothing_left_to_do: return say("settled: the powder is dry");
    }
    return {};
}

std::string premium_words(double value, const Within& within) {
    const auto money = [&](double units) { return arg("money", shown_money(units, within.currency)); };
    if (value > kMostExtra * within.today.bought_price)
        return say("out of reach: more than half as much again as a bought-in bar sells for");
    if (value <= -within.today.bought_price) return say("ahead at any price");
    if (value < 0) return say("ahead even if sold {money} cheaper", money(-value));
    return say("at {money} more than the bought-in bar", money(value));
}

std::string hourly_words(double value, const Within& within) {
    const bool takes_more_hours = home_less_bought(within.today).hours > 0;
    const auto money = arg("money", shown_money(value, within.currency));
    if (takes_more_hours) {
        if (value < 0) return say("never: behind even if an hour is worth nothing");
        return say("at {money} an hour; ahead below that", money);
    }
    if (value <= 0) return say("always ahead, whatever an hour is worth");
    return say("at {money} an hour; ahead above that", money);
}

std::string per_gram(double price, const Within& within) {
    return say("{money} a gram", arg("money", fine_money(price, within.currency)));
}

std::string found_words(Lever lever, double value, const Within& within) {
    switch (lever) {
        case Lever::premium: return premium_words(value, within);
        case Lever::hourly_target: return hourly_words(value, within);
        case Lever::yield:
            if (value > kOutOfReach * within.best_g_per_kg)
                return say("out of reach: more than three times your best vat");
            return say("at {grams} from a kilo", arg("grams", shown_grams(value)));
        case Lever::harvest_per_vat:
            if (value > kOutOfReach * within.largest_vat_kg)
                return say("out of reach: more than three times your largest vat");
            return say("at {kilos} in one vat", arg("kilos", shown_kilograms(value)));
        case Lever::minutes_per_vat:
            if (value < 0) return say("not even with no time at the vat");
            if (value > kAbsurd * within.today.minutes_per_vat()) return say("ahead even at ten times the time");
            return say("at {time} for one vat", arg("time", shown_minutes(value)));
        case Lever::bought_price:
            if (value <= 0) return say("ahead even if the bought-in one were free");
            if (value > kAbsurd * within.today.bought_price_per_gram)
                return say("out of reach: it would have to cost more than ten times as much");
            return say("at {price}", arg("price", per_gram(value, within)));
    }
    return {};
}

}  // namespace

std::string lever_name(Lever lever) {
    switch (lever) {
        case Lever::premium: return say("extra on the price of a grown bar");
        case Lever::hourly_target: return say("what an hour is worth");
        case Lever::yield: return say("powder from a kilo of harvest");
        case Lever::harvest_per_vat: return say("harvest in one vat");
        case Lever::minutes_per_vat: return say("your time at one vat");
        case Lever::bought_price: return say("price of the bought-in colour");
    }
    return {};
}

double lever_value(Lever lever, const Model& model) {
    switch (lever) {
        case Lever::premium: return model.premium();
        case Lever::hourly_target: return model.hourly_target;
        case Lever::yield: return model.yield;
        case Lever::harvest_per_vat: return model.kg_per_vat;
        case Lever::minutes_per_vat: return model.minutes_per_vat();
        case Lever::bought_price: return model.bought_price_per_gram;
    }
    return 0;
}

std::string lever_today(Lever lever, const Within& within) {
    const double value = lever_value(lever, within.today);
    switch (lever) {
        case Lever::premium:
        case Lever::hourly_target: return shown_money(value, within.currency);
        case Lever::yield: return shown_grams(value);
        case Lever::harvest_per_vat: return shown_kilograms(value);
        case Lever::minutes_per_vat: return shown_minutes(value);
        case Lever::bought_price: return per_gram(value, within);
    }
    return {};
}

const Breakeven& breakeven_of(Lever lever, const Breakevens& all) {
    switch (lever) {
        case Lever::premium: return all.premium_per_bar;
        case Lever::hourly_target: return all.hourly_target;
        case Lever::yield: return all.yield_g_per_kg;
        case Lever::harvest_per_vat: return all.harvest_kg_per_vat;
        case Lever::minutes_per_vat: return all.hands_on_minutes_per_vat;
        case Lever::bought_price: return all.bought_price_per_gram;
    }
    return all.premium_per_bar;
}

std::string breakeven_words(Lever lever, const Breakeven& breakeven, const Within& within) {
    return breakeven.value ? found_words(lever, *breakeven.value, within) : reason(breakeven.why);
}

std::string turning_words(Lever lever, const Breakeven& breakeven, const Within& within, bool grown_is_behind) {
    if (!breakeven.value || *breakeven.value <= 0) return {};
    const double value = *breakeven.value;
    const auto now = arg("now", lever_today(lever, within));
    switch (lever) {
        case Lever::premium: {
            const auto money = arg("money", shown_money(value, within.currency));
            if (value > kMostExtra * within.today.bought_price) return {};
            return grown_is_behind
                       ? say("people giving {money} more for a grown bar than for a bought-in one ({now} now)", money,
                             now)
                       : say("people giving less than {money} more for a grown bar than for a bought-in one "
                             "({now} now)",
                             money, now);
        }
        case Lever::hourly_target: return {};  // said in the line before
        case Lever::yield: {
            const auto grams = arg("grams", shown_grams(value));
            if (value > kOutOfReach * within.best_g_per_kg) return {};
            return grown_is_behind ? say("{grams} of powder from a kilo of harvest ({now} now)", grams, now)
                                   : say("less than {grams} of powder from a kilo of harvest ({now} now)", grams, now);
        }
        case Lever::harvest_per_vat: {
            const auto kilos = arg("kilos", shown_kilograms(value));
            if (value > kOutOfReach * within.largest_vat_kg) return {};
            return grown_is_behind ? say("{kilos} of harvest in one vat ({now} now)", kilos, now)
                                   : say("less than {kilos} of harvest in one vat ({now} now)", kilos, now);
        }
        case Lever::minutes_per_vat: {
            const auto time = arg("time", shown_minutes(value));
            if (value > kOutOfReach * within.today.minutes_per_vat()) return {};
            return grown_is_behind ? say("no more than {time} of your time at one vat ({now} now)", time, now)
                                   : say("more than {time} of your time at one vat ({now} now)", time, now);
        }
        case Lever::bought_price: {
            const auto price = arg("price", per_gram(value, within));
            if (value > kOutOfReach * within.today.bought_price_per_gram) return {};
            return grown_is_behind ? say("bought-in colour at {price} ({now} now)", price, now)
                                   : say("bought-in colour below {price} ({now} now)", price, now);
        }
    }
    return {};
}

}  // namespace dyestead::reports
