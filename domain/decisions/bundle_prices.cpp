#include "domain/decisions/bundle_prices.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "domain/decisions/window.h"
#include "domain/facts/lines_of.h"

namespace dyestead {
namespace {

struct Offered {
    Day newest{};
    Money price;
    int sold = 0;
    std::set<Key<Material>> kinds;
};

using ByName = std::map<std::pair<std::string, int>, Offered>;

bool counts(const Fair& fair, Day as_of) {
    if (fair.noted.value_or(as_of) > as_of) return false;
    return fair.date > as_of || months_to(as_of, 12).contains(fair.date);
}

ByName offered(const Records& records) {
    const LinesOf<FairBundle> bundles{records.shop};
    const LinesOf<FairLine> taken{records.shop};
    ByName all;
    for (const Fair& fair : records.shop.all<Fair>()) {
        if (!counts(fair, records.ledger.as_of)) continue;
        for (const FairBundle* line : bundles(fair.key)) {
            if (line->bars <= 0) continue;
            const auto [at, is_new] = all.try_emplace({line->what, line->bars});
            Offered& bundle = at->second;
            if (!is_new && fair.date < bundle.newest && line->price != bundle.price) continue;
            if (!is_new && line->price != bundle.price) bundle = {};
            bundle.newest = std::max(bundle.newest, fair.date);
            bundle.price = line->price;
            bundle.sold += std::max(0, line->sold);
            for (const FairLine* kind : taken(fair.key)) bundle.kinds.insert(kind->bar);
        }
    }
    return all;
}

void raise(std::optional<double>& most, double value) {
    most = std::max(most.value_or(value), value);
}

}  // namespace

std::vector<BundlePrice> bundle_prices(const Records& records, const Prices& prices) {
    std::vector<BundlePrice> result;
    for (const auto& [name, each] : offered(records)) {
        BundlePrice bundle;
        std::tie(bundle.what, bundle.bars) = name;
        bundle.price = number(each.price);
        bundle.sold = each.sold;
        for (const BarPrice& bar : prices.bars) {
            if (!each.kinds.contains(bar.bar) || !bar.replacement || !bar.floor) continue;
            const auto full = price_for_margin(prices.terms, bar.replacement->full(), 0);
            if (!full) continue;
            bundle.of.push_back(bar.bar);
            raise(bundle.clears_floor, *bar.floor * bundle.bars);
            raise(bundle.clears_cost, *full * bundle.bars);
            constexpr double kLessThanAnyCoin = 1e-9;
            if (bundle.a_bar() < *bar.floor - kLessThanAnyCoin)
                bundle.under_floor.push_back(bar.bar);
            else if (bundle.a_bar() < *full - kLessThanAnyCoin)
                bundle.under_cost.push_back(bar.bar);
        }
        result.push_back(std::move(bundle));
    }
    return result;
}

}  // namespace dyestead
