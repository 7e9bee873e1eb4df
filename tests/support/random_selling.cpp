#include "tests/support/random_selling.h"

#include <array>

#include "tests/support/random_cupboard.h"

namespace dyestead::test {
namespace {

class Actor {
public:
    Actor(ShopBuilder& builder, const SellingActors& with, Day day) : builder_{builder}, with_{with}, day_{day} {}

    void act(const Act& act) {
        switch (act.what - kFirstSellingAct) {
            case 0: pour_off(act); break;
            case 1: out(act); break;
            case 2: settle(act); break;
            case 3: take_back(act); break;
            case 4: sit(act); break;
            case 5: {
                auto& fact = dated<Work>();
                fact.who = who(act.a);
                fact.time = minutes(act.b);
                fact.what = "sweeping";
                break;
            }
            case 6: tool(act); break;
            case 7: hold<Hold>(act); break;
            case 8: hold<Release>(act); break;
            case 9: {
                auto& fact = builder_.add<WholesalePrice>();
                fact.from = day_;
                fact.bar = with_.bar;
                fact.price = Money::hundredths(act.a);
                break;
            }
            case 10: {
                auto& fact = builder_.add<PowderPrice>();
                fact.from = day_;
                fact.colour = *one<Colour>(act.a);
                fact.pack = grams(act.b % 50);
                fact.price = Money::hundredths(act.c);
                break;
            }
            case 11: sell_powder(act); break;
            default: break;
        }
    }

private:
    template <class Fact>
    Fact& dated() {
        auto& fact = builder_.add<Fact>();
        fact.date = day_;
        return fact;
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

    // Now and then from itself or from one poured later, and with no share.
    void pour_off(const Act& act) {
        auto& fact = dated<Batch>();
        fact.recipe = with_.recipe;
        fact.bar = with_.bar;
        fact.split_from = one<Batch>(act.a);
        if (act.b % 5 != 0) fact.split_share = Ratio{act.c % 101, 100};
    }

    void out(const Act& act) {
        auto& fact = dated<OutAtShop>();
        fact.bar = with_.bar;
        if (act.b % 3 == 0) fact.lot = a_bar_lot(act.a);
        fact.bars = act.b % 15;
        fact.price = Money::hundredths(act.a);
        if (act.c % 4 != 0) fact.share = Ratio{act.c % 60, 100};
    }

    void settle(const Act& act) {
        const auto from = one<OutAtShop>(act.a);
        if (!from) return;
        auto& fact = dated<OutSettled>();
        fact.out = *from;
        fact.sold = act.b % 8;
        fact.back = act.c % 6;
    }

    void take_back(const Act& act) {
        const auto lot = a_bar_lot(act.a);
        if (!lot) return;
        auto& fact = dated<Returned>();
        fact.lot = *lot;
        fact.bars = act.b % 4;
        fact.refund = Money::hundredths(act.c);
        fact.fit = act.c % 2 == 0 ? Fit::to_sell : Fit::spoiled;
    }

    // Alone or beside bars, now and then of what is no powder.
    void sell_powder(const Act& act) {
        auto& fact = dated<Sale>();
        fact.channel = act.a % 2 == 0 ? Channel::card : Channel::other;
        fact.postage = Money::hundredths(act.b % 500);
        fact.time = minutes(act.c % 30);
        const Key<Sale> key = fact.key;
        const Key<Material> pigment = act.b % 7 == 0 ? with_.bar : with_.powder;
        auto& line = builder_.add<PowderLine>(key);
        line.pigment = pigment;
        if (act.b % 3 == 0) line.lot = a_lot_of(builder_, pigment, act.a);
        line.amount = grams(act.c % 9);
        line.price = Money::hundredths(act.a % 13 == 0 ? 0 : act.a);
        if (act.a % 3 != 0) return;
        auto& bars = builder_.add<SaleLine>(key);
        bars.bar = with_.bar;
        bars.bars = act.b % 4;
        bars.price = Money::hundredths(act.c);
    }

    void sit(const Act& act) {
        auto& fact = dated<Sitting>();
        fact.who = who(act.c);
        fact.time = minutes(act.b);
        const Key<Sitting> key = fact.key;
        for (int line = 0; line < act.a % 4; ++line) {
            const int number = act.b + line * 7;
            auto& at = builder_.add<SittingAt>(key);
            switch ((act.a / 4 + line * (act.c % 3)) % 9) {
                case 0: at.tending = one<Tending>(number); break;
                case 1: at.harvest = one<Harvest>(number); break;
                case 2: at.vat = one<Vat>(number); break;
                case 3: at.drying = one<Drying>(number); break;
                case 4: at.batch = one<Batch>(number); break;
                case 5: at.cut = one<Cut>(number); break;
                case 6: at.wrapping = one<Wrapping>(number); break;
                case 7: at.fair = one<Fair>(number); break;
                case 8: at.sale = one<Sale>(number); break;
                default: break;
            }
        }
    }

    void tool(const Act& act) {
        auto& fact = builder_.add<Equipment>();
        fact.name = fact.code;
        fact.bought = day_;
        fact.price = Money::millionths(act.a * 1'234'567LL);
        fact.years = act.b % 6;
        fact.dye_only = static_cast<DyeOnly>(act.b % 3);
        if (act.c % 3 == 0) fact.gone = day_ + Days{act.c};
    }

    template <class Fact>
    void hold(const Act& act) {
        const auto lot = one<Lot>(act.a);
        if (!lot) return;
        auto& fact = dated<Fact>();
        fact.lot = *lot;
        fact.why = "to be looked at";
    }

    std::optional<Key<Lot>> a_bar_lot(int number) {
        std::vector<Key<Lot>> found;
        for (const Lot& lot : builder_.all<Lot>())
            if (lot.material == with_.bar) found.push_back(lot.key);
        if (found.empty()) return std::nullopt;
        return found[static_cast<std::size_t>(number) % found.size()];
    }

    ShopBuilder& builder_;
    const SellingActors& with_;
    Day day_;
};

}  // namespace

Shop selling_shop(std::vector<Act> acts) {
    constexpr std::array kSells{0, 5, 6, 7, 7, 8, 8, 8, 11, 11, 10, 17, 18, 18, 19, 19, 20, 20, 21, 23, 23, 24, 28, 28};
    for (Act& act : acts) {
        act.what = kSells[static_cast<std::size_t>(act.what) % kSells.size()];
        act.day /= 3;
    }
    return random_shop(acts);
}

void selling_act(ShopBuilder& builder, const SellingActors& with, const Act& act, Day day) {
    Actor{builder, with, day}.act(act);
}

}  // namespace dyestead::test
