// any_act.h - how RapidCheck makes the acts of a random shop, and shows those of a failing one.
#pragma once

#include <ostream>

#include <rapidcheck.h>

#include "tests/support/random_shop.h"

namespace rc {
template <>
struct Arbitrary<dyestead::test::Act> {
    using Act = dyestead::test::Act;
    static Gen<Act> arbitrary() {
        const auto number = gen::inRange(0, 1'000);
        return gen::build<Act>(gen::set(&Act::what, gen::inRange(0, dyestead::test::kActs)),
                               gen::set(&Act::day, gen::inRange(0, dyestead::test::kDays)), gen::set(&Act::a, number),
                               gen::set(&Act::b, number), gen::set(&Act::c, number));
    }
};
}  // namespace rc

namespace dyestead::test {
inline void showValue(const Act& act, std::ostream& out) {
    out << "{" << act.what << ", " << act.day << ", " << act.a << ", " << act.b << ", " << act.c << "}";
}
}  // namespace dyestead::test
