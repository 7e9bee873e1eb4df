#include "reports/words/language.h"

#include <doctest/doctest.h>

#include "reports/chart/axis_ticks.h"
#include "reports/words/shown.h"
#include "reports/write/csv.h"
#include "reports/write/json.h"
#include "tests/reports/words/in_german.h"
#include "tests/reports/write/sample_document.h"

namespace dyestead::reports {

TEST_CASE("without a translation numbers are English") {
    CHECK(language_here() == "en");
    CHECK(marks_here().thousands == ",");
    CHECK(marks_here().decimal == ".");
    CHECK(in_marks_here("1.5 kg") == "1.5 kg");
}

TEST_CASE("figures follow the language of the sentences") {
    const test::InGerman speak;
    CHECK(language_here() == "de");
    CHECK(shown_money(1912.4, "GBP") == "1.912,40\u00a0£");
    CHECK(shown_money(-0.06, "EUR") == "-0,06\u00a0€");
    CHECK(shown_money(1234567, "JPY") == "1.234.567\u00a0¥");
    CHECK(shown_money(12.5, "SEK") == "12,50\u00a0SEK");
    CHECK(bare_money(-1912.405, "GBP") == "-1.912,41");
    CHECK(shown_number(0.526315) == "0,526");
    CHECK(shown_number(12) == "12");
    CHECK(shown_fixed(2.5, 2) == "2,50");
    CHECK(shown_minutes(3.67) == "3,7 min");
    CHECK(shown_date(day_of(2026, 7, 3)) == "3. Juli 2026");
    CHECK(axis_tick_label({.at = {2.5}, .decimals = 1}, 2.5) == "2,5");
}

TEST_CASE("a text of the records takes the reader's mark, and only where a number has one") {
    const test::InGerman speak;
    CHECK(in_marks_here("2.25 kg") == "2,25 kg");
    CHECK(in_marks_here("4 tsp.") == "4 tsp.");
    CHECK(in_marks_here(".5") == ".5");
    CHECK(in_marks_here("about 1.5 h, 30 min.") == "about 1,5 h, 30 min.");
}

TEST_CASE("a language that says nonsense about its numbers gets the English marks") {
    set_translation(
        {[](std::string_view english) { return english == "1,234.5" ? std::string{"?"} : std::string{english}; },
         nullptr});
    CHECK(shown_number(1240.4) == "1,240");
    CHECK(shown_fixed(2.5, 1) == "2.5");
    set_translation({});
}

TEST_CASE("the figures of a file are the same in every language") {
    const Document document = sample_document();
    const std::string json = write_json(document);
    const std::string csv = write_csv(document);
    const test::InGerman speak;
    CHECK(write_json(document) == json);
    CHECK(write_csv(document) == csv);
}

}  // namespace dyestead::reports
