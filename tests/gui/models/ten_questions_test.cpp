#include <doctest/doctest.h>

#include "domain/decisions/memory_kept.h"
#include "gui/models/ten_questions.h"
#include "gui/models/verdict_view.h"
#include "tests/gui/models/form/desk.h"

using namespace dyestead;
using namespace dyestead::gui;
using dyestead::test::Desk;

namespace {

void answer(Form& form, const Writing& writing) {
    const std::vector<std::pair<const char*, const char*>> answers{
        {"plant", "weld"},   {"colour", "yellow"},    {"garden hours", "15 h"}, {"money out", "24"},
        {"vats", "4"},       {"vat time", "~2 h"},    {"powder", "30 g"},       {"dose", "6 g"},
        {"loaf bars", "12"}, {"strength", "a third"}, {"bought price", "9,50"}, {"bought amount", "50 g"},
        {"plain bar", "5"},  {"bought bar", "5.50"},  {"own bar", "6.50"},      {"hour", "12"}};
    for (const auto& [field, text] : answers) form.type(field, text, writing);
}

}  // namespace

TEST_CASE("ten questions give a first answer while they are filled in, and keep it") {
    Desk desk{day_of(2026, 11, 1)};
    desk.open();
    Form form = ten_questions_form(desk.writing());
    CHECK(form.fields.size() == kRecalled);
    CHECK(form.summary.empty());
    answer(form, desk.writing());
    CHECK(form.summary.find("Buy the yellow in") == 0);
    CHECK_FALSE(form.has_trouble());

    CHECK(desk.keep(form) == form.summary);
    REQUIRE(desk.shop.all<Colour>().size() == 1);
    CHECK(desk.shop.all<Guess>().size() == 15);

    // Opened again, the answers stand there; a changed one is corrected, not told twice.
    const Key<Colour> yellow = desk.shop.all<Colour>().front().key;
    Form again = ten_questions_form(desk.writing(), yellow);
    CHECK(again.text("powder") == "30 g");
    CHECK(again.text("colour") == "yellow");
    again.type("powder", "60 g", desk.writing());
    CHECK_FALSE(desk.keep(again).empty());
    CHECK(desk.shop.all<Guess>().size() == 15);
    CHECK(answers_on_record(desk.shop, yellow, desk.writing().day).at(Recalled::powder) == "60 g");

    const Writing writing = desk.writing();
    const Verdict verdict = dyestead::verdict(writing.books.shop, writing.books.ledger, yellow);
    REQUIRE(verdict.from_memory);
    const VerdictView view = verdict_view(writing.books, verdict);
    CHECK(view.stands_on.find("From memory") == 0);
    CHECK_FALSE(view.chart.has_value());
}

TEST_CASE("what cannot be read, or is needed and blank, is said beside its field and keeps nothing") {
    Desk desk{day_of(2026, 11, 1)};
    desk.open();
    Form form = ten_questions_form(desk.writing());
    answer(form, desk.writing());
    form.type("powder", "lots", desk.writing());
    CHECK_FALSE(form.field("powder").trouble.empty());
    CHECK(form.summary.empty());
    form.type("powder", "30 g", desk.writing());
    form.type("plain bar", "", desk.writing());
    CHECK(form.field("plain bar").trouble.empty());  // not while it is still being filled in
    CHECK_FALSE(form.keep(form, desk.writing()).has_value());
    CHECK_FALSE(form.field("plain bar").trouble.empty());
    form.type("plain bar", "5", desk.writing());
    form.type("hour", "", desk.writing());
    CHECK(form.keep(form, desk.writing()).has_value());
}

TEST_CASE("back at what was, or ahead from where one stands") {
    CHECK(ways_of_looking().size() == 4);
    CHECK_FALSE(stand_of(0).has_value());
    CHECK(stand_of(1) == Stand::before_sowing);
    CHECK(stand_of(3) == Stand::pigment_dry);
}
