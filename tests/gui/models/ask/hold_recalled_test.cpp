#include "gui/models/ask/hold_recalled.h"

#include <doctest/doctest.h>

#include "domain/ledger/holds.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

namespace {

// Two batches, each of its own oil; ten bars of the first are cut, the second still lies in its mould.
struct TwoOils : test::Desk {
    Key<Material> oil = builder.material("Olive oil", Purpose::oil);
    Key<Material> bar = builder.made("Plain bar", MaterialKind::bar);
    Key<Lot> first = builder.delivery(day_of(2026, 3, 1), oil, test::grams(2'000), Money::units(20));
    Key<Lot> second = builder.delivery(day_of(2026, 3, 1), oil, test::grams(1'000), Money::units(10));
    Key<Lot> bars;

    TwoOils() : Desk{day_of(2026, 7, 4)} {
        builder.add<About>().currency = "GBP";
        bars = builder.cut(day_of(2026, 4, 2), poured(day_of(2026, 4, 1), first), 10, 0, day_of(2026, 5, 1));
        poured(day_of(2026, 7, 1), second);
        open();
    }
    Key<Batch> poured(Day day, Key<Lot> from) {
        const auto loaf = builder.batch(day, builder.recipe(10), bar);
        builder.uses<BatchUse>(loaf, oil, test::grams(1'000), from);
        return loaf;
    }
    Asked of(Key<Lot> lot) const { return {.as_of = "", .from = "", .about = shop.find(lot)->code}; }
    bool held(Key<Lot> lot) const {
        const auto at = static_cast<std::uint32_t>(shop.find(lot) - shop.all<Lot>().data());
        return holds(shop, ledger).why(at, day).has_value();
    }
};

}  // namespace

TEST_CASE("what is here of a recalled oil is put on hold in one entry, and is not offered again") {
    TwoOils desk;
    const RecalledHere here = recalled_here({desk.shop, desk.ledger}, desk.of(desk.first));
    CHECK(here.lots.size() == 2);  // the oil left, and the bars
    CHECK(here.not_made_up == 0);
    const auto kept = hold_recalled(desk.writing(), desk.of(desk.first));
    REQUIRE(kept);
    CHECK(kept->change.put.all<Hold>().size() == 2);
    desk.take(applied(desk.shop, kept->change));
    CHECK(desk.held(desk.bars));
    CHECK(desk.held(desk.first));
    CHECK_FALSE(desk.held(desk.second));
    const std::string told = kept->consequence(desk.writing());
    CHECK(told.find("10 bars are on hold now") != std::string::npos);
    CHECK(told.find("2 lots were put by") != std::string::npos);
    CHECK(recalled_here({desk.shop, desk.ledger}, desk.of(desk.first)).lots.empty());
    CHECK_FALSE(hold_recalled(desk.writing(), desk.of(desk.first)));
    // Two holds, two codes.
    CHECK(desk.shop.all<Hold>()[0].code != desk.shop.all<Hold>()[1].code);
}

TEST_CASE("a batch not cut yet cannot be put by, and that is said where something else was") {
    TwoOils desk;
    RecalledHere here = recalled_here({desk.shop, desk.ledger}, desk.of(desk.second));
    CHECK(here.lots.empty());  // all of it is in the mould
    CHECK(here.not_made_up == 1);
    CHECK_FALSE(hold_recalled(desk.writing(), desk.of(desk.second)));
    const Asked all{.as_of = "", .from = "", .about = desk.shop.find(desk.oil)->code};
    const auto kept = hold_recalled(desk.writing(), all);
    REQUIRE(kept);
    desk.take(applied(desk.shop, kept->change));
    CHECK(kept->consequence(desk.writing()).find("nothing to be put by yet") != std::string::npos);
}

TEST_CASE("nothing asked, nothing such on record, or no day: nothing to hold") {
    TwoOils desk;
    const Books books{desk.shop, desk.ledger};
    CHECK(recalled_here(books, {}).lots.empty());
    CHECK(recalled_here(books, {.as_of = "", .from = "", .about = "moon"}).lots.empty());
    Asked asked = desk.of(desk.first);
    asked.from = "some day";
    CHECK(recalled_here(books, asked).lots.empty());
}

}  // namespace dyestead::gui
