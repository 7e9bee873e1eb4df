#include <algorithm>

#include "domain/facts/material_amount.h"
#include "domain/ledger/bill.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/value.h"
#include "domain/text/amounts.h"

namespace dyestead {
namespace {

LossOf loss_of(MaterialKind kind) {
    switch (kind) {
        case MaterialKind::raw: return LossOf::raw;
        case MaterialKind::seed: return LossOf::seed;
        case MaterialKind::harvest: return LossOf::harvest;
        case MaterialKind::pigment: return LossOf::pigment;
        case MaterialKind::bar: return LossOf::bar;
    }
    return LossOf::raw;
}

// Milligrams of a line, for sharing carriage by weight; 0 for what is counted.
std::int64_t weight(const Shop& shop, const DeliveryLine& line) {
    if (line.amount.quantity.kind() == Kind::mass) return line.amount.quantity.in_base();
    const Lot* lot = shop.find(line.lot);
    const Material* material = lot == nullptr ? nullptr : shop.find(lot->material);
    if (material == nullptr || line.amount.quantity.kind() != Kind::volume || !material->density) return 0;
    return times(line.amount.quantity.in_base(), *material->density);
}

bool is_nothing(const std::vector<std::int64_t>& weights) {
    return std::ranges::all_of(weights, [](std::int64_t weight) { return weight == 0; });
}

// The parts of a sum by weight, equally where nothing weighs anything. They add up to it.
std::vector<Money> shared(Money sum, std::vector<std::int64_t> weights) {
    if (is_nothing(weights)) std::ranges::fill(weights, 1);
    Wide total = 0;
    for (const std::int64_t weight : weights) total += weight;
    std::int64_t rest = sum.in_millionths();
    std::vector<Money> parts;
    for (const std::int64_t weight : weights) {
        const std::int64_t part = total == 0 ? 0 : narrow(static_cast<Wide>(rest) * weight / total);
        rest -= part;
        total -= weight;
        parts.push_back(Money::millionths(part));
    }
    return parts;
}

// What each line bears of what is shared; nothing at all where nothing is.
std::vector<Money> shares_of(const Shop& shop, const Delivery& fact, const Bill& bill,
                             std::span<const DeliveryLine* const> lines) {
    if (bill.shared().is_zero()) return {};
    std::vector<std::int64_t> weights;
    if (fact.share_by == ShareBy::value)
        for (const BillLine& line : bill.lines) weights.push_back(line.price.in_millionths());
    if (is_nothing(weights)) {
        weights.clear();
        for (const DeliveryLine* line : lines) weights.push_back(weight(shop, *line));
    }
    return shared(bill.shared(), weights);
}

}  // namespace

CupboardBook::CupboardBook(Bookkeeper& books)
    : books_{books}, found_(books.shop().all<Lot>().size()), usual_lost_(books.shop().all<Lot>().size()) {}

void CupboardBook::post(const AlreadyHere& fact) {
    const StockLine* line = books_.line_of(ref(fact));
    if (line == nullptr) return;
    Cost cost = books_.own_time(fact.who, fact.time, ref(fact));
    cost.materials = fact.cost.value_or(Money{});
    if (line->quantity == 0) {
        books_.find(FindingCode::nothing_in_it, ref(fact));
        return books_.enter(Boundary::already_here, account(Boundary::lost), ref(fact), cost);
    }
    books_.receive(*line, account(Boundary::already_here), cost);
}

// Postage, duty and discounts belong to the goods (IAS 2, paragraph 11): shared by value or, where the
// maker chooses or every line is free, by weight; failing that, equally. A tax is each line's own.
void CupboardBook::post(const Delivery& fact) {
    const auto lines = books_.shop_lines().delivered(fact);
    const Bill bill = bill_of(books_.shop(), fact, lines);
    if (bill.rate_unknown) books_.find(FindingCode::exchange_rate_unknown, ref(fact), {*fact.currency});
    for (const FactRef each : bill.too_large) books_.find(FindingCode::too_large, each);

    const std::vector<Money> shares = shares_of(books_.shop(), fact, bill, lines);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const FactRef about = ref(*lines[i]);
        Cost cost;
        cost.materials = bill.lines[i].price + bill.lines[i].tax;
        if (!shares.empty()) cost.materials += shares[i];
        if (cost.materials < Money{}) {
            books_.find(FindingCode::discount_more_than_goods, about);
            books_.enter(Boundary::delivered, account(Boundary::corrections), about, cost);
            cost = {};
        }
        const StockLine* line = books_.line_of(about);
        if (line != nullptr && line->quantity > 0) {
            books_.receive(*line, account(Boundary::delivered), cost);
        } else {
            // Paid for, and nothing to hold it: the money is gone all the same.
            if (line != nullptr) books_.find(FindingCode::nothing_in_it, about);
            books_.enter(Boundary::delivered, account(Boundary::lost), about, cost);
        }
    }
    if (lines.empty() && !bill.shared().is_zero()) {
        books_.find(FindingCode::nothing_in_it, ref(fact));
        Cost cost;
        cost.materials = bill.shared();
        books_.enter(Boundary::delivered, account(Boundary::lost), ref(fact), cost);
    }
}

// Follows the goods: what is still here of each line takes its part, the period the rest.
void CupboardBook::post(const CostCorrection& fact) {
    const Delivery* delivery = books_.shop().find(fact.delivery);
    const auto lines = books_.shop_lines().delivered(fact.delivery);
    Cost rest;
    rest.materials = signed_amount(fact);
    if (delivery == nullptr || lines.empty()) {
        books_.find(FindingCode::correction_of_nothing, ref(fact), {delivery == nullptr ? "" : delivery->code});
    } else if (delivery->date > fact.date) {
        books_.find(FindingCode::correction_before_delivery, ref(fact), {delivery->code});
    } else {
        std::vector<std::int64_t> prices;
        for (const DeliveryLine* line : lines) prices.push_back(line->price.in_millionths());
        const std::vector<Money> parts = shared(rest.materials, prices);
        for (std::size_t i = 0; i < lines.size(); ++i) rest.materials -= add_to_goods(*lines[i], parts[i], ref(fact));
    }
    books_.enter(Boundary::delivered, account(Boundary::corrections), ref(fact), rest);
}

// How much of the part went to the goods that are still here. They are credited no more than they cost.
Money CupboardBook::add_to_goods(const DeliveryLine& line, Money part, FactRef fact) {
    const auto lot = books_.place(line.lot);
    if (!lot) return {};
    const auto material = books_.place(books_.shop().all<Lot>()[*lot].material);
    const LotState& state = books_.ledger().lots[*lot];
    if (!material || state.received == 0) return {};
    Cost cost;
    cost.materials = Money::millionths(share_of(part.in_millionths(), state.left, state.received));
    const Money held = books_.balance(books_.holder(*material, *lot).account).materials;
    if (cost.materials < -held) {
        books_.find(FindingCode::credit_more_than_cost, fact, {books_.shop().all<Material>()[*material].name});
        cost.materials = -held;
    }
    books_.add_cost(Boundary::delivered, *material, *lot, fact, cost);
    return cost.materials;
}

void CupboardBook::post(const Loss& fact) {
    if (const StockLine* line = books_.line_of(ref(fact))) lose(*line, fact.reason);
}

// Usual losses stay in the cost of what is left; the excess leaves at the unit cost after the usual
// part is taken out (IAS 2, paragraph 16: abnormal amounts are expensed).
void CupboardBook::lose(const StockLine& line, LossReason reason) {
    if (is_gift(reason)) return books_.take(line, account(Boundary::given));
    const Material& material = books_.shop().all<Material>()[line.material];
    const Ratio rate = normal_loss_in_force(books_.shop(), loss_of(material.kind), books_.day());
    if (rate.is_zero()) return books_.take(line, account(Boundary::lost));

    const std::uint32_t from = books_.source(line.fact, line.material, line.lot != kNoLot);
    for (const Draw& draw : books_.draws(line)) {
        if (draw.lot == kNoLot) {
            books_.take_short(line, draw, from, account(Boundary::lost));
            continue;
        }
        const std::int64_t received = books_.ledger().lots[draw.lot].received - found_[draw.lot];
        const std::int64_t allowed = std::max<std::int64_t>(0, times(received, rate) - usual_lost_[draw.lot]);
        const std::int64_t usual = std::min(draw.quantity, allowed);
        const std::int64_t excess = draw.quantity - usual;
        usual_lost_[draw.lot] += usual;
        const Bookkeeper::Holder held = books_.holder(line.material, draw.lot);
        Cost cost;
        if (excess > 0) cost = share_of(books_.balance(held.account), excess, held.quantity - usual);
        // Nothing is left to carry the cost.
        if (draw.quantity == held.quantity) cost = books_.balance(held.account);
        books_.leave(line.material, draw.lot, account(Boundary::lost), from, draw.quantity, cost);
    }
}

// What is there and was not in the books is a loss of less than nothing, at the latest goods' cost.
void CupboardBook::post(const Count&) {
    for (const StockLine& line : books_.lines()) {
        if (line.left_out) continue;
        const CountLine* counted = books_.shop().find(Key<CountLine>{line.fact.key});
        if (!line.comes_in) {
            lose(line, counted->reason.value_or(LossReason::other));
            continue;
        }
        found_[line.lot] += line.quantity;
        books_.receive(line, account(Boundary::lost), books_.latest_cost(line, line.quantity));
    }
}

void CupboardBook::post(const CostRule& fact) {
    const Shop& shop = books_.shop();
    const Day day = takes_effect(shop, fact);
    if (books_.day() == fact.from) {
        const Material* material = fact.material ? shop.find(*fact.material) : nullptr;
        if (material != nullptr && fact.cost_by == CostBy::average && !can_be_averaged(shop, *material))
            books_.find(FindingCode::no_average_for, ref(fact), {material->name});
        if (day != fact.from) books_.find(FindingCode::cost_rule_waits, ref(fact), {print(day)});
    }
    if (books_.day() != day) return;
    std::uint32_t index = 0;
    for (const Material& material : shop.all<Material>())
        books_.cost_by(index++, cost_rule_in_force(shop, material, day), ref(fact));
}

}  // namespace dyestead
