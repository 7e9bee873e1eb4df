#include "domain/decisions/reorder.h"
#include "domain/decisions/hourly_target.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "domain/decisions/bought_twice.h"
#include "domain/decisions/colours_short.h"
#include "domain/decisions/loaf_needs.h"
#include "domain/decisions/window.h"
#include "domain/facts/material_amount.h"
#include "domain/ledger/holds.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/planned_from.h"

namespace dyestead {
namespace {

constexpr int kEnoughRecords = 3;
constexpr int kMostPacks = 200;
constexpr int kLongestLead = 365;  // days; nobody orders further ahead

class Reckoning {
public:
    Reckoning(const Shop& shop, const Ledger& ledger, const ReorderTerms& terms)
        : records_{shop, ledger}, shop_{shop}, ledger_{ledger}, terms_{terms} {}

    Reorder answer() {
        gather_plans();
        gather_use();
        for (const Material& material : shop_.all<Material>()) {
            if (material.kind != MaterialKind::raw) continue;
            if (!planned_.contains(material.key) && !used_.contains(material.key)) continue;
            result_.rows.push_back(row(material));
        }
        std::ranges::sort(result_.rows, [](const ReorderRow& a, const ReorderRow& b) {
            const auto rank = [](const ReorderRow& each) {
                return std::tuple{each.order_by.value_or(Day::max()), !each.wanted, each.after_plans, each.material};
            };
            return rank(a) < rank(b);
        });
        draft_orders();
        lots_going_off();
        result_.colours = colours_short(records_, held_, plans_);
        result_.twice = bought_twice(records_);
        return std::move(result_);
    }

private:
    struct Used {
        std::set<Key<Batch>> batches;
        std::int64_t quantity = 0;
    };

    void gather_plans() {
        for (const Plan& plan : shop_.all<Plan>())
            if (plan.noted <= ledger_.as_of && plan.date >= ledger_.as_of) plans_.push_back(&plan);
        std::ranges::sort(plans_, {}, [](const Plan* plan) { return std::pair{plan->date, plan->key}; });
        result_.plans = static_cast<int>(plans_.size());
        for (const Plan* plan : plans_)
            for (const Need& need : loaf_needs(records_, plan->bar, plan->loaves).needs)
                planned_[need.material].push_back({plan->key, plan->date, need.quantity});
    }

    void gather_use() {
        const Window year = months_to(ledger_.as_of, 12);
        for (const Movement& movement : ledger_.movements) {
            if (movement.quantity == 0 || !year.contains(movement.on())) continue;
            const auto* use = records_.from<BatchUse>(movement);
            if (use != nullptr && records_.kind(movement.to) == AccountKind::batch) {
                used_[use->material].batches.insert(use->head);
                used_[use->material].quantity += movement.quantity;
            }
            const auto* wrapped = records_.from<WrappingUse>(movement);
            if (wrapped != nullptr && movement.from != account(Boundary::provisional)) {
                // A wrapping day counts as a batch: it is when bands and labels are used up.
                used_[wrapped->material].batches.insert(Key<Batch>{-wrapped->head.number});
                used_[wrapped->material].quantity += movement.quantity;
            }
        }
    }

    std::int64_t there(Key<Material> material) const {
        std::int64_t sum = 0;
        for (std::size_t i = 0; i < shop_.all<Lot>().size(); ++i) {
            const LotState& state = ledger_.lots[i];
            if (held_.why(static_cast<std::uint32_t>(i), ledger_.as_of)) continue;
            if (shop_.all<Lot>()[i].material == material && state.best_before.value_or(Day::max()) >= ledger_.as_of)
                sum += state.left;
        }
        return sum;
    }

    // The offer in force with the lowest price for so much of the material.
    const Offer* best_offer(const Material& material) const {
        const Offer* best = nullptr;
        double best_rate = 0;
        std::map<Key<Supplier>, const Offer*> newest;
        for (const Offer& each : shop_.all<Offer>()) {
            if (each.material != material.key || each.noted > ledger_.as_of || each.from > ledger_.as_of) continue;
            const Offer*& known = newest[each.supplier];
            if (known == nullptr || each.from >= known->from) known = &each;
        }
        for (const auto& [supplier, each] : newest) {
            const auto pack = as_held(material, each->pack);
            if (!pack || pack->in_base() <= 0) continue;
            const double rate = number(each->price) / static_cast<double>(pack->in_base());
            if (best == nullptr || rate < best_rate) {
                best = each;
                best_rate = rate;
            }
        }
        return best;
    }

    Money pack_price(const Offer& offer, int packs) const {
        Money price = offer.price;
        int reached = 0;
        for (const OfferBreak& each : shop_.all<OfferBreak>())
            if (each.head == offer.key && each.from_packs <= packs && each.from_packs > reached) {
                price = each.price;
                reached = each.from_packs;
            }
        return price;
    }

    ReorderRow row(const Material& material) const {
        ReorderRow result;
        result.material = material.key;
        result.there = there(material.key);
        if (const auto at = planned_.find(material.key); at != planned_.end()) result.planned = at->second;
        const Offer* offer = best_offer(material);
        if (offer != nullptr) result.lead = lead_time(shop_, offer->supplier, offer->lead_days, ledger_.as_of);
        std::int64_t left = result.there;
        for (const PlannedUse& use : result.planned) {
            left -= use.quantity;
            if (left < 0 && !result.runs_out) result.runs_out = use.date;
        }
        result.after_plans = left;
        if (result.runs_out) {
            result.order_by = *result.runs_out - Days{result.lead.safe};
            result.late = *result.order_by < ledger_.as_of;
        }
        if (const auto at = used_.find(material.key); at != used_.end()) {
            const auto batches = static_cast<std::int64_t>(at->second.batches.size());
            result.batches_a_year = static_cast<double>(batches);
            result.a_batch = at->second.quantity / batches;
            const double horizon = result.lead.safe + terms_.review_days;
            result.keep =
                batches_to_hold(result.batches_a_year * horizon / 365, terms_.chance_of_enough) * result.a_batch;
        }
        result.wanted = result.runs_out.has_value() || (result.keep > 0 && result.after_plans <= result.keep);
        if (result.wanted && offer != nullptr) result.order = order(material, *offer, result);
        return result;
    }

    // Enough for the plans and back above the reorder point; beyond that, as many packs as cost least over a year.
    std::optional<OrderLine> order(const Material& material, const Offer& offer, const ReorderRow& row) const {
        const auto pack = as_held(material, offer.pack);
        if (!pack || pack->in_base() <= 0) return std::nullopt;
        const auto size = static_cast<double>(pack->in_base());
        const double must =
            std::max<double>(1, static_cast<double>(row.keep - row.after_plans + (row.keep > 0 ? 1 : 0)));
        const int least = static_cast<int>(std::clamp(std::ceil(must / size), 1.0, double{kMostPacks}));
        const double a_year = row.batches_a_year * static_cast<double>(row.a_batch) / size;  // packs
        int most = kMostPacks;
        if (material.shelf_room)
            if (const auto room = as_held(material, *material.shelf_room))
                most = static_cast<int>(std::floor(
                    static_cast<double>(room->in_base() - std::max<std::int64_t>(0, row.after_plans)) / size));
        if (material.shelf_life_days && a_year > 0)
            most = std::min(most, static_cast<int>(a_year * *material.shelf_life_days / 365));
        most = std::max(most, least);  // a plan comes before the room on the shelf
        int best = least;
        double best_cost = 0;
        for (int packs = least; packs <= most; ++packs) {
            const double price = number(pack_price(offer, packs));
            const double cost = a_year > 0
                                    ? yearly_cost(a_year, order_cost(offer), terms_.holding_share * price, price, packs)
                                    : price * packs;
            if (packs == least || cost < best_cost - 1e-9) {
                best = packs;
                best_cost = cost;
            }
        }
        const Money each = pack_price(offer, best);
        return OrderLine{
            offer.key, best, pack->in_base() * best, Rate{each, Quantity::pieces(1)} * Quantity::pieces(best)};
    }

    // Carriage and the time an order takes.
    double order_cost(const Offer& offer) const {
        const Supplier* supplier = shop_.find(offer.supplier);
        if (supplier == nullptr) return 0;
        double cost = supplier->carriage ? number(*supplier->carriage) : 0;
        const auto hour = hourly_target(shop_, ledger_.as_of);
        if (supplier->order_time && hour) cost += number(supplier->order_time->time) / 60 * *hour;
        return cost;
    }

    void draft_orders() {
        std::map<Key<Supplier>, DraftOrder> drafts;
        for (std::size_t i = 0; i < result_.rows.size(); ++i) {
            const ReorderRow& row = result_.rows[i];
            if (!row.order) continue;
            const Offer& offer = *shop_.find(row.order->offer);
            DraftOrder& draft = drafts.try_emplace(offer.supplier).first->second;
            if (draft.rows.empty()) {
                draft.supplier = offer.supplier;
                draft.send_by = Day::max();
            }
            draft.rows.push_back(i);
            draft.goods += row.order->price;
            // What is only below its reorder point wants ordering now.
            draft.send_by = std::min(draft.send_by, std::max(row.order_by.value_or(ledger_.as_of), ledger_.as_of));
        }
        for (auto& [key, draft] : drafts) {
            const Supplier* supplier = shop_.find(key);
            if (supplier != nullptr && supplier->carriage) draft.carriage = *supplier->carriage;
            if (supplier != nullptr && supplier->carriage_free_from) {
                if (draft.goods >= *supplier->carriage_free_from)
                    draft.carriage = {};
                else
                    draft.to_free_carriage = *supplier->carriage_free_from - draft.goods;
            }
            result_.orders.push_back(std::move(draft));
        }
        std::ranges::sort(result_.orders, {}, [](const DraftOrder& each) {
            return std::pair{each.send_by, each.supplier};
        });
    }

    void lots_going_off() {
        const Day soon = ledger_.as_of + Days{terms_.soon_days};
        for (std::size_t i = 0; i < shop_.all<Lot>().size(); ++i) {
            const LotState& state = ledger_.lots[i];
            const Lot& lot = shop_.all<Lot>()[i];
            const Material* material = shop_.find(lot.material);
            if (material == nullptr || material->kind == MaterialKind::bar) continue;
            if (state.left > 0 && state.best_before && *state.best_before <= soon)
                result_.going_off.push_back(
                    {lot.key, *state.best_before, state.left, planned_from(shop_, lot.material)});
        }
        std::ranges::sort(result_.going_off, {}, [](const GoingOff& each) {
            return std::pair{each.best_before, each.lot};
        });
    }

    const Records records_;
    const Shop& shop_;
    const Ledger& ledger_;
    const ReorderTerms& terms_;
    const Holds held_ = holds(shop_, ledger_);
    std::vector<const Plan*> plans_;  // by day
    std::map<Key<Material>, std::vector<PlannedUse>> planned_;
    std::map<Key<Material>, Used> used_;
    Reorder result_;
};

}  // namespace

LeadTime lead_time(const Shop& shop, Key<Supplier> supplier, std::optional<int> offered, Day day) {
    LeadTime lead;
    const auto within_a_year = [&](std::int64_t days) {
        if (days > kLongestLead) lead.over_a_year = true;
        return static_cast<int>(std::clamp<std::int64_t>(days, 0, kLongestLead));
    };
    int sum = 0;
    for (const Delivery& delivery : shop.all<Delivery>()) {
        if (delivery.supplier != supplier || !delivery.ordered || delivery.date > day) continue;
        if (delivery.date < *delivery.ordered) continue;
        const int days = within_a_year((delivery.date - *delivery.ordered).count());
        ++lead.records;
        sum += days;
        lead.safe = std::max(lead.safe, days);
    }
    if (lead.records >= kEnoughRecords) {
        lead.usual = (sum + lead.records / 2) / lead.records;
        lead.known = true;
        return lead;
    }
    if (offered) {
        lead.usual = within_a_year(*offered);
        lead.safe = std::max(lead.safe, within_a_year(std::int64_t{lead.usual} + (lead.usual + 1) / 2));
        lead.known = true;
    } else if (lead.records > 0) {
        lead.usual = sum / lead.records;
        lead.known = true;
    }
    return lead;
}

Reorder reorder(const Shop& shop, const Ledger& ledger, const ReorderTerms& terms) {
    return Reckoning{shop, ledger, terms}.answer();
}

}  // namespace dyestead
