#include "domain/ledger/follow.h"

#include <algorithm>
#include <iterator>

#include "domain/values/cost_parts.h"

namespace dyestead {
namespace {

// One leaf for each record: what it brought in several times is added up.
class Leaves {
public:
    void add(FactRef fact, Boundary through, const Cost& cost) {
        const auto at = std::ranges::find_if(
            leaves_, [&](const Leaf& leaf) { return leaf.fact == fact && leaf.through == through; });
        if (at != leaves_.end())
            at->cost += cost;
        else if (!cost.is_zero())
            leaves_.push_back({fact, through, cost});
    }
    std::vector<Leaf> take() && { return std::move(leaves_); }

private:
    std::vector<Leaf> leaves_;
};

class Follow {
public:
    Follow(const Shop& shop, const Ledger& ledger, Period period) : shop_{shop}, ledger_{ledger}, period_{period} {}

    std::vector<Leaf> operator()(Term term) const {
        const bool at_a_day = term == Term::stock || term == Term::in_progress;
        return trace(shop_, ledger_, term, at_a_day ? Period::up_to(period_.last) : period_);
    }

    std::vector<Leaf> operator()(StockKind kind) const {
        std::vector<bool> accounts(ledger_.accounts.end);
        for (Account each = kBoundaries; each < ledger_.accounts.end; ++each)
            accounts[each] = stock_kind(shop_, ledger_, each, period_.last) == kind;
        return trace(ledger_, accounts, Period::up_to(period_.last));
    }

    std::vector<Leaf> operator()(LossKind kind) const {
        const auto counts = [&](const Movement& movement) {
            if (loss_kind(shop_, ledger_, movement) != kind) return 0;
            const bool out = term_of(static_cast<Boundary>(movement.to)) == Term::lost ||
                             term_of(static_cast<Boundary>(movement.to)) == Term::given;
            return movement.to < kBoundaries && out ? 1 : -1;
        };
        return trace(ledger_, counts, period_);
    }

    std::vector<Leaf> operator()(SellingPart part) const {
        Leaves leaves;
        const auto bill = [&](const auto& fact, Money money) {
            leaves.add(ref(fact), Boundary::bills, cost_of_overhead(money));
        };
        switch (part) {
            case SellingPart::stalls:
            case SellingPart::travel:
                for (const Fair& fair : shop_.all<Fair>())
                    if (period_.contains(fair.date))
                        bill(fair, part == SellingPart::stalls ? fair.fee : fair.travel.value_or(Money{}));
                break;
            case SellingPart::postage:
                for (const Sale& sale : shop_.all<Sale>())
                    if (period_.contains(sale.date)) bill(sale, sale.postage.value_or(Money{}));
                break;
            case SellingPart::payment_fees:
                for (const Taking& taking : takings(shop_, ledger_, period_))
                    leaves.add(taking.fact, Boundary::bills, cost_of_overhead(taking.fees.total()));
                break;
            case SellingPart::people: {
                std::vector<Leaf> all = (*this)(Boundary::selling);
                std::erase_if(all, [](const Leaf& leaf) { return leaf.through == Boundary::bills; });
                return all;
            }
        }
        return std::move(leaves).take();
    }

    std::vector<Leaf> operator()(Boundary boundary) const {
        std::vector<bool> accounts(ledger_.accounts.end);
        accounts[account(boundary)] = true;
        std::vector<Leaf> leaves = trace(ledger_, accounts, period_);
        for (const Leaf& leaf : accrued(shop_, period_))
            if (leaf.through == boundary) leaves.push_back(leaf);
        return leaves;
    }

    std::vector<Leaf> operator()(Stage stage) const {
        Leaves leaves;
        for (const HourLine& line : hour_lines(shop_, ledger_, period_)) {
            if (line.stage != stage) continue;
            Cost cost;
            cost.labour = line.labour;
            cost.hands_on = line.time;
            leaves.add(line.fact, Boundary::hours, cost);
        }
        return std::move(leaves).take();
    }

    std::vector<Leaf> operator()(EarnedPart part) const { return follow(shop_, ledger_, part, period_); }
    std::vector<Leaf> operator()(TakenAt at) const { return money(at, Boundary::sold); }
    std::vector<Leaf> operator()(PaidFor what) const { return money(what, through(what)); }

private:
    std::vector<Leaf> money(std::variant<TakenAt, PaidFor> what, Boundary through) const {
        Leaves leaves;
        for (const MoneyLine& line : money_lines(shop_, ledger_, period_))
            if (line.what == what) leaves.add(line.fact, through, cost_of_materials(line.amount));
        return std::move(leaves).take();
    }

    static Boundary through(PaidFor what) {
        switch (what) {
            case PaidFor::goods:
            case PaidFor::carriage: return Boundary::delivered;
            case PaidFor::wages: return Boundary::wages;
            case PaidFor::energy: return Boundary::energy;
            case PaidFor::stalls:
            case PaidFor::travel:
            case PaidFor::postage:
            case PaidFor::payment_fees:
            case PaidFor::bills: return Boundary::bills;
        }
        return Boundary::bills;
    }

    const Shop& shop_;
    const Ledger& ledger_;
    Period period_;
};

}  // namespace

std::vector<Leaf> follow(const Shop& shop, const Ledger& ledger, const StatementLine& line, Period period) {
    return std::visit(Follow{shop, ledger, period}, line);
}

}  // namespace dyestead
