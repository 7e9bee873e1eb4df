#include "domain/ledger/margins.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

#include "domain/ledger/takings.h"
#include "domain/values/rate.h"
#include "domain/values/share.h"

namespace dyestead {
namespace {

// Bars of one kind, or a powder, that were sold at one fair or sale.
struct Part {
    std::uint32_t material = 0;
    std::int64_t bars = 0;
    Money by_price;
    std::int64_t powder = 0;
};

using Place = std::tuple<std::uint8_t, std::int64_t>;

Place place_of(FactRef fact) {
    return {static_cast<std::uint8_t>(fact.kind), fact.key};
}

// The fair or sale that a line belongs to.
FactRef head_of(const Shop& shop, FactRef fact) {
    if (fact.kind == kKindOf<FairLine>)
        if (const FairLine* line = shop.find(Key<FairLine>{fact.key})) return {kKindOf<Fair>, line->head.number};
    if (fact.kind == kKindOf<SaleLine>)
        if (const SaleLine* line = shop.find(Key<SaleLine>{fact.key})) return {kKindOf<Sale>, line->head.number};
    if (fact.kind == kKindOf<PowderLine>)
        if (const PowderLine* line = shop.find(Key<PowderLine>{fact.key})) return {kKindOf<Sale>, line->head.number};
    return fact;
}

class Margins {
public:
    Margins(const Shop& shop, const Ledger& ledger, Period period) : shop_{shop}, ledger_{ledger}, period_{period} {
        // First, so that the bags, which go with bars, are left for them.
        for (const PowderSoldLine& line : ledger.powder_sold)
            if (period.contains(line.day))
                parts_[place_of(head_of(shop, line.fact))].push_back({line.material, 0, line.price, line.quantity});
        for (const SoldLine& line : ledger.sold)
            if (period.contains(line.day))
                parts_[place_of(head_of(shop, line.fact))].push_back(
                    {line.material, line.bars,
                     line.price ? Rate{*line.price, Quantity::pieces(1)} * Quantity{Kind::count, line.bars} : Money{}});
        for (const ReturnedLine& line : ledger.returned)
            if (period.contains(line.day)) parts_[place_of(line.fact)].push_back({line.material, -line.bars, Money{}});
    }

    std::vector<KindMargin> answer() && {
        for (const Taking& taking : takings(shop_, ledger_, period_)) share(taking);
        for (const Movement& movement : ledger_.movements)
            if (period_.contains(movement.on())) add_cost(movement);
        std::vector<KindMargin> all;
        for (auto& [material, margin] : by_kind_) {
            margin.kind = shop_.all<Material>()[material].key;
            all.push_back(margin);
        }
        const bool rest = !none_.net.is_zero() || !none_.fees.is_zero() || !none_.made.is_zero();
        if (rest) all.push_back(none_);
        return all;
    }

private:
    void share(const Taking& taking) {
        const auto found = parts_.find(place_of(taking.fact));
        if (found == parts_.end()) {
            none_.net += taking.net();
            none_.fees += taking.fees.total();
            return;
        }
        if (taking.at == TakenAt::refunded) {
            KindMargin& kind = by_kind_[found->second.front().material];
            kind.bars += taking.bars;
            kind.net += taking.net();
            kind.fees += taking.fees.total();
            return;
        }
        // By what they should have fetched; where nothing says so, by the number of bars, or alike where all is powder.
        const bool priced =
            std::ranges::any_of(found->second, [](const Part& part) { return !part.by_price.is_zero(); });
        const auto weight = [&](const Part& part) {
            if (priced) return part.by_price.in_millionths();
            return taking.bars == 0 ? std::int64_t{1} : part.bars;
        };
        std::int64_t left = 0;
        for (const Part& part : found->second) left += weight(part);
        std::int64_t net = taking.net().in_millionths();
        std::int64_t fees = (taking.fees.share + taking.fees.payments).in_millionths();
        std::int64_t bags = taking.fees.bags.in_millionths();
        for (const Part& part : found->second) {
            KindMargin& kind = by_kind_[part.material];
            kind.bars += part.bars;
            kind.powder += part.powder;
            if (part.powder == 0) fees += std::exchange(bags, 0);
            const std::int64_t taken = weight(part);
            if (left == 0) continue;
            const std::int64_t of_net = share_of(net, taken, left);
            const std::int64_t of_fees = share_of(fees, taken, left);
            kind.net += Money::millionths(of_net);
            kind.fees += Money::millionths(of_fees);
            net -= of_net;
            fees -= of_fees;
            left -= taken;
        }
        // Nothing to share it by.
        none_.net += Money::millionths(net);
        none_.fees += Money::millionths(fees + bags);
    }

    void add_cost(const Movement& movement) {
        constexpr Account kSold = account(Boundary::sold);
        if (movement.to != kSold && movement.from != kSold) return;
        const Account other = movement.to == kSold ? movement.from : movement.to;
        KindMargin* kind = &none_;
        if (ledger_.accounts.kind(other) == AccountKind::lot) {
            if (const Material* bar = shop_.find(shop_.all<Lot>()[ledger_.accounts.index(other)].material))
                kind = &by_kind_[static_cast<std::uint32_t>(bar - shop_.all<Material>().data())];
        } else if (movement.quantity != 0) {
            kind = &by_kind_[ledger_.sources[movement.source].material];
        }
        if (movement.to == kSold) {
            kind->made += movement.cost;
        } else {
            kind->made -= movement.cost;
        }
    }

    const Shop& shop_;
    const Ledger& ledger_;
    Period period_;
    std::map<Place, std::vector<Part>> parts_;
    std::map<std::uint32_t, KindMargin> by_kind_;
    KindMargin none_;
};

}  // namespace

std::vector<KindMargin> kind_margins(const Shop& shop, const Ledger& ledger, Period period) {
    return Margins{shop, ledger, period}.answer();
}

}  // namespace dyestead
