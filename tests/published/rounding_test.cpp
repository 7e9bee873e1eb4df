// Rounding and sharing out against published tables.
#include <doctest/doctest.h>

#include <array>
#include <cstdlib>
#include <numeric>
#include <string>
#include <vector>

#include "domain/values/ratio.h"
#include "domain/values/share.h"
#include "reports/words/currency.h"
#include "reports/words/shown.h"

using namespace dyestead;

namespace {

// Source: the table in the documentation of Java's RoundingMode; inputs in tenths, results of HALF_UP,
// which rounds half away from zero.
constexpr std::array<std::int64_t, 10> kInputs{55, 25, 16, 11, 10, -10, -11, -16, -25, -55};
constexpr std::array<std::int64_t, 10> kHalfUp{6, 3, 2, 1, 1, -1, -1, -2, -3, -6};
constexpr std::array<std::int64_t, 10> kHalfEven{6, 2, 2, 1, 1, -1, -1, -2, -2, -6};

}  // namespace

TEST_CASE("half away from zero is HALF_UP, and neither half even, up nor down") {
    for (std::size_t i = 0; i < kInputs.size(); ++i) {
        CAPTURE(kInputs[i]);
        CHECK(scaled(kInputs[i], 1, 10) == kHalfUp[i]);
        CHECK(times(kInputs[i], {1, 10}) == kHalfUp[i]);
    }
    CHECK(kHalfUp != kHalfEven);
}

TEST_CASE("money is shown half away from zero, in any number of places") {
    for (std::size_t i = 0; i < kInputs.size(); ++i) {
        CAPTURE(kInputs[i]);
        // Yen have no minor unit: tenths of a yen are rounded to yen.
        const std::string yen = reports::shown_money(Money::millionths(kInputs[i] * 100'000), "JPY");
        CHECK(yen.find(std::to_string(std::abs(kHalfUp[i]))) != std::string::npos);
        CHECK(yen.starts_with('-') == (kHalfUp[i] < 0));
    }
}

// Source: JIS Z 8401, the note on rounding in one step: 5.346 becomes 5.3, never 5.35 and then 5.4.
TEST_CASE("a figure is rounded once, never from an already rounded one") {
    CHECK(scaled(5'346, 1, 100) == 53);
    CHECK(scaled(scaled(5'346, 1, 10), 1, 10) == 54);  // what must not happen
    CHECK(reports::shown_money(Money::millionths(5'349'999), "JPY").find('5') != std::string::npos);
    // 0.4999999 is under a half at any number of places.
    CHECK(reports::shown_money(Money::millionths(1'499'999), "JPY").find('1') != std::string::npos);
    CHECK(reports::shown_money(Money::millionths(1'499'999), "GBP").find("1.50") != std::string::npos);
}

// Source: IBM's General Decimal Arithmetic test cases: 1.2345 to hundredths is 1.23, 1.2355 is 1.24.
TEST_CASE("hundredths of the decimal arithmetic test cases") {
    CHECK(scaled(12'345, 1, 100) == 123);
    CHECK(scaled(12'355, 1, 100) == 124);
}

// Source: ISO 4217, list one of 25 June 2024.
TEST_CASE("minor units of the currencies") {
    for (const auto* code : {"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV",
                             "XAF", "XOF", "XPF"})
        CHECK_MESSAGE(reports::minor_places(code) == 0, code);
    for (const auto* code : {"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"})
        CHECK_MESSAGE(reports::minor_places(code) == 3, code);
    for (const auto* code :
         {"EUR", "GBP", "USD", "CHF", "SEK", "NOK", "DKK", "PLN", "CZK", "HUF", "CAD", "AUD", "NZD", "INR"})
        CHECK_MESSAGE(reports::minor_places(code) == 2, code);
    CHECK(reports::shown_money(Money::millionths(1'234'500), "KWD").find("1.235") != std::string::npos);
}

namespace {

struct Apportionment {
    std::vector<std::int64_t> weights;
    std::vector<std::int64_t> published;  // by largest remainder
};

// Running shares, as every split in the books is made: each part of what is left, the last takes the rest.
std::vector<std::int64_t> shared_out(std::int64_t whole, const std::vector<std::int64_t>& weights) {
    std::int64_t left = std::accumulate(weights.begin(), weights.end(), std::int64_t{0});
    std::vector<std::int64_t> parts;
    for (const std::int64_t weight : weights) {
        parts.push_back(share_of(whole, weight, left));
        whole -= parts.back();
        left -= weight;
    }
    return parts;
}

// Sources: Electowiki, "Hamilton method"; OpenStax, Contemporary Mathematics, chapter on apportionment
// (the state paradox, and two examples of sharing out by largest remainder).
const std::vector<Apportionment> kApportionments{
    {{630560, 475327, 432879, 353523, 331589, 278514, 236841, 206236, 179570, 141822, 85533, 70835, 68705, 68446,
      55540},
     {11, 8, 7, 6, 6, 5, 4, 3, 3, 2, 1, 1, 1, 1, 1}},
    {{6, 6, 2}, {4, 4, 2}},
    {{6, 6, 2}, {5, 5, 1}},
    {{894000, 696000, 215000}, {19, 15, 4}},
    {{953000, 706000, 218000}, {19, 14, 5}},
    {{7100, 9080}, {39, 51}},
    {{7100, 9080, 1500}, {40, 50, 8}},
    {{15, 9, 10}, {31, 18, 21}},
    {{13, 12, 5, 16, 7, 9}, {6, 5, 2, 7, 3, 4}},
};

}  // namespace

TEST_CASE("running shares give out the published totals to the last seat, each within one of the published seats") {
    for (const Apportionment& each : kApportionments) {
        const auto seats = std::accumulate(each.published.begin(), each.published.end(), std::int64_t{0});
        const auto parts = shared_out(seats, each.weights);
        CHECK(std::accumulate(parts.begin(), parts.end(), std::int64_t{0}) == seats);
        for (std::size_t i = 0; i < parts.size(); ++i) CHECK(std::abs(parts[i] - each.published[i]) <= 1);
    }
}

TEST_CASE("rounding every part by itself misses the published totals, which is why nothing is split so") {
    const auto rounded = [](std::int64_t seats, const std::vector<std::int64_t>& weights) {
        const auto all = std::accumulate(weights.begin(), weights.end(), std::int64_t{0});
        std::int64_t sum = 0;
        for (const std::int64_t weight : weights) sum += scaled(seats, weight, all);
        return sum;
    };
    // Source: OpenStax, Contemporary Mathematics: 71 lights where there are 70.
    CHECK(rounded(70, {15, 9, 10}) == 71);
}
