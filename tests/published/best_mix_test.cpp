// The scarce hour with several limits: a published plan, and made-up programs solved by somebody else's solver.
//   OpenStax, Principles of Accounting, Volume 2: Managerial Accounting (Rice University), chapter 10.
//   The program lp_solve (Debian package lp-solve), run on the same programs in its own LP format.
#include "domain/decisions/best_mix.h"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cstdio>
#include <map>
#include <random>
#include <sstream>

#include "tests/support/temp_folder.h"

using namespace dyestead;
using doctest::Approx;

namespace {

struct Case {
    std::vector<MixKind> kinds;
    std::vector<MixLimit> limits;
};

Case made_up(std::mt19937& dice) {
    const auto roll = [&](int most) { return static_cast<int>(dice() % static_cast<unsigned>(most + 1)); };
    Case made;
    const int kinds = 2 + roll(6);
    for (int i = 0; i < kinds; ++i) made.kinds.push_back({(5 + roll(600)) / 10.0, 1 + roll(19)});
    for (int i = 1 + roll(4); i > 0; --i) {
        MixLimit limit{20.0 + roll(400), {}, 1};
        for (int kind = 0; kind < kinds; ++kind) limit.takes.push_back(roll(30));
        made.limits.push_back(std::move(limit));
    }
    return made;
}

std::string model(const Case& of, bool whole) {
    std::string text = "max:";
    for (std::size_t i = 0; i < of.kinds.size(); ++i) text += fmt::format(" +{} x{}", of.kinds[i].contribution, i);
    text += ";\n";
    for (std::size_t row = 0; row < of.limits.size(); ++row) {
        text += fmt::format("c{}:", row);
        for (std::size_t i = 0; i < of.kinds.size(); ++i) text += fmt::format(" +{} x{}", of.limits[row].takes[i], i);
        text += fmt::format(" <= {};\n", of.limits[row].available);
    }
    for (std::size_t i = 0; i < of.kinds.size(); ++i) text += fmt::format("x{} <= {};\n", i, of.kinds[i].at_most);
    for (std::size_t i = 0; whole && i < of.kinds.size(); ++i) text += fmt::format("int x{};\n", i);
    return text;
}

std::string solved(const std::string& text) {
    const test::TempFolder folder;
    const auto path = folder / "model.lp";
    test::write_bytes(path, text);
    std::string said;
    FILE* program = popen(fmt::format("LC_ALL=C lp_solve -S4 < '{}' 2>&1", path.string()).c_str(), "r");
    REQUIRE(program != nullptr);
    std::array<char, 4096> part{};
    while (const std::size_t length = std::fread(part.data(), 1, part.size(), program))
        said.append(part.data(), length);
    const int ended = pclose(program);
    REQUIRE_MESSAGE(ended == 0, "lp_solve could not be run (Debian package lp-solve; tests/run installs it): ", said);
    return said;
}

double objective(const std::string& said) {
    const std::string_view line = "Value of objective function: ";
    const auto at = said.find(line);
    REQUIRE_MESSAGE(at != said.npos, said);
    std::istringstream rest{said.substr(at + line.size())};
    double value = -1;
    rest >> value;
    return value;
}

// What one more of each limit brings, and up to how much of it that holds.
std::map<std::string, std::pair<double, double>> dual_values(const std::string& said) {
    std::map<std::string, std::pair<double, double>> found;
    const auto at = said.find("Dual value");
    REQUIRE_MESSAGE(at != said.npos, said);
    std::istringstream lines{said.substr(at)};
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words{line};
        std::string name;
        double dual = 0;
        double from = 0;
        double till = 0;
        if (words >> name >> dual >> from >> till) found[name] = {dual, till};
    }
    return found;
}

}  // namespace

// The source ranks bookcases first by a contribution of 48; 175 - 35 - 50 - 45 is 45. Its plan stands all the same.
TEST_CASE("OpenStax 10, Wood World: 60,000 desks, 20,000 chairs and 40,000 bookcases; one more hour makes two chairs") {
    const Mix mix = best_mix({{350 - 40 - 70 - 55, 60'000}, {200 - 30 - 65 - 50, 48'000}, {175 - 35 - 50 - 45, 40'000}},
                             {{80'000, {1, 0.5, 0.25}, 1}});
    CHECK(mix.made == std::vector<int>{60'000, 20'000, 40'000});
    CHECK(mix.brings == Approx(60'000 * 185 + 20'000 * 55 + 40'000 * 45));
    CHECK(mix.limits[0].left == Approx(0));
    CHECK(mix.limits[0].step_brings == Approx(110));
    // A further desk takes the hour of two chairs, a further bookcase the quarter of one of half a chair.
    CHECK(mix.wanted_more[0] == Approx(185 - 110));
    CHECK(mix.wanted_more[1] == Approx(0));
    CHECK(mix.wanted_more[2] == Approx(45 - 27.5));
}

TEST_CASE("lp_solve finds no better plan, in whole units and in parts, and the same worth of one more") {
    std::mt19937 dice{1913};
    int compared = 0;
    for (int round = 0; round < 40; ++round) {
        const Case made = made_up(dice);
        const Mix mix = best_mix(made.kinds, made.limits);
        CAPTURE(model(made, true));
        REQUIRE(mix.proven);
        CHECK(mix.brings == Approx(objective(solved(model(made, true)))).epsilon(1e-7));
        const std::string in_parts = solved(model(made, false));
        CHECK(mix.brings_in_parts == Approx(objective(in_parts)).epsilon(1e-7));
        const auto duals = dual_values(in_parts);
        for (std::size_t row = 0; row < made.limits.size(); ++row) {
            const auto& [dual, till] = duals.at(fmt::format("c{}", row));
            CHECK(mix.limits[row].step_brings <= dual + 1e-5);
            if (till < made.limits[row].available + 1) continue;
            CHECK(mix.limits[row].step_brings == Approx(dual).epsilon(1e-5).scale(1));
            ++compared;
        }
    }
    CHECK(compared > 20);
}
