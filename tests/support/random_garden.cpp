#include "tests/support/random_garden.h"

namespace dyestead::test {
namespace {

class Actor {
public:
    Actor(ShopBuilder& builder, const GardenActors& with, Day day) : builder_{builder}, with_{with}, day_{day} {}

    void act(const Act& act) {
        switch (act.what - kFirstGardenAct) {
            case 0: keep_seed(act); break;
            case 1: lose_part(act); break;
            case 2: offer(act); break;
            case 3: dry(act); break;
            case 4: vat(act); break;
            case 5: sowing_rule(act); break;
            default: break;
        }
    }

private:
    template <class Fact>
    Key<Fact> dated() {
        auto& fact = builder_.add<Fact>();
        fact.date = day_;
        return fact.key;
    }
    template <class Fact>
    std::optional<Key<Fact>> one(int number) {
        const auto& list = builder_.all<Fact>();
        if (list.empty()) return std::nullopt;
        return list[static_cast<std::size_t>(number) % list.size()].key;
    }
    std::optional<Key<Person>> who(int number) const {
        if (number % 3 == 2) return std::nullopt;
        return number % 3 == 0 ? with_.own : with_.paid;
    }

    void sowing_rule(const Act& act) {
        auto& fact = builder_.add<SowingRule>();
        fact.from = day_;
        if (act.a % 3 != 0) fact.last_frost = day_of(2020, 1, 1) + Days{act.a};
        if (act.b % 3 != 0) fact.first_frost = day_of(2020, 1, 1) + Days{act.b};
        if (act.c % 2 == 0) fact.germination = Ratio{act.c % 101, 100};
        if (act.c % 3 == 0) fact.reserve = Ratio{act.c % 200, 100};
    }

    // Now and then nothing was weighed.
    void keep_seed(const Act& act) {
        const auto planting = one<Planting>(act.a);
        if (!planting) return;
        const auto lot = builder_.lot(with_.seed);
        auto& fact = builder_.at(dated<SeedKept>());
        fact.planting = *planting;
        fact.lot = lot;
        fact.amount = grams(act.b % 90);
        fact.who = who(act.c);
        if (act.c % 4 != 0) fact.time = minutes(act.c % 50);
    }

    // The bed is 3 m2: now and then more than stands.
    void lose_part(const Act& act) {
        const auto planting = one<Planting>(act.a);
        if (!planting) return;
        auto& fact = builder_.at(dated<BedLost>());
        fact.planting = *planting;
        fact.area = Amount{Quantity::square_centimetres(act.b * 35LL), Unit::cm2, Mark::about};
    }

    void offer(const Act& act) {
        auto& fact = builder_.add<Offer>();
        fact.noted = day_;
        fact.from = day_ + Days{act.c % 40};
        fact.material = with_.seed;
        fact.pack = grams(1 + act.a % 30);
        fact.price = Money::millionths(act.b * 13'579LL);
    }

    void dry(const Act& act) {
        const auto vat = one<Vat>(act.a);
        if (!vat) return;
        const auto drying = dated<Drying>();
        if (act.c % 3 != 0) {
            const auto lot = builder_.lot(with_.powder);
            builder_.at(drying).lot = lot;
            builder_.at(drying).amount = grams(act.b % 6);
        }
        builder_.at(drying).time = minutes(act.b % 30);
        if (act.b % 2 == 0) builder_.at(drying).lost = grams(act.a % 4);
        if (act.a % 5 == 0) builder_.at(drying).dryness = Dryness::damp;
        for (int further = act.c % 3; further >= 0; --further) {
            const auto lot = builder_.lot(with_.powder);
            auto& line = builder_.add<DryingLot>(drying);
            line.lot = lot;
            line.amount = Amount{Quantity::milligrams(act.c * 7LL), Unit::mg, Mark::measured};
            if (act.a % 3 != 0) line.worth = Ratio{act.b % 4, 1 + act.a % 7};
        }
        builder_.add<DryingVat>(drying).vat = *vat;
        if (act.b % 3 == 0) builder_.add<DryingVat>(drying).vat = *one<Vat>(act.c);
    }

    // Now and then its steps are told as well.
    void vat(const Act& act) {
        const auto vat = dated<Vat>();
        auto& use = builder_.add<VatUse>(vat);
        use.material = with_.leaf;
        use.amount = grams(act.a);
        Vat& fact = builder_.at(vat);
        fact.colour = with_.colour;
        fact.method = method();
        fact.hands_on = minutes(act.b % 300);
        if (act.b % 3 == 0) fact.waiting = minutes(act.c % 60);
        fact.who = who(act.c);
        fact.washes = act.c % 9;
        if (act.a % 4 == 0) builder_.add<VatStep>(vat).hands_on = minutes(act.c % 40);
    }

    Key<Method> method() {
        if (const auto there = one<Method>(0)) return *there;
        const auto key = builder_.add<Method>().key;
        builder_.add<MethodStep>(key).hands_on = minutes(10);
        auto& wash = builder_.add<MethodStep>(key);
        wash.hands_on_per_kg = minutes(3);
        wash.times = 5;
        return key;
    }

    ShopBuilder& builder_;
    const GardenActors& with_;
    Day day_;
};

}  // namespace

void garden_act(ShopBuilder& builder, const GardenActors& with, const Act& act, Day day) {
    Actor{builder, with, day}.act(act);
}

}  // namespace dyestead::test
