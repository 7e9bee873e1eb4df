#include "domain/decisions/starter_methods.h"

#include <utility>

namespace dyestead {
namespace {

Span about(std::int64_t minutes) {
    return {Minutes::whole(minutes), TimeUnit::min, Mark::about};
}
Amount about(Quantity quantity, Unit unit) {
    return {quantity, unit, Mark::about};
}
constexpr Temperature degrees(int whole) {
    return {whole * 10};
}

// One step after another; the setters speak of the step begun last.
class Steps {
public:
    Steps& then(std::string what) {
        MethodStep& step = steps_.emplace_back();
        step.position = static_cast<int>(steps_.size());
        step.what = std::move(what);
        return *this;
    }
    Steps& between(int low, int high) {
        last().temperature_low = degrees(low);
        return under(high);
    }
    Steps& under(int high) {
        last().temperature_high = degrees(high);
        return *this;
    }
    Steps& hands(std::int64_t minutes) {
        last().hands_on = about(minutes);
        return *this;
    }
    Steps& hands_per_kg(std::int64_t minutes) {
        last().hands_on_per_kg = about(minutes);
        return *this;
    }
    Steps& watch(std::int64_t minutes) {
        last().watch = Watch::attended;
        return leave(minutes);
    }
    Steps& leave(std::int64_t minutes) {
        last().waiting = about(minutes);
        return *this;
    }
    Steps& leave(std::int64_t least, std::int64_t most) {
        last().waiting_high = about(most);
        return leave(least);
    }
    Steps& beware(Caution caution) {
        last().caution = caution;
        return *this;
    }
    Steps& times(int times) {
        last().times = times;
        return *this;
    }
    MethodStep& last() { return steps_.back(); }
    std::vector<MethodStep> take() { return std::move(steps_); }

private:
    std::vector<MethodStep> steps_;
};

constexpr std::int64_t kHour = 60;
constexpr std::int64_t kDay = 24 * kHour;

}  // namespace

StarterMethod hot_method_for_leaf(Key<Material> soda_ash) {
    StarterMethod starter;
    Method& method = starter.method;
    method.name = "Hot water on torn leaf";
    // A large pan is taken to hold a kilogram of torn leaf.
    method.low = about(Quantity::grams(1), Unit::g);
    method.usual = about(Quantity::grams(2), Unit::g);
    method.high = about(Quantity::grams(4), Unit::g);
    method.note = "For fresh leaf that bears indigo, worked on the day it is cut, in soft water.";

    Steps steps;
    steps.then("Tear the leaf into soft water at 90 °C").between(88, 92).hands(5).hands_per_kg(10).beware(Caution::hot);
    steps.then("Hold it at 80 °C for 10 minutes").between(78, 82).watch(10).beware(Caution::hot);
    steps.then("Bring it down to 55 °C within 5 minutes, the pan in cold water").between(53, 57).hands(5);
    steps.then("Strain, and squeeze the leaf out").hands(5).hands_per_kg(5);
    steps.then("Dissolve the soda ash in hot water and add it once the liquid is under 50 °C, to pH 9")
        .under(50)
        .hands(5);
    steps.last().acidity_low = Acidity{850};
    steps.last().acidity_high = Acidity{950};
    steps.beware(Caution::dust);
    steps.then("Whisk for 10 to 15 minutes, until the froth goes blue and back to green").hands(12);
    steps.then("Let it settle for 2 to 3 hours").leave(2 * kHour, 3 * kHour);
    steps.then("Take off the froth and the top third, and let it settle for 2 to 3 hours")
        .hands(5)
        .leave(2 * kHour, 3 * kHour);
    steps.then("Take off all but the bottom 6 cm, join the pans, and let it settle for 2 hours")
        .hands(10)
        .leave(2 * kHour);
    steps
        .then(
            "Take off the top two thirds, put clean water on, and let it settle for 2 to 5 hours, until the water "
            "stays clear: five times or more, over days")
        .hands(10)
        .leave(2 * kHour, 5 * kHour)
        .times(5);
    steps.then("Dry it for 1 to 3 days on an old ceramic plate; what stays on the plate as a film is lost")
        .hands(10)
        .leave(kDay, 3 * kDay)
        .beware(Caution::dust);
    starter.steps = steps.take();

    MethodUse& soda = starter.uses.emplace_back();
    soda.position = 1;
    soda.material = soda_ash;
    soda.amount = about(Quantity::microlitres(3 * 5'000), Unit::tsp);
    soda.per = Per::vat;
    return starter;
}

}  // namespace dyestead
