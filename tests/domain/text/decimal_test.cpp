#include "domain/text/decimal.h"

#include <doctest/doctest.h>

#include <random>

using namespace dyestead;

namespace {

void reads(std::string_view text, std::int64_t digits, int places) {
    CAPTURE(text);
    const auto read = read_decimal(text);
    REQUIRE(read);
    CHECK((*read).digits == digits);
    CHECK((*read).places == places);
}

void refuses(std::string_view text, TroubleId trouble) {
    CAPTURE(text);
    const auto read = read_decimal(text);
    REQUIRE_FALSE(read);
    CHECK(*read.trouble == trouble);
}

}  // namespace

TEST_CASE("a number is read as it was typed, with its places") {
    reads("0", 0, 0);
    reads("38.4", 384, 1);
    reads("38.40", 3840, 2);
    reads("-0.5", -5, 1);
    reads(".5", 5, 1);
    reads("5.", 5, 0);
    reads("007", 7, 0);
    reads("  12\t", 12, 0);
    reads("-0", 0, 0);
}

TEST_CASE("18 digits are read, 19 are too many") {
    reads("999999999999999999", 999'999'999'999'999'999, 0);
    reads("-999999999999.999999", -999'999'999'999'999'999, 6);
    reads("0.000000000000000001", 1, 18);
    reads("000000000000000000000000001", 1, 0);
    refuses("1000000000000000000", TroubleId::too_large);
    refuses("1.000000000000000000", TroubleId::too_large);
    refuses("0.0000000000000000000", TroubleId::too_large);
    refuses("0.0000000000000000001", TroubleId::too_large);
    refuses("0.00000000000000000001", TroubleId::too_large);
    refuses("99999999999999999999999999999999999999999", TroubleId::too_large);
}

TEST_CASE("what is no plain number is refused, the comma too") {
    refuses("", TroubleId::blank);
    refuses(" \t ", TroubleId::blank);
    for (const auto* text :
         {"1,5", "1.234,5", "1 000", "1.2.3", "..", ".", "-", "--1", "+1", "1-", "1e3", "0x10", "ten", "1'000",
          "\xC2\xA0"
          "5",
          "\xD9\xA3", "nan", "inf"})
        refuses(text, TroubleId::not_a_number);
}

TEST_CASE("a printed number has no needless places") {
    CHECK(print_decimal({0, 6}) == "0");
    CHECK(print_decimal({3'840, 2}) == "38.4");
    CHECK(print_decimal({38'000'000, 6}) == "38");
    CHECK(print_decimal({-5, 1}) == "-0.5");
    CHECK(print_decimal({-1'000'001, 6}) == "-1.000001");
    CHECK(print_decimal({7, 9}) == "0.000000007");
    CHECK(print_decimal({INT64_MIN, 6}) == "-9223372036854.775808");
    CHECK(print_decimal({INT64_MAX, 18}) == "9.223372036854775807");
}

TEST_CASE("every number of up to 18 digits comes back from its own print") {
    std::mt19937_64 random{11};
    for (int round = 0; round < 20'000; ++round) {
        const auto size = static_cast<std::int64_t>(random() % 1'000'000'000'000'000'000);
        const std::int64_t digits = (random() % 2 == 0 ? 1 : -1) * (size >> (random() % 60));
        const int places = static_cast<int>(random() % 19);
        const auto text = print_decimal({digits, places});
        CAPTURE(text);
        const auto read = read_decimal(text);
        REQUIRE(read);
        // The same number: digits / 10^places, whatever zeros were dropped.
        CHECK((*read).places <= places);
        CHECK(static_cast<Wide>((*read).digits) * power_of_ten(places - (*read).places) == digits);
        CHECK(print_decimal(*read) == text);
    }
}

TEST_CASE("the shortest form is the one with the fewest places that still reads back") {
    CHECK(shortest_decimal(1'000, 1'000, 1) == "1");
    CHECK(shortest_decimal(1'500, 1'000, 1) == "1.5");
    CHECK(shortest_decimal(0, 1'000, 1) == "0");
    // A third of an hour in millionths of a minute is 0.333... h.
    CHECK(shortest_decimal(20'000'000, 60'000'000, 1) == "0.33333333");
    // 70 874 mg is 2.5 oz to the milligram.
    CHECK(shortest_decimal(70'874, 28'349'523'125, 1'000'000) == "2.5");
    CHECK(shortest_decimal(70'875, 28'349'523'125, 1'000'000) == "2.50004");
    CHECK(shortest_decimal(-1'500, 1'000, 1) == "-1.5");
}

TEST_CASE("only blanks and tabs at the ends are trimmed away") {
    CHECK(trimmed("  a b\t").compare("a b") == 0);
    CHECK(trimmed(" \t ").empty());
    CHECK(trimmed("\na").size() == 2);
}
