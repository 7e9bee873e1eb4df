// shop_builder.h - makes a small Shop of facts for a test. Every fact gets the next key and a code of its
// own (delivery-7); whoever wants more than the shorthands below fills in the fact that add() hands out:
//
//     ShopBuilder b;
//     const auto oil = b.material("olive oil", Purpose::oil);
//     const auto lot = b.delivery(day_of(2026, 3, 1), oil, grams(5'000), Money::units(40));
//     auto& loss = b.add<Loss>();  // good until the next fact of this kind
#pragma once

#include <algorithm>
#include <map>
#include <string>
#include <string_view>

#include "domain/facts/shop.h"

namespace dyestead::test {

inline Amount grams(std::int64_t n) {
    return {Quantity::grams(n), Unit::g, Mark::measured};
}
inline Amount pieces(std::int64_t n) {
    return {Quantity::pieces(n), Unit::piece, Mark::measured};
}
inline Amount square_metres(std::int64_t n) {
    return {Quantity::square_centimetres(n * 10'000), Unit::m2, Mark::measured};
}
inline Span minutes(std::int64_t n) {
    return {Minutes::whole(n), TimeUnit::min, Mark::measured};
}

class ShopBuilder {
public:
    // Lists are in key order as long as keys only rise.
    const Shop& shop() const { return shop_; }
    template <class Fact>
    std::vector<Fact>& all() {
        return shop_.all<Fact>();
    }

    template <class Fact>
    requires Head<Fact> Fact& add() {
        Fact fact{};
        fact.key.number = ++last_key_;
        fact.code.append(Fact::kTable).append("-").append(std::to_string(last_key_));
        return shop_.all<Fact>().emplace_back(std::move(fact));
    }

    template <class Fact>
    requires Line<Fact> Fact& add(Key<typename Fact::Head> head) {
        Fact line{};
        line.key.number = ++last_key_;
        line.head = head;
        line.position = ++lines_of_[{head.number, Fact::kTable}];
        return shop_.all<Fact>().emplace_back(std::move(line));
    }

    template <class Fact>
    Fact& at(Key<Fact> key) {
        return *std::ranges::lower_bound(shop_.all<Fact>(), key, {}, &Fact::key);
    }

    // --- what there can be -----------------------------------------------------------------------------

    Key<Material> material(std::string name, Purpose purpose, HeldAs held = HeldAs::mass) {
        auto& fact = add<Material>();
        fact.name = std::move(name);
        fact.purpose = purpose;
        fact.held_as = held;
        return fact.key;
    }
    Key<Material> oil(std::string name, Ratio saponification) {
        const auto key = material(std::move(name), Purpose::oil);
        at(key).saponification = saponification;
        return key;
    }
    // Seed, harvest, pigment or bar: no purpose of its own; bars are counted.
    Key<Material> made(std::string name, MaterialKind kind) {
        auto& fact = add<Material>();
        fact.name = std::move(name);
        fact.kind = kind;
        fact.held_as = kind == MaterialKind::bar ? HeldAs::count : HeldAs::mass;
        return fact.key;
    }
    Key<Lot> lot(Key<Material> material) {
        auto& fact = add<Lot>();
        fact.material = material;
        return fact.key;
    }
    // One of the shop's own people from a day on; without pay: hours that cost nothing yet.
    Key<Person> person(Day from, Money per_hour) {
        auto& fact = add<Person>();
        fact.name = fact.code;
        const auto who = fact.key;
        auto& pay = add<Pay>();
        pay.from = from;
        pay.person = who;
        pay.per_hour = per_hour;
        return who;
    }

    // --- what happened ---------------------------------------------------------------------------------

    // One line, of a lot of its own.
    Key<Lot> delivery(Day day, Key<Material> material, Amount amount, Money price, Money carriage = {}) {
        if (shop_.all<Supplier>().empty()) add<Supplier>().name = "the supplier";
        auto& fact = add<Delivery>();
        fact.date = day;
        fact.supplier = shop_.all<Supplier>().front().key;
        fact.carriage = carriage;
        const auto head = fact.key;
        const auto delivered = lot(material);
        auto& line = add<DeliveryLine>(head);
        line.lot = delivered;
        line.amount = amount;
        line.price = price;
        return delivered;
    }
    // Known and in force from a day on.
    Offer& offer(Day from, Key<Material> material, Amount pack, Money price) {
        if (shop_.all<Supplier>().empty()) add<Supplier>().name = "the supplier";
        auto& fact = add<Offer>();
        fact.noted = fact.from = from;
        fact.supplier = shop_.all<Supplier>().front().key;
        fact.material = material;
        fact.pack = pack;
        fact.price = price;
        return fact;
    }
    Key<Lot> already_here(Day day, Key<Material> material, Amount amount, Money cost) {
        const auto found = lot(material);
        auto& fact = add<AlreadyHere>();
        fact.date = day;
        fact.lot = found;
        fact.amount = amount;
        fact.cost = cost;
        return found;
    }
    Loss& loss(Day day, Key<Material> material, Amount amount, LossReason reason) {
        auto& fact = add<Loss>();
        fact.date = day;
        fact.material = material;
        fact.amount = amount;
        fact.reason = reason;
        return fact;
    }
    Key<Sale> sale(Day day) {
        auto& fact = add<Sale>();
        fact.date = day;
        return fact.key;
    }
    void sold(Key<Sale> sale, Key<Material> bar, int bars, Money price, std::optional<Key<Lot>> from = {}) {
        auto& line = add<SaleLine>(sale);
        line.bar = bar;
        line.bars = bars;
        line.price = price;
        line.lot = from;
    }
    // Use is PlantingUse, TendingUse, VatUse, BatchUse or WrappingUse.
    template <class Use>
    void uses(Key<typename Use::Head> head, Key<Material> material, Amount amount, std::optional<Key<Lot>> from = {}) {
        auto& line = add<Use>(head);
        line.material = material;
        line.amount = amount;
        line.lot = from;
    }

    // --- garden and bench ------------------------------------------------------------------------------

    Key<Planting> planting(Day sown, Amount area, std::optional<Amount> expected) {
        auto& bed = add<Bed>();
        bed.name = bed.code;
        bed.area = area;
        auto& plant = add<Plant>();
        plant.name = plant.code;
        const auto of = plant.key;
        const auto where = bed.key;
        auto& fact = add<Planting>();
        fact.sown = sown;
        fact.plant = of;
        fact.bed = where;
        fact.expected = expected;
        return fact.key;
    }
    Key<Lot> harvest(Day day, Key<Planting> planting, Key<Material> material, Amount amount) {
        const auto picked = lot(material);
        auto& fact = add<Harvest>();
        fact.date = day;
        fact.planting = planting;
        fact.lot = picked;
        fact.amount = amount;
        return picked;
    }
    // 5 % superfat and a third of lye unless the test says otherwise.
    Key<Recipe> recipe(int bars_per_loaf) {
        auto& fact = add<Recipe>();
        fact.name = fact.code;
        fact.superfat = {5, 100};
        fact.lye_concentration = {33, 100};
        fact.bars_per_loaf = bars_per_loaf;
        fact.declared_weight = grams(100);
        fact.cure_days = 28;
        return fact.key;
    }
    Key<Batch> batch(Day day, Key<Recipe> recipe, Key<Material> bar) {
        auto& fact = add<Batch>();
        fact.date = day;
        fact.recipe = recipe;
        fact.bar = bar;
        return fact.key;
    }
    Key<Lot> cut(Day day, Key<Batch> batch, int bars, int rejected, Day cured) {
        const auto made = lot(at(batch).bar);
        auto& fact = add<Cut>();
        fact.date = day;
        fact.batch = batch;
        fact.lot = made;
        fact.bars = bars;
        fact.rejected = rejected;
        fact.cured = cured;
        return made;
    }

private:
    Shop shop_;
    std::int64_t last_key_ = 0;
    std::map<std::pair<std::int64_t, std::string_view>, int> lines_of_;  // how many, by head and table
};

}  // namespace dyestead::test
