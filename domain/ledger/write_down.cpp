#include "domain/ledger/write_down.h"

#include <algorithm>
#include <map>
#include <set>

#include "domain/ledger/in_force.h"
#include "domain/ledger/latest_price.h"
#include "domain/ledger/planned_from.h"
#include "domain/ledger/takings.h"

namespace dyestead {
namespace {

constexpr int kMonthsOfFees = 12;

class Valuer {
public:
    Valuer(const Shop& shop, const Ledger& ledger, Day day)
        : shop_{shop}, ledger_{ledger}, day_{day}, lots_{lot_quantities(shop, ledger, day)} {
        for (const Taking& each : takings(shop, ledger, {months_before(day, kMonthsOfFees) + Days{1}, day})) {
            fees_ += each.fees.total() - each.of_powder(each.fees).total();  // told for each bar
            bars_sold_ += each.bars;
        }
        for (const Wrapping& each : shop.all<Wrapping>())
            if (each.date <= day) wrapped_[each.lot] += std::int64_t{std::max(each.bars, 0)} * 1'000;
    }

    WriteDown value() {
        find_bars_under_cost();
        WriteDown result;
        for (const StockItem& item : stock_value(shop_, ledger_, day_).items) {
            switch (item.kind) {
                case StockKind::raw:
                case StockKind::pigment: result.items.push_back(material(item)); break;
                case StockKind::bars_ready:
                case StockKind::bars_in_cure: result.items.push_back(bars(item)); break;
                case StockKind::bars_out: result.items.push_back(bars_out(item)); break;
                case StockKind::seed:
                case StockKind::harvest:
                case StockKind::plantings:
                case StockKind::vats:
                case StockKind::batches: break;
            }
        }
        return result;
    }

private:
    const Lot& lot_of(const StockItem& item) const { return shop_.all<Lot>()[ledger_.accounts.index(item.account)]; }

    Valued start(const StockItem& item, WorthBy by) const {
        Valued valued;
        valued.item = item;
        valued.by = by;
        valued.cost = item.cost.cash();
        return valued;
    }

    Valued bars(const StockItem& item) const {
        Valued valued = start(item, WorthBy::fetches);
        const std::uint32_t lot = ledger_.accounts.index(item.account);
        const auto price = net_price(lot_of(item).material);
        if (!price) {
            valued.by = WorthBy::not_known;
            return valued;
        }
        fill(valued, lot, item.quantity, *price);
        return valued;
    }

    // At a shop: what is asked there, less the tax in it and what the shop keeps.
    Valued bars_out(const StockItem& item) const {
        Valued valued = start(item, WorthBy::fetches);
        const OutAtShop& out = shop_.all<OutAtShop>()[ledger_.accounts.index(item.account)];
        const Money net = out.price - tax_inside(out.price, sales_tax_in_force(shop_, day_));
        valued.net_price = Rate{net, Quantity::pieces(1)} * Quantity{Kind::count, item.quantity};
        valued.fees = fees_of(out, item.quantity).total();
        valued.worth = std::max(Money{}, valued.net_price - valued.fees);
        return valued;
    }

    void fill(Valued& valued, std::uint32_t lot, std::int64_t quantity, Money price) const {
        const Quantity count{Kind::count, quantity};
        valued.net_price = Rate{price, Quantity::pieces(1)} * count;
        valued.wrapping_to_come = wrapping_to_come(lot, quantity);
        valued.fees = fees(price, count);
        valued.worth = std::max(Money{}, valued.net_price - valued.wrapping_to_come - valued.fees);
    }

    // Of one bar: the price list, else what one was last sold for; less the sales tax in it.
    std::optional<Money> net_price(Key<Material> bar) const {
        std::optional<Money> price = shelf_price_in_force(shop_, bar, day_);
        if (!price)
            for (const SoldLine& line : ledger_.sold)
                if (line.day <= day_ && line.price && shop_.all<Material>()[line.material].key == bar)
                    price = line.price;
        if (!price) return std::nullopt;
        return *price - tax_inside(*price, sales_tax_in_force(shop_, day_));
    }

    // As the last year's bars had them, each the same; where none was sold, as if each were paid for by card.
    Money fees(Money price, Quantity count) const {
        if (bars_sold_ > 0) return Rate{fees_, Quantity{Kind::count, bars_sold_}} * count;
        Sale sale;
        sale.date = day_;
        sale.channel = Channel::card;
        return Rate{fees_of(shop_, sale, price, 1'000).total(), Quantity::pieces(1)} * count;
    }

    // The bars of a lot that left it are taken to have been wrapped first.
    Money wrapping_to_come(std::uint32_t lot, std::int64_t quantity) const {
        const Lot& of = shop_.all<Lot>()[lot];
        const auto done = wrapped_.find(of.key);
        const std::int64_t bare = lots_[lot].received - (done == wrapped_.end() ? 0 : done->second);
        const std::int64_t bars = std::clamp<std::int64_t>(bare, 0, std::max<std::int64_t>(quantity, 0));
        if (bars == 0) return {};
        Money sum;
        for (const RecipeWrapping* line : wrapping_of(shop_, of.material)) {
            const auto price = latest_price(shop_, line->material, day_);
            if (!price || line->per_bar.quantity.kind() != price->per.kind()) continue;
            const Rate per_bar{*price * line->per_bar.quantity, Quantity::pieces(1)};
            sum += per_bar * Quantity{Kind::count, bars};
        }
        return sum;
    }

    // A kind of bar is under cost when the last lot of it cost more than it should fetch.
    void find_bars_under_cost() {
        std::map<Key<Material>, std::uint32_t> last;  // the latest lot of each kind of bar
        for (std::uint32_t lot = 0; lot < lots_.size(); ++lot) {
            const Key<Material> key = shop_.all<Lot>()[lot].material;
            const Material* material = shop_.find(key);
            if (material == nullptr || material->kind != MaterialKind::bar || lots_[lot].received <= 0) continue;
            const auto [at, is_new] = last.try_emplace(key, lot);
            if (!is_new && ledger_.lots[lot].made >= ledger_.lots[at->second].made) at->second = lot;
        }
        std::vector<Cost> cost_in(ledger_.lots.size());
        for (const Movement& movement : ledger_.movements) {
            if (movement.on() > day_) break;
            if (ledger_.accounts.kind(movement.to) == AccountKind::lot)
                cost_in[ledger_.accounts.index(movement.to)] += movement.cost;
        }
        for (const auto& [bar, lot] : last) {
            const auto price = net_price(bar);
            if (!price) continue;
            Valued valued;
            fill(valued, lot, lots_[lot].received, *price);
            under_cost_[bar] = cost_in[lot].cash() > *valued.worth;
        }
    }

    Valued material(const StockItem& item) const {
        Valued valued = start(item, WorthBy::cost);
        const Lot& lot = lot_of(item);
        int known = 0;
        int under = 0;
        for (const Key<Material> bar : planned_from(shop_, lot.material)) {
            const auto found = under_cost_.find(bar);
            if (found == under_cost_.end()) continue;
            ++known;
            if (found->second) ++under;
        }
        if (known == 0 || under < known) return valued;
        const auto price = item.kind == StockKind::raw ? latest_price(shop_, lot.material, day_) : same_shade(lot);
        if (!price || item.quantity < 0) {
            valued.by = WorthBy::not_known;
            return valued;
        }
        valued.by = WorthBy::replacement;
        valued.worth = *price * Quantity{price->per.kind(), item.quantity};
        return valued;
    }

    // What the bought match costs for the shade of so much of this powder; nothing without a test.
    std::optional<Rate> same_shade(const Lot& lot) const {
        const ShadeTest* test = nullptr;
        for (const ShadeTest& each : shop_.all<ShadeTest>())
            if (each.lot == lot.key && each.date <= day_ && each.needed_for_same && !each.needed_for_same->is_zero() &&
                (test == nullptr || each.date >= test->date))
                test = &each;
        if (test == nullptr) return std::nullopt;
        const auto bought = latest_price(shop_, test->against, day_);
        if (!bought) return std::nullopt;
        // 3 needed for the shade of one of the match: so much money buys the shade of three times as much.
        return Rate{bought->amount, Quantity{bought->per.kind(), times(bought->per.in_base(), *test->needed_for_same)}};
    }

    const Shop& shop_;
    const Ledger& ledger_;
    Day day_;
    std::vector<LotQuantity> lots_;
    Money fees_;
    std::int64_t bars_sold_ = 0;  // thousandths
    std::map<Key<Lot>, std::int64_t> wrapped_;
    std::map<Key<Material>, bool> under_cost_;  // by kind of bar, where it can be said
};

}  // namespace

Money WriteDown::total() const {
    Money sum;
    for (const Valued& each : items) sum += each.write_down();
    return sum;
}

Money WriteDown::of(StockKind kind) const {
    Money sum;
    for (const Valued& each : items)
        if (each.item.kind == kind) sum += each.write_down();
    return sum;
}

WriteDown write_down(const Shop& shop, const Ledger& ledger, Day day) {
    return Valuer{shop, ledger, day}.value();
}

}  // namespace dyestead
