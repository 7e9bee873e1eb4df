#include <algorithm>
#include <array>

#include "reports/words/breakeven_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/verdict_within.h"
#include "reports/words/verdict_words.h"

namespace dyestead::reports {
namespace {

// No hour's worth is known: all turns on what it is to the maker.
std::string by_the_hour(const Difference& bar, const std::string& currency) {
    const auto earned = bar.earned_per_hour();
    if (!earned || *earned <= 0) return {};
    const auto money = arg("money", shown_money(*earned, currency));
    return bar.hours > 0
               ? say("What would turn it: growing pays while an hour is worth less than {money} to you.", money)
               : say("What would turn it: growing pays once an hour is worth more than {money} to you.", money);
}

}  // namespace

Within within_reach(const Shop& shop, const Verdict& verdict) {
    Within within;
    if (verdict.figures.model) within.today = *verdict.figures.model;
    within.best_g_per_kg = verdict.stands_on.best_g_per_kg.value_or(0);
    for (const VatRow& vat : verdict.vats) within.largest_vat_kg = std::max(within.largest_vat_kg, vat.kg);
    within.currency = currency_of(shop);
    return within;
}

std::string what_would_turn_it_line(const Shop& shop, const Verdict& verdict) {
    const VerdictFigures& figures = verdict.figures;
    if (!figures.model || !figures.home_less_bought) return {};
    const auto& hurdle = figures.extra_dye_hour.hurdle;
    if (!hurdle) return by_the_hour(*figures.home_less_bought, currency_of(shop));

    // At the hurdle, as the ruling is.
    Within within = within_reach(shop, verdict);
    within.today.hourly_target = *hurdle;
    const Breakevens all = breakevens(within.today);
    const bool behind = figures.home_less_bought->full(*hurdle) < 0;
    std::array<std::string, 2> ways;
    std::size_t found = 0;
    for (const Lever lever :
         {Lever::premium, Lever::yield, Lever::minutes_per_vat, Lever::harvest_per_vat, Lever::bought_price}) {
        std::string way = turning_words(lever, breakeven_of(lever, all), within, behind);
        if (way.empty()) continue;
        ways[found++] = std::move(way);
        if (found == ways.size()) break;
    }
    if (found == 0) return say("What would turn it: nothing within reach, if only one thing changes.");
    if (found == 1) return say("What would turn it: {way}.", arg("way", ways[0]));
    return say("What would turn it: {way}, or {other}.", arg("way", ways[0]), arg("other", ways[1]));
}

}  // namespace dyestead::reports
