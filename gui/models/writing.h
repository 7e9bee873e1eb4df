// writing.h - what a form has to hand while it is filled in: the books as they stand, the day that is being written
// for, and fresh keys for new records.
#pragma once

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "gui/models/books.h"

namespace dyestead::gui {

struct Writing {
    Books books;
    Day day;  // the day new records are dated to; stays until it is changed
    std::function<std::int64_t()> new_key_number;

    const Shop& shop() const { return books.shop; }
    template <class Fact>
    Key<Fact> new_key() const {
        return {new_key_number()};
    }
};

// Letters and digits of a name as they may stand in a code: "Olive oil, spring" gives "olive-oil-spring".
std::string code_from(std::string_view name);

// "stem-2026-07-04", with -2, -3 ... behind it where a fact of the kind already has that code. `taken`: also these.
template <class Fact>
std::string free_code(const Shop& shop, const std::string& stem, const std::vector<std::string>& taken = {}) {
    const auto used = [&](const std::string& code) {
        const auto same = [&](const Fact& fact) { return fact.code == code; };
        const auto& all = shop.all<Fact>();
        return std::find_if(all.begin(), all.end(), same) != all.end() ||
               std::find(taken.begin(), taken.end(), code) != taken.end();
    };
    std::string code = stem;
    for (int n = 2; used(code); ++n) code = stem + "-" + fmt::to_string(n);
    return code;
}

}  // namespace dyestead::gui
