// Saponification values of single samples, from the saponification equivalents in Simmons and Appleton, The Handbook of
// Soap Manufacture (1908), by 56,100 / equivalent: each has to lie in the range the program begins with, which comes
// from other sources (domain/decisions/starter_oils.cpp).
#include <doctest/doctest.h>

#include <string>

#include "domain/decisions/starter_oils.h"

namespace dyestead {

TEST_CASE("the samples of 1908 lie within the ranges the program begins with") {
    struct Sample {
        const char* oil;
        double equivalent;
    };
    constexpr double kMolarMassAsPrinted = 56'100;
    for (const Sample& sample :
         {Sample{"Coconut oil, Cochin", 215.5}, Sample{"Coconut oil, Ceylon", 216}, Sample{"Olive oil", 288},
          Sample{"Cottonseed oil", 290}, Sample{"Sesame oil", 295.2}, Sample{"Sunflower oil", 290.7},
          Sample{"Castor oil", 310}, Sample{"Shea butter", 313}, Sample{"Shea butter", 303}, Sample{"Lard", 286},
          Sample{"Tallow", 283.6}, Sample{"Tallow", 286}}) {
        CAPTURE(std::string{sample.oil});
        const auto starter = starter_oil(sample.oil);
        REQUIRE(starter);
        const double value = kMolarMassAsPrinted / sample.equivalent;
        CHECK(value >= starter->saponification_low);
        CHECK(value <= starter->saponification_high);
    }
}

// Knapp, Cocoa and Chocolate (1920): 192 to 198; USP 29 and USP-grade sheets, almond: 190 to 200.
TEST_CASE("what is published is kept as it is printed") {
    CHECK(starter_oil("Cocoa butter, deodorised")->saponification_low == 192);
    CHECK(starter_oil("Cocoa butter, deodorised")->saponification_high == 198);
    CHECK(starter_oil("Sweet almond oil")->saponification_low == 190);
    CHECK(usual_density(*starter_oil("Sunflower oil")) == Ratio{9195, 10'000});
    CHECK_FALSE(usual_density(*starter_oil("Tallow")));
}

TEST_CASE("another oil of the same plant is not taken for it") {
    for (const char* name : {"Fractionated coconut oil", "Olive pomace oil", "High oleic sunflower oil",
                             "Palm kernel oil", "Hydrogenated castor oil", ""})
        CHECK_FALSE(starter_oil(name));
}

}  // namespace dyestead
