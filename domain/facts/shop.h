// shop.h - everything the maker has recorded: one list per kind of fact, each in key order.
// Nothing derived is ever in here. `find` looks a fact up by its key.
#pragma once

#include <algorithm>
#include <type_traits>
#include <vector>

#include "domain/facts/garden.h"
#include "domain/facts/stall.h"

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
        (visit(static_cast<Holder<Facts>&>(*this)), ...);
    }
    template <class Visit>
    void for_each(Visit&& visit) const {
        (visit(static_cast<const Holder<Facts>&>(*this)), ...);
    }
    // The place of a kind among all.
    template <class Fact>
    static constexpr std::size_t place() {
        std::size_t at = 0;
        bool found = false;
        ((found = found || std::is_same_v<Fact, Facts>, at += found ? 0U : 1U), ...);
        return at;
    }
};

// Every kind of fact, referred-to kinds before those that refer to them, heads before their lines.
template <template <class> class Holder>
using ForEveryKind =
    PerKind<Holder, About, Person, Pay, Tariff, Overhead, NormalLoss, SalesTax, ChannelFee, WaitingShare, PaidOut,
            Colour, Material, Lot, Supplier, Offer, AlreadyHere, Delivery, DeliveryLine, Loss, Bed, Plant, Planting,
            PlantingUse, StandingBed, Tending, TendingUse, ExpectedTotal, Harvest, PlantingEnd, Allowed, Vat, VatUse,
            VatHeat, VatStep, Drying, DryingVat, ShadeTest, Recipe, RecipePart, RecipeWrapping, RecipeColouring, Batch,
            BatchUse, BatchTime, Cut, Wrapping, WrappingUse, Fair, FairLine, FairTime, Sale, SaleLine, Price,
            PriceBelief>;

template <class Fact>
struct FactList {
    std::vector<Fact> list;
};

class Shop {
public:
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
        const auto at = std::ranges::lower_bound(list, key, {}, &Fact::key);
        return at != list.end() && at->key == key ? &*at : nullptr;
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
