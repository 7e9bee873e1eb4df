#include "domain/text/csv.h"

#include <doctest/doctest.h>

using namespace dyestead;

namespace {

std::vector<std::vector<std::string>> cells(const CsvText& csv) {
    std::vector<std::vector<std::string>> all;
    for (const auto& row : csv.rows) {
        all.emplace_back();
        for (const auto& cell : row) all.back().push_back(cell.text);
    }
    return all;
}

using Rows = std::vector<std::vector<std::string>>;

}  // namespace

// The examples of RFC 4180, section 2, rules 1 to 7.
TEST_CASE("the examples of RFC 4180 are read as it says") {
    CHECK(cells(read_csv("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")) == Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(cells(read_csv("aaa,bbb,ccc\r\nzzz,yyy,xxx")) == Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(cells(read_csv("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx")) ==
          Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(cells(read_csv("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx")) ==
          Rows{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(cells(read_csv("\"aaa\",\"b\"\"bb\",\"ccc\"")) == Rows{{"aaa", "b\"bb", "ccc"}});
}

TEST_CASE("LF, a byte-order mark, empty cells and empty lines are read in silence") {
    const auto csv = read_csv(
        "\xEF\xBB\xBF"
        "code,name\nA,\n\n,B\n");
    CHECK(csv.troubles.empty());
    CHECK(cells(csv) == Rows{{"code", "name"}, {"A", ""}, {"", "B"}});
    CHECK(csv.rows[2][0].line == 4);
}

TEST_CASE("a cell after a quoted line break knows its own line") {
    const auto csv = read_csv("a,\"one\ntwo\",c\r\nd,e,f\r\n");
    REQUIRE(csv.rows.size() == 2);
    CHECK(csv.rows[0][1].line == 1);
    CHECK(csv.rows[0][2].line == 2);
    CHECK(csv.rows[1][0].line == 3);
}

TEST_CASE("troubles name their line and column") {
    const auto open = read_csv("a,b\nc,\"d\n");
    REQUIRE(open.troubles.size() == 1);
    CHECK(open.troubles[0].id == TroubleId::quote_not_closed);
    CHECK(open.troubles[0].line == 2);
    CHECK(open.troubles[0].column == "2");

    const auto after = read_csv("a,b\n\"c\"x,d\ne,f\n");
    REQUIRE(after.troubles.size() == 1);
    CHECK(after.troubles[0].id == TroubleId::text_after_quote);
    CHECK(after.troubles[0].line == 2);
    CHECK(after.troubles[0].column == "1");
    CHECK(after.rows.size() == 3);

    // A letter of Windows-1252, a UTF-8 letter cut short, an overlong slash, a surrogate, NUL.
    for (const std::string bad : {"\xFC", "\xC3", "\xC0\xAF", "\xED\xA0\x80", "\xF5\x80\x80\x80"}) {
        const auto text = read_csv("a,b\nc," + bad + "\n");
        REQUIRE(text.troubles.size() == 1);
        CHECK(text.troubles[0].id == TroubleId::not_utf8);
        CHECK(text.troubles[0].line == 2);
        CHECK(text.troubles[0].column == "2");
    }
    CHECK(read_csv(std::string{"a\0b", 3}).troubles.size() == 1);
    CHECK(read_csv("\xE2\x82\xAC,\xF0\x9F\x8C\xBF,\xC3\xBC\n").troubles.empty());
}

TEST_CASE("what was written is read back, and written the same again") {
    const std::vector<std::string> row{"plain", "", "a,b", "say \"so\"", "two\nlines", "\r", " blanks ", "\xC3\xBC"};
    std::string text;
    add_csv_row(text, row);
    CHECK(text == "plain,,\"a,b\",\"say \"\"so\"\"\",\"two\nlines\",\"\r\", blanks ,\xC3\xBC\r\n");
    CHECK(cells(read_csv(text)) == Rows{row});
}
