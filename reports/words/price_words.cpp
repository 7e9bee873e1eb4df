#include "reports/words/price_words.h"

#include <algorithm>

#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

std::string named(const Shop& shop, const std::vector<Key<Material>>& bars) {
    std::string names;
    for (const Key<Material> bar : bars) names += (names.empty() ? "" : ", ") + called(shop, bar);
    return names;
}

}  // namespace

std::string wholesale_sentence(const Shop& shop, const BarPrice& bar) {
    const Wholesale& shops = bar.wholesale;
    if (!shops.price || !shops.left) return {};
    const std::string currency = currency_of(shop);
    const auto name = arg("bar", called(shop, bar.bar));
    const auto price = arg("price", shown_money(*shops.price, currency));
    const auto left = arg("left", shown_money(*shops.left, currency));
    if (!shops.floor || !shops.full_cost)
        return say(
            "{bar}: at no price for shops would anything be left, for tax and fees take as much as it adds.", name);
    const auto floor = arg("floor", shown_money(*shops.floor, currency));
    const auto full = arg("full", shown_money(*shops.full_cost, currency));
    if (*shops.price < *shops.floor - 1e-9)
        return say("{bar} goes to shops for {price}: that is under its floor of {floor}, so each one loses money.",
                   name, price, floor);
    if (*shops.price < *shops.full_cost - 1e-9)
        return say(
            "{bar} goes to shops for {price}: {left} a bar is left over before your time; {full} would pay for your "
            "hours of making too.",
            name, price, left, full);
    return say("{bar} goes to shops for {price}: that pays for all of it, your hours of making too.", name, price);
}

std::string bundle_sentence(const Shop& shop, const BundlePrice& bundle) {
    const std::string currency = currency_of(shop);
    const auto what = arg("what", bundle.what);
    const auto bars = arg("bars", bundle.bars);
    const auto price = arg("price", shown_money(bundle.price, currency));
    const auto a_bar = arg("a_bar", shown_money(bundle.a_bar(), currency));
    if (bundle.of.empty())
        return say(
            "{what}, {bars} bars for {price}: {a_bar} a bar. What the bars on that table cost is not known, so it is "
            "held against nothing.",
            what, bars, price, a_bar);
    if (!bundle.under_floor.empty())
        return say(
            "{what}, {bars} bars for {price}: {a_bar} a bar is under the floor of {which}; {clears} for the bundle "
            "would clear it.",
            what, bars, price, a_bar, arg("which", named(shop, bundle.under_floor)),
            arg("clears", shown_money(bundle.clears_floor.value_or(0), currency)));
    if (!bundle.under_cost.empty())
        return say(
            "{what}, {bars} bars for {price}: {a_bar} a bar clears every floor, but does not pay for your hours in "
            "{which}; {clears} for the bundle would.",
            what, bars, price, a_bar, arg("which", named(shop, bundle.under_cost)),
            arg("clears", shown_money(bundle.clears_cost.value_or(0), currency)));
    return say("{what}, {bars} bars for {price}: {a_bar} a bar pays for every kind on the table, your hours too.", what,
               bars, price, a_bar);
}

std::string aim_sentence(const Prices& answer, const std::string& currency) {
    const PriceAim& aim = answer.aim;
    const auto step = arg("step", shown_money(aim.price_step, currency));
    const auto margin = arg("margin", shown_percent(aim.margin.value_or(0)));
    const auto markup = arg("markup", shown_percent(aim.markup.value_or(0)));
    const bool no_price = std::ranges::any_of(
        answer.bars, [&](const BarPrice& each) { return aim.margin && each.replacement && !each.for_margin; });
    if (no_price)
        return say(
            "No price leaves {margin} of itself over once tax, fees and the cost of the bar are paid: put a "
            "lower margin down.",
            margin);
    if (aim.margin_is_default)
        return say(
            "Aimed at is a margin of {margin}, which is no more than a beginning: put your own margin or markup "
            "down in the Books, under \"What the shop goes by\". Prices go up in steps of {step}.",
            margin, step);
    if (aim.margin && aim.markup)
        return say(
            "Aimed at are a margin of {margin} on the price and a markup of {markup} on the cost. Prices go up "
            "in steps of {step}.",
            margin, markup, step);
    if (aim.markup)
        return say("Aimed at is a markup of {markup} on the cost. Prices go up in steps of {step}.", markup, step);
    return say("Aimed at is a margin of {margin} on the price. Prices go up in steps of {step}.", margin, step);
}

}  // namespace dyestead::reports
