#include "domain/ledger/in_force.h"

#include <algorithm>
#include <tuple>

namespace dyestead {
namespace {

// The latest by `from` among those that match; the greater key where two are from the same day.
template <class Setting, class Matches>
const Setting* latest(const Shop& shop, Day day, Matches matches) {
    const Setting* best = nullptr;
    for (const Setting& each : shop.all<Setting>())
        if (each.from <= day && matches(each) && (best == nullptr || each.from >= best->from)) best = &each;
    return best;
}

template <class Setting>
const Setting* latest(const Shop& shop, Day day) {
    return latest<Setting>(shop, day, [](const Setting&) { return true; });
}

Day end_of_life(const Equipment& tool) {
    constexpr int kLongest = 1'000;
    const std::chrono::year_month_day bought{tool.bought};
    const auto years = std::chrono::years{std::clamp(tool.years, 1, kLongest)};
    const auto end = bought + years;
    return end.ok() ? Day{end} : Day{end.year() / end.month() / std::chrono::last};
}

// Sums of tools may pass what one fact may state; the books go no further.
Money capped(Wide sum) {
    constexpr std::int64_t kMost = kLargestStatedMoney.in_millionths();
    return Money::millionths(sum > kMost ? kMost : narrow(sum));
}

// Each figure as the latest rule by then says it, of those that say anything of it.
template <class Rule>
Rule figure_by_figure(const Shop& shop, Day day) {
    Rule result;
    result.from = day;
    for_each_field<Rule>([&](const auto& field) {
        if constexpr (requires { (result.*field.member).has_value(); }) {
            const Rule* rule =
                latest<Rule>(shop, day, [&](const Rule& each) { return (each.*field.member).has_value(); });
            if (rule != nullptr) result.*field.member = rule->*field.member;
        }
    });
    return result;
}

}  // namespace

const Pay* pay_in_force(const Shop& shop, Key<Person> person, Day day) {
    return latest<Pay>(shop, day, [&](const Pay& each) { return each.person == person; });
}

std::optional<Rate> tariff_in_force(const Shop& shop, HeatSource source, Day day) {
    const auto* tariff = latest<Tariff>(shop, day, [&](const Tariff& each) { return each.source == source; });
    if (tariff == nullptr) return std::nullopt;
    return Rate{tariff->per_kwh, Quantity::watt_hours(1'000)};
}

const Overhead* overhead_in_force(const Shop& shop, Day day) {
    return latest<Overhead>(shop, day);
}

Ratio normal_loss_in_force(const Shop& shop, LossOf of, Day day) {
    const auto* loss = latest<NormalLoss>(shop, day, [&](const NormalLoss& each) { return each.of == of; });
    return loss == nullptr ? Ratio{} : loss->rate;
}

Ratio sales_tax_in_force(const Shop& shop, Day day) {
    const auto* tax = latest<SalesTax>(shop, day);
    return tax == nullptr ? Ratio{} : tax->rate;
}

const ChannelFee* fee_in_force(const Shop& shop, Channel channel, Day day) {
    return latest<ChannelFee>(shop, day, [&](const ChannelFee& each) { return each.channel == channel; });
}

Ratio waiting_share_in_force(const Shop& shop, Day day) {
    const auto* share = latest<WaitingShare>(shop, day);
    return share == nullptr ? Ratio{} : share->share;
}

std::optional<Money> shelf_price_in_force(const Shop& shop, Key<Material> bar, Day day) {
    const auto* price = latest<Price>(shop, day, [&](const Price& each) { return each.bar == bar; });
    if (price == nullptr) return std::nullopt;
    return price->shelf;
}

const WholesalePrice* wholesale_price_in_force(const Shop& shop, Key<Material> bar, Day day) {
    return latest<WholesalePrice>(shop, day, [&](const WholesalePrice& each) { return each.bar == bar; });
}

const PowderPrice* powder_price_in_force(const Shop& shop, Key<Colour> colour, Day day) {
    return latest<PowderPrice>(shop, day, [&](const PowderPrice& each) { return each.colour == colour; });
}

SowingRule sowing_rule_in_force(const Shop& shop, Day day) {
    return figure_by_figure<SowingRule>(shop, day);
}

PriceRule price_rule_in_force(const Shop& shop, Day day) {
    return figure_by_figure<PriceRule>(shop, day);
}

const PriceBelief* price_belief_in_force(const Shop& shop, Key<Colour> colour, Day day) {
    const PriceBelief* best = nullptr;
    for (const PriceBelief& each : shop.all<PriceBelief>())
        if (each.date <= day && each.colour == colour && (best == nullptr || each.date >= best->date)) best = &each;
    return best;
}

const Allowed* allowed_in_force(const Shop& shop, Key<Colour> colour, Day day) {
    const Allowed* newest = nullptr;
    for (const Allowed& each : shop.all<Allowed>())
        if (each.colour == colour && each.date <= day && (newest == nullptr || each.date >= newest->date))
            newest = &each;
    return newest;
}

const Person* default_person(const Shop& shop, Day day) {
    const Person* first = nullptr;
    for (const Person& each : shop.all<Person>()) {
        const Pay* pay = pay_in_force(shop, each.key, day);
        if (pay != nullptr && pay->standing == Standing::paid) continue;
        if (first == nullptr || each.code < first->code) first = &each;
    }
    return first;
}

Money wear_accrued(const Equipment& tool, Day day) {
    if (day < tool.bought) return {};
    if (tool.gone && *tool.gone <= day) return tool.price;
    const std::int64_t life = (end_of_life(tool) - tool.bought).count();
    const std::int64_t gone = std::min<std::int64_t>((day - tool.bought).count() + 1, life);
    return Money::millionths(share_of(tool.price.in_millionths(), gone, life));
}

Money wear_per_year(const Shop& shop, Day day) {
    Wide sum = 0;
    for (const Equipment& tool : shop.all<Equipment>()) {
        const bool in_use = tool.bought <= day && day < end_of_life(tool) && !(tool.gone && *tool.gone <= day);
        if (in_use && tool.dye_only == DyeOnly::no) sum += tool.price.in_millionths() / std::max(tool.years, 1);
    }
    return capped(sum);
}

Money dye_wear_accrued(const Shop& shop, Day day) {
    Wide sum = 0;
    for (const Equipment& tool : shop.all<Equipment>())
        if (tool.dye_only != DyeOnly::no) sum += wear_accrued(tool, day).in_millionths();
    return capped(sum);
}

bool can_be_averaged(const Shop& shop, const Material& material) {
    if (material.kind != MaterialKind::raw && material.kind != MaterialKind::seed) return false;
    if (material.purpose == Purpose::colourant || material.colour) return false;
    return std::ranges::none_of(
        shop.all<Colour>(), [&](const Colour& each) { return each.bought_match == material.key; });
}

Day takes_effect(const Shop& shop, const CostRule& rule) {
    const int stated = shop.all<About>().empty() ? 1 : shop.all<About>().front().year_begins.value_or(1);
    const auto month = static_cast<unsigned>(stated >= 1 && stated <= 12 ? stated : 1);
    const Day first = day_of(year_of(rule.from), month, 1);
    return first >= rule.from ? first : day_of(year_of(rule.from) + 1, month, 1);
}

// The latest word; of one day, the one on the material itself before the one on all.
CostBy cost_rule_in_force(const Shop& shop, const Material& material, Day day) {
    if (!can_be_averaged(shop, material)) return CostBy::lot;
    const CostRule* best = nullptr;
    const auto rank = [](const CostRule& rule) { return std::tuple{rule.from, rule.material.has_value(), rule.key}; };
    for (const CostRule& each : shop.all<CostRule>()) {
        if (each.material && *each.material != material.key) continue;
        if (takes_effect(shop, each) > day) continue;
        if (best == nullptr || rank(each) > rank(*best)) best = &each;
    }
    return best == nullptr ? CostBy::lot : best->cost_by;
}

Money overhead_accrued(const Shop& shop, Day day) {
    Wide wear = 0;
    for (const Equipment& tool : shop.all<Equipment>())
        if (tool.dye_only == DyeOnly::no) wear += wear_accrued(tool, day).in_millionths();
    return running_costs_accrued(shop, day) + capped(wear);
}

Money running_costs_accrued(const Shop& shop, Day day) {
    std::vector<const Overhead*> settings;
    for (const Overhead& each : shop.all<Overhead>())
        if (each.from <= day) settings.push_back(&each);
    std::ranges::sort(settings, [](const auto* a, const auto* b) {
        return std::pair{a->from, a->key} < std::pair{b->from, b->key};
    });
    Money accrued;
    for (std::size_t i = 0; i < settings.size(); ++i) {
        // To the end of the day before the next setting, or of `day`; a year at a time.
        const Day end = i + 1 < settings.size() ? settings[i + 1]->from : day + Days{1};
        for (Day start = settings[i]->from; start < end;) {
            const int year = year_of(start);
            const Day stop = std::min(end, day_of(year + 1, 1, 1));
            const auto upto = [&](Day last) {
                const auto gone = last == day_of(year + 1, 1, 1) ? days_in_year(year) : day_in_year(last);
                return share_of(settings[i]->per_year.in_millionths(), gone, days_in_year(year));
            };
            accrued += Money::millionths(upto(stop) - upto(start));
            start = stop;
        }
    }
    return accrued;
}

}  // namespace dyestead
