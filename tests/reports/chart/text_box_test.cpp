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

TEST_CASE("a text is cut with an ellipsis on one line where it is too long, and only there") {
    const std::string text = "41 Pink with rose clay and a long name";
    const double whole = TextBox{text, {.size = 12}}.width();
    CHECK(TextBox::cut(text, {.size = 12}, whole + 1).width() == doctest::Approx(whole));
    const TextBox cut = TextBox::cut(text, {.size = 12}, whole / 2);
    CHECK(cut.line_count() == 1);
    CHECK(cut.width() <= whole / 2);
    CHECK(cut.width() > whole / 3);
    CHECK(TextBox::cut("two\nlines", {.size = 12}, 500).line_count() == 1);
}
