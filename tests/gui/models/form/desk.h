// desk.h - a small shop to fill in forms over: what is kept goes into it, as it would into the file.
#pragma once

#include "domain/ledger/replay.h"
#include "gui/models/form/form.h"
#include "tests/support/shop_builder.h"

namespace dyestead::test {

struct Desk {
    ShopBuilder builder{};
    Day day;
    std::int64_t next_key = 1'000'000;
    Shop shop{};
    Ledger ledger{};

    explicit Desk(Day writing_for) : day{writing_for} {}
    // After the last fact was built: reads the books.
    void open() { take(builder.shop()); }
    void take(Shop now) {
        shop = std::move(now);
        shop.sort();
        ledger = replay(shop, day);
    }
    gui::Writing writing() {
        return {.books = {shop, ledger},
                .day = day,
                .new_key_number = [this] { return ++next_key; },
                .utc_offset = [](Moment) { return 60; }};
    }
    // Keeps the form and puts what it changes into the shop; what it says it means. Blank when it was not kept.
    std::string keep(gui::Form& form) {
        const auto kept = form.keep(form, writing());
        if (!kept) return {};
        take(applied(shop, kept->change));
        return kept->consequence ? kept->consequence(writing()) : std::string{"kept"};
    }
};

}  // namespace dyestead::test
