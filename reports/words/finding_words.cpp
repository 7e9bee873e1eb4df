#include "reports/words/finding_words.h"

#include <algorithm>
#include <array>

#include "domain/text/amounts.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

using std::string_view;

// `first` and `second` are what finding.h says each code carries; `fact` and `day` are of the first finding.
struct Words {
    string_view code;
    string_view one;
    string_view many;
    int amount_at = -1;  // which of the arguments is an amount: it does not part one cause from another
};

Words words(FindingCode code) {
    switch (code) {
        case FindingCode::more_used_than_there:
            return {"more-used-than-there",
                    message("On {day} more {second} was used than there was ({first} short, at {fact}): enter the "
                            "delivery that is missing, or what was already here."),
                    message("{count} times more {second} was used than there was, first on {day} at {fact}: enter the "
                            "delivery that is missing, or what was already here."),
                    0};
        case FindingCode::no_cost_known:
            return {"no-cost-known",
                    message("No price of {first} was on record by {day}, so it counted as free at {fact}: enter its "
                            "delivery, or what it cost."),
                    message("No price of {first} was on record yet, so it counted as free {count} times, first on "
                            "{day} at {fact}: enter its delivery, or what it cost.")};
        case FindingCode::lot_of_another_material:
            return {"lot-of-another-material",
                    message("At {fact} the lot {first} is named, but that lot is not {second}: name one that is."),
                    message("{count} times the lot {first} is named for {second}, which it is not, first at {fact}: "
                            "name one that is.")};
        case FindingCode::lot_made_twice:
            return {"lot-made-twice",
                    message("The lot {first} is made a second time at {fact}: give each its own lot."),
                    message("The lot {first} is made {count} times more than once, first at {fact}: give each its own "
                            "lot.")};
        case FindingCode::amount_not_convertible:
            return {"amount-not-convertible",
                    message("At {fact} {first} of {second} could not be counted, for its density is not known: enter "
                            "the density, or weigh it."),
                    message("{count} amounts of {second} could not be counted, for its density is not known, first "
                            "at {fact}: enter the density, or weigh them."),
                    0};
        case FindingCode::nothing_in_it:
            return {"nothing-in-it",
                    message("At {fact} money was paid for an amount of nought: enter how much it was."),
                    message("{count} times money was paid for an amount of nought, first at {fact}: enter how much it "
                            "was.")};
        case FindingCode::too_large:
            return {"too-large",
                    message("{fact} was left out, for with it a total would pass what the books can hold: look at its "
                            "digits and its unit."),
                    message("{count} records were left out, for with them a total would pass what the books can "
                            "hold, first {fact}: look at their digits and their units.")};
        case FindingCode::sold_before_cured:
            return {"sold-before-cured",
                    message("Bars of {first} went out on {day}, before they were cured ({fact}): check the two dates."),
                    message("{count} times bars of {first} went out before they were cured, first on {day} ({fact}): "
                            "check the dates.")};
        case FindingCode::back_more_than_taken:
            return {"back-more-than-taken",
                    message("More bars of {first} came back on {day} than were taken ({fact}): count again."),
                    message("{count} times more bars of {first} came back than were taken, first on {day} ({fact}): "
                            "count again.")};
        case FindingCode::no_price:
            return {"no-price", message("{first} was sold on {day} with no price on record ({fact}): enter its price."),
                    message("{first} was sold {count} times with no price on record, first on {day} ({fact}): enter "
                            "its price.")};
        case FindingCode::harvest_before_sowing:
            return {"harvest-before-sowing",
                    message("{fact} was taken from {first} before that was sown: check the two dates."),
                    message("{count} times something was taken from {first} before that was sown, first {fact}: check "
                            "the dates.")};
        case FindingCode::harvest_after_end:
            return {"harvest-after-end",
                    message("{fact} was taken from {first} after that was ended: check the two dates."),
                    message("{count} times something was taken from {first} after that was ended, first {fact}: check "
                            "the dates.")};
        case FindingCode::expected_harvest_guessed:
            return {"expected-harvest-guessed",
                    message("Nobody said how much {first} will give in all, so the plant's usual, {second}, is taken: "
                            "enter your own figure if you know better."),
                    message("Nobody said how much {first} will give in all, so the plant's usual, {second}, is taken "
                            "{count} times: enter your own figure if you know better."),
                    1};
        case FindingCode::planting_end_assumed:
            return {"planting-end-assumed",
                    message("The planting {first} has outlived its plant, so it is taken as ended on {day}: enter "
                            "when it ended, or that it still stands."),
                    message("The planting {first} has outlived its plant {count} times, so it is taken as ended on "
                            "{day}: enter when it ended, or that it still stands.")};
        case FindingCode::sown_after_its_facts:
            return {"sown-after-its-facts",
                    message("{fact} is dated {day}, before its planting was sown: check the two dates."),
                    message("{count} records are dated before their planting was sown, first {fact} on {day}: check "
                            "the dates.")};
        case FindingCode::by_product_worth_unknown:
            return {"by-product-worth-unknown",
                    message("What {first} would cost to buy is not on record by {day}, so what was kept of it counts "
                            "as free ({fact}): enter an offer."),
                    message("What {first} would cost to buy is not on record yet, so what was kept of it counts as "
                            "free {count} times, first on {day} ({fact}): enter an offer.")};
        case FindingCode::bed_lost_after_end:
            return {"bed-lost-after-end",
                    message("{fact} tells of a loss in {first} on {day}, after that was ended: check the two dates."),
                    message("{count} losses in {first} are dated after that was ended, first {fact} on {day}: check "
                            "the dates.")};
        case FindingCode::more_lost_than_stood:
            return {"more-lost-than-stood",
                    message("More of {first} was lost on {day} than stood, so all of it counts as lost ({fact}): "
                            "check the area."),
                    message("{count} times more of {first} was lost than stood, first on {day} ({fact}): check the "
                            "areas.")};
        case FindingCode::vat_told_twice:
            return {"vat-told-twice",
                    message("The time at {fact} is told step by step and once more for the whole vat, so the steps "
                            "count alone: take one of the two away."),
                    message("The time at {count} vats is told step by step and once more for the whole vat, so the "
                            "steps count alone, first {fact}: take one of the two away.")};
        case FindingCode::vat_dried_twice:
            return {"vat-dried-twice",
                    message("The vat {first} is dried a second time at {fact}: take it out of one of the two."),
                    message("The vat {first} is dried {count} times more than once, first at {fact}: keep it in one.")};
        case FindingCode::vat_dried_before_begun:
            return {"vat-dried-before-begun",
                    message("The vat {first} is dried on {day}, before it was begun ({fact}): check the two dates."),
                    message("The vat {first} is dried {count} times before it was begun, first on {day} ({fact}): "
                            "check the dates.")};
        case FindingCode::drying_without_vat:
            return {"drying-without-vat",
                    message("The drying {fact} names no vat, so its powder has no cost: say which vats it dried."),
                    message("{count} dryings name no vat, so their powder has no cost, first {fact}: say which vats "
                            "they dried.")};
        case FindingCode::batch_cut_twice:
            return {"batch-cut-twice",
                    message("The batch {first} is cut a second time at {fact}: take one of the two away."),
                    message("The batch {first} is cut {count} times more than once, first at {fact}: keep one cut.")};
        case FindingCode::cut_before_pouring:
            return {"cut-before-pouring",
                    message("The batch {first} is cut on {day}, before it was poured ({fact}): check the two dates."),
                    message("The batch {first} is cut {count} times before it was poured, first on {day} ({fact}): "
                            "check the dates.")};
        case FindingCode::no_good_bars:
            return {"no-good-bars",
                    message("The batch {first} gave no good bar, so all it cost stands under lost ({fact}): check the "
                            "count if that is not so."),
                    message("The batch {first} gave no good bar {count} times, so all it cost stands under lost, "
                            "first at {fact}: check the count if that is not so.")};
        case FindingCode::rejected_more_than_cut:
            return {"rejected-more-than-cut",
                    message("More bars of the batch {first} were rejected than were cut ({fact}): count again."),
                    message("More bars of the batch {first} were rejected than were cut {count} times, first at "
                            "{fact}: count again.")};
        case FindingCode::wrapped_when_gone:
            return {"wrapped-when-gone",
                    message("More bars of {first} were wrapped on {day} than were there ({fact}): check the number "
                            "and the date."),
                    message("{count} times more bars of {first} were wrapped than were there, first on {day} "
                            "({fact}): check the numbers and the dates.")};
        case FindingCode::split_before_pouring:
            return {"split-before-pouring",
                    message("{fact} is poured off from {first} on {day}, before that batch was poured: check the two "
                            "dates."),
                    message("{count} batches are poured off from {first} before it was poured, first {fact} on "
                            "{day}: check the dates.")};
        case FindingCode::split_after_cut:
            return {"split-after-cut",
                    message("{fact} is poured off from {first} on {day}, after that batch was cut: check the two "
                            "dates."),
                    message("{count} batches are poured off from {first} after it was cut, first {fact} on {day}: "
                            "check the dates.")};
        case FindingCode::split_without_share:
            return {"split-without-share",
                    message("{fact} is poured off from {first}, but not how much of it: enter the share."),
                    message("{count} batches are poured off from {first}, but not how much of it, first {fact}: enter "
                            "the shares.")};
        case FindingCode::settled_before_out:
            return {"settled-before-out",
                    message("{fact} settles bars on {day} that had not gone out to a shop by then: check the two "
                            "dates."),
                    message("{count} records settle bars that had not gone out to a shop by then, first {fact} on "
                            "{day}: check the dates.")};
        case FindingCode::settled_more_than_out:
            return {"settled-more-than-out",
                    message("More bars of {first} are settled on {day} than were out at the shop ({fact}): count "
                            "again."),
                    message("{count} times more bars of {first} are settled than were out at the shop, first on {day} "
                            "({fact}): count again.")};
        case FindingCode::returned_more_than_sold:
            return {"returned-more-than-sold",
                    message("More bars of {first} came back on {day} than were ever sold of it ({fact}): check the "
                            "lot and the number."),
                    message("{count} times more bars of {first} came back than were ever sold of it, first on {day} "
                            "({fact}): check the lots and the numbers.")};
        case FindingCode::sold_while_held:
            return {"sold-while-held",
                    message("Some of {first} went out on {day} while the lot was held ({fact}): get it back, or "
                            "release the lot and say why."),
                    message("{count} times some of {first} went out while the lot was held, first on {day} ({fact}): "
                            "get it back, or release the lot and say why.")};
        case FindingCode::sitting_before_its_work:
            return {"sitting-before-its-work",
                    message("The time at {fact} on {day} is for something that is not on record by then, so it was "
                            "shared over the rest: check the two dates."),
                    message("{count} times the time of a sitting is for something that is not on record by then, "
                            "first at {fact} on {day}: check the dates.")};
        case FindingCode::sitting_at_nothing:
            return {"sitting-at-nothing",
                    message("The time of {fact} on {day} is for nothing in particular, so it stands with the office: "
                            "say what was worked at."),
                    message("The time of {count} sittings is for nothing in particular, so it stands with the office, "
                            "first {fact} on {day}: say what was worked at.")};
        case FindingCode::sat_at_when_gone:
            return {"sat-at-when-gone",
                    message("The time at {fact} on {day} came when nothing of {first} was left, so it is in no lot: "
                            "check the date."),
                    message("{count} times the time of a sitting came when nothing of {first} was left, first at "
                            "{fact} on {day}: check the dates.")};
        case FindingCode::equipment_without_years:
            return {"equipment-without-years",
                    message("No years are on record over which {fact} wears out, so one is taken: enter how long it "
                            "will last."),
                    message("No years are on record over which {count} tools wear out, so one is taken, first for "
                            "{fact}: enter how long they will last.")};
        case FindingCode::loaf_without_bars:
            return {"loaf-without-bars",
                    message("{fact} says that a loaf gives no bars, so neither a price nor a plan can be made of it: "
                            "enter how many it is cut into."),
                    message("{count} recipes say that a loaf gives no bars, so neither a price nor a plan can be made "
                            "of them, first {fact}: enter how many it is cut into.")};
        case FindingCode::running_costs_without_bars:
            return {"running-costs-without-bars",
                    message("The running costs from {day} ({fact}) name no good bars a year to share them over, so no "
                            "bar takes up any: enter how many you make in a usual year."),
                    message("{count} times the running costs name no good bars a year to share them over, so no bar "
                            "takes up any, first from {day} ({fact}): enter how many you make in a usual year.")};
        case FindingCode::pay_unknown:
            return {"pay-unknown",
                    message("Time of {first} counts as free on {day} ({fact}), for no hour's worth is on record by "
                            "then: enter what an hour is to bring or is paid."),
                    message("Time of {first} counts as free {count} times, first on {day} ({fact}), for no hour's "
                            "worth is on record by then: enter what an hour is to bring or is paid.")};
        case FindingCode::nobody_named:
            return {"nobody-named",
                    message("{fact} has time, but no person is on record whose it could be: enter who works here."),
                    message("{count} records have time, but no person is on record whose it could be, first {fact}: "
                            "enter who works here.")};
        case FindingCode::tariff_unknown:
            return {"tariff-unknown",
                    message("No price of a kilowatt-hour of {first} is on record by {day}, so it counts as free "
                            "({fact}): enter it."),
                    message("No price of a kilowatt-hour of {first} is on record yet, so it counts as free {count} "
                            "times, first on {day} ({fact}): enter it.")};
        case FindingCode::heat_not_complete:
            return {"heat-not-complete",
                    message("The heat at {fact} could not be reckoned: enter the water and both temperatures, or the "
                            "energy."),
                    message("The heat could not be reckoned {count} times, first at {fact}: enter the water and both "
                            "temperatures, or the energy.")};
        case FindingCode::dye_bill_without_work:
            return {"dye-bill-without-work",
                    message("The bill {fact} is for dye work only, but no bed or vat was in hand on {day}, so it "
                            "stands with the period: check its date."),
                    message("{count} bills are for dye work only, but no bed or vat was in hand on their day, first "
                            "{fact} on {day}: check their dates.")};
        case FindingCode::exchange_rate_unknown:
            return {"exchange-rate-unknown",
                    message("The bill of {fact} is in {first} without a rate, so each {first} counts as one of the "
                            "shop's own currency: enter the rate on the bill."),
                    message("{count} bills are in {first} without a rate, so each {first} counts as one of the shop's "
                            "own currency, first {fact}: enter the rates on the bills.")};
        case FindingCode::discount_more_than_goods:
            return {"discount-more-than-goods",
                    message("At {fact} the discount is more than the goods cost, so they count as free and the rest "
                            "stands with the period: check the discount."),
                    message("{count} times a discount is more than the goods cost, so they count as free and the rest "
                            "stands with the period, first at {fact}: check the discounts.")};
        case FindingCode::credit_more_than_cost:
            return {"credit-more-than-cost",
                    message("The credit {fact} is more than the {first} that is still here cost, so the rest stands "
                            "with the period: check its amount."),
                    message("{count} credits are more than the {first} that was still here cost, so the rest stands "
                            "with the period, first {fact}: check their amounts.")};
        case FindingCode::correction_before_delivery:
            return {"correction-before-delivery",
                    message("The correction {fact} is dated {day}, before the delivery {first} came, so it stands with "
                            "the period: check the two dates."),
                    message("{count} corrections are dated before the delivery {first} came, so they stand with the "
                            "period, first {fact} on {day}: check the dates.")};
        case FindingCode::correction_of_nothing:
            return {"correction-of-nothing",
                    message("The correction {fact} is of the delivery {first}, which has no goods on record, so it "
                            "stands with the period: enter what came."),
                    message("{count} corrections are of the delivery {first}, which has no goods on record, so they "
                            "stand with the period, first {fact}: enter what came.")};
        case FindingCode::counted_twice:
            return {"counted-twice",
                    message("{first} is counted a second time at {fact}, so only its first line stands: keep one, or "
                            "count lot by lot."),
                    message("{first} is counted {count} times more than once, so only the first lines stand, first at "
                            "{fact}: keep one a count, or count lot by lot.")};
        case FindingCode::found_without_lot:
            return {"found-without-lot",
                    message("{first} of {second} was counted on {day}, but no lot of it was ever recorded ({fact}): "
                            "enter what was already here, or name its lot."),
                    message("{count} times {second} was counted, but no lot of it was ever recorded, first on {day} "
                            "({fact}): enter what was already here, or name its lot."),
                    0};
        case FindingCode::cost_rule_waits:
            return {"cost-rule-waits",
                    message("How stock is costed changes only with a new financial year, so {fact} counts from "
                            "{first}: date it to that day."),
                    message("How stock is costed changes only with a new financial year, so {count} changes count "
                            "from {first}, first {fact}: date them to that day.")};
        case FindingCode::vat_steps_backwards:
            return {"vat-steps-backwards",
                    message("The steps of the vat {first} run backwards: {fact} is timed before what comes above it. "
                            "Look at its day and time, or at the order of the steps."),
                    message("{count} times the steps of the vat {first} run backwards, first at {fact}: look at the "
                            "days and times, or at the order of the steps.")};
        case FindingCode::bundles_more_than_sold:
            return {"bundles-more-than-sold",
                    message("At the fair {fact} more bars went in bundles ({first}) than were sold in all ({second}): "
                            "look at what came back, or at the bundles."),
                    message("At {count} fairs more bars went in bundles than were sold in all, first at {fact}, where "
                            "{first} of {second} did: look at what came back, or at the bundles."),
                    0};
        case FindingCode::more_came_up_than_laid_out:
            return {"more-came-up-than-laid-out",
                    message("At {fact} more seed of the lot {first} came up than was laid out, so it counts as all: "
                            "look at the two numbers."),
                    message("{count} times more seed of the lot {first} came up than was laid out, first at {fact}: "
                            "look at the numbers; until then it counts as all.")};
        case FindingCode::note_on_nothing:
            return {"note-on-nothing",
                    message("The note {fact} hangs on a record that is gone: delete it, or write it anew where it "
                            "belongs."),
                    message("{count} notes hang on records that are gone, first {fact}: delete them, or write them "
                            "anew where they belong.")};
        case FindingCode::no_average_for:
            return {"no-average-for",
                    message("{first} is always costed lot by lot, for its lots differ, so {fact} changes nothing: "
                            "take it away, or name another material."),
                    message("{first} is always costed lot by lot, for its lots differ, so {count} changes do nothing, "
                            "first {fact}: take them away, or name another material.")};
        case FindingCode::no_powder:
            return {"no-powder",
                    message("At {fact} {first} is sold as powder, but it is no pigment made here, so that line is left "
                            "out: name the powder that was sold."),
                    message("{count} times {first} is sold as powder, but it is no pigment made here, so those lines "
                            "are left out, first {fact}: name the powder that was sold.")};
    }
    return {};
}

struct Cause {
    const Finding* first = nullptr;
    std::vector<string_view> about;  // the arguments that part one cause from another
    std::uint64_t count = 0;
};

std::vector<string_view> cause_of(const Finding& finding) {
    std::vector<string_view> about;
    const int amount_at = words(finding.code).amount_at;
    for (int at = 0; at < static_cast<int>(finding.args.size()); ++at) {
        if (at != amount_at) about.push_back(finding.args[static_cast<std::size_t>(at)]);
    }
    return about;
}

// "oils-march, line 3" of "oils-march:3"; a fact without a code is named by its table.
std::string fact_in_words(const Shop& shop, FactRef about) {
    std::string name = name_of(shop, about);
    if (name.empty()) return std::string{table_of(about.kind)};
    const auto colon = name.rfind(':');
    const bool of_a_line = colon != std::string::npos && colon + 1 < name.size() &&
                           name.find_first_not_of("0123456789", colon + 1) == std::string::npos;
    if (!of_a_line) return name;
    return say("{code}, line {line}", arg("code", name.substr(0, colon)), arg("line", name.substr(colon + 1)));
}

// "about 1 kg" of "~1000 g".
std::string amount_in_words(const std::string& text) {
    const auto amount = read_amount(text);
    if (!amount) return text;
    const std::string shown = shown_quantity((*amount).quantity);
    return (*amount).mark == Mark::measured ? shown : say("about {amount}", arg("amount", shown));
}

FindingLine line(const Shop& shop, const Cause& cause) {
    const Finding& finding = *cause.first;
    const Words say_it = words(finding.code);
    std::vector<Arg> args{arg("fact", fact_in_words(shop, finding.about)), arg("day", shown_date(finding.day))};
    constexpr std::array<const char*, 2> kNames{"first", "second"};
    for (std::size_t at = 0; at < kNames.size(); ++at) {
        std::string text = at < finding.args.size() ? finding.args[at] : std::string{};
        if (static_cast<int>(at) == say_it.amount_at) text = amount_in_words(text);
        args.push_back(arg(kNames[at], std::move(text)));
    }
    return {std::string{say_it.code}, say_count_with(say_it.one, say_it.many, cause.count, std::move(args)),
            name_of(shop, finding.about)};
}

}  // namespace

string_view code_of(FindingCode code) {
    return words(code).code;
}

std::vector<FindingLine> finding_lines(const Shop& shop, const std::vector<Finding>& findings) {
    std::vector<Cause> causes;
    for (const Finding& finding : findings) {
        auto about = cause_of(finding);
        const auto same = std::ranges::find_if(
            causes, [&](const Cause& cause) { return cause.first->code == finding.code && cause.about == about; });
        if (same != causes.end()) {
            ++same->count;
        } else {
            causes.push_back({&finding, std::move(about), 1});
        }
    }
    std::vector<FindingLine> lines;
    for (const Cause& cause : causes) lines.push_back(line(shop, cause));
    return lines;
}

}  // namespace dyestead::reports
