#include "reports/write/csv.h"

#include <doctest/doctest.h>

#include <cmath>
#include <stdexcept>

#include "tests/reports/write/sample_document.h"

using namespace dyestead::reports;

TEST_CASE("figures first, then each table with title and headings, lines ended by CRLF") {
    Document document = empty_document();
    document.figures = {{"a", 0.1}, {"b", std::nullopt}};
    document.blocks = {Paragraph{"Not in it."},
                       Table{.title = "Side by side",
                             .columns = {{"what"}, {"EUR", Align::right}},
                             .rows = {{{"blue"}, {"1.64", 1.6412}}, {{"pink"}, {"n/a"}}, {{"plain"}}}},
                       Table{.title = "Second", .columns = {{"x"}}, .rows = {}}};
    document.findings = {{"c", "Text.", "V-1"}};
    CHECK(write_csv(document) ==
          "report,hours\r\nas_of,2026-01-31\r\ncurrency,EUR\r\na,0.1\r\nb,\r\n"
          "\r\nSide by side\r\nwhat,EUR\r\nblue,1.6412\r\npink,n/a\r\nplain,\r\n"
          "\r\nSecond\r\nx\r\n"
          "\r\nDoes not add up\r\ncode,text,fact\r\nc,Text.,V-1\r\n");
}

TEST_CASE("quotes, commas and line breaks are quoted, and nothing else") {
    // Source: RFC 4180, section 2, rules 5 to 7.
    Document document = empty_document();
    document.blocks = {
        Table{.title = "a,b", .columns = {{"say \"so\""}, {"plain text"}}, .rows = {{{"two\nlines"}, {"£1"}}}}};
    CHECK(write_csv(document).ends_with("\r\n\"a,b\"\r\n\"say \"\"so\"\"\",plain text\r\n\"two\nlines\",£1\r\n"));
}

TEST_CASE("a number that is none is never written") {
    Document document = empty_document();
    document.figures = {{"x", std::nan("")}};
    CHECK_THROWS_AS(write_csv(document), std::logic_error);
}
