#include "domain/ledger/value_sitting.h"

#include <algorithm>

namespace dyestead {

SittingBook::SittingBook(Bookkeeper& books, const GardenBook& garden, const VatBook& vats, const BenchBook& bench)
    : books_{books},
      garden_{garden},
      vats_{vats},
      bench_{bench},
      sittings_{shared_sittings(books.shop(), books.ledger().as_of)} {
    for (const SharedSitting& sitting : sittings_)
        for (const SittingShare& share : sitting.shares)
            if (share.day == sitting.sitting->date) same_day_[{share.at.kind, share.at.key}].push_back(share);
}

void SittingBook::same_day(const Event& event) {
    const auto found = same_day_.find({event.kind, event.key});
    if (found == same_day_.end()) return;
    for (const SittingShare& share : found->second) post(share);
}

void SittingBook::post(const Sitting& fact) {
    const auto shared = std::ranges::find(sittings_, &fact, &SharedSitting::sitting);
    for (const SittingAt* line : shared->left_out) books_.find(FindingCode::sitting_before_its_work, ref(*line));
    for (const SittingShare& share : shared->shares)
        if (share.day != fact.date) post(share);
    if (!shared->shares.empty()) return;
    if (shared->left_out.empty()) books_.find(FindingCode::sitting_at_nothing, ref(fact));
    books_.work(fact.who, fact.time, account(Boundary::office), ref(fact));
}

void SittingBook::post(const Work& fact) {
    books_.work(fact.who, fact.time, account(Boundary::office), ref(fact));
}

void SittingBook::post(const Equipment& fact) {
    if (fact.years <= 0) books_.find(FindingCode::equipment_without_years, ref(fact));
}

void SittingBook::post(const SittingShare& share) {
    if (share.time.is_zero()) return;
    books_.work(share.sitting->who, share.time, account_of(share), ref(*share.line));
}

Account SittingBook::gone(const SittingShare& share, std::string code) {
    books_.find(FindingCode::sat_at_when_gone, ref(*share.line), {std::move(code)});
    return account(Boundary::other);
}

Account SittingBook::made(const SittingShare& share, std::optional<Key<Lot>> lot, Account otherwise) {
    const auto place = lot ? books_.place(*lot) : std::nullopt;
    const LotState* state = place ? &books_.ledger().lots[*place] : nullptr;
    if (state == nullptr || state->received == 0) return otherwise;  // nothing came of it
    if (state->left == 0) return gone(share, books_.shop().all<Lot>()[*place].code);
    return books_.lot(*place);
}

Account SittingBook::account_of(const SittingShare& share) {
    const Shop& shop = books_.shop();
    const SittingAt& line = *share.line;
    const FactKind kind = share.at.kind;
    const auto bed = [&](Key<Planting> key) {
        const auto planting = books_.place(key);
        const bool open = planting && garden_.is_open(*planting);
        return open ? books_.planting(*planting) : account(Boundary::garden);
    };
    if (kind == kKindOf<Tending>) return bed(shop.find(*line.tending)->planting);
    if (kind == kKindOf<Harvest>) {
        const Harvest& harvest = *shop.find(*line.harvest);
        return made(share, harvest.lot, bed(harvest.planting));
    }
    if (kind == kKindOf<Vat>) {
        const std::uint32_t vat = *books_.place(*line.vat);
        return vats_.is_open(vat) ? books_.vat(vat) : gone(share, shop.all<Vat>()[vat].code);
    }
    if (kind == kKindOf<Drying>) {
        std::optional<Key<Lot>> lot = shop.find(*line.drying)->lot;
        for (const DryingLot& further : shop.all<DryingLot>())
            if (!lot && further.head == *line.drying) lot = further.lot;
        return made(share, lot, account(Boundary::lost));
    }
    if (kind == kKindOf<Batch>) {
        const std::uint32_t batch = *books_.place(*line.batch);
        if (bench_.is_open(batch)) return books_.batch(batch);
        return made(share, bench_.cut_into(batch), account(Boundary::lost));
    }
    if (kind == kKindOf<Cut>) return made(share, shop.find(*line.cut)->lot, account(Boundary::lost));
    if (kind == kKindOf<Wrapping>) return made(share, shop.find(*line.wrapping)->lot, account(Boundary::other));
    return account(Boundary::selling);
}

}  // namespace dyestead
