#include "gui/models/stall/fair_words.h"

#include <algorithm>
#include <cmath>

#include "gui/models/amounts_shown.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::say;
using reports::say_count;

namespace {

int upwards(double bars) {
    constexpr double kMost = 1e6;
    return static_cast<int>(std::ceil(std::min(bars, kMost) - 1e-9));
}

int sold_at(const Shop& shop, Key<Fair> fair) {
    int sold = 0;
    for (const FairLine& line : shop.all<FairLine>())
        if (line.head == fair) sold += std::max(0, line.taken - line.back);
    return sold;
}

int taken_to(const Shop& shop, Key<Fair> fair) {
    int taken = 0;
    for (const FairLine& line : shop.all<FairLine>())
        if (line.head == fair) taken += std::max(0, line.taken);
    return taken;
}

SoldRange sold_before(const Books& books, const Fair& fair, bool of_this_name) {
    SoldRange range;
    for (const Fair& each : books.shop.all<Fair>()) {
        if (each.key == fair.key || each.date > books.as_of() || each.ended != FairEnded::as_usual) continue;
        if (of_this_name && each.name != fair.name) continue;
        const int sold = sold_at(books.shop, each.key);
        range = {range.fairs == 0 ? sold : std::min(range.fewest, sold), std::max(range.most, sold), range.fairs + 1};
    }
    return range;
}

std::string range_said(const SoldRange& range) {
    if (range.fairs == 0) return {};
    if (range.fewest == range.most)
        return say_count("You have sold one bar at fairs like this.", "You have sold {count} bars at fairs like this.",
                         static_cast<std::uint64_t>(range.fewest));
    return say("You have sold {low} to {high} at fairs like this.", arg("low", range.fewest), arg("high", range.most));
}

std::string joined(const std::string& one, const std::string& other) {
    return one.empty() || other.empty() ? one + other : one + " " + other;
}

std::string tin_said(const Tin& tin, const std::string& currency) {
    if (!tin.difference) return {};
    const double off = number(*tin.difference);
    const auto money = arg("money", reports::shown_money(std::fabs(off), currency));
    constexpr double kHalfAPenny = 0.005;
    if (std::fabs(off) < kHalfAPenny) return say("The tin is right.");
    return off < 0 ? say("The tin is {money} short of what should be in it.", money)
                   : say("The tin holds {money} more than should be in it.", money);
}

std::string earned_said(const FairResult& result, int taken, const std::string& currency) {
    const auto takings = arg("takings", reports::shown_money(result.takings, currency));
    const auto sold = arg("sold", result.sold);
    const auto of = arg("taken", taken);
    if (result.left < 0)
        return say("{sold} of {taken} bars sold for {takings}; with what the bars cost to make {money} is missing.",
                   sold, of, takings, arg("money", reports::shown_money(-result.left, currency)));
    const auto left = arg("left", reports::shown_money(result.left, currency));
    if (result.per_hour)
        return say(
            "{sold} of {taken} bars sold for {takings}; {left} is left for your time, {hour} for each hour of "
            "making and selling.",
            sold, of, takings, left, arg("hour", reports::shown_money(*result.per_hour, currency)));
    return say("{sold} of {taken} bars sold for {takings}; {left} is left for your time.", sold, of, takings, left);
}

reports::Table table_of(const std::string& title, const std::string& currency) {
    return {.title = title,
            .columns = {{say("bar")},
                        {say("taken"), Align::right},
                        {say("back"), Align::right},
                        {say("sold"), Align::right},
                        {say("price, {currency}", arg("currency", currency)), Align::right},
                        {currency, Align::right}},
            .rows = {}};
}

reports::Table plan_table(const Books& books, const Fair& fair) {
    const FairPlan plan = fair_plan(books.shop, books.ledger, fair.key);
    reports::Table table{.title = say("What to take"),
                         .columns = {{say("bar")},
                                     {say("take"), Align::right},
                                     {say("put down"), Align::right},
                                     {say("wanted, about"), Align::right},
                                     {say("ready by then"), Align::right},
                                     {say("on hold"), Align::right}},
                         .rows = {},
                         .note = say("Bars on hold and bars in cure are never packed.")};
    const auto count = [](int n) { return count_cell(static_cast<std::size_t>(std::max(0, n))); };
    for (const TakeBars& each : plan.bars) {
        int down = 0;
        for (const FairLine& line : books.shop.all<FairLine>())
            if (line.head == fair.key && line.bar == each.bar) down += line.taken;
        table.rows.push_back({words_cell(reports::called(books.shop, each.bar)), count(each.take), count(down),
                              number_cell(each.expected, reports::shown_fixed(each.expected, 1)), count(each.there),
                              count(each.held)});
    }
    return table;
}

}  // namespace

std::optional<FairCurve> fair_curve(const Books& books, Key<Fair> key) {
    const Fair* fair = books.shop.find(key);
    if (fair == nullptr) return std::nullopt;
    const FairPlan plan = fair_plan(books.shop, books.ledger, key);
    if (!plan.contribution) return std::nullopt;
    FairCurve curve;
    if (plan.break_even) curve.pays_stall = upwards(*plan.break_even);
    if (plan.break_even_full) curve.pays_day = upwards(*plan.break_even_full);
    curve.like_this = sold_before(books, *fair, true);
    if (curve.like_this.fairs == 0) curve.like_this = sold_before(books, *fair, false);
    int most = std::max(10, taken_to(books.shop, key));
    for (const TakeBars& each : plan.bars) most = std::max(most, each.take);
    most = std::max(most, curve.like_this.most);
    constexpr int kWidest = 500;
    for (const auto& mark : {curve.pays_stall, curve.pays_day})
        if (mark && *mark <= kWidest) most = std::max(most, *mark + *mark / 5 + 1);
    for (int bars = 0; bars <= most; ++bars) curve.points.push_back({bars, *plan.contribution * bars - plan.fixed});
    if (fair->date <= books.as_of() && fair->ended != FairEnded::did_not_happen) {
        const FairResult result = fair_result(books.shop, books.ledger, key);
        curve.this_one = FairCurve::Point{result.sold, result.left};
    }
    curve.sentence = fair_ahead(books, plan);
    return curve;
}

std::optional<reports::Chart> fair_picture(const Books& books, Key<Fair> key) {
    const auto curve = fair_curve(books, key);
    if (!curve) return std::nullopt;
    const std::string currency = reports::currency_of(books.shop);
    const auto point = [&](const FairCurve::Point& each) {
        return reports::CurvePoint{
            static_cast<double>(each.bars), each.left,
            say_count("one bar: {left} left", "{count} bars: {left} left", static_cast<std::uint64_t>(each.bars),
                      arg("left", reports::shown_money(each.left, currency)))};
    };
    reports::Curve drawn{
        .x_label = say("bars sold"), .y_label = say("{currency} left after the stall", arg("currency", currency))};
    reports::CurveLine line{.name = curve->this_one ? say("as bars sell") : std::string{}};
    for (const FairCurve::Point& each : curve->points) line.points.push_back(point(each));
    drawn.lines.push_back(std::move(line));
    if (curve->this_one)
        drawn.lines.push_back({.name = say("this fair"), .points = {point(*curve->this_one)}, .dots = true});
    if (curve->pays_stall)
        drawn.marks.push_back({static_cast<double>(*curve->pays_stall),
                               say("{bars} pay for the stall", arg("bars", *curve->pays_stall))});
    if (curve->pays_day)
        drawn.marks.push_back(
            {static_cast<double>(*curve->pays_day), say("{bars} pay for the day", arg("bars", *curve->pays_day))});
    if (curve->like_this.fairs > 0)
        drawn.band = reports::CurveBand{static_cast<double>(curve->like_this.fewest),
                                        static_cast<double>(curve->like_this.most), say("sold at fairs like this")};
    return reports::Chart{.title = say("Money left after the stall, by bars sold"),
                          .sentence = curve->sentence,
                          .data = std::move(drawn)};
}

std::string fair_ahead(const Books& books, const FairPlan& plan) {
    const Fair* fair = books.shop.find(plan.fair);
    SoldRange range = fair == nullptr ? SoldRange{} : sold_before(books, *fair, true);
    if (range.fairs == 0 && fair != nullptr) range = sold_before(books, *fair, false);
    if (!plan.contribution) return say("Nothing that is ready by then has a price and a cost on record.");
    if (!plan.break_even) return say("At these prices no number of bars pays for the stall.");
    const auto stall = static_cast<std::uint64_t>(upwards(*plan.break_even));
    std::string ahead = plan.break_even_full && plan.own_hours > 0
                            ? say_count("One bar pays for the stall, {day} pay for your day as well.",
                                        "{count} bars pay for the stall, {day} pay for your day as well.", stall,
                                        arg("day", upwards(*plan.break_even_full)))
                            : say_count("One bar pays for the stall.", "{count} bars pay for the stall.", stall);
    return joined(ahead, range_said(range));
}

std::string fair_told(const Books& books, Key<Fair> key) {
    const Fair* fair = books.shop.find(key);
    if (fair == nullptr) return {};
    const std::string currency = reports::currency_of(books.shop);
    const FairResult result = fair_result(books.shop, books.ledger, key);
    if (fair->ended == FairEnded::did_not_happen)
        return say(
            "It did not happen; {money} for the stall and travel is spent. Left out of what you expect next "
            "time.",
            arg("money", reports::shown_money(result.fixed, currency)));
    const auto takings = arg("takings", reports::shown_money(result.takings, currency));
    const auto short_by = arg("short", reports::rough_money(result.fixed - result.takings, currency));
    const double hours = fair->open ? number(fair->open->time) / 60 : result.own_hours;
    std::string told;
    if (result.takings < result.fixed)
        told = hours > 0 ? say("{takings} taken in {hours}: {short} short of the stall and travel.", takings,
                               arg("hours", reports::shown_hours(hours)), short_by)
                         : say("{takings} taken: {short} short of the stall and travel.", takings, short_by);
    else
        told = earned_said(result, taken_to(books.shop, key), currency);
    told = joined(told, tin_said(result.tin, currency));
    if (fair->ended == FairEnded::cut_short) told = joined(told, say("Left out of what you expect next time."));
    return told;
}

reports::Table fair_table(const Books& books, Key<Fair> key) {
    const Fair* fair = books.shop.find(key);
    if (fair == nullptr) return {};
    if (fair->date > books.as_of()) return plan_table(books, *fair);
    const std::string currency = reports::currency_of(books.shop);
    const FairResult result = fair_result(books.shop, books.ledger, key);
    reports::Table table = table_of(say("Taken, back and sold"), currency);
    const auto count = [](int n) { return number_cell(n, fmt::to_string(n)); };
    for (const FairResult::Line& line : result.lines)
        table.rows.push_back({words_cell(reports::called(books.shop, line.bar)), count(line.taken), count(line.back),
                              count(line.taken - line.back), money_cell(line.price, currency),
                              money_cell(line.takings(), currency)});
    const auto money = [&](Money amount) { return reports::bare_money(number(amount), currency); };
    const Tin& tin = result.tin;
    table.note =
        tin.counted
            ? say("The tin: {expected} should be in it, change taken along in and {card} by card off; {counted} "
                  "was counted.",
                  arg("expected", money(tin.expected)), arg("card", money(tin.card)),
                  arg("counted", money(*tin.counted)))
            : say("The tin: {expected} should be in it, change taken along in and {card} by card off; it was "
                  "not counted.",
                  arg("expected", money(tin.expected)), arg("card", money(tin.card)));
    return table;
}

}  // namespace dyestead::gui
