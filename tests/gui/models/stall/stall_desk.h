// stall_desk.h - the bench's shop with bars to sell: plain and blue ones ready, some on hold, some in cure, a price for
// each, and a fair that was stood two weeks ago.
#pragma once

#include "tests/gui/models/bench/bench_desk.h"

namespace dyestead::test {

struct StallDesk : BenchDesk {
    Key<Lot> plain_lot, blue_lot, held_lot, curing_lot;
    Key<Fair> market;

    StallDesk() {
        write_recipe();
        plain_lot = bars(day_of(2026, 5, 1), plain, 36);
        blue_lot = bars(day_of(2026, 5, 2), blue, 24);
        held_lot = bars(day_of(2026, 5, 3), plain, 12);
        curing_lot = bars(day_of(2026, 6, 28), blue, 12);
        auto& hold = builder.add<Hold>();
        hold.date = day_of(2026, 6, 1);
        hold.lot = held_lot;
        hold.why = "white crust";
        price(plain, 550);
        price(blue, 650);
        auto& fair = builder.add<Fair>();
        fair.name = "Green market";
        fair.date = day_of(2026, 6, 20);
        fair.fee = Money::units(30);
        fair.travel = Money::units(8);
        fair.change_float = Money::units(40);
        // 10 plain at 5.50, 6 blue at 6.50: 94.00, of it 20.00 by card.
        fair.cash_in_tin = Money::units(114);
        fair.card_takings = Money::units(20);
        fair.open = minutes(300);
        market = fair.key;
        line(market, plain, 16, 6);
        line(market, blue, 10, 4);
        auto& time = builder.add<FairTime>(market);
        time.time = minutes(480);
    }
    // Cut the day after it was poured, ready four weeks on; a bar has cost 0.50 of materials.
    Key<Lot> bars(Day poured, Key<Material> bar, int count) {
        const auto batch = builder.batch(poured, recipe, bar);
        builder.at(batch).loaves = count / 12;
        builder.uses<BatchUse>(batch, olive, grams(std::int64_t{count} * 125 / 2));
        return builder.cut(poured + Days{1}, batch, count, 0, poured + Days{29});
    }
    void price(Key<Material> bar, std::int64_t hundredths) {
        auto& price = builder.add<Price>();
        price.from = day_of(2026, 1, 1);
        price.bar = bar;
        price.shelf = Money::hundredths(hundredths);
    }
    void line(Key<Fair> fair, Key<Material> bar, int taken, int back) {
        auto& line = builder.add<FairLine>(fair);
        line.bar = bar;
        line.taken = taken;
        line.back = back;
    }
    gui::Books books() const { return {shop, ledger}; }
};

}  // namespace dyestead::test
