#include "gui/models/ask/questions.h"

#include <doctest/doctest.h>

#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

TEST_CASE("every question has an answer or a sentence why not, on an empty shop and on one with records") {
    test::Desk desk{day_of(2026, 7, 4)};
    desk.open();
    for (const BooksQuestion& question : books_questions({desk.shop, desk.ledger})) {
        const Answer found = answer({desk.shop, desk.ledger}, question, {});
        CHECK_MESSAGE((found.document.has_value() || !found.trouble.empty()), question.label);
    }
    CHECK(books_state({desk.shop, desk.ledger}).starts_with("Nothing in the books yet."));

    desk.builder.add<About>().currency = "GBP";
    const auto oil = desk.builder.material("Olive oil", Purpose::oil);
    desk.builder.delivery(day_of(2026, 5, 1), oil, test::grams(5'000), Money::units(40));
    desk.open();
    const Books books{desk.shop, desk.ledger};
    const auto questions = books_questions(books);
    const auto worth = std::ranges::find(questions, std::string_view{"stock-value"}, &BooksQuestion::report);
    REQUIRE(worth != questions.end());
    CHECK(answer(books, *worth, {}).document);
    // As of a day before the delivery the books are other books.
    const auto before = answer(books, *worth, {.as_of = "1 April 2026", .from = "", .about = ""});
    REQUIRE(before.document);
    CHECK(before.document->as_of == "2026-04-01");
    CHECK_FALSE(answer(books, *worth, {.as_of = "some day", .from = "", .about = ""}).trouble.empty());
    // A recall by the number in the supplier's letter, from the question's own list.
    const auto recall = std::ranges::find(questions, std::string_view{"recall"}, &BooksQuestion::report);
    REQUIRE(recall != questions.end());
    REQUIRE(recall->about.size() == 4);  // the lot, its delivery, all of its material, all of its supplier
    for (const Choice& each : recall->about)
        CHECK_MESSAGE(answer(books, *recall, {.as_of = "", .from = "", .about = each.code}).document, each.shown);
    CHECK_FALSE(answer(books, *recall, {.as_of = "", .from = "", .about = "moon"}).trouble.empty());
    CHECK(books_state(books).starts_with("Since 1 January 2026: taken £0.00, spent £40"));
}

TEST_CASE("what is chosen from stands newest first, and is narrowed by what is typed to as many as a list bears") {
    test::Desk desk{day_of(2026, 7, 4)};
    const auto bar = desk.builder.made("Plain bar", MaterialKind::bar);
    for (int month = 1; month <= 3; ++month)
        desk.builder.batch(day_of(2026, static_cast<unsigned>(month), 5), desk.builder.recipe(10), bar);
    desk.open();
    const auto questions = books_questions({desk.shop, desk.ledger});
    const auto cost = std::ranges::find(questions, std::string_view{"cost-sheet"}, &BooksQuestion::report);
    REQUIRE(cost != questions.end());
    REQUIRE(cost->about.size() == 4);  // the first: whichever comes to mind
    CHECK(cost->about[1].shown.starts_with("batch of 5 March 2026"));
    CHECK(cost->about.back().shown.starts_with("batch of 5 January 2026"));
    CHECK(narrowed(cost->about, "FEBRUARY").size() == 1);
    CHECK(narrowed(cost->about, "").size() == 4);
    CHECK(narrowed(cost->about, "moon").empty());
    const std::vector<Choice> many(kMostChoices + 1, Choice{"a", "jar of blue"});
    CHECK(narrowed(many, "blue").size() == kMostChoices);
}

}  // namespace dyestead::gui
