// books.h - what a place reads its rows and sentences from: the facts, the ledger they come to, and the day.
#pragma once

#include <string>

#include "domain/ledger/ledger.h"

namespace dyestead::gui {

struct Books {
    const Shop& shop;
    const Ledger& ledger;

    Day as_of() const { return ledger.as_of; }
};

// The day the books are shown at: the one the shop is held at, else today.
Day shown_day(const Shop& shop, Day today);

// The name to stand in the title bar: the shop's own.
std::string shop_name(const Shop& shop);

// "The books stand at 4 July 2026": the day the shop is held at, or today.
std::string day_sentence(const Books& books);

}  // namespace dyestead::gui
