#include "reports/verdict_report.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

#include "reports/verdict_figures.h"
#include "reports/write/json.h"
#include "reports/write/text.h"
#include "tests/reports/example_verdict.h"

namespace dyestead::reports {
namespace {

// What other programs rely on: every key, in this order.
const std::vector<std::string>& contract() {
    static const std::vector<std::string> keys = [] {
        std::vector<std::string> all;
        for (const char* who : {"home", "bought", "plain"})
            for (const char* key :
                 {"shelf_price_per_bar", "price_per_bar", "fees_per_bar", "materials_per_bar", "labour_per_bar",
                  "energy_per_bar", "overhead_per_bar", "cash_cost_per_bar", "full_cost_per_bar", "cash_margin_per_bar",
                  "full_margin_per_bar", "hands_on_minutes_per_bar", "earnings_per_hour", "selling_cost_per_bar",
                  "selling_minutes_per_bar", "earnings_per_hour_with_selling"})
                all.push_back(std::string{who} + "." + key);
        for (const char* key : {"pigment.full_cost_per_gram",
                                "pigment.cash_cost_per_gram",
                                "pigment.hands_on_minutes_per_gram",
                                "pigment.strength",
                                "pigment.yield_g_per_kg",
                                "pigment.harvest_kg_per_vat",
                                "pigment.hands_on_minutes_per_vat",
                                "season.dye_hours",
                                "season.bars",
                                "season.cash_difference",
                                "season.full_difference",
                                "hourly_target",
                                "extra_dye_hour.earned",
                                "extra_dye_hour.hurdle",
                                "extra_dye_hour.soap_hour",
                                "breakeven.premium_per_bar",
                                "breakeven.hourly_target",
                                "breakeven.pigment_g_per_kg_harvest",
                                "breakeven.harvest_kg_per_vat",
                                "breakeven.hands_on_minutes_per_vat",
                                "breakeven.bought_price_per_gram",
                                "breakeven.premium_per_bar_cash",
                                "breakeven.pigment_g_per_kg_harvest_cash",
                                "breakeven.harvest_kg_per_vat_cash",
                                "breakeven.bought_price_per_gram_cash",
                                "chance.home_beats_bought",
                                "chance.home_beats_plain",
                                "chance.home_beats_bought_cash",
                                "chance.home_beats_plain_cash",
                                "doubt.home_cash_margin_per_bar_p10",
                                "doubt.home_cash_margin_per_bar_p50",
                                "doubt.home_cash_margin_per_bar_p90",
                                "doubt.home_full_margin_per_bar_p10",
                                "doubt.home_full_margin_per_bar_p50",
                                "doubt.home_full_margin_per_bar_p90",
                                "doubt.extra_dye_hour_earned_p10",
                                "doubt.extra_dye_hour_earned_p50",
                                "doubt.extra_dye_hour_earned_p90",
                                "powder.price_per_gram",
                                "powder.left_per_gram",
                                "powder.left_per_dye_hour",
                                "powder.soap_left_per_gram",
                                "powder.soap_left_per_dye_hour",
                                "powder.even_price_per_gram"})
            all.emplace_back(key);
        return all;
    }();
    return keys;
}

void keeps_the_contract(const std::vector<Figure>& figures) {
    std::vector<std::string> keys;
    for (const Figure& figure : figures) {
        keys.push_back(figure.key);
        if (figure.value) CHECK(std::isfinite(*figure.value));
    }
    CHECK(keys == contract());
}

Document report(const Verdict& verdict) {
    Ledger ledger;
    ledger.as_of = day_of(2026, 10, 31);
    return verdict_report(example_shop(), ledger, verdict);
}

template <class Wanted>
std::vector<Wanted> blocks(const Document& document) {
    std::vector<Wanted> found;
    for (const Block& block : document.blocks)
        if (const auto* wanted = std::get_if<Wanted>(&block)) found.push_back(*wanted);
    return found;
}

}  // namespace

TEST_CASE("every key is there, known or not, and none is not a number") {
    keeps_the_contract(all_figures(Verdict{}));
    keeps_the_contract(report(example_verdict(RulingWord::buy_in, example_model(0))).figures);
    VerdictFigures odd = example_figures(example_model(0));
    odd.home.earnings_per_hour = std::numeric_limits<double>::infinity();
    odd.pigment.strength = std::numeric_limits<double>::quiet_NaN();
    Verdict strange;
    strange.figures = odd;
    strange.doubt.home_beats_plain = std::numeric_limits<double>::quiet_NaN();
    const auto figures = all_figures(strange);
    keeps_the_contract(figures);
    CHECK_FALSE(figures[12].value.has_value());
}

TEST_CASE("figures are the verdict's own, unrounded") {
    const Verdict verdict = example_verdict(RulingWord::buy_in, example_model(0.5));
    for (const Figure& figure : report(verdict).figures) {
        if (figure.key == "extra_dye_hour.earned") CHECK(figure.value == verdict.figures.extra_dye_hour.earned);
        if (figure.key == "breakeven.hourly_target") CHECK(figure.value == verdict.figures.extra_dye_hour.earned);
        if (figure.key == "home.full_margin_per_bar") CHECK(figure.value == verdict.figures.home.full_margin_per_bar);
        if (figure.key == "bought.full_margin_per_bar")
            CHECK(figure.value == verdict.figures.bought.full_margin_per_bar);
        if (figure.key == "plain.cash_cost_per_bar") CHECK(figure.value == verdict.figures.plain.cash_cost_per_bar);
    }
}

TEST_CASE("the report says the answer first, with its lines and its small print") {
    const Document document = report(example_verdict(RulingWord::buy_in, example_model(0)));
    CHECK(document.report == "verdict");
    CHECK(document.as_of == "2026-10-31");
    CHECK(document.currency == "GBP");
    CHECK(document.title == "Is growing the blue worth the hours?");
    REQUIRE(std::holds_alternative<Headline>(document.blocks.front()));
    const std::string text = write_text(document);
    for (const char* line : {"Each bar: ", "Your hours: ", "What would turn it: ", "Stands on 8 vats", "not advice",
                             "may not be allowed", "Includes 2 vats that gave nothing"}) {
        CAPTURE(line);
        CHECK(text.find(line) != std::string::npos);
    }
    CHECK(text.find("nan") == std::string::npos);
    CHECK(document.findings.size() == 1);
    CHECK(document.findings[0].fact == "blue");
}

TEST_CASE("the picture adds up to what the table says") {
    const Verdict verdict = example_verdict(RulingWord::buy_in, example_model(0));
    const auto charts = blocks<Chart>(report(verdict));
    REQUIRE(charts.size() == 1);
    const auto& data = std::get<StackedBars>(charts[0].data);
    const auto& bars = data.bars;
    REQUIRE(bars.size() == 3);
    const Alternative* sources[] = {&verdict.figures.home, &verdict.figures.bought, &verdict.figures.plain};
    for (std::size_t at = 0; at < 3; ++at) {
        double total = 0;
        for (const double value : bars[at].values) total += value;
        CHECK(total == doctest::Approx(*sources[at]->full_cost_per_bar + *sources[at]->fees_per_bar));
        REQUIRE(bars[at].mark.has_value());
        CHECK(bars[at].mark->value == *sources[at]->price_per_bar);
        CHECK(bars[at].values.size() == data.series.size());
    }
    // The base loaf is the same in all three; only the colour differs.
    CHECK(bars[0].values[0] == bars[2].values[0]);
    CHECK(bars[0].values[3] > bars[1].values[3]);
    CHECK(bars[2].values[3] == 0);
}

TEST_CASE("an untested strength is shown at both strengths, with the same keys") {
    Verdict verdict = example_verdict(RulingWord::too_soon, example_model(1));
    verdict.ruling.missing = MissingRecord::shade_test;
    Model weaker = example_model(1);
    weaker.strength = 1.0 / 3;
    verdict.if_weaker = example_figures(weaker);
    const auto tables = blocks<Table>(report(verdict));
    const Table& both = tables.back();
    REQUIRE(both.rows.size() == verdict_figures(VerdictFigures{}, std::nullopt).size());
    for (std::size_t at = 0; at < both.rows.size(); ++at) CHECK(both.rows[at][0].shown == contract()[at]);
    CHECK(both.rows[8][1].number == verdict.figures.home.full_cost_per_bar);
    CHECK(both.rows[8][2].number == verdict.if_weaker->home.full_cost_per_bar);
}

TEST_CASE("a verdict that knows nothing still makes a whole report") {
    Verdict verdict;
    verdict.colour = {2};
    verdict.ruling = {RulingWord::too_soon, MissingRecord::dried_vat};
    const Document document = report(verdict);
    const std::string text = write_text(document);
    CHECK(text.find("Too soon to say about the blue.") != std::string::npos);
    CHECK(text.find("What is missing first is a vat") != std::string::npos);
    CHECK(blocks<Chart>(document).empty());
    CHECK(write_json(document).find("\"breakeven.bought_price_per_gram_cash\": null") != std::string::npos);
}

}  // namespace dyestead::reports
