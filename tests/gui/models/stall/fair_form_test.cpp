#include "gui/models/stall/fair_form.h"

#include <doctest/doctest.h>

#include "domain/decisions/fair_plan.h"
#include "gui/models/stall/fair_words.h"
#include "tests/gui/models/stall/stall_desk.h"

namespace dyestead::gui {

using test::StallDesk;

TEST_CASE("a fair to come is filled from the last of its name, and with what to take; held bars are not in it") {
    StallDesk desk;
    desk.open();
    Form form = fair_form(desk.writing());
    form.type("date", "18 July", desk.writing());
    form.type("name", "Green market", desk.writing());
    CHECK(form.text("fee") == "30");
    CHECK(form.field("fee").origin == "from your last");
    CHECK(form.text("travel") == "8");
    CHECK(form.text("open") == "300 min");
    const FormLines& lines = form.lines_of("bars");
    REQUIRE(lines.rows.size() == 2);  // blue, plain
    CHECK(lines.rows[0][0] == StallDesk::code(desk.blue));
    const FairPlan plan = [&] {
        Change change;
        Fair fair;
        fair.key.number = 9'000'000;
        fair.name = "Green market";
        fair.date = day_of(2026, 7, 18);
        fair.fee = Money::units(30);
        fair.travel = Money::units(8);
        fair.open = test::minutes(300);
        change.put.all<Fair>().push_back(fair);
        return fair_plan(applied(desk.shop, change), desk.ledger, fair.key);
    }();
    REQUIRE(plan.bars.size() == 2);
    CHECK(lines.rows[0][1] == fmt::to_string(plan.bars[0].take));
    CHECK(lines.rows[1][1] == fmt::to_string(plan.bars[1].take));
    CHECK(plan.bars[1].there == 26);  // 36 less the 10 sold; the 12 on hold are none of them
    CHECK(lines.notes[1].ends_with("26 ready"));
    CHECK(form.summary.find("pay for the stall") != std::string::npos);

    form.type("fee", "none", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("fee").trouble.empty());
    form.type("fee", "32", desk.writing());
    CHECK(desk.keep(form).find("You have sold 16 bars at fairs like this.") != std::string::npos);
    REQUIRE(desk.shop.all<Fair>().size() == 2);
    const Fair& kept = desk.shop.all<Fair>()[1];
    CHECK(kept.noted == desk.day);
    CHECK(kept.fee == Money::units(32));
    CHECK(desk.shop.all<FairLine>().size() == 4);

    Form again = fair_form(desk.writing(), kept.key);
    again.type("travel", "9.50", desk.writing());
    again.lines_of("bars").rows[0][1] = "7";
    CHECK_FALSE(desk.keep(again).empty());
    CHECK(desk.shop.all<Fair>()[1].travel == Money::hundredths(950));
    CHECK(desk.shop.all<FairLine>()[2].taken == 7);
    CHECK(desk.shop.all<FairLine>().size() == 4);
}

TEST_CASE("a fair is counted back by kind; too little for the stall is said") {
    StallDesk desk;
    desk.open();
    Form put_down = fair_form(desk.writing());
    put_down.type("name", "Wet green", desk.writing());
    put_down.type("fee", "45", desk.writing());
    put_down.type("travel", "23.40", desk.writing());
    put_down.type("open", "4 h", desk.writing());
    put_down.lines_of("bars").rows = {
        {StallDesk::code(desk.plain), "10", "", "", ""}, {StallDesk::code(desk.blue), "6", "", "", ""}};
    CHECK(desk.keep(put_down).starts_with("Put down. Count back"));
    const auto fair = desk.shop.all<Fair>()[1].key;
    CHECK(to_count_back(desk.shop, *desk.shop.find(fair), desk.day));

    Form back = count_back_form(desk.writing(), fair);
    back.type("cash", "86.40", desk.writing());
    back.type("float", "40", desk.writing());
    CHECK(desk.keep(back).empty());  // nothing is said of what came home
    CHECK_FALSE(back.field("home").trouble.empty());
    back.lines_of("bars").rows[0][2] = "11";
    CHECK(desk.keep(back).empty());
    CHECK(back.lines_of("bars").notes[0].starts_with("More came home"));
    back.lines_of("bars").rows[0][2] = "4";
    back.lines_of("bars").rows[1][2] = "4";
    back.type("ended", "cut short", desk.writing());
    // 46.40 in the tin less the float, 68.40 for stall and travel; 6 x 5.50 + 2 x 6.50 = 46.00 were sold.
    CHECK(desk.keep(back) ==
          "\u00a346.40 taken in 4 hours: \u00a322 short of the stall and travel. The tin holds \u00a30.40 more than "
          "should be in it. Left out of what you expect next time.");
    CHECK_FALSE(to_count_back(desk.shop, *desk.shop.find(fair), desk.day));
    CHECK(desk.shop.find(fair)->ended == FairEnded::cut_short);

    Form again = count_back_form(desk.writing(), fair);
    CHECK(again.lines_of("bars").rows[1][2] == "4");
    again.type("cash", "86.00", desk.writing());
    CHECK(desk.keep(again).find("The tin is right.") != std::string::npos);
}

TEST_CASE("bars that came home in all are shared by what was taken, and never more than were taken") {
    StallDesk desk;
    desk.open();
    Form put_down = fair_form(desk.writing());
    put_down.type("name", "Yard sale", desk.writing());
    put_down.type("fee", "0", desk.writing());
    put_down.lines_of("bars").rows = {
        {StallDesk::code(desk.plain), "10", "", "", ""}, {StallDesk::code(desk.blue), "5", "", "", ""}};
    CHECK_FALSE(desk.keep(put_down).empty());
    const auto fair = desk.shop.all<Fair>()[1].key;
    Form back = count_back_form(desk.writing(), fair);
    back.type("home", "16", desk.writing());
    CHECK(desk.keep(back).empty());
    CHECK_FALSE(back.field("home").trouble.empty());
    back.type("home", "6", desk.writing());
    back.lines_of("bundles").rows = {{"three for two", "3", "11", "1"}};
    back.lines_of("times").rows = {{"", "9 h"}};
    back.type("cash", "53", desk.writing());
    CHECK(desk.keep(back).starts_with("9 of 15 bars sold for \u00a353.00;"));
    REQUIRE(desk.shop.all<FairLine>().size() == 4);
    CHECK(desk.shop.all<FairLine>()[2].back == 4);
    CHECK(desk.shop.all<FairLine>()[3].back == 2);
    CHECK(desk.shop.all<FairBundle>().size() == 1);
    REQUIRE(desk.shop.all<FairTime>().size() == 2);
    CHECK(desk.shop.all<FairTime>()[1].time.time == Minutes::whole(540));
    // It did not happen after all: everything is back.
    Form again = count_back_form(desk.writing(), fair);
    again.type("ended", "did not happen", desk.writing());
    again.type("cash", "", desk.writing());
    again.lines_of("bundles").rows.clear();
    CHECK(desk.keep(again).starts_with("It did not happen; \u00a30.00"));
    CHECK(desk.shop.all<FairLine>()[2].back == 10);
    CHECK(desk.shop.all<FairBundle>().empty());
}

TEST_CASE("the line of a fair rises by what a bar brings and crosses nought where the stall is paid") {
    StallDesk desk;
    auto& next = desk.builder.add<Fair>();
    next.name = "Green market";
    next.date = day_of(2026, 7, 18);
    next.fee = Money::units(30);
    next.travel = Money::units(8);
    const auto key = next.key;
    desk.open();
    const auto curve = fair_curve(desk.books(), key);
    REQUIRE(curve);
    CHECK(curve->points.front().bars == 0);
    CHECK(curve->points.front().left == doctest::Approx(-38));
    REQUIRE(curve->pays_stall);
    const auto at = static_cast<std::size_t>(*curve->pays_stall);
    REQUIRE(curve->points.size() > at);
    CHECK(curve->points[at].left >= 0);
    CHECK(curve->points[at - 1].left < 0);
    REQUIRE(curve->pays_day);
    CHECK(*curve->pays_day > *curve->pays_stall);
    // Eight hours at 12.
    CHECK(curve->points[static_cast<std::size_t>(*curve->pays_day)].left >= 96);
    CHECK(curve->points[static_cast<std::size_t>(*curve->pays_day) - 1].left < 96);
    CHECK(curve->like_this.fairs == 1);
    CHECK(curve->like_this.most == 16);
    CHECK_FALSE(curve->this_one);
    CHECK(curve->sentence ==
          fmt::format("{} bars pay for the stall, {} pay for your day as well. You have sold 16 bars "
                      "at fairs like this.",
                      *curve->pays_stall, *curve->pays_day));
    const auto chart = fair_picture(desk.books(), key);
    REQUIRE(chart);
    const auto* drawn = std::get_if<reports::Curve>(&chart->data);
    REQUIRE(drawn);
    CHECK(drawn->marks.size() == 2);
    REQUIRE(drawn->band);
    CHECK(drawn->band->to == 16);
    CHECK(chart->sentence == curve->sentence);
    const auto past = fair_curve(desk.books(), desk.market);
    REQUIRE(past);
    REQUIRE(past->this_one);
    CHECK(past->this_one->bars == 16);
    // 94.00 less 38.00 for the stall and 16 bars at 0.50 to make.
    CHECK(past->this_one->left == doctest::Approx(48));
}

}  // namespace dyestead::gui
