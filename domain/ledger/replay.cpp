#include "domain/ledger/replay.h"

#include <algorithm>
#include <iterator>

#include "domain/ledger/look_over.h"
#include "domain/ledger/value.h"
#include "domain/ledger/value_sitting.h"

namespace dyestead {
namespace {

// A bill for the dye alone: what growing made necessary goes to the work in hand, what was already
// spent either way to the period. A general bill is money out and no movement.
void post_bill(Bookkeeper& books, GardenBook& garden, VatBook& vats, const PaidOut& fact) {
    if (fact.dye_only == DyeOnly::no) return;
    const Ratio share = fact.avoidable.value_or(Ratio{1, 1});
    const Money avoidable = Money::millionths(times(fact.amount.in_millionths(), share));
    const bool shared = avoidable.is_zero() || (fact.dye_only == DyeOnly::garden ? garden.share_bill(fact, avoidable)
                                                                                 : vats.share_bill(fact, avoidable));
    Cost cost;
    if (!shared) {
        books.find(FindingCode::dye_bill_without_work, ref(fact));
        cost.overhead = avoidable;
        books.enter(Boundary::bills, account(Boundary::dye_avoidable), ref(fact), cost);
    }
    cost.overhead = fact.amount - avoidable;
    books.enter(Boundary::bills, account(Boundary::dye_sunk), ref(fact), cost);
}

class Replay {
public:
    Replay(const Shop& shop, const ShopLines& lines, const Stock& stock, Day as_of)
        : shop_{shop}, books_{shop, lines, stock, as_of} {}

    void post(const Event& event, std::uint32_t number) {
        books_.begin(event, number);
        if (event.assumed) {
            const Planting& planting = shop_.all<Planting>()[event.index];
            garden_.end(event.index, ref(planting), true);
            return;
        }
        // Exactly one of these is the event's own.
        post_to<AlreadyHere>(cupboard_, event);
        post_to<Delivery>(cupboard_, event);
        post_to<CostCorrection>(cupboard_, event);
        post_to<Loss>(cupboard_, event);
        post_to<Count>(cupboard_, event);
        post_to<CostRule>(cupboard_, event);
        post_to<Planting>(garden_, event);
        post_to<StandingBed>(garden_, event);
        post_to<Tending>(garden_, event);
        post_to<Harvest>(garden_, event);
        post_to<SeedKept>(garden_, event);
        post_to<BedLost>(garden_, event);
        post_to<Vat>(vats_, event);
        post_to<Drying>(vats_, event);
        post_to<Batch>(bench_, event);
        post_to<Cut>(bench_, event);
        post_to<Wrapping>(bench_, event);
        post_to<Fair>(stall_, event);
        post_to<Sale>(stall_, event);
        post_to<OutAtShop>(stall_, event);
        post_to<OutSettled>(stall_, event);
        post_to<Returned>(stall_, event);
        post_to<Sitting>(sittings_, event);
        post_to<Work>(sittings_, event);
        post_to<Equipment>(sittings_, event);
        sittings_.same_day(event);
        if (event.kind == kKindOf<PlantingEnd>) {
            const PlantingEnd& end = shop_.all<PlantingEnd>()[event.index];
            if (const auto planting = books_.place(end.planting)) garden_.end(*planting, ref(end), false);
        }
        if (event.kind == kKindOf<PaidOut>) post_bill(books_, garden_, vats_, shop_.all<PaidOut>()[event.index]);
        books_.finish();
    }

    Ledger close() && { return std::move(books_).close(); }

private:
    template <class Fact, class Book>
    void post_to(Book& book, const Event& event) {
        if (event.kind == kKindOf<Fact>) book.post(shop_.all<Fact>()[event.index]);
    }

    const Shop& shop_;
    Bookkeeper books_;
    CupboardBook cupboard_{books_};
    GardenBook garden_{books_};
    VatBook vats_{books_};
    BenchBook bench_{books_};
    StallBook stall_{books_};
    SittingBook sittings_{books_, garden_, vats_, bench_};
};

}  // namespace

Ledger replay(const Shop& shop, Day as_of) {
    const ShopLines lines{shop};
    const std::vector<Event> events = in_order(shop, lines, as_of);
    const Stock stock = allocate(shop, lines, events);
    Replay replay{shop, lines, stock, as_of};
    std::uint32_t number = 0;
    for (const Event& event : events) replay.post(event, number++);
    Ledger ledger = std::move(replay).close();
    std::ranges::move(look_over(shop, as_of), std::back_inserter(ledger.findings));
    return ledger;
}

}  // namespace dyestead
