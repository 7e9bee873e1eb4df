#include "gui/models/verdict_view.h"

#include <doctest/doctest.h>

#include "gui/models/dials.h"
#include "reports/verdict_report.h"
#include "tests/domain/decisions/blue_shop.h"

namespace dyestead::gui {

namespace {

const std::string& headline_on_paper(const reports::Document& paper) {
    return std::get<reports::Headline>(paper.blocks.front()).text;
}

}  // namespace

TEST_CASE("window and paper say the same") {
    const test::BlueShop shop;
    const Ledger ledger = shop.ledger();
    const Books books{shop.shop(), ledger};
    const Verdict verdict = shop.verdict();
    const VerdictView view = verdict_view(books, verdict);
    CHECK(view.headline == headline_on_paper(reports::verdict_report(shop.shop(), ledger, verdict)));
    CHECK_FALSE(view.lines.empty());
    CHECK_FALSE(view.stands_on.empty());
    CHECK(colour_choice(books).colours == std::vector{shop.blue});
}

TEST_CASE("how it adds up does add up, and is the cost side by side") {
    const test::BlueShop shop;
    const Ledger ledger = shop.ledger();
    const Verdict verdict = shop.verdict();
    const reports::Table sum = verdict_view({shop.shop(), ledger}, verdict).adds_up;
    REQUIRE(sum.rows.size() == 9);
    for (const std::size_t column : {1U, 2U, 3U}) {
        double parts = 0;
        for (std::size_t row = 0; row + 1 < sum.rows.size(); ++row) parts += sum.rows[row][column].number.value();
        CHECK(parts == doctest::Approx(sum.rows.back()[column].number.value()));
    }
    CHECK(sum.rows.back()[1].number.value() == doctest::Approx(*verdict.figures.home.full_cost_per_bar));
}

TEST_CASE("what is tried out says so in its first word, and leaves the records alone") {
    const test::BlueShop shop;
    const Ledger ledger = shop.ledger();
    const Books books{shop.shop(), ledger};
    const Verdict verdict = shop.verdict();
    REQUIRE(verdict.figures.model);
    Dials dials{*verdict.figures.model, "GBP"};
    CHECK(dials.type(DialId::premium, "40").mistake.empty());
    const VerdictView tried = tried_view(books, verdict, dials.tried());
    CHECK(tried.headline.starts_with("If "));
    CHECK(tried.headline.find("would pay") != std::string::npos);
    CHECK(verdict_view(books, verdict).headline == verdict_view(books, shop.verdict()).headline);
    CHECK(tried.side_by_side.rows.front()[1].shown != verdict_view(books, verdict).side_by_side.rows.front()[1].shown);
}

}  // namespace dyestead::gui
