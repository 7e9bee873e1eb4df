#include "gui/models/cupboard/stock.h"

#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "tests/support/shop_builder.h"

namespace dyestead::gui {

namespace {

const Day kToday = day_of(2026, 6, 1);

struct Cupboard {
    test::ShopBuilder builder;
    Key<Material> olive;
    Key<Material> lye;
    Ledger ledger;

    Cupboard() {
        auto& about = builder.add<About>();
        about.currency = "GBP";
        olive = builder.material("Olive oil", Purpose::oil);
        lye = builder.material("Lye", Purpose::lye);
        builder.delivery(day_of(2026, 1, 10), olive, test::grams(5'000), Money::units(40), Money::units(5));
        builder.delivery(day_of(2026, 3, 10), olive, test::grams(1'000), Money::units(11));
        builder.delivery(day_of(2026, 3, 12), lye, test::grams(1'000), Money::units(6));
        builder.loss(day_of(2026, 4, 1), lye, test::grams(1'000), LossReason::spilled);
        builder.made("Blue bar", MaterialKind::bar);
        ledger = replay(builder.shop(), kToday);
    }
    Books books() const { return {builder.shop(), ledger}; }
};

const std::string& cell(const reports::Table& table, std::size_t row, std::size_t column) {
    return table.rows.at(row).at(column).shown;
}

}  // namespace

TEST_CASE("stock by material: what is there first, what is used up last, bars not at all") {
    const Cupboard cupboard;
    const MaterialList list = cupboard_list(cupboard.books(), "");
    REQUIRE(list.table.rows.size() == 2);
    CHECK(list.materials == std::vector{cupboard.olive, cupboard.lye});
    CHECK(cell(list.table, 0, 0) == "Olive oil");
    CHECK(cell(list.table, 0, 1) == "6 kg");
    CHECK(cell(list.table, 0, 2) == "2");
    CHECK(cell(list.table, 0, 3) == "56.00");
    CHECK(cell(list.table, 0, 5) == "£9.33 a kg");  // 56 / 6
    CHECK(list.table.rows[1][5].no_value);
}

TEST_CASE("the search looks at names and at what stands on the jar, whatever the case") {
    const Cupboard cupboard;
    CHECK(cupboard_list(cupboard.books(), "OLIVE").materials == std::vector{cupboard.olive});
    CHECK(cupboard_list(cupboard.books(), "ye").materials == std::vector{cupboard.lye});
    CHECK(cupboard_list(cupboard.books(), cupboard.builder.shop().all<Lot>()[1].code).materials ==
          std::vector{cupboard.olive});
    CHECK(cupboard_list(cupboard.books(), "beeswax").materials.empty());
}

TEST_CASE("lots of one material with what each cost, delivery in") {
    const Cupboard cupboard;
    const reports::Table lots = lot_list(cupboard.books(), cupboard.olive);
    REQUIRE(lots.rows.size() == 2);
    CHECK(cell(lots, 0, 1) == "10 Jan 2026");
    CHECK(cell(lots, 0, 2) == "5 kg");
    CHECK(cell(lots, 0, 4) == "£9.00 a kg");  // (40 + 5) / 5
    CHECK(cell(lots, 1, 4) == "£11.00 a kg");
    const reports::Table spilled = lot_list(cupboard.books(), cupboard.lye);
    REQUIRE(spilled.rows.size() == 1);
    CHECK(spilled.rows[0][2].number == 0.0);
}

TEST_CASE("how things stand, in one sentence") {
    const Cupboard cupboard;
    CHECK(cupboard_state(cupboard.books()) == "One thing in hand, £56 at cost without your own hours, £56 with them.");
    CHECK(material_sentence(cupboard.books(), cupboard.olive) == "Olive oil: 6 kg in 2 lots.");
    CHECK(material_sentence(cupboard.books(), cupboard.lye) == "Lye: none left.");

    const Shop bare;
    const Ledger nothing = replay(bare, kToday);
    CHECK(cupboard_state({bare, nothing}).starts_with("The cupboard is bare"));
}

}  // namespace dyestead::gui
