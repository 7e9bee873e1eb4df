// shop.h - everything the maker has recorded: one list per kind of fact, each in key order.
// Nothing derived is ever in here. `find` looks a fact up by its key.
#pragma once

#include <cstddef>
#include <type_traits>
#include <vector>

#include "domain/facts/garden.h"
#include "domain/facts/note.h"
#include "domain/facts/sorted_keys.h"
#include "domain/facts/stall.h"
#include "domain/facts/stock_take.h"
#include "domain/facts/working_day.h"

namespace dyestead {

// One Holder<Fact> for each kind of fact: `of<Fact>()` is the one of a kind, `for_each` visits all.
// (Bases rather than a std::tuple, which every file that includes the facts would wait for.)
template <template <class> class Holder, class... Facts>
struct PerKind : Holder<Facts>... {
    static constexpr std::size_t kKinds = sizeof...(Facts);

    template <class Fact>
    Holder<Fact>& of() {
        return *this;
    }
    template <class Fact>
    const Holder<Fact>& of() const {
        return *this;
    }
    template <class Visit>
    void for_each(Visit&& visit) {
        (visit_one(visit, static_cast<Holder<Facts>&>(*this)), ...);
    }
    template <class Visit>
    void for_each(Visit&& visit) const {
        (visit_one(visit, static_cast<const Holder<Facts>&>(*this)), ...);
    }
    // The place of a kind among all.
    template <class Fact>
    static constexpr std::size_t place() {
        std::size_t at = 0;
        bool found = false;
        ((found = found || std::is_same_v<Fact, Facts>, at += found ? 0U : 1U), ...);
        return at;
    }

private:
    // Not inlined: one function that holds the work of every kind takes the compiler minutes.
    template <class Visit, class One>
    [[gnu::noinline]] static void visit_one(Visit& visit, One& one) {
        visit(one);
    }
};

// Every kind of fact, referred-to kinds before those that refer to them, heads before their lines.
template <template <class> class Holder>
using ForEveryKind =
    PerKind<Holder, About, Person, Pay, Tariff, Overhead, NormalLoss, SalesTax, ChannelFee, WaitingShare, SowingRule,
            PriceRule, PaidOut, Equipment, Colour, Material, Lot, Supplier, Offer, OfferBreak, AlreadyHere, Delivery,
            DeliveryLine, CostCorrection, Loss, Count, CountLine, OwnMeasure, CostRule, Bed, Plant, Planting,
            PlantingUse, StandingBed, Tending, TendingUse, ExpectedTotal, Harvest, SeedKept, BedLost, GerminationTry,
            PlantingEnd, Allowed, Method, MethodStep, MethodUse, Vat, VatUse, VatHeat, VatStep, Drying, DryingVat,
            DryingLot, ShadeTest, Recipe, RecipePart, RecipeWrapping, RecipeColouring, Batch, BatchUse, BatchTime, Cut,
            Weighing, Wrapping, WrappingUse, Hold, Release, Plan, Fair, FairLine, FairBundle, FairTime, Sale, SaleLine,
            PowderLine, OutAtShop, OutSettled, Returned, Price, WholesalePrice, PowderPrice, PriceBelief, Sitting,
            SittingAt, Work, Jotting, Guess, Note>;

template <class Fact>
struct FactList {
    std::vector<Fact> list;

    FactList() = default;
    // Not inlined: a copy of the shop is one function, and would hold that of every kind.
    [[gnu::noinline]] FactList(const FactList& other) : list{other.list} {}
    FactList(FactList&& other) noexcept = default;
    FactList& operator=(const FactList& other) = delete;
    FactList& operator=(FactList&& other) noexcept {
        list.swap(other.list);
        return *this;
    }
    [[gnu::noinline]] ~FactList() {}
};

// Copied, moved and destroyed in shop.cpp alone, so that no other file compiles that for every kind.
class Shop {
public:
    Shop();
    Shop(const Shop& other);
    Shop(Shop&& other) noexcept;
    Shop& operator=(const Shop& other);
    Shop& operator=(Shop&& other) noexcept;
    ~Shop();

    template <class Fact>
    const std::vector<Fact>& all() const {
        return lists_.template of<Fact>().list;
    }
    template <class Fact>
    std::vector<Fact>& all() {
        return lists_.template of<Fact>().list;
    }

    // Null when no such fact is recorded.
    template <class Fact>
    const Fact* find(Key<Fact> key) const {
        const auto& list = all<Fact>();
        if (list.empty()) return nullptr;
        const SortedKeys keys{&list.front().key.number, sizeof(Fact), list.size()};
        const std::size_t at = keys.find(key.number);
        return at == list.size() ? nullptr : &list[at];
    }

    // visit(std::vector<Fact>&) for every kind of fact.
    template <class Visit>
    void for_each_list(Visit&& visit) {
        lists_.for_each([&](auto& each) { visit(each.list); });
    }
    template <class Visit>
    void for_each_list(Visit&& visit) const {
        lists_.for_each([&](const auto& each) { visit(each.list); });
    }

    // Brings every list into key order; to be called after facts were added at the end.
    void sort();

private:
    ForEveryKind<FactList> lists_;
};

}  // namespace dyestead
