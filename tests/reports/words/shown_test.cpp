#include "reports/words/shown.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

#include "reports/words/currency.h"

namespace dyestead::reports {

TEST_CASE("money has the currency's minor unit") {
    // Source: ISO 4217, list one of 25 June 2024, column minor unit.
    CHECK(minor_places("GBP") == 2);
    CHECK(minor_places("EUR") == 2);
    CHECK(minor_places("SEK") == 2);
    for (const char* none : {"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "UYI", "VND",
                             "VUV", "XAF", "XOF", "XPF"})
        CHECK(minor_places(none) == 0);
    for (const char* three : {"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"}) CHECK(minor_places(three) == 3);
    for (const char* four : {"CLF", "UYW"}) CHECK(minor_places(four) == 4);
}

TEST_CASE("money is rounded half away from zero, in books and in doubles") {
    CHECK(shown_money(Money::millionths(1'005'000), "GBP") == "£1.01");
    CHECK(shown_money(Money::millionths(-1'005'000), "GBP") == "-£1.01");
    CHECK(shown_money(Money::millionths(1'004'999), "GBP") == "£1.00");
    CHECK(shown_money(Money::millionths(500'000), "JPY") == "¥1");
    CHECK(shown_money(Money::millionths(12'345'500), "KWD") == "12.346\u00a0KWD");
    CHECK(shown_money(0.125, "GBP") == "£0.13");
    CHECK(shown_money(-0.125, "GBP") == "-£0.13");
    CHECK(shown_money(2.5, "JPY") == "¥3");
    CHECK(shown_money(1912.4, "GBP") == "£1,912.40");
    CHECK(shown_money(1234567.0, "USD") == "$1,234,567.00");
}

TEST_CASE("nothing is never less than nothing") {
    CHECK(shown_money(-0.001, "EUR") == "€0.00");
    CHECK(shown_money(-0.0, "EUR") == "€0.00");
    CHECK(shown_number(-0.0000001) == "0");
    CHECK(shown_minutes(-0.01) == "0 min");
}

TEST_CASE("a sentence gets no more digits than it needs") {
    CHECK(rough_money(15.4, "GBP") == "£15");
    CHECK(rough_money(-92.5, "GBP") == "-£93");
    CHECK(rough_money(9.994, "GBP") == "£9.99");
    CHECK(rough_money(9.996, "GBP") == "£10");
    CHECK(rough_money(1.42, "GBP") == "£1.42");
    CHECK(fine_money(0.2534, "GBP") == "£0.253");
    CHECK(fine_money(0.25, "GBP") == "£0.25");
    CHECK(fine_money(3.634, "GBP") == "£3.63");
    CHECK(bare_money(-1912.405, "GBP") == "-1,912.41");
}

TEST_CASE("a currency without a sign of its own is named after the number") {
    CHECK(shown_money(12.5, "SEK") == "12.50\u00a0SEK");
    CHECK(shown_money(12.5, "") == "12.50");
}

TEST_CASE("minutes and hours") {
    CHECK(shown_minutes(125) == "2 h 05 min");
    CHECK(shown_minutes(59.4) == "59 min");
    CHECK(shown_minutes(59.6) == "1 h 00 min");
    CHECK(shown_minutes(3.67) == "3.7 min");
    CHECK(shown_minutes(9.96) == "10 min");
    CHECK(shown_minutes(-125) == "-2 h 05 min");
    CHECK(shown_hours(1) == "1 hour");
    CHECK(shown_hours(0.96) == "1 hour");
    CHECK(shown_hours(4.5) == "4.5 hours");
    CHECK(shown_hours(18.2) == "18 hours");
    CHECK(shown_hours(0) == "0 hours");
}

TEST_CASE("numbers, weights and shares") {
    CHECK(shown_number(0.526315) == "0.526");
    CHECK(shown_number(12.5) == "12.5");
    CHECK(shown_number(2) == "2");
    CHECK(shown_number(1240.4) == "1,240");
    CHECK(shown_number(0.00012) == "0.00012");
    CHECK(shown_fixed(2.5, 2) == "2.50");
    CHECK(shown_fixed(1240, 0) == "1,240");
    CHECK(shown_grams(2.5) == "2.5 g");
    CHECK(shown_grams(1240) == "1.24 kg");
    CHECK(shown_kilograms(2.2) == "2.2 kg");
    CHECK(shown_quantity(Quantity::grams(1900)) == "1.9 kg");
    CHECK(shown_quantity(Quantity::microlitres(750'000)) == "750 ml");
    CHECK(shown_quantity(Quantity::microlitres(1'500'000)) == "1.5 l");
    CHECK(shown_quantity(Quantity::pieces(12)) == "12");
    CHECK(shown_percent(0.12) == "12 %");
    CHECK(shown_percent(0.035) == "3.5 %");
    CHECK(shown_percent(1) == "100 %");
}

TEST_CASE("dates") {
    CHECK(shown_date(day_of(2026, 7, 3)) == "3 July 2026");
    CHECK(shown_date(day_of(2024, 2, 29)) == "29 February 2024");
}

TEST_CASE("what is not a number is said in words") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinite = std::numeric_limits<double>::infinity();
    for (const double value : {nan, infinite, -infinite, 1e30}) {
        CHECK(shown_money(value, "GBP") == "not known");
        CHECK(rough_money(value, "GBP") == "not known");
        CHECK(fine_money(value, "GBP") == "not known");
        CHECK(bare_money(value, "GBP") == "not known");
        CHECK(shown_minutes(value) == "not known");
        CHECK(shown_hours(value) == "not known");
        CHECK(shown_number(value) == "not known");
        CHECK(shown_grams(value) == "not known");
        CHECK(shown_percent(value) == "not known");
    }
}

}  // namespace dyestead::reports
