#include "gui/models/vat/at_the_pan.h"

#include <doctest/doctest.h>

#include "gui/models/today/due.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

namespace {

using std::chrono::hours;
using std::chrono::minutes;

const Day kToday = day_of(2026, 7, 3);
const Instant kNine = Instant{std::chrono::sys_days{std::chrono::year{2026} / 7 / 3}} + hours{9};

// A vat that stands, worked by a method of three steps: steep, wash twice, draw off.
struct Pan {
    test::Desk desk{kToday};
    Key<Vat> vat;
    Key<Person> who;

    Pan() {
        desk.builder.add<About>().currency = "GBP";
        who = desk.builder.person(day_of(2026, 1, 1), Money::units(12));
        const auto blue = desk.builder.add<Colour>().key;
        desk.builder.at(blue).name = "Blue";
        const auto method = desk.builder.add<Method>().key;
        desk.builder.at(method).name = "Hot";
        step(method, "Steep", 15, 480, 1).temperature_high = Temperature{850};
        step(method, "Wash", 5, 0, 2);
        step(method, "Draw off", 10, 0, 1);
        auto& begun = desk.builder.add<Vat>();
        begun.date = kToday;
        begun.colour = blue;
        begun.method = method;
        vat = begun.key;
        desk.open();
    }
    MethodStep& step(Key<Method> method, const char* what, int hands_on, int waiting, int times) {
        auto& made = desk.builder.add<MethodStep>(method);
        made.what = what;
        made.hands_on = test::minutes(hands_on);
        if (waiting > 0) made.waiting = test::minutes(waiting);
        made.times = times;
        return made;
    }
    // Universal time is what the maker's clock shows here.
    WallClock at(Instant now) const {
        return {.now = now, .local = [](Instant moment) {
                    const auto day = std::chrono::floor<std::chrono::days>(moment);
                    return Moment{day, static_cast<int>((moment - day) / minutes{1}), 0};
                }};
    }
    PanShown shown(const AtThePan& pan, Instant now) const {
        return shown_at_the_pan({desk.shop, desk.ledger}, pan, at(now));
    }
    // What the window says after the key; blank when the step was not kept.
    std::string done(AtThePan& pan, Instant now) {
        const auto kept = step_done(desk.writing(), pan, at(now));
        if (!kept) return {};
        desk.take(applied(desk.shop, kept->change));
        return kept->consequence(desk.writing());
    }
    std::vector<VatStep> steps() const {
        std::vector<VatStep> all;
        for (const VatStep& each : desk.shop.all<VatStep>()) all.push_back(each);
        return all;
    }
};

}  // namespace

TEST_CASE("one key keeps a step with its time, and the next one is on") {
    Pan house;
    AtThePan pan{.vat = house.vat, .clock = begun(kNine)};
    const PanShown first = house.shown(pan, kNine + minutes{5});
    CHECK(first.title == "The vat of 3 July 2026, blue: step 1 of 3");
    CHECK(first.step == "Steep");
    CHECK(first.standing == "Your method lets it stand then: the next step at about 17:15.");

    stop_or_go_on(pan.clock, kNine + minutes{20});
    CHECK(house.shown(pan, kNine + minutes{50}).clock == "20 min of work; the clock is stopped.");
    CHECK(house.shown(pan, kNine + minutes{50}).standing == "It has stood 30 min; look again at 17:20.");
    CHECK(stood_sentence({house.desk.shop, house.desk.ledger}, pan, house.at(kNine + hours{8})).empty());
    CHECK(stood_sentence({house.desk.shop, house.desk.ledger}, pan, house.at(kNine + hours{9})) ==
          "The vat of 3 July 2026, blue, has stood long enough by your method, since 17:20: Steep.");

    pan.temperature = "80,5";
    const std::string told = house.done(pan, kNine + hours{9});
    CHECK(told.starts_with("Noted. Next: Wash."));
    REQUIRE(house.steps().size() == 1);
    const VatStep kept = house.steps().front();
    CHECK(kept.what == "Steep");
    CHECK(kept.who == house.who);
    CHECK(kept.hands_on == test::minutes(20));
    CHECK(kept.waiting == test::minutes(520));
    CHECK(kept.begun == Moment{kToday, 9 * 60, 0});
    CHECK(kept.temperature == Temperature{805});
    CHECK(kept.method_step == 1);
    CHECK(pan.temperature.empty());
    CHECK(house.shown(pan, kNine + hours{9}).step == "Wash (time 1; your method says 2)");
}

TEST_CASE("a reading outside the method's band is said once and kept; one that cannot be read keeps nothing") {
    Pan house;
    AtThePan pan{.vat = house.vat, .clock = begun(kNine)};
    pan.temperature = "hot";
    CHECK_FALSE(house.shown(pan, kNine).trouble.empty());
    CHECK(house.done(pan, kNine + minutes{10}).empty());
    CHECK(house.steps().empty());
    pan.temperature = "92";
    const std::string told = house.done(pan, kNine + minutes{10});
    CHECK_MESSAGE(told.find("92") != std::string::npos, told);
    CHECK(house.steps().size() == 1);
}

TEST_CASE("what is done several times comes again, and once more than the method says") {
    Pan house;
    AtThePan pan{.vat = house.vat, .clock = begun(kNine)};
    for (int i = 1; i <= 3; ++i) house.done(pan, kNine + minutes{20 * i});
    const PanShown then = house.shown(pan, kNine + hours{1});
    CHECK(then.step == "Draw off");
    CHECK(then.can_be_repeated);
    once_more({house.desk.shop, house.desk.ledger}, pan, kNine + hours{1});
    CHECK(house.shown(pan, kNine + hours{1}).step == "Wash (time 3; your method says 2)");
    house.done(pan, kNine + hours{1} + minutes{5});
    CHECK(house.steps().back().what == "Wash");
    house.done(pan, kNine + hours{1} + minutes{15});
    const PanShown end = house.shown(pan, kNine + hours{2});
    CHECK_FALSE(end.can_be_done);
    CHECK(end.step == "No step is left. Dry and weigh when it is ready.");
    CHECK_FALSE(step_done(house.desk.writing(), pan, house.at(kNine + hours{2})));
}

TEST_CASE("a night with the clock running is told, and not booked as work") {
    Pan house;
    AtThePan pan{.vat = house.vat, .clock = begun(kNine)};
    house.done(pan, kNine + minutes{15});
    const PanShown morning = house.shown(pan, kNine + hours{24});
    CHECK(morning.clock.starts_with("The clock has run 23 h 45 min, longer than anybody works at one step"));
    const std::string told = house.done(pan, kNine + hours{24});
    CHECK_MESSAGE(told.starts_with("23 h 45 min of the clock counted as 5 min of work"), told);
    CHECK(house.steps().back().hands_on->time == test::minutes(5).time);
}

TEST_CASE("closing the program loses neither clock nor readings: all of it is a draft") {
    AtThePan pan{.vat = {17}, .clock = begun(kNine)};
    stop_or_go_on(pan.clock, kNine + minutes{7});
    pan.temperature = "80";
    pan.again = 4;
    const auto read = read_pan(pan_code(pan.vat), pan_texts(pan));
    REQUIRE(read);
    CHECK(read->vat == pan.vat);
    CHECK(read->clock.began == pan.clock.began);
    CHECK(read->clock.running == pan.clock.running);
    CHECK(read->clock.stopped == pan.clock.stopped);
    CHECK(read->clock.worked == pan.clock.worked);
    CHECK(read->temperature == "80");
    CHECK(read->again == 4);
    CHECK_FALSE(read_pan("harvest", pan_texts(pan)));
    CHECK_FALSE(read_pan(pan_code(pan.vat), {{"began", "yesterday"}}));
}

TEST_CASE("without a method the steps are numbered, and a vat that is gone is said to be") {
    Pan house;
    Shop shop = house.desk.shop;
    shop.all<Vat>().front().method.reset();
    house.desk.take(shop);
    AtThePan pan{.vat = house.vat, .clock = begun(kNine)};
    CHECK(house.shown(pan, kNine).step == "Step 1");
    house.done(pan, kNine + minutes{12});
    CHECK(house.steps().front().what == "Step 1");
    CHECK(vat_at_the_pan({house.desk.shop, house.desk.ledger}, std::nullopt) == house.vat);
    shop.all<VatStep>().clear();
    shop.all<Vat>().clear();
    house.desk.take(shop);
    CHECK(house.shown(pan, kNine).title == "This vat is no longer in the books.");
    CHECK_FALSE(vat_at_the_pan({house.desk.shop, house.desk.ledger}, std::nullopt));
}

TEST_CASE("a vat that stands says on Today what is next at it, by its method") {
    Pan house;
    AtThePan pan{.vat = house.vat, .clock = begun(kNine)};
    const auto advice = [&] { return due({house.desk.shop, house.desk.ledger}).at(0).advice; };
    CHECK(advice().starts_with("Next: Steep. Your method says: "));
    CHECK(advice().find("gloves") != std::string::npos);
    REQUIRE_FALSE(house.done(pan, kNine + hours{8}).empty());
    CHECK(advice().starts_with("Next: Wash."));
    for (int left = 0; left < 3; ++left) house.done(pan, kNine + hours{9 + left});
    CHECK(advice().starts_with("No step of the method is left: dry and weigh"));
    house.desk.builder.at(house.vat).method = std::nullopt;
    house.desk.open();
    CHECK(advice().starts_with("Note the steps as they are done"));
}

}  // namespace dyestead::gui
