#include "reports/words/verdict_words.h"

#include <doctest/doctest.h>

#include <set>

#include "reports/words/breakeven_words.h"
#include "reports/words/verdict_notes.h"
#include "tests/reports/example_verdict.h"

namespace dyestead::reports {
namespace {

std::string headline(RulingWord word, double premium) {
    return verdict_headline(example_shop(), example_verdict(word, example_model(premium)));
}

void is_a_sentence(const std::string& text) {
    CAPTURE(text);
    CHECK(text.ends_with('.'));
    CHECK(text.find_first_of("{}") == std::string::npos);
    CHECK(text.find("nan") == std::string::npos);
}

}  // namespace

TEST_CASE("the sentence names what to do, the hours and the money") {
    // 118 bars at a cash difference of 0 - (0.0728 - 0.0224) = -0.0504 a bar.
    CHECK(headline(RulingWord::buy_in, 0) ==
          "Buy the blue in: growing it took 18 hours and left you £5.95 worse off than buying it.");
    CHECK(headline(RulingWord::buy_in, 0.5) ==
          "Buy the blue in: growing it brought £53 more than buying, too little for the 18 hours it took.");
    CHECK(headline(RulingWord::story_only, 1) ==
          "Grow the blue for its story, not for its colour: it pays only while people give £0.83 more for a bar, and "
          "they "
          "give you £1.00 more.");
    CHECK(headline(RulingWord::grow, 1) ==
          "Grow the blue again: it took 18 hours and left you £112 better off than buying it, and it would pay even at "
          "the "
          "same price.");
    CHECK(headline(RulingWord::too_close, 0.8).find("£0.03 a bar behind") != std::string::npos);
    CHECK(headline(RulingWord::too_soon, 0) == "Too soon to say about the blue.");
    CHECK(headline(RulingWord::no_target, 1) ==
          "Each extra hour spent growing the blue earned £16: is that enough for you?");
    CHECK(headline(RulingWord::leave_plain, 0).starts_with("Leave it plain: "));
}

TEST_CASE("each word has a sentence of its own") {
    std::set<std::string> seen;
    for (const RulingWord word :
         {RulingWord::too_soon, RulingWord::no_target, RulingWord::leave_plain, RulingWord::grow,
          RulingWord::story_only, RulingWord::buy_in, RulingWord::too_close}) {
        const std::string text = headline(word, 0.5);
        CHECK(text.find_first_of("{}") == std::string::npos);
        CHECK(text.find("blue") != std::string::npos);
        CHECK(seen.insert(text).second);
    }
}

TEST_CASE("the hours line follows the signs of money and hours") {
    const Shop shop = example_shop();
    const auto line = [&](double cash, double hours) {
        Verdict verdict = example_verdict(RulingWord::too_close, example_model(0));
        verdict.figures.home_less_bought = Difference{cash, hours};
        return your_hours_line(shop, verdict);
    };
    CHECK(line(0.5, 0.001).starts_with("Your hours: grown or bought in takes the same time"));
    CHECK(line(0.5, 0.05).starts_with("Your hours: each extra hour at bed and vat earned £10.00."));
    CHECK(line(-0.5, 0.05).starts_with("Your hours: each extra hour at bed and vat cost you £10.00; growing loses"));
    CHECK(line(0, 0.05).starts_with("Your hours: each extra hour at bed and vat cost you £0.00"));
    CHECK(line(0.5, -0.05).starts_with("Your hours: growing is ahead in money and in hours."));
    CHECK(line(-0.5, -0.05).starts_with("Your hours: buying costs £10.00 less for each hour it takes more"));
    CHECK(line(0.5, 0.05).ends_with(
        "You want £12.71 for an hour; an hour more of soap without colour would bring £9.40, before running costs "
        "and stalls."));
}

TEST_CASE("an hour of soap that turns it is said so") {
    const Shop shop = example_shop();
    Verdict verdict = example_verdict(RulingWord::buy_in, example_model(1));
    verdict.figures.extra_dye_hour.soap_hour = verdict.figures.extra_dye_hour.hurdle = 20;
    verdict.figures.full_difference_at_hurdle = verdict.figures.home_less_bought->full(20);
    verdict.figures.hurdle_turns_it = true;
    CHECK(your_hours_line(shop, verdict)
              .ends_with("At your own target of £12.71 it would pay, but an hour more of soap without colour would "
                         "bring £20.00, "
                         "before running costs and stalls."));
}

TEST_CASE("an hour of soap is doubted where bars came home") {
    Verdict verdict = example_verdict(RulingWord::buy_in, example_model(1));
    verdict.findings.push_back({VerdictFindingCode::more_came_home, {}, {}});
    CHECK(your_hours_line(example_shop(), verdict)
              .ends_with("But bars came home from most fairs, so more soap would not have sold."));
}

TEST_CASE("each bar, before and after the maker's time") {
    const Shop shop = example_shop();
    const Verdict verdict = example_verdict(RulingWord::buy_in, example_model(0));
    CHECK(each_bar_line(shop, verdict) ==
          "Each bar: before your time a grown one leaves £3.83, a bought-in one £3.88, a plain one £3.40; after your "
          "time "
          "£1.78, £2.61 and £2.13.");
}

TEST_CASE("what would turn it names only what is within reach") {
    const Shop shop = example_shop();
    // 76 g from a kilo, no vat big enough, less than no time: only the price is left.
    const auto at = [&](double premium) {
        return what_would_turn_it_line(shop, example_verdict(RulingWord::buy_in, example_model(premium)));
    };
    CHECK(at(0) ==
          "What would turn it: people giving £0.83 more for a grown bar than for a bought-in one (£0.00 now).");
    CHECK(at(0.5) ==
          "What would turn it: people giving £0.83 more for a grown bar than for a bought-in one (£0.50 now), or 3.26 "
          "g of "
          "powder from a kilo of harvest (2 g now).");
    CHECK(at(1) ==
          "What would turn it: people giving less than £0.83 more for a grown bar than for a bought-in one (£1.00 "
          "now), or "
          "less than 1.66 g of powder from a kilo of harvest (2 g now).");
}

TEST_CASE("a break-even out of reach is said in words, not in an absurd number") {
    const Within within{example_model(0), 3, 5, "GBP"};
    const Breakevens all = breakevens(within.today);
    const auto words = [&](Lever lever) { return breakeven_words(lever, breakeven_of(lever, all), within); };
    CHECK(words(Lever::premium) == "at £0.83 more than the bought-in bar");
    CHECK(words(Lever::hourly_target) == "never: behind even if an hour is worth nothing");
    CHECK(words(Lever::yield) == "out of reach: more than three times your best vat");
    CHECK(words(Lever::harvest_per_vat) == "never: no vat is big enough");
    CHECK(words(Lever::minutes_per_vat) == "not even with no time at the vat");
    CHECK(words(Lever::bought_price) == "out of reach: it would have to cost more than ten times as much");
}

TEST_CASE("every reason for no break-even has its words") {
    std::set<std::string> seen;
    const Within within{example_model(0), 3, 5, "GBP"};
    for (int why = 1; why <= static_cast<int>(NoBreakeven::no_cash_form); ++why) {
        const std::string words = breakeven_words(Lever::yield, {std::nullopt, static_cast<NoBreakeven>(why)}, within);
        CHECK_FALSE(words.empty());
        CHECK(seen.insert(words).second);
    }
}

TEST_CASE("too soon: what is known, and the record that is missing first") {
    const Shop shop = example_shop();
    std::set<std::string> seen;
    for (const MissingRecord missing :
         {MissingRecord::dried_vat, MissingRecord::shade_test, MissingRecord::second_season,
          MissingRecord::bought_match, MissingRecord::base_recipe, MissingRecord::price}) {
        Verdict verdict = example_verdict(RulingWord::too_soon, example_model(0));
        verdict.ruling.missing = missing;
        const auto lines = too_soon_lines(shop, verdict);
        REQUIRE(lines.size() == 2);
        CHECK(lines[0] == "8 vats gave 50 g, about £5.00 a gram with your time.");
        CHECK(seen.insert(lines[1]).second);
    }
}

TEST_CASE("an untested strength gives a pair of answers") {
    const Shop shop = example_shop();
    Verdict verdict = example_verdict(RulingWord::too_soon, example_model(1));
    verdict.ruling.missing = MissingRecord::shade_test;
    verdict.figures.pigment.strength.reset();
    Model weaker = example_model(1);
    weaker.strength = 1.0 / 3;
    verdict.if_weaker = example_figures(weaker);
    const auto lines = too_soon_lines(shop, verdict);
    REQUIRE(lines.size() == 4);
    CHECK(lines[2].starts_with("If your powder is as strong as the bought-in one, growing left you £112 better off"));
    CHECK(lines[3].starts_with("If it is only a third as strong, growing left you £"));
}

TEST_CASE("notes name the failures, the powder left and what is left out") {
    const Shop shop = example_shop();
    Verdict verdict = example_verdict(RulingWord::buy_in, example_model(0));
    verdict.stands_on.already_spent = 45;
    verdict.stands_on.leaf_kg = 1.5;
    verdict.stands_on.vats_not_dry = {{4}};
    verdict.stands_on.grams_sold = 12;
    const auto powder = powder_notes(shop, verdict);
    REQUIRE(powder.size() == 5);
    for (const auto& note : powder) is_a_sentence(note);
    CHECK(powder[2] == "21 g of 50 g of powder is used; the 29 g left would colour 7 loaves.");
    CHECK(powder[3] == "Includes 2 vats that gave nothing: 7 hours, £9.40.");
    CHECK(powder[4] == "12 g of powder was sold as it is; it counts as made.");
    const auto left_out = left_out_notes(shop, verdict);
    REQUIRE(left_out.size() == 3);
    CHECK(left_out[0] == "Already spent either way, and not counted: £45.00.");
    CHECK(left_out[1] == "Left out, for it is in no vat yet: 1.5 kg of harvest.");
    CHECK(left_out[2] == "Left out, for they are not dry yet: the vats vat-1.");
    const auto cautions = verdict_cautions(shop, verdict);
    REQUIRE(cautions.size() == 2);
    CHECK(cautions[1].starts_with("Japanese indigo: spreads"));
}

}  // namespace dyestead::reports
