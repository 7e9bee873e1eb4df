#include "reports/words/reorder_words.h"

#include "domain/facts/material_amount.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

std::string amount_of(const Shop& shop, Key<Material> key, std::int64_t base) {
    const Material* material = shop.find(key);
    return material == nullptr ? std::string{} : shown_quantity({kind_of(material->held_as), base});
}

std::string runs_short(const Shop& shop, const ColourShort& colour) {
    const auto shortage = arg("short", amount_of(shop, colour.material, colour.short_by));
    const auto what = arg("what", called(shop, colour.material));
    const auto day = arg("day", shown_date(colour.runs_out));
    if (!colour.own)
        return say("{what} does not last for the batch planned for {day}: {short} are missing for all that is planned.",
                   what, day, shortage);
    if (!colour.next_powder)
        return say(
            "{what}, your own, does not last for the batch planned for {day}: {short} are missing for all that is "
            "planned, and none stands from which more could come.",
            what, day, shortage);
    return say(
        "{what}, your own, does not last for the batch planned for {day}: {short} are missing for what is planned "
        "before the next of it is dry, about {dry}.",
        what, day, shortage, arg("dry", shown_date(*colour.next_powder)));
}

std::string buy_in(const Shop& shop, const ColourShort& colour) {
    if (!colour.buy) return tr("No bought-in colour is on record as its match, so none can be bought in its place.");
    const auto what = arg("what", called(shop, *colour.buy));
    const auto amount = arg("amount", amount_of(shop, *colour.buy, colour.buy_quantity));
    if (!colour.buy_cost) return say("Buy in {amount} of {what}; no price of it is on record.", amount, what);
    const auto cost = arg("cost", shown_money(*colour.buy_cost, currency_of(shop)));
    if (colour.own)
        return say("Buy in {amount} of {what} for the same shade, about {cost} without postage.", amount, what, cost);
    return say("Buy in {amount} of {what}, about {cost} without postage.", amount, what, cost);
}

std::string pour_fewer(const Shop& shop, const ColourShort& colour) {
    const auto loaves = static_cast<std::uint64_t>(colour.loaves());
    const auto left = colour.left();
    if (!left)
        return say_count("Or pour one loaf fewer; what its bars would have left is not known.",
                         "Or pour {count} loaves fewer; what their bars would have left is not known.", loaves);
    return say_count("Or pour one loaf fewer: its bars would have left {left} before your time.",
                     "Or pour {count} loaves fewer: their bars would have left {left} before your time.", loaves,
                     arg("left", shown_money(*left, currency_of(shop))));
}

std::string which_way(const ColourShort& colour) {
    const auto left = colour.left();
    if (!colour.buy_cost || !left) return {};
    if (*left <= 0) return tr("Those bars leave nothing, so pour fewer.");
    if (*colour.buy_cost < *left) return tr("Buying in costs less than the bars bring: buy.");
    return tr("Buying in costs more than the bars bring: pour fewer.");
}

std::string own_or_not(const ColourShort& colour) {
    if (!colour.own || !colour.buy) return {};
    return tr(
        "Bars coloured with what is bought in are not of your own growing: price and label them as what they are.");
}

// "7.10 a kg"
std::string price_a_unit(const Shop& shop, const Offer& offer, double price) {
    const auto money = arg("money", shown_money(price, currency_of(shop)));
    const Material* material = shop.find(offer.material);
    switch (material == nullptr ? HeldAs::mass : material->held_as) {
        case HeldAs::mass: return say("{money} a kg", money);
        case HeldAs::volume: return say("{money} a l", money);
        case HeldAs::count: return say("{money} each", money);
    }
    return {};
}

}  // namespace

std::vector<std::string> colour_short_sentences(const Shop& shop, const ColourShort& colour) {
    std::vector<std::string> all;
    for (std::string each : {runs_short(shop, colour), buy_in(shop, colour), pour_fewer(shop, colour),
                             which_way(colour), own_or_not(colour)})
        if (!each.empty()) all.push_back(std::move(each));
    return all;
}

std::vector<std::string> bought_twice_sentences(const Shop& shop, const BoughtTwice& twice) {
    std::vector<std::string> all;
    std::string names;
    for (const Key<Material> each : twice.materials) names += (names.empty() ? "" : ", ") + called(shop, each);
    if (twice.materials.size() > 1)
        all.push_back(
            say("These look like one thing, put down more than once: {names}. If they are, use one of the names from "
                "now on, so that stock and orders stand together.",
                arg("names", names)));
    else
        all.push_back(say("{name} came from more than one supplier in the last 12 months.", arg("name", names)));
    if (twice.from.size() < 2) return all;
    const Offer* cheap = shop.find(twice.from.front().offer);
    const Offer* dear = shop.find(twice.from.back().offer);
    if (cheap == nullptr || dear == nullptr) return all;
    all.push_back(say(
        "{cheap} asks {low}, {dear} {high}; one order from one of them saves a postage.",
        arg("cheap", called(shop, cheap->supplier)), arg("low", price_a_unit(shop, *cheap, twice.from.front().a_unit)),
        arg("dear", called(shop, dear->supplier)), arg("high", price_a_unit(shop, *dear, twice.from.back().a_unit))));
    return all;
}

}  // namespace dyestead::reports
