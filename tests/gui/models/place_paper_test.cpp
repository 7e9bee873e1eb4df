#include "gui/models/place_paper.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "gui/models/cupboard/cupboard_place.h"
#include "gui/models/vat/vat_place.h"
#include "reports/write/text.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {
namespace {

bool says(const reports::Document& paper, std::string_view what) {
    std::string text = reports::write_text(paper);
    std::ranges::replace(text, '\n', ' ');
    return text.find(what) != std::string::npos;
}

const reports::Table* table_called(const reports::Document& paper, std::string_view title) {
    for (const reports::Block& block : paper.blocks)
        if (const auto* table = std::get_if<reports::Table>(&block); table != nullptr && table->title == title)
            return table;
    return nullptr;
}

}  // namespace

TEST_CASE("a place on paper says what the screen says: state, list, and what is told of the selected line") {
    test::Desk desk{day_of(2026, 7, 4)};
    desk.builder.add<About>().currency = "GBP";
    const auto lye = desk.builder.material("Lye flakes", Purpose::lye);
    desk.builder.at(lye).caution = Caution::lye;
    desk.builder.delivery(day_of(2026, 5, 1), lye, test::grams(5'000), Money::units(40));
    desk.builder.delivery(
        day_of(2026, 5, 1), desk.builder.material("Olive oil", Purpose::oil), test::grams(900), Money::units(9));
    desk.open();
    const Books books{desk.shop, desk.ledger};
    const auto cupboard = cupboard_place();
    const auto lists = cupboard->listings(books, {});
    const auto row = std::ranges::find(lists[0].rows, FactRef{kKindOf<Material>, lye.number}) - lists[0].rows.begin();
    const auto paper = place_paper(*cupboard, books, 0, lists[0], static_cast<std::size_t>(row));
    CHECK(paper.title == "Stock, 4 July 2026");
    CHECK(paper.report == "stock");
    const reports::Table* stock = table_called(paper, "Stock");
    REQUIRE(stock != nullptr);
    CHECK(stock->rows.size() == 2);
    CHECK(says(paper, cupboard->detail(books, 0, lists[0].rows[static_cast<std::size_t>(row)]).sentence.substr(0, 20)));
    CHECK(says(paper, "Lye flakes: burns skin and eyes."));
    // What was searched for is what is printed.
    const auto found = cupboard->listings(books, "olive");
    CHECK(table_called(place_paper(*cupboard, books, 0, found[0], std::nullopt), "Stock")->rows.size() == 1);
}

TEST_CASE("an empty list on paper says what to do, and its cautions stand there too") {
    test::Desk desk{day_of(2026, 7, 4)};
    desk.open();
    const Books books{desk.shop, desk.ledger};
    const auto vat = vat_place();
    const auto paper = place_paper(*vat, books, 0, vat->listings(books, {})[0], std::nullopt);
    CHECK(says(paper, "No vat yet."));
    CHECK(says(paper, "Goggles and gloves at the vat"));
    // Its own sheet is there before the first vat.
    const auto doings = vat->doings(0);
    const auto sheet = std::ranges::find_if(doings, [](const Doing& each) { return each.paper != nullptr; });
    REQUIRE(sheet != doings.end());
    CHECK(sheet->paper(books, std::nullopt).title == "Vat sheet");
}

}  // namespace dyestead::gui
