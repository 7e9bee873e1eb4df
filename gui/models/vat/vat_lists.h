// vat_lists.h - the lists of the Vat, one for each tab: vats, powder, dryings, shades, methods, colours, answers.
#pragma once

#include <algorithm>
#include <string_view>
#include <vector>

#include "gui/models/place.h"

namespace dyestead::gui {

std::vector<Listing> vat_listings(const Books& books, std::string_view find);

template <class Fact>
std::vector<const Fact*> newest_first(const Books& books) {
    std::vector<const Fact*> all;
    for (const Fact& fact : books.shop.all<Fact>())
        if (fact.date <= books.as_of()) all.push_back(&fact);
    std::ranges::stable_sort(all, [](const Fact* one, const Fact* other) { return one->date > other->date; });
    return all;
}

}  // namespace dyestead::gui
