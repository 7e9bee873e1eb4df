#include "tests/support/random_shop.h"

#include "domain/facts/dated.h"
#include "tests/support/random_cupboard.h"
#include "tests/support/random_garden.h"
#include "tests/support/random_selling.h"

namespace dyestead::test {
namespace {

class Maker {
public:
    Maker() {
        oil_ = builder_.material("oil", Purpose::oil);
        builder_.at(oil_).density = Ratio{9, 10};
        builder_.at(oil_).shelf_life_days = 90;
        auto& about = builder_.add<About>();
        about.currency = "EUR";
        about.year_begins = 3;  // so that a year begins within kDays
        band_ = builder_.material("band", Purpose::wrapping, HeldAs::count);
        seed_ = builder_.made("seed", MaterialKind::seed);
        leaf_ = builder_.made("leaf", MaterialKind::harvest);
        powder_ = builder_.made("powder", MaterialKind::pigment);
        bar_ = builder_.made("bar", MaterialKind::bar);
        own_ = builder_.person(kFirstDay, Money::hundredths(1'271));
        paid_ = builder_.person(kFirstDay, Money::hundredths(1'100));
        for (auto& pay : builder_.all<Pay>())
            if (pay.person == paid_) pay.standing = Standing::paid;
        auto& tariff = builder_.add<Tariff>();
        tariff.from = kFirstDay;
        tariff.per_kwh = Money::millionths(276'900);
        auto& overhead = builder_.add<Overhead>();
        overhead.from = kFirstDay;
        overhead.per_year = Money::hundredths(31'337);
        overhead.normal_bars = 300;
        for (const LossOf of : {LossOf::raw, LossOf::batch}) {
            auto& usual = builder_.add<NormalLoss>();
            usual.from = kFirstDay;
            usual.of = of;
            usual.rate = Ratio{3, 100};
        }
        auto& fee = builder_.add<ChannelFee>();
        fee.from = kFirstDay;
        fee.channel = Channel::card;
        fee.share = Ratio{169, 10'000};
        fee.per_payment = Money::hundredths(10);
        fee.per_bar = Money::hundredths(3);
        auto& colour = builder_.add<Colour>();
        colour_ = colour.key;
        auto& plant = builder_.add<Plant>();
        plant.usual = grams(2'000);
        plant.colour = colour_;
        plant_ = plant.key;
        auto& bed = builder_.add<Bed>();
        bed.area = square_metres(3);
        bed_ = bed.key;
        auto& recipe = builder_.add<Recipe>();
        recipe_ = recipe.key;
    }

    void act(const Act& act) {
        const Day day = kFirstDay + Days{act.day};
        if (act.what >= kFirstGardenAct)
            return garden_act(builder_, {seed_, leaf_, powder_, colour_, own_, paid_}, act, day);
        if (act.what >= kFirstCupboardAct) return cupboard_act(builder_, act, day);
        switch (act.what) {
            case 0: delivery(act, day); break;
            case 1: {
                const Key<Lot> lot = builder_.lot(raw(act.c));
                auto& fact = builder_.add<AlreadyHere>();
                fact.date = day;
                fact.lot = lot;
                fact.amount = some_of(builder_, raw(act.c), act.a);
                if (act.b % 3 != 0) fact.cost = Money::millionths(act.b * 77'777LL);
                if (act.b % 5 == 0) fact.time = minutes(act.a);
                break;
            }
            case 2: {
                auto& fact = builder_.add<Planting>();
                fact.sown = day;
                fact.plant = plant_;
                fact.bed = bed_;
                if (act.b % 2 == 0) fact.expected = grams(act.a * 3);
                use<Planting>(fact.key, seed_, act.c);
                break;
            }
            case 3: tending(act, day); break;
            case 4: harvest(act, day); break;
            case 5: vat(act, day); break;
            case 6: drying(act, day); break;
            case 7: {
                auto& fact = builder_.add<Batch>();
                fact.date = day;
                fact.recipe = recipe_;
                fact.bar = bar_;
                const Key<Batch> key = fact.key;
                use<Batch>(key, oil_, act.a);
                if (act.b % 2 == 0) use<Batch>(key, powder_, act.c % 7);
                auto& time = builder_.add<BatchTime>(key);
                time.who = who(act.b);
                time.time = minutes(act.c);
                break;
            }
            case 8: {
                if (builder_.all<Batch>().empty()) break;
                const Key<Lot> lot = builder_.lot(bar_);
                auto& fact = builder_.add<Cut>();
                fact.date = day;
                fact.batch = one<Batch>(act.a);
                fact.lot = lot;
                fact.bars = act.b % 25;
                fact.rejected = act.c % 5;
                fact.cured = day + Days{act.c % 45};
                if (act.c % 2 == 0) fact.time = minutes(act.a % 60);
                break;
            }
            case 9: {
                const auto lot = a_lot_of(builder_, bar_, act.a);
                if (!lot) break;
                auto& fact = builder_.add<Wrapping>();
                fact.date = day;
                fact.lot = *lot;
                fact.bars = act.b % 20;
                fact.time = minutes(act.c % 90);
                fact.who = who(act.c);
                use<Wrapping>(fact.key, band_, act.b % 20);
                break;
            }
            case 10: fair(act, day); break;
            case 11: {
                auto& fact = builder_.add<Sale>();
                fact.date = day;
                fact.channel = act.a % 2 == 0 ? Channel::card : Channel::other;
                fact.time = minutes(act.c % 30);
                const Key<Sale> key = fact.key;
                auto& line = builder_.add<SaleLine>(key);
                line.bar = bar_;
                if (act.b % 3 == 0) line.lot = a_lot_of(builder_, bar_, act.a);
                line.bars = act.b % 9;
                line.price = Money::hundredths(act.a);
                break;
            }
            case 12: {
                const Key<Material> material = any(act.c);
                auto& fact = builder_.add<Loss>();
                fact.date = day;
                fact.material = material;
                if (act.b % 3 == 0) fact.lot = a_lot_of(builder_, material, act.b);
                fact.amount = some_of(builder_, material, act.a);
                fact.reason = static_cast<LossReason>(act.b % 8);
                break;
            }
            case 13: {
                if (builder_.all<Planting>().empty()) break;
                auto& fact = builder_.add<PlantingEnd>();
                fact.date = day;
                fact.planting = one<Planting>(act.a);
                break;
            }
            case 14: {
                auto& fact = builder_.add<PaidOut>();
                fact.date = day;
                fact.what = "bill";
                fact.amount = Money::millionths(act.a * 123'457LL);
                fact.dye_only = static_cast<DyeOnly>(act.b % 3);
                if (act.c % 2 == 0) fact.avoidable = Ratio{act.c % 100, 100};
                break;
            }
            case 15: {
                if (builder_.all<Planting>().empty()) break;
                auto& fact = builder_.add<StandingBed>();
                fact.date = day;
                fact.planting = one<Planting>(act.a);
                fact.cost = Money::millionths(act.b * 99'991LL);
                fact.time = minutes(act.c);
                break;
            }
            case 16: {
                auto& fact = builder_.add<Pay>();
                fact.from = day;
                fact.person = own_;
                fact.per_hour = Money::millionths(act.a * 33'333LL);
                break;
            }
            default: selling_act(builder_, {bar_, powder_, recipe_, own_, paid_}, act, day); break;
        }
    }

    Shop shop() const { return builder_.shop(); }

private:
    Key<Material> raw(int number) const { return number % 2 == 0 ? oil_ : band_; }
    Key<Material> any(int number) const {
        return std::array{oil_, band_, seed_, leaf_, powder_, bar_}[static_cast<std::size_t>(number % 6)];
    }
    std::optional<Key<Person>> who(int number) const {
        return std::array<std::optional<Key<Person>>, 3>{
            own_, paid_, std::nullopt}[static_cast<std::size_t>(number % 3)];
    }

    template <class Fact>
    Key<Fact> one(int number) {
        const auto& list = builder_.all<Fact>();
        return list[static_cast<std::size_t>(number) % list.size()].key;
    }

    template <class Of>
    void use(Key<Of> head, Key<Material> material, int number) {
        const auto lot = number % 3 == 0 ? a_lot_of(builder_, material, number) : std::nullopt;
        auto& line = builder_.add<UseIn<Of>>(head);
        line.material = material;
        line.lot = lot;
        line.amount = some_of(builder_, material, number);
    }

    void delivery(const Act& act, Day day) {
        builder_.delivery(day, raw(act.c), some_of(builder_, raw(act.c), act.a), Money::millionths(act.b * 54'321LL),
                          Money::millionths((act.c % 5) * 1'111'111LL));
        auto& head = builder_.all<Delivery>().back();
        if (act.b % 4 == 0) head.share_by = ShareBy::weight;
        const Key<Delivery> key = head.key;
        if (act.b % 2 != 0) return;
        const Key<Lot> lot = builder_.lot(seed_);
        auto& line = builder_.add<DeliveryLine>(key);
        line.lot = lot;
        line.amount = grams(act.c % 50);
        line.price = Money::millionths(act.a * 10'007LL);
        if (act.a % 2 == 0) line.best_before = day + Days{act.b};
    }

    void tending(const Act& act, Day day) {
        if (builder_.all<Planting>().empty()) return;
        auto& fact = builder_.add<Tending>();
        fact.date = day;
        fact.planting = one<Planting>(act.a);
        fact.time = minutes(act.b);
        fact.who = who(act.c);
        if (act.c % 2 == 0) use<Tending>(fact.key, oil_, act.c);
    }

    void harvest(const Act& act, Day day) {
        if (builder_.all<Planting>().empty()) return;
        const Key<Lot> lot = builder_.lot(leaf_);
        auto& fact = builder_.add<Harvest>();
        fact.date = day;
        fact.planting = one<Planting>(act.a);
        fact.lot = lot;
        fact.amount = grams(act.b * 2);
        if (act.c % 3 != 0) fact.time = minutes(act.c);
    }

    void vat(const Act& act, Day day) {
        auto& fact = builder_.add<Vat>();
        fact.date = day;
        fact.colour = colour_;
        const Key<Vat> key = fact.key;
        use<Vat>(key, leaf_, act.a);
        auto& heat = builder_.add<VatHeat>(key);
        heat.water = Amount{Quantity::microlitres(act.b * 10'000LL), Unit::ml, Mark::measured};
        heat.heated_from = Temperature{150};
        heat.heated_to = Temperature{800};
        heat.efficiency = Ratio{9, 10};
        auto& step = builder_.add<VatStep>(key);
        step.what = "strain";
        step.who = who(act.c);
        step.hands_on = minutes(act.c);
        if (act.c % 3 != 0) step.begun = Moment{day, act.a % kMinutesInDay, act.b % 120 - 60};
        if (act.b % 4 != 0) return;
        auto& note = builder_.add<Note>();
        note.date = day;
        note.about = {"vat", key.number};
        note.text = "froth";
    }

    void drying(const Act& act, Day day) {
        if (builder_.all<Vat>().empty()) return;
        const bool nothing = act.b % 4 == 0;
        const Key<Lot> lot = builder_.lot(powder_);
        auto& fact = builder_.add<Drying>();
        fact.date = day;
        if (!nothing) fact.lot = lot;
        if (!nothing) fact.amount = grams(act.b % 12);
        fact.time = minutes(act.c % 45);
        const Key<Drying> key = fact.key;
        builder_.add<DryingVat>(key).vat = one<Vat>(act.a);
        if (act.c % 3 == 0) builder_.add<DryingVat>(key).vat = one<Vat>(act.c);
    }

    void fair(const Act& act, Day day) {
        auto& fact = builder_.add<Fair>();
        fact.date = day;
        fact.fee = Money::hundredths(act.a);
        fact.cash_in_tin = Money::hundredths(act.b * 10LL);
        fact.card_takings = Money::hundredths(act.c * 10LL);
        fact.card_payments = act.c % 12;
        const Key<Fair> key = fact.key;
        auto& line = builder_.add<FairLine>(key);
        line.bar = bar_;
        line.taken = act.b % 30;
        line.back = act.c % 20;
        line.price = Money::hundredths(act.a);
        auto& time = builder_.add<FairTime>(key);
        time.who = who(act.a);
        time.time = minutes(act.b);
    }

    ShopBuilder builder_;
    Key<Material> oil_, band_, seed_, leaf_, powder_, bar_;
    Key<Person> own_, paid_;
    Key<Colour> colour_;
    Key<Plant> plant_;
    Key<Bed> bed_;
    Key<Recipe> recipe_;
};

}  // namespace

Shop random_shop(const std::vector<Act>& acts) {
    Maker maker;
    for (const Act& act : acts) maker.act(act);
    return maker.shop();
}

Shop without_later(const Shop& shop, Day day) {
    Shop kept = shop;
    kept.for_each_list([&](auto& list) {
        using Fact = typename std::remove_reference_t<decltype(list)>::value_type;
        // A bed, vat or batch may be spoken of before its own day; it stays as a name, without its lines.
        constexpr bool kNamed =
            std::is_same_v<Fact, Planting> || std::is_same_v<Fact, Vat> || std::is_same_v<Fact, Batch>;
        if constexpr (Line<Fact>)
            std::erase_if(list, [&](const Fact& line) { return dated(*shop.find(line.head)).value_or(day) > day; });
        else if constexpr (!kNamed)
            std::erase_if(list, [&](const Fact& fact) { return dated(fact).value_or(day) > day; });
    });
    return kept;
}

}  // namespace dyestead::test
