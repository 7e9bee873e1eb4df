#include "domain/ledger/takings.h"

#include <algorithm>
#include <map>

#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

struct Sold {
    std::int64_t bars = 0;
    Money by_price;
    std::optional<Money> for_powder{};
};

void count(Sold& sold, const SoldLine& line) {
    sold.bars += line.bars;
    if (line.price) sold.by_price += Rate{*line.price, Quantity::pieces(1)} * Quantity{Kind::count, line.bars};
}

TakenAt taken_at(Channel channel) {
    switch (channel) {
        case Channel::cash: return TakenAt::cash;
        case Channel::card: return TakenAt::card;
        case Channel::online: return TakenAt::online;
        case Channel::wholesale: return TakenAt::wholesale;
        case Channel::other: return TakenAt::other;
    }
    return TakenAt::other;
}

// The powder's part in all, as a part and the whole.
std::pair<std::int64_t, std::int64_t> part_of_powder(const Taking& taking) {
    if (!taking.for_powder) return {0, 1};
    const Money asked = taking.by_price + *taking.for_powder;
    if (asked.is_zero()) return {taking.bars == 0 ? 1 : 0, 1};
    return {taking.for_powder->in_millionths(), asked.in_millionths()};
}

}  // namespace

Cost Taking::of_powder(const Cost& of_all) const {
    const auto [part, whole] = part_of_powder(*this);
    return share_of(of_all, part, whole);
}

Money Taking::of_powder(Money of_all) const {
    const auto [part, whole] = part_of_powder(*this);
    return Money::millionths(share_of(of_all.in_millionths(), part, whole));
}

Fees Taking::of_powder(const Fees& of_all) const {
    return {of_powder(of_all.share), of_powder(of_all.payments), Money{}};
}

Money tax_inside(Money gross, Ratio rate) {
    return Money::millionths(scaled(gross.in_millionths(), rate.top, static_cast<Wide>(rate.bottom) + rate.top));
}

std::vector<Taking> takings(const Shop& shop, const Ledger& ledger, Period period) {
    std::map<Key<Fair>, Sold> at_fairs;
    std::map<Key<Sale>, Sold> by_sale;
    std::map<Key<OutSettled>, Sold> at_shops;
    for (const SoldLine& line : ledger.sold) {
        if (!period.contains(line.day)) continue;
        if (const FairLine* fact = shop.find(Key<FairLine>{line.fact.key}); line.fact.kind == kKindOf<FairLine> && fact)
            count(at_fairs[fact->head], line);
        if (const SaleLine* fact = shop.find(Key<SaleLine>{line.fact.key}); line.fact.kind == kKindOf<SaleLine> && fact)
            count(by_sale[fact->head], line);
        if (line.fact.kind == kKindOf<OutSettled>) count(at_shops[Key<OutSettled>{line.fact.key}], line);
    }
    for (const PowderSoldLine& line : ledger.powder_sold) {
        if (!period.contains(line.day)) continue;
        Sold& sold = by_sale[shop.find(Key<PowderLine>{line.fact.key})->head];
        sold.for_powder = sold.for_powder.value_or(Money{}) + line.price;
    }
    std::vector<Taking> all;
    const auto add = [&](Taking taking, const Sold& sold) {
        taking.bars = sold.bars;
        taking.by_price = sold.by_price;
        taking.for_powder = sold.for_powder;
        taking.tax = tax_inside(taking.gross, sales_tax_in_force(shop, taking.day));
        all.push_back(taking);
    };
    for (const Fair& fair : shop.all<Fair>()) {
        if (!period.contains(fair.date) || fair.date > ledger.as_of) continue;
        const Sold& sold = at_fairs[fair.key];
        Taking taking;
        taking.fact = ref(fair);
        taking.day = fair.date;
        taking.at = fair.cash_in_tin ? TakenAt::fair_cash : TakenAt::fair_not_counted;
        taking.let_off = let_off(shop, fair, sold.by_price, sold.bars);
        taking.cash = fair.cash_in_tin ? cash_takings(fair) : sold.by_price - taking.let_off;
        taking.card = fair.cash_in_tin ? card_takings(fair) : Money{};
        taking.gross = taking.cash + taking.card;
        taking.fees = fees_of(shop, fair, sold.bars);
        add(taking, sold);
    }
    for (const Sale& sale : shop.all<Sale>()) {
        if (!period.contains(sale.date) || sale.date > ledger.as_of) continue;
        const Sold& sold = by_sale[sale.key];
        Taking taking;
        taking.fact = ref(sale);
        taking.day = sale.date;
        taking.at = taken_at(sale.channel);
        taking.postage = sale.postage_paid.value_or(Money{});
        taking.gross = sold.by_price + sold.for_powder.value_or(Money{}) + taking.postage;
        taking.fees = fees_of(shop, sale, taking.gross, sold.bars);
        add(taking, sold);
    }
    for (const auto& [key, sold] : at_shops) {
        const OutSettled& settled = *shop.find(key);
        Taking taking;
        taking.fact = ref(settled);
        taking.day = settled.date;
        taking.at = TakenAt::at_shop;
        taking.gross = sold.by_price;
        if (const OutAtShop* out = shop.find(settled.out)) taking.fees = fees_of(*out, sold.bars);
        add(taking, sold);
    }
    for (const ReturnedLine& line : ledger.returned) {
        if (!period.contains(line.day)) continue;
        Taking taking;
        taking.fact = line.fact;
        taking.day = line.day;
        taking.at = TakenAt::refunded;
        taking.gross = -line.refund;
        add(taking, {-line.bars, -line.refund});
    }
    std::ranges::stable_sort(all, {}, &Taking::day);
    return all;
}

}  // namespace dyestead
