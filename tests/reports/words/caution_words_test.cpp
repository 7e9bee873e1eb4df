#include "reports/words/caution_words.h"

#include <doctest/doctest.h>

#include <set>

namespace dyestead::reports {

TEST_CASE("every caution names its thing and says something of its own") {
    std::set<std::string> seen;
    for (const Caution caution : {Caution::lye, Caution::dust, Caution::hot, Caution::sensitising, Caution::invasive}) {
        const std::string sentence = caution_sentence(caution, "Soda ash");
        CHECK(sentence.starts_with("Soda ash: "));
        CHECK(seen.insert(sentence).second);
    }
    CHECK(caution_sentence(Caution::none, "Soda ash").empty());
}

TEST_CASE("until the assessor said yes, the colour is told to be asked about") {
    CHECK(allowed_sentence("blue", nullptr).find("ask the safety assessor before sowing") != std::string::npos);
    Allowed answer;
    answer.date = day_of(2026, 3, 1);
    answer.asked = "the assessor";
    answer.where = "the county";
    answer.answer = Answer::waiting;
    CHECK(allowed_sentence("blue", &answer).find("not known yet") != std::string::npos);
    answer.answer = Answer::no;
    CHECK(allowed_sentence("blue", &answer).find("is not allowed") != std::string::npos);
    answer.answer = Answer::yes;
    CHECK(allowed_sentence("blue", &answer).empty());
}

TEST_CASE("the verdict says what it is not") {
    CHECK(verdict_is_a_sum().find("not advice") != std::string::npos);
    CHECK(verdict_is_a_sum().find("before income tax") != std::string::npos);
    CHECK(lye_caution().find("never the reverse") != std::string::npos);
}

}  // namespace dyestead::reports
