#include <algorithm>

#include "domain/facts/material_amount.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/value.h"

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

}  // namespace

CupboardBook::CupboardBook(Bookkeeper& books)
    : books_{books}, lines_{books.shop()}, usual_lost_(books.shop().all<Lot>().size()) {}

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

// Postage and delivery belong to the goods (IAS 2, paragraph 11): shared by value or, where the
// maker chooses or every line is free, by weight; failing that, equally.
void CupboardBook::post(const Delivery& fact) {
    const auto lines = lines_(fact.key);
    std::vector<std::int64_t> weights;
    Wide total = 0;
    const auto weigh = [&](auto weight_of) {
        weights.clear();
        total = 0;
        for (const DeliveryLine* line : lines) {
            weights.push_back(weight_of(*line));
            total += weights.back();
        }
    };
    if (fact.share_by == ShareBy::value) weigh([](const DeliveryLine& line) { return line.price.in_millionths(); });
    if (total == 0) weigh([&](const DeliveryLine& line) { return weight(books_.shop(), line); });
    if (total == 0) weigh([](const DeliveryLine&) { return std::int64_t{1}; });

    std::int64_t rest = fact.carriage.in_millionths();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const std::int64_t carriage = total == 0 ? 0 : narrow(static_cast<Wide>(rest) * weights[i] / total);
        rest -= carriage;
        total -= weights[i];
        Cost cost;
        cost.materials = lines[i]->price + Money::millionths(carriage);
        const FactRef about = ref(*lines[i]);
        const StockLine* line = books_.line_of(about);
        if (line != nullptr && line->quantity > 0) {
            books_.receive(*line, account(Boundary::delivered), cost);
        } else {
            // Paid for, and nothing to hold it: the money is gone all the same.
            if (line != nullptr) books_.find(FindingCode::nothing_in_it, about);
            books_.enter(Boundary::delivered, account(Boundary::lost), about, cost);
        }
    }
    if (lines.empty() && rest != 0) {
        books_.find(FindingCode::nothing_in_it, ref(fact));
        Cost cost;
        cost.materials = Money::millionths(rest);
        books_.enter(Boundary::delivered, account(Boundary::lost), ref(fact), cost);
    }
}

// Usual losses stay in the cost of what is left; the excess leaves at the unit cost after the usual
// part is taken out (IAS 2, paragraph 16: abnormal amounts are expensed).
void CupboardBook::post(const Loss& fact) {
    const StockLine* line = books_.line_of(ref(fact));
    if (line == nullptr) return;
    if (is_gift(fact.reason)) return books_.take(*line, account(Boundary::given));
    const Material& material = books_.shop().all<Material>()[line->material];
    const Ratio rate = as_share(normal_loss_in_force(books_.shop(), loss_of(material.kind), books_.day()));
    if (rate.is_zero()) return books_.take(*line, account(Boundary::lost));

    Ledger& ledger = books_.ledger();
    const std::uint32_t from = books_.source(line->fact, line->material, line->lot != kNoLot);
    for (const Draw& draw : books_.draws(*line)) {
        if (draw.lot == kNoLot) {
            books_.take_short(*line, draw, from, account(Boundary::lost));
            continue;
        }
        LotState& state = ledger.lots[draw.lot];
        const std::int64_t allowed = std::max<std::int64_t>(0, times(state.received, rate) - usual_lost_[draw.lot]);
        const std::int64_t usual = std::min(draw.quantity, allowed);
        const std::int64_t excess = draw.quantity - usual;
        usual_lost_[draw.lot] += usual;
        state.left -= usual;
        Cost cost;
        if (excess > 0) cost = share_of(books_.balance(books_.lot(draw.lot)), excess, state.left);
        // Nothing is left to carry the cost.
        if (excess == 0 && state.left == 0) cost = books_.balance(books_.lot(draw.lot));
        state.left -= excess;
        books_.move(books_.lot(draw.lot), account(Boundary::lost), from, draw.quantity, cost);
    }
}

}  // namespace dyestead
