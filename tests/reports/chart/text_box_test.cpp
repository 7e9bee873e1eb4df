#include "reports/chart/text_box.h"

#include <doctest/doctest.h>

#include <string>

using namespace dyestead::reports;

TEST_CASE("text wraps at the width it is given, even inside a word") {
    const TextBox line{"a few words that want more than one line", {.size = 10}};
    CHECK(line.line_count() == 1);
    const TextBox wrapped{"a few words that want more than one line", {.size = 10}, 80};
    CHECK(wrapped.line_count() > 2);
    CHECK(wrapped.width() <= 80);
    CHECK(wrapped.height() == doctest::Approx(line.height() * static_cast<double>(wrapped.line_count())));
    const TextBox endless{std::string(200, 'x'), {.size = 10}, 80};
    CHECK(endless.width() <= 80);
    CHECK(endless.line_count() > 5);
}

TEST_CASE("size scales text exactly: nothing is rounded to the points of a screen") {
    const TextBox small{"Powder from a kilo", {.size = 7}};
    const TextBox large{"Powder from a kilo", {.size = 70}};
    CHECK(large.width() == doctest::Approx(small.width() * 10).epsilon(0.002));
}

TEST_CASE("bold is wider, and empty text has a line's height") {
    CHECK(TextBox{"total", {.size = 12, .bold = true}}.width() > TextBox{"total", {.size = 12}}.width());
    CHECK(TextBox{"", {.size = 12}}.width() == 0);
    CHECK(TextBox{"", {.size = 12}}.height() > 8);
}
