#include "reports/words/earns_best_words.h"

#include <algorithm>

#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

class Words {
public:
    Words(const Shop& shop, const EarnsBest& answer) : shop_{shop}, answer_{answer}, currency_{currency_of(shop)} {}

    std::string headline() const {
        if (std::ranges::none_of(answer_.bars, [](const BarEarns& each) { return each.brings && each.hours; }))
            return tr(
                "Nothing can be said yet: no kind of bar has a shelf price, a cost and the hours of a loaf on record.");
        const std::string from_shelf = loaves(&BarEarns::make);
        const std::string ordered = loaves(&BarEarns::make_if_ordered);
        if (!from_shelf.empty())
            return say_count(
                "From what is there, pour {loaves}: that brings most in the next month, about {money}.",
                "From what is there, pour {loaves}: that brings most in the next {count} months, about {money}.",
                months(), arg("loaves", from_shelf), arg("money", money(answer_.brings)));
        if (!ordered.empty())
            return say(
                "Nothing that is wanted can be poured from what is there; with what is missing ordered, pour "
                "{loaves}, for about {money}.",
                arg("loaves", ordered), arg("money", money(answer_.brings_if_ordered)));
        if (std::ranges::any_of(answer_.bars, [](const BarEarns& each) { return each.wanted > 0; }))
            return tr("Nothing that is wanted can be poured in the hours there are, or what is wanted brings nothing.");
        return say_count(
            "Pour nothing for now: at last year's sales the bars on the shelf last the next month.",
            "Pour nothing for now: at last year's sales the bars on the shelf last the next {count} months.", months());
    }

    // What ordering would add to the headline's plan.
    std::string if_ordered() const {
        if (answer_.brings <= 0 || answer_.brings_if_ordered <= answer_.brings + 0.005) return {};
        return say("With what is missing ordered, pour {loaves}: about {money}.",
                   arg("loaves", loaves(&BarEarns::make_if_ordered)), arg("money", money(answer_.brings_if_ordered)));
    }

    std::string best_for_an_hour() const {
        const BarEarns* best = by_hour(true);
        const BarEarns* least = by_hour(false);
        if (best == nullptr) return {};
        const auto first = arg("best", bar(*best));
        const auto brings = arg("money", money(*best->per_hour));
        const auto with_selling = arg("selling", money(best->with_selling.value_or(*best->per_hour)));
        if (best == least)
            return say("An hour of making {best} brings {money}, {selling} with the hours and cost of selling.", first,
                       brings, with_selling);
        return say(
            "An hour of making brings most with {best}: {money}, {selling} with the hours and cost of selling. It "
            "brings least with {least}: {less}.",
            first, brings, with_selling, arg("least", bar(*least)), arg("less", money(*least->per_hour)));
    }

    // Powder on the shelf is soon gone, and then the order may be another.
    std::string grown_again() const {
        const BarEarns* best = by_hour(true);
        if (best == nullptr || !best->grown_again) return {};
        const BarEarns* not_grown = nullptr;
        for (const BarEarns& each : answer_.bars)
            if (each.per_hour && !each.grown_again && (not_grown == nullptr || *each.per_hour > *not_grown->per_hour))
                not_grown = &each;
        const auto bar_said = arg("bar", bar(*best));
        const auto again = arg("money", money(*best->grown_again));
        if (not_grown == nullptr)
            return say(
                "That is with the powder there is. Its colour grown again, an hour with {bar}, at bed and vat too, "
                "brings {money}.",
                bar_said, again);
        return say(
            "That is with the powder there is. Its colour grown again, an hour with {bar}, at bed and vat too, brings "
            "{money}; of the bars that need no growing {other} brings most, {more}.",
            bar_said, again, arg("other", bar(*not_grown)), arg("more", money(*not_grown->per_hour)));
    }

    std::string hours_said() const {
        const auto hours = arg("hours", shown_hours(answer_.hours.value_or(0)));
        switch (answer_.hours_from) {
            case HoursFrom::nothing:
                return tr(
                    "No hours at the bench are on record for the last 12 months, so your hours set no limit here; "
                    "say how many there are to have them counted.");
            case HoursFrom::asked:
                return say_count("Counted with {hours} of your own for the next month, as you said.",
                                 "Counted with {hours} of your own for the next {count} months, as you said.", months(),
                                 hours);
            case HoursFrom::bench_records:
                return say_count(
                    "Counted with {hours} at the bench in the next month: as many as a month took in the last 12.",
                    "Counted with {hours} at the bench in the next {count} months: as many as the last 12 months "
                    "took, for that time.",
                    months(), hours);
        }
        return {};
    }

    std::string missing(const BarEarns& each) const {
        const auto name = arg("bar", bar(each));
        if (each.no_price) return say("{bar}: no shelf price is on record; write one on the price list.", name);
        if (each.no_cost)
            return say("{bar}: what it costs cannot be reckoned; the report on prices says what is missing.", name);
        if (!each.hours)
            return say(
                "{bar}: no loaf of its recipe with hours was cut in the last two years, so it stands in no plan; note "
                "the hours of the next one.",
                name);
        if (each.sold_a_year <= 0)
            return say("{bar}: none was sold in the last 12 months, so the plan makes none.", name);
        return {};
    }

private:
    std::string bar(const BarEarns& each) const { return called(shop_, each.bar); }
    std::string money(double units) const { return rough_money(units, currency_); }
    std::uint64_t months() const { return static_cast<std::uint64_t>(answer_.months); }

    std::string loaves(int BarEarns::*count) const {
        std::string list;
        for (const BarEarns& each : answer_.bars) {
            if (each.*count <= 0) continue;
            if (!list.empty()) list += "; ";  // names have commas of their own
            list += say_count("{count} loaf of {bar}", "{count} loaves of {bar}",
                              static_cast<std::uint64_t>(each.*count), arg("bar", bar(each)));
        }
        return list;
    }

    const BarEarns* by_hour(bool most) const {
        const BarEarns* found = nullptr;
        for (const BarEarns& each : answer_.bars) {
            if (!each.per_hour) continue;
            const bool further =
                found != nullptr && (most ? *each.per_hour > *found->per_hour : *each.per_hour < *found->per_hour);
            if (found == nullptr || further) found = &each;
        }
        return found;
    }

    const Shop& shop_;
    const EarnsBest& answer_;
    std::string currency_;
};

std::vector<std::string> said(std::vector<std::string> all) {
    std::erase_if(all, [](const std::string& each) { return each.empty(); });
    return all;
}

}  // namespace

std::string earns_best_headline(const Shop& shop, const EarnsBest& answer) {
    return Words{shop, answer}.headline();
}

std::vector<std::string> earns_best_sentences(const Shop& shop, const EarnsBest& answer) {
    const Words words{shop, answer};
    return said({words.if_ordered(), words.best_for_an_hour(), words.grown_again(), words.hours_said()});
}

std::vector<std::string> earns_best_missing(const Shop& shop, const EarnsBest& answer) {
    const Words words{shop, answer};
    std::vector<std::string> all;
    for (const BarEarns& each : answer.bars) all.push_back(words.missing(each));
    if (!answer.proven)
        all.push_back(
            tr("There are so many ways to pour that the search was ended early; a slightly better plan may exist."));
    return said(std::move(all));
}

}  // namespace dyestead::reports
