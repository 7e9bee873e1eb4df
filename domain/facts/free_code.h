// free_code.h - which code does a new record get? Readable, and no other record of its kind has it.
#pragma once

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

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

}  // namespace dyestead
