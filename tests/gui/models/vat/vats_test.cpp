#include "gui/models/vat/vats.h"

#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "gui/models/vat/powder.h"
#include "tests/support/shop_builder.h"

namespace dyestead::gui {

namespace {

const Day kToday = day_of(2026, 9, 1);

// Three vats of one colour: one dried, one that gave nothing, one standing.
struct VatHouse {
    test::ShopBuilder builder;
    Key<Colour> blue;
    Key<Material> powder;
    Key<Lot> jar;
    std::vector<Key<Vat>> vats;
    Ledger ledger;

    VatHouse() {
        builder.add<About>().currency = "GBP";
        const auto who = builder.person(day_of(2026, 1, 1), Money::units(12));
        blue = builder.add<Colour>().key;
        builder.at(blue).name = "blue";
        const auto leaf = builder.made("leaf", MaterialKind::harvest);
        powder = builder.made("blue powder", MaterialKind::pigment);
        builder.at(powder).colour = blue;
        const auto bought = builder.material("bought blue", Purpose::colourant);
        const auto bed = builder.planting(day_of(2026, 4, 1), test::square_metres(4), test::grams(9'000));
        for (const unsigned day : {1U, 8U, 15U}) {
            builder.harvest(day_of(2026, 8, day), bed, leaf, test::grams(3'000));
            auto& vat = builder.add<Vat>();
            vat.date = day_of(2026, 8, day);
            vat.colour = blue;
            vats.push_back(vat.key);
            builder.uses<VatUse>(vats.back(), leaf, test::grams(3'000));
            auto& step = builder.add<VatStep>(vats.back());
            step.what = "steep";
            step.who = who;
            step.hands_on = test::minutes(90);
            step.waiting = test::minutes(600);
            step.temperature = Temperature{805};
            step.begun = Moment{day_of(2026, 8, day), 9 * 60 + 5, 60};
        }
        jar = builder.lot(powder);
        dry(day_of(2026, 8, 5), vats[0], jar, test::grams(6));
        dry(day_of(2026, 8, 12), vats[1], std::nullopt, std::nullopt);
        auto& shade = builder.add<ShadeTest>();
        shade.date = day_of(2026, 8, 20);
        shade.lot = jar;
        shade.against = bought;
        shade.needed_for_same = Ratio{5, 2};
        ledger = replay(builder.shop(), kToday);
    }
    void dry(Day day, Key<Vat> vat, std::optional<Key<Lot>> lot, std::optional<Amount> amount) {
        auto& drying = builder.add<Drying>();
        drying.date = day;
        drying.lot = lot;
        drying.amount = amount;
        const auto head = drying.key;
        builder.add<DryingVat>(head).vat = vat;
    }
    Books books() const { return {builder.shop(), ledger}; }
};

}  // namespace

TEST_CASE("every vat with what it took and gave, the newest first") {
    const VatHouse house;
    const VatList list = vat_list(house.books());
    REQUIRE(list.table.rows.size() == 3);
    CHECK(list.vats == std::vector{house.vats[2], house.vats[1], house.vats[0]});
    const auto& standing = list.table.rows[0];
    CHECK(standing[2].shown == "standing");
    CHECK(standing[3].shown == "3");
    CHECK(standing[4].no_value);
    CHECK(standing[7].shown == "1 h 30 min");
    CHECK(list.table.rows[1][2].shown == "gave nothing");
    CHECK(list.table.rows[1][4].number == 0.0);
    const auto& dry = list.table.rows[2];
    CHECK(dry[0].shown == "1 Aug 2026");
    CHECK(dry[4].shown == "6");
    CHECK(dry[5].shown == "2");
    CHECK(dry[6].shown == "3.00");  // 90 minutes at 12 an hour over 6 g
    CHECK(dry[2].shown == "dry");
}

TEST_CASE("a vat begun after the day of the books is not there") {
    const VatHouse house;
    const Ledger early = replay(house.builder.shop(), day_of(2026, 8, 10));
    CHECK(vat_list({house.builder.shop(), early}).vats.size() == 2);
}

TEST_CASE("how a vat was worked") {
    const VatHouse house;
    const reports::Table steps = step_list(house.books(), house.vats[0]);
    REQUIRE(steps.rows.size() == 1);
    CHECK(steps.rows[0][0].shown == "steep");
    CHECK(steps.rows[0][1].shown == "09:05");
    CHECK(steps.rows[0][2].shown == "1 h 30 min");
    CHECK(steps.rows[0][4].shown == "80.5");
    CHECK(steps.rows[0][5].no_value);
    CHECK(vat_sentence(house.books(), house.vats[0]) ==
          "Vat of 1 August 2026, blue: 1 h 30 min hands-on, 10 h 00 min waiting.");
}

TEST_CASE("powder in hand, with its newest shade test") {
    const VatHouse house;
    const reports::Table powder = powder_list(house.books()).table;
    REQUIRE(powder.rows.size() == 1);
    CHECK(powder.rows[0][2].shown == "6");
    CHECK(powder.rows[0][3].shown == "2.5 g");
    CHECK(powder.rows[0][4].shown == "3.00");
    CHECK(vat_state(house.books()) == "One vat is standing. Powder in hand: 6 g blue.");
}

}  // namespace dyestead::gui
