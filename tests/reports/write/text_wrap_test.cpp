#include "reports/write/text_wrap.h"

#include <doctest/doctest.h>

using namespace dyestead::reports;
using Lines = std::vector<std::string>;

TEST_CASE("width counts characters, not bytes, and combining marks not at all") {
    CHECK(text_width("") == 0);
    CHECK(text_width("£15") == 3);
    CHECK(text_width("ō") == 1);
    CHECK(text_width("o\u0304") == 1);
    CHECK(text_width("\xff\xfe") == 2);
    CHECK(text_width("\xe2\x82") == 2);  // a character cut off
}

TEST_CASE("lines break at spaces and never pass the width") {
    CHECK(wrap_text("sow in spring", 8) == Lines{"sow in", "spring"});
    CHECK(wrap_text("sow in spring", 13) == Lines{"sow in spring"});
    CHECK(wrap_text("sow in spring", 12) == Lines{"sow in", "spring"});
    CHECK(wrap_text("", 10) == Lines{""});
    CHECK(wrap_text("two  spaces", 20) == Lines{"two spaces"});
    CHECK(wrap_text("one\n\ntwo", 20) == Lines{"one", "", "two"});
}

TEST_CASE("a word wider than the line is broken, a mark stays with its letter") {
    CHECK(wrap_text("a abcdefgh b", 3) == Lines{"a", "abc", "def", "gh", "b"});
    CHECK(wrap_text("o\u0304o\u0304o\u0304", 2) == Lines{"o\u0304o\u0304", "o\u0304"});
    CHECK(wrap_text("abc", 0) == Lines{"a", "b", "c"});
}

TEST_CASE("the longest word is the least a column can be") {
    CHECK(longest_word("one fourteen\nsix") == 8);
    CHECK(longest_word("") == 0);
}
