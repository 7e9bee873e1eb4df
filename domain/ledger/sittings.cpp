#include "domain/ledger/sittings.h"

#include <algorithm>
#include <map>

#include "domain/facts/lines_of.h"
#include "domain/facts/material_amount.h"

namespace dyestead {
namespace {

// Shows `visit` what a line of a sitting may have been at; one of them is named.
template <class Visit>
void for_each_target(const SittingAt& line, const Visit& visit) {
    visit(line.tending);
    visit(line.harvest);
    visit(line.vat);
    visit(line.drying);
    visit(line.batch);
    visit(line.cut);
    visit(line.wrapping);
    visit(line.fair);
    visit(line.sale);
}

struct Target {
    FactRef fact;
    std::optional<Day> day;  // blank: not on record
    std::int64_t size = 0;   // within its kind
};

std::int64_t base_of(const Amount& amount, Kind kind) {
    return amount.quantity.kind() == kind ? std::max<std::int64_t>(0, amount.quantity.in_base()) : 0;
}

class Sizes {
public:
    explicit Sizes(const Shop& shop) : shop_{shop}, steeped_{shop}, sold_{shop}, powder_{shop} {}

    Target target(const SittingAt& line) const {
        Target target{worked_at(line), {}, 0};
        const auto is = [&](const auto& key) {
            if (!key || target.day) return;
            const auto* fact = shop_.find(*key);
            if (fact == nullptr || ref(*fact) != target.fact) return;
            target.day = fact->date;
            target.size = size(*fact);
        };
        for_each_target(line, is);
        return target;
    }

private:
    std::int64_t size(const Tending& fact) const {
        const Planting* planting = shop_.find(fact.planting);
        if (planting == nullptr) return 0;
        if (planting->area) return base_of(*planting->area, Kind::area);
        const Bed* bed = shop_.find(planting->bed);
        return bed == nullptr ? 0 : base_of(bed->area, Kind::area);
    }
    std::int64_t size(const Harvest& fact) const { return base_of(fact.amount, Kind::mass); }
    std::int64_t size(const Vat& fact) const {
        Wide sum = 0;
        for (const VatUse* use : steeped_(fact.key)) {
            const Material* material = shop_.find(use->material);
            if (material != nullptr && material->kind == MaterialKind::harvest) sum += base_of(use->amount, Kind::mass);
        }
        return narrow(sum);
    }
    static std::int64_t size(const Drying& fact) { return fact.amount ? base_of(*fact.amount, Kind::mass) : 0; }
    static std::int64_t size(const Batch& fact) { return std::max(0, fact.loaves); }
    static std::int64_t size(const Cut& fact) { return std::max(0, fact.bars); }
    static std::int64_t size(const Wrapping& fact) { return std::max(0, fact.bars); }
    static std::int64_t size(const Fair&) { return 1; }
    // Each lot of powder is packed like one more bar.
    std::int64_t size(const Sale& fact) const {
        auto sum = static_cast<std::int64_t>(powder_(fact.key).size());
        for (const SaleLine* line : sold_(fact.key)) sum += std::max(0, line->bars);
        return sum;
    }

    const Shop& shop_;
    LinesOf<VatUse> steeped_;
    LinesOf<SaleLine> sold_;
    LinesOf<PowderLine> powder_;
};

// Shares the time over the targets of one kind, by size; equally where none has any.
void share(Minutes time, std::vector<SittingShare>& shares, const std::vector<std::int64_t>& sizes) {
    Wide total = 0;
    for (const std::int64_t size : sizes) total += size;
    const bool equally = total == 0;
    if (equally) total = static_cast<Wide>(sizes.size());
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const std::int64_t size = equally ? 1 : sizes[i];
        // The last of those with a size takes all that is left.
        const std::int64_t part = size == 0 ? 0 : narrow(static_cast<Wide>(time.in_millionths()) * size / total);
        shares[i].time = Minutes::millionths(part);
        time -= shares[i].time;
        total -= size;
    }
}

}  // namespace

FactRef worked_at(const SittingAt& line) {
    FactRef at;
    const auto is = [&]<class Of>(const std::optional<Key<Of>>& key) {
        if (key && at.key == 0) at = {kKindOf<Of>, key->number};
    };
    for_each_target(line, is);
    return at;
}

std::vector<SharedSitting> shared_sittings(const Shop& shop, Day as_of) {
    struct OfKind {
        std::vector<SittingShare> shares;
        std::vector<std::int64_t> sizes;
    };
    std::vector<SharedSitting> all;
    if (shop.all<Sitting>().empty()) return all;
    const Sizes sizes{shop};
    const LinesOf<SittingAt> lines{shop};
    for (const Sitting& sitting : shop.all<Sitting>()) {
        if (sitting.date > as_of) continue;
        SharedSitting& shared = all.emplace_back(SharedSitting{&sitting, {}, {}});
        std::map<FactKind, OfKind> kinds;
        for (const SittingAt* line : lines(sitting.key)) {
            const Target target = sizes.target(*line);
            if (!target.day || *target.day > sitting.date) {
                shared.left_out.push_back(line);
                continue;
            }
            OfKind& kind = kinds[target.fact.kind];
            kind.shares.push_back({&sitting, line, target.fact, *target.day, {}});
            kind.sizes.push_back(target.size);
        }
        Minutes rest = sitting.time.time;
        auto left = static_cast<std::int64_t>(kinds.size());
        for (auto& [kind, of_kind] : kinds) {
            const Minutes time = Minutes::millionths(share_of(rest.in_millionths(), 1, left--));
            rest -= time;
            share(time, of_kind.shares, of_kind.sizes);
            shared.shares.insert(shared.shares.end(), of_kind.shares.begin(), of_kind.shares.end());
        }
    }
    return all;
}

}  // namespace dyestead
