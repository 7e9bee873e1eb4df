#include "reports/words/trouble_words.h"

#include <doctest/doctest.h>

#include <set>

namespace dyestead::reports {
namespace {

constexpr auto kLast = TroubleId::bad_argument;

Trouble full(TroubleId id) {
    return {id,
            {{"value", "3 flurbs"},
             {"choices", "one, two"},
             {"kind", "supplier"},
             {"first_file", "lot.csv"},
             {"first_line", "4"},
             {"lot", "L1"},
             {"wanted", "mass"},
             {"material", "olive"},
             {"cells", "3"},
             {"columns", "5"},
             {"rows", "2"},
             {"path", "shop.dyestead"},
             {"folder", "backups"},
             {"table", "recipe"}}};
}

}  // namespace

TEST_CASE("every trouble has a sentence of its own, with no brace left in it") {
    std::set<std::string> seen;
    for (int id = 0; id <= static_cast<int>(kLast); ++id) {
        const std::string sentence = trouble_sentence(full(static_cast<TroubleId>(id)));
        CAPTURE(id);
        CAPTURE(sentence);
        CHECK(sentence.size() > 20);
        CHECK(sentence.ends_with('.'));
        CHECK(sentence.find_first_of("{}") == std::string::npos);
        CHECK(seen.insert(sentence).second);
    }
}

TEST_CASE("a trouble without its particulars still makes a sentence") {
    for (int id = 0; id <= static_cast<int>(kLast); ++id) {
        const std::string sentence = trouble_sentence({static_cast<TroubleId>(id)});
        CHECK(sentence.ends_with('.'));
        CHECK(sentence.find_first_of("{}") == std::string::npos);
    }
}

TEST_CASE("a sentence says where: file, line and column as far as they are known") {
    const Trouble trouble{TroubleId::no_such_unit, {{"value", "3 flurbs"}}, "harvest.csv", 7, "amount"};
    CHECK(trouble_sentence(trouble) ==
          "harvest.csv, line 7, column amount: \"3 flurbs\" has no unit that is known; write it like 750 g, 1.5 l or "
          "12.");
    CHECK(trouble_sentence({TroubleId::quote_not_closed, {}, "harvest.csv", 7, ""}) ==
          "harvest.csv, line 7: a double quote is opened here and never closed; add the closing one.");
    CHECK(trouble_sentence({TroubleId::file_empty, {}, "harvest.csv"}).starts_with("harvest.csv: the file is empty"));
}

TEST_CASE("standing alone it begins like a sentence, but a file keeps its name") {
    CHECK(trouble_sentence({TroubleId::blank}) == "This is blank and is needed; write what belongs here.");
    CHECK(trouble_sentence({TroubleId::not_a_shop, {{"path", "shop.db"}}}).starts_with("shop.db is not a shop file"));
    CHECK(trouble_sentence({TroubleId::not_a_number, {{"value", "abc"}}}).starts_with("\"abc\" is not a number"));
}

TEST_CASE("braces that the maker typed are shown as typed") {
    CHECK(trouble_sentence({TroubleId::not_a_number, {{"value", "{0}"}}}).starts_with("\"{0}\" is not a number"));
}

TEST_CASE("an amount of the wrong kind is shown how to be written") {
    const Trouble bare{TroubleId::wrong_kind_of_amount, {{"value", "3 l"}, {"wanted", "area"}}};
    CHECK(trouble_sentence(bare).find("4 m2") != std::string::npos);
    const Trouble of_oil{
        TroubleId::wrong_kind_of_amount, {{"value", "3 l"}, {"wanted", "mass"}, {"material", "olive"}}};
    CHECK(trouble_sentence(of_oil).find("density of olive") != std::string::npos);
}

}  // namespace dyestead::reports
