#include "reports/words/improve_words.h"

#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

std::string change_words(const Improving& change, const std::string& currency) {
    const auto step = arg("step", change.step);
    switch (change.what) {
        case Improvement::free_water:
            return say("rain or tap water instead of bought water, which costs {now} for a kilo of harvest",
                       arg("now", fine_money(change.now, currency)));
        case Improvement::fuller_vats:
            return say("every vat as full as your fullest: {then} instead of {now}",
                       arg("then", shown_kilograms(change.then)), arg("now", shown_kilograms(change.now)));
        case Improvement::bigger_vats:
            return say("two vats' harvest in one: {then} instead of {now}", arg("then", shown_kilograms(change.then)),
                       arg("now", shown_kilograms(change.now)));
        case Improvement::quicker_step:
            return say("\"{step}\" in half the time: {then} a vat instead of {now}", step,
                       arg("then", shown_minutes(change.then)), arg("now", shown_minutes(change.now)));
        case Improvement::one_wash_less:
            return say("\"{step}\" once less: {then} times a vat instead of {now}", step,
                       arg("then", shown_number(change.then)), arg("now", shown_number(change.now)));
        case Improvement::no_failed_vat:
            return say_count("no vat that gives nothing (there was one)",
                             "no vat that gives nothing (there were {count})", static_cast<std::uint64_t>(change.now));
        case Improvement::best_season:
            return say("as much powder as in your best season: {then} from a kilo instead of {now}",
                       arg("then", shown_grams(change.then)), arg("now", shown_grams(change.now)));
        case Improvement::higher_price:
            return say("a grown bar at {then} instead of {now}, if people give it",
                       arg("then", shown_money(change.then, currency)), arg("now", shown_money(change.now, currency)));
    }
    return {};
}

}  // namespace

std::string hours_note(const Verdict& verdict) {
    if (!verdict.practice)
        return tr("Steps as they were noted; what was told for a whole vat is shared as its method says.");
    const Practice& practice = *verdict.practice;
    return say_count(
        "Steps as they were noted; what was told for a whole vat is shared as its method says. Practice shows: each "
        "time the number of your vats doubled, one took {quicker} less of your time. If that goes on, the next vat "
        "takes {less} less than is reckoned with here.",
        "Steps as they were noted; what was told for a whole vat is shared as its method says. Practice shows: each "
        "time the number of your vats doubled, one took {quicker} less of your time. If that goes on, the next {count} "
        "vats take {less} less than is reckoned with here.",
        static_cast<std::uint64_t>(practice.to_come), arg("quicker", shown_percent(1 - practice.rate)),
        arg("less", shown_percent(1 - practice.factor)));
}

std::string hours_at_words(const StepHours& step) {
    switch (step.at) {
        case HoursAt::garden: return say("the garden, and what was cut");
        case HoursAt::rest_of_vat: return say("drying, waiting that counts, and other time at the vat");
        case HoursAt::step: return step.what;
    }
    return {};
}

std::vector<std::string> improvement_lines(const Shop& shop, const Ledger& ledger, const Verdict& verdict) {
    const std::string currency = currency_of(shop);
    std::vector<std::string> lines;
    for (const Improving& change : improvements(shop, ledger, verdict)) {
        const auto what = arg("what", change_words(change, currency));
        const auto gain = arg("gain", rough_money(change.gain, currency));
        lines.push_back(change.turns_it
                            ? say("{gain}: {what}. With this alone growing would come out ahead.", gain, what)
                            : say("{gain}: {what}.", gain, what));
    }
    return lines;
}

}  // namespace dyestead::reports
