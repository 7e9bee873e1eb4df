#include "reports/verdict_figures.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string_view>

namespace dyestead::reports {
namespace {

class Figures {
public:
    void add(std::string_view group, std::string_view key, std::optional<double> value) {
        std::string name = group.empty() ? std::string{key} : fmt::format("{}.{}", group, key);
        if (value && !std::isfinite(*value)) value.reset();
        all_.push_back({std::move(name), value});
    }

    std::vector<Figure> take() { return std::move(all_); }

private:
    std::vector<Figure> all_;
};

void add(Figures& out, std::string_view group, const Alternative& bar) {
    out.add(group, "shelf_price_per_bar", bar.shelf_price_per_bar);
    out.add(group, "price_per_bar", bar.price_per_bar);
    out.add(group, "fees_per_bar", bar.fees_per_bar);
    out.add(group, "materials_per_bar", bar.materials_per_bar);
    out.add(group, "labour_per_bar", bar.labour_per_bar);
    out.add(group, "energy_per_bar", bar.energy_per_bar);
    out.add(group, "overhead_per_bar", bar.overhead_per_bar);
    out.add(group, "cash_cost_per_bar", bar.cash_cost_per_bar);
    out.add(group, "full_cost_per_bar", bar.full_cost_per_bar);
    out.add(group, "cash_margin_per_bar", bar.cash_margin_per_bar);
    out.add(group, "full_margin_per_bar", bar.full_margin_per_bar);
    out.add(group, "hands_on_minutes_per_bar", bar.hands_on_minutes_per_bar);
    out.add(group, "earnings_per_hour", bar.earnings_per_hour);
    out.add(group, "selling_cost_per_bar", bar.selling_cost_per_bar);
    out.add(group, "selling_minutes_per_bar", bar.selling_minutes_per_bar);
    out.add(group, "earnings_per_hour_with_selling", bar.earnings_per_hour_with_selling);
}

void add(Figures& out, const PigmentFigures& pigment) {
    out.add("pigment", "full_cost_per_gram", pigment.full_cost_per_gram);
    out.add("pigment", "cash_cost_per_gram", pigment.cash_cost_per_gram);
    out.add("pigment", "hands_on_minutes_per_gram", pigment.hands_on_minutes_per_gram);
    out.add("pigment", "strength", pigment.strength);
    out.add("pigment", "yield_g_per_kg", pigment.yield_g_per_kg);
    out.add("pigment", "harvest_kg_per_vat", pigment.harvest_kg_per_vat);
    out.add("pigment", "hands_on_minutes_per_vat", pigment.hands_on_minutes_per_vat);
}

void add(Figures& out, const Breakevens& full, const Breakevens& cash) {
    out.add("breakeven", "premium_per_bar", full.premium_per_bar.value);
    out.add("breakeven", "hourly_target", full.hourly_target.value);
    out.add("breakeven", "pigment_g_per_kg_harvest", full.yield_g_per_kg.value);
    out.add("breakeven", "harvest_kg_per_vat", full.harvest_kg_per_vat.value);
    out.add("breakeven", "hands_on_minutes_per_vat", full.hands_on_minutes_per_vat.value);
    out.add("breakeven", "bought_price_per_gram", full.bought_price_per_gram.value);
    out.add("breakeven", "premium_per_bar_cash", cash.premium_per_bar.value);
    out.add("breakeven", "pigment_g_per_kg_harvest_cash", cash.yield_g_per_kg.value);
    out.add("breakeven", "harvest_kg_per_vat_cash", cash.harvest_kg_per_vat.value);
    out.add("breakeven", "bought_price_per_gram_cash", cash.bought_price_per_gram.value);
}

void add(Figures& out, const std::optional<PowderSold>& powder) {
    const PowderSold unknown;
    const PowderSold& of = powder ? *powder : unknown;
    out.add("powder", "price_per_gram", powder ? std::optional{of.price_per_gram} : std::nullopt);
    out.add("powder", "left_per_gram", of.left_per_gram);
    out.add("powder", "left_per_dye_hour", of.left_per_dye_hour);
    out.add("powder", "soap_left_per_gram", of.soap_left_per_gram);
    out.add("powder", "soap_left_per_dye_hour", of.soap_left_per_dye_hour);
    out.add("powder", "even_price_per_gram", of.even_price_per_gram);
}

void add(Figures& out, std::string_view key, const std::optional<Band>& band) {
    const auto value = [&](double Band::*of) { return band ? std::optional{*band.*of} : std::nullopt; };
    out.add("doubt", fmt::format("{}_p10", key), value(&Band::bad));
    out.add("doubt", fmt::format("{}_p50", key), value(&Band::usual));
    out.add("doubt", fmt::format("{}_p90", key), value(&Band::good));
}

}  // namespace

std::vector<Figure> verdict_figures(const VerdictFigures& figures, std::optional<double> hourly_target) {
    Figures out;
    add(out, "home", figures.home);
    add(out, "bought", figures.bought);
    add(out, "plain", figures.plain);
    add(out, figures.pigment);
    out.add("season", "dye_hours", figures.season.dye_hours);
    out.add("season", "bars", figures.season.bars);
    out.add("season", "cash_difference", figures.season.cash_difference);
    out.add("season", "full_difference", figures.season.full_difference);
    out.add("", "hourly_target", hourly_target);
    out.add("extra_dye_hour", "earned", figures.extra_dye_hour.earned);
    out.add("extra_dye_hour", "hurdle", figures.extra_dye_hour.hurdle);
    out.add("extra_dye_hour", "soap_hour", figures.extra_dye_hour.soap_hour);
    add(out, figures.breakeven, figures.breakeven_cash);
    return out.take();
}

std::vector<Figure> all_figures(const Verdict& verdict) {
    std::vector<Figure> all = verdict_figures(verdict.figures, verdict.hourly_target);
    const Doubt& doubt = verdict.doubt;
    Figures out;
    out.add("chance", "home_beats_bought", doubt.home_beats_bought);
    out.add("chance", "home_beats_plain", doubt.home_beats_plain);
    out.add("chance", "home_beats_bought_cash", doubt.home_beats_bought_cash);
    out.add("chance", "home_beats_plain_cash", doubt.home_beats_plain_cash);
    add(out, "home_cash_margin_per_bar", doubt.cash_margin);
    add(out, "home_full_margin_per_bar", doubt.full_margin);
    add(out, "extra_dye_hour_earned", doubt.earned_per_hour);
    add(out, verdict.figures.powder);
    if (verdict.practice) {
        out.add("practice", "each_doubling_leaves", verdict.practice->rate);
        out.add("practice", "next_vats_take", verdict.practice->factor);
    }
    std::ranges::move(out.take(), std::back_inserter(all));
    return all;
}

}  // namespace dyestead::reports
