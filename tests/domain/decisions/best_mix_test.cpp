// The whole-number plan against trying every plan there is, on small made-up cases.
#include "domain/decisions/best_mix.h"

#include <doctest/doctest.h>

#include <functional>
#include <random>

using namespace dyestead;
using doctest::Approx;

namespace {

struct Case {
    std::vector<MixKind> kinds;
    std::vector<MixLimit> limits;
};

// At most 5 kinds, 5 of each and 4 limits, so that all plans can be tried.
Case made_up(std::mt19937& dice) {
    const auto roll = [&](int most) { return static_cast<int>(dice() % static_cast<unsigned>(most + 1)); };
    Case made;
    const int kinds = roll(5);
    for (int i = 0; i < kinds; ++i) made.kinds.push_back({roll(40) - 6.0, roll(5)});
    const int limits = roll(4);
    for (int i = 0; i < limits; ++i) {
        MixLimit limit{static_cast<double>(roll(30)), {}, 1};
        for (int kind = 0; kind < kinds; ++kind) limit.takes.push_back(roll(8));
        made.limits.push_back(std::move(limit));
    }
    return made;
}

double used(const MixLimit& limit, const std::vector<int>& made) {
    double sum = 0;
    for (std::size_t i = 0; i < made.size(); ++i) sum += limit.takes[i] * made[i];
    return sum;
}

double most_by_trying_all(const Case& of) {
    std::vector<int> made(of.kinds.size(), 0);
    double most = 0;
    const std::function<void(std::size_t, double)> from = [&](std::size_t kind, double brought) {
        for (const MixLimit& limit : of.limits)
            if (used(limit, made) > limit.available) return;
        if (kind == of.kinds.size()) {
            most = std::max(most, brought);
            return;
        }
        for (int n = 0; n <= of.kinds[kind].at_most; ++n) {
            made[kind] = n;
            from(kind + 1, brought + n * of.kinds[kind].contribution);
        }
        made[kind] = 0;
    };
    from(0, 0);
    return most;
}

}  // namespace

TEST_CASE("no plan there is brings more, and the plan keeps within every limit and what is wanted") {
    std::mt19937 dice{20'261'101};
    for (int round = 0; round < 400; ++round) {
        const Case made = made_up(dice);
        const Mix mix = best_mix(made.kinds, made.limits);
        CAPTURE(round);
        CHECK(mix.proven);
        CHECK(mix.brings == Approx(most_by_trying_all(made)));
        CHECK(mix.brings_in_parts >= mix.brings - 1e-6);
        double brings = 0;
        for (std::size_t i = 0; i < made.kinds.size(); ++i) {
            CHECK(mix.made[i] >= 0);
            CHECK(mix.made[i] <= made.kinds[i].at_most);
            brings += mix.made[i] * made.kinds[i].contribution;
        }
        CHECK(brings == Approx(mix.brings));
        for (std::size_t i = 0; i < made.limits.size(); ++i)
            CHECK(used(made.limits[i], mix.made) <= made.limits[i].available + 1e-6);
    }
}

TEST_CASE("what one step more of a limit brings is what the program in parts brings more with it") {
    std::mt19937 dice{7};
    for (int round = 0; round < 100; ++round) {
        Case made = made_up(dice);
        const Mix before = best_mix(made.kinds, made.limits);
        for (std::size_t i = 0; i < made.limits.size(); ++i) {
            made.limits[i].available += made.limits[i].step;
            const Mix after = best_mix(made.kinds, made.limits);
            made.limits[i].available -= made.limits[i].step;
            CHECK(before.limits[i].step_brings ==
                  Approx(after.brings_in_parts - before.brings_in_parts).epsilon(1e-6).scale(1));
            CHECK(after.brings >= before.brings - 1e-6);
        }
    }
}

TEST_CASE("a limit stops the kinds that are still wanted and of which not one more fits") {
    // Four hours: one loaf of three hours, and an hour is left that nothing fits in.
    const Mix mix = best_mix({{30, 2}, {8, 1}, {-1, 3}}, {{4, {3, 2, 1}, 1}, {9, {1, 1, 1}, 1}});
    CHECK(mix.made == std::vector<int>{1, 0, 0});
    CHECK(mix.brings == Approx(30));
    CHECK(mix.brings_in_parts == Approx(40));
    CHECK(mix.limits[0].used == Approx(3));
    CHECK(mix.limits[0].left == Approx(1));
    CHECK(mix.limits[0].stops == std::vector<std::size_t>{0, 1});
    CHECK(mix.limits[0].step_brings == Approx(10));
    CHECK(mix.limits[1].stops.empty());
    CHECK(mix.limits[1].step_brings == Approx(0));
    CHECK(mix.wanted_more[0] == Approx(0));
}

TEST_CASE("nothing to make, nothing short, nothing there") {
    CHECK(best_mix({}, {}).brings == 0);
    CHECK(best_mix({}, {{3, {}, 1}}).limits.size() == 1);
    const Mix all = best_mix({{5, 3}, {0, 4}, {-2, 4}}, {});
    CHECK(all.made == std::vector<int>{3, 0, 0});
    CHECK(all.brings == Approx(15));
    CHECK(all.wanted_more[0] == Approx(5));
    CHECK(all.wanted_more[2] == Approx(0));
    const Mix none = best_mix({{5, 3}}, {{0, {1}, 1}});
    CHECK(none.made == std::vector<int>{0});
    CHECK(none.limits[0].stops == std::vector<std::size_t>{0});
    CHECK(none.limits[0].step_brings == Approx(5));
    CHECK(best_mix({{5, 3}}, {{-2, {1}, 1}}).made == std::vector<int>{0});
    CHECK(best_mix({{5, 3}}, {{0, {0}, 1}}).made == std::vector<int>{3});
}

TEST_CASE("milligrams beside hours do not blur the plan") {
    const Mix mix = best_mix({{12, 10}, {11, 10}}, {{5, {1, 1}, 1}, {2'500'000, {600'000, 400'000}, 1e5}});
    // Five loaves in the hours; three of the first and two of the second would take 2,600 g.
    CHECK(mix.made == std::vector<int>{2, 3});
    CHECK(mix.limits[1].left == Approx(100'000));
}
