// What comes off the drying plate: several lots, what is lost on it, and vats told at the end.
#include <doctest/doctest.h>

#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day day(int n) {
    return day_of(2026, 8, 1) + Days{n};
}

struct Plate : ShopBuilder {
    Key<Person> owner = person(day(0), Money::units(12));
    Key<Material> powder = made("powder", MaterialKind::pigment);
    Key<Material> other = made("other powder", MaterialKind::pigment);
    Key<Drying> drying = [this] {
        auto& fact = add<Drying>();
        fact.date = day(5);
        return fact.key;
    }();
    std::vector<Key<Lot>> lots;

    // An hour is 12.00.
    Key<Vat> vat(int on, std::optional<Span> hands_on) {
        auto& fact = add<Vat>();
        fact.date = day(on);
        fact.hands_on = hands_on;
        add<DryingVat>(drying).vat = fact.key;
        return fact.key;
    }
    void own(std::int64_t weight) {
        lots.push_back(lot(powder));
        at(drying).lot = lots.back();
        at(drying).amount = grams(weight);
    }
    void further(Key<Material> material, std::int64_t weight, std::optional<Ratio> worth) {
        lots.push_back(lot(material));
        auto& line = add<DryingLot>(drying);
        line.lot = lots.back();
        line.amount = grams(weight);
        line.worth = worth;
    }
    Money labour(const Ledger& ledger, std::size_t lot) const { return state(shop(), ledger, lots[lot]).cost.labour; }
    Ledger books() const { return replay(shop(), day(5)); }
};

}  // namespace

TEST_CASE("two lots from one plate share the vats by grams times worth, each vat to the last millionth") {
    Plate plate;
    plate.vat(0, minutes(60));
    plate.vat(1, minutes(7));
    plate.own(3);
    plate.further(plate.powder, 4, Ratio{1, 2});
    const Ledger ledger = plate.books();
    CHECK(plate.labour(ledger, 0) == Money::hundredths(804));  // 3 of 5 parts of 13.40
    CHECK(plate.labour(ledger, 1) == Money::hundredths(536));
    CHECK(state(plate.shop(), ledger, plate.lots[1]).left == 4'000);
    CHECK(ledger.balance(Boundary::lost).is_zero());
}

TEST_CASE("a further lot of no stated worth counts as much as the first; worth nothing it takes nothing") {
    Plate plate;
    plate.vat(0, minutes(60));
    plate.own(3);
    plate.further(plate.other, 3, std::nullopt);
    plate.further(plate.other, 9, Ratio{0, 1});
    const Ledger ledger = plate.books();
    CHECK(plate.labour(ledger, 0) == Money::units(6));
    CHECK(plate.labour(ledger, 1) == Money::units(6));
    CHECK(plate.labour(ledger, 2) == Money{});
}

TEST_CASE("where none is worth anything they share by weight") {
    Plate plate;
    plate.vat(0, minutes(60));
    plate.further(plate.powder, 1, Ratio{0, 1});
    plate.further(plate.powder, 3, Ratio{0, 1});
    const Ledger ledger = plate.books();
    CHECK(plate.labour(ledger, 0) == Money::units(3));
    CHECK(plate.labour(ledger, 1) == Money::units(9));
}

TEST_CASE("what was seen lost on the plate takes its share to lost, and nothing came of a plate with nothing weighed") {
    Plate plate;
    plate.vat(0, minutes(60));
    plate.at(plate.drying).lost = grams(1);
    SUBCASE("powder") {
        plate.own(3);
        plate.further(plate.powder, 4, Ratio{1, 2});
        const Ledger ledger = plate.books();
        CHECK(ledger.balance(Boundary::lost).labour == Money::units(2));
        CHECK(plate.labour(ledger, 0) == Money::units(6));
        CHECK(plate.labour(ledger, 1) == Money::units(4));
    }
    SUBCASE("nothing") {
        CHECK(plate.books().balance(Boundary::lost).labour == Money::units(12));
    }
}

TEST_CASE("lots of a plate without a vat are there, at no cost") {
    Plate plate;
    plate.own(3);
    plate.further(plate.powder, 4, std::nullopt);
    const Ledger ledger = plate.books();
    CHECK(has(ledger, FindingCode::drying_without_vat));
    CHECK(state(plate.shop(), ledger, plate.lots[1]).left == 4'000);
    CHECK(plate.labour(ledger, 1) == Money{});
}

TEST_CASE("a vat told at the end counts its hands, and its watched waiting by the share the maker set") {
    Plate plate;
    const auto vat = plate.vat(0, minutes(60));
    plate.at(vat).waiting = minutes(40);
    CHECK(-plate.books().balance(Boundary::hours).hands_on == Minutes::whole(60));
    auto& share = plate.add<WaitingShare>();
    share.from = day(0);
    share.share = Ratio{25, 100};
    CHECK(-plate.books().balance(Boundary::hours).hands_on == Minutes::whole(70));

    // A reading alone is no time told; minutes are, and then the steps count alone.
    auto& step = plate.add<VatStep>(vat);
    step.acidity = Acidity{900};
    const Key<VatStep> noted = step.key;
    CHECK(!has(plate.books(), FindingCode::vat_told_twice));
    plate.at(noted).hands_on = minutes(5);
    CHECK(has(plate.books(), FindingCode::vat_told_twice));
    CHECK(-plate.books().balance(Boundary::hours).hands_on == Minutes::whole(5));
}

TEST_CASE("whoever is named at the vat is whose time it is") {
    Plate plate;
    const auto vat = plate.vat(0, minutes(60));
    plate.at(vat).who = plate.person(day(0), Money::units(20));
    CHECK(-plate.books().balance(Boundary::hours).labour == Money::units(20));
}
