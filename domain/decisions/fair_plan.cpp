#include "domain/decisions/fair_plan.h"

#include <algorithm>
#include <map>

#include "domain/decisions/contribution.h"
#include "domain/decisions/prices.h"
#include "domain/facts/lines_of.h"
#include "domain/ledger/fees.h"
#include "domain/ledger/holds.h"
#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

double open_hours(const Fair& fair, const FairTerms& terms) {
    return fair.open && !fair.open->time.is_zero() ? number(fair.open->time) / 60 : terms.usual_hours;
}

class Planning {
public:
    Planning(const Shop& shop, const Ledger& ledger, const Fair& fair, const FairTerms& terms)
        : shop_{shop},
          ledger_{ledger},
          fair_{fair},
          terms_{terms},
          prices_{prices(shop, ledger)},
          held_{holds(shop, ledger)} {}

    FairPlan answer() {
        plan_.fair = fair_.key;
        plan_.hours = open_hours(fair_, terms_);
        plan_.fixed = number(fair_.fee) + number(fair_.travel.value_or(Money{}));
        gather();
        for (const BarPrice& price : prices_.bars) add(price);
        fill_table();
        sum_up();
        return std::move(plan_);
    }

private:
    struct Candidate {
        Demand demand;
        double gain = 0;
        double loss = 0;
    };

    bool stood(const Fair& fair) const { return fair.ended == FairEnded::as_usual && fair.date <= ledger_.as_of; }

    // Bars sold, and the hours in which, of some fairs together.
    struct Trade {
        double bars = 0;
        double hours = 0;
    };

    void gather() {
        const LinesOf<FairLine> lines{shop_};
        Trade all;  // but this fair
        std::map<std::string, Trade> by_name;
        const auto add = [&](Trade& trade, const Fair& fair) {
            for (const FairLine* line : lines(fair.key)) trade.bars += std::max(0, line->taken - line->back);
            trade.hours += open_hours(fair, terms_);
        };
        Trade here;
        for (const Fair& each : shop_.all<Fair>()) {
            if (!stood(each)) continue;
            add(by_name[each.name], each);
            if (each.key == fair_.key) continue;
            add(all, each);
            if (each.name != fair_.name) continue;
            add(here, each);
            plan_.stood_before = true;
        }
        const auto busy = [&](const Trade& of) {
            return of.bars > 0 && all.bars > 0 ? (of.bars / of.hours) / (all.bars / all.hours) : 1;
        };
        plan_.busy = busy(here);
        for (const Fair& each : shop_.all<Fair>()) {
            if (!stood(each) || each.key == fair_.key) continue;
            const double exposure = open_hours(each, terms_) * busy(by_name[each.name]);
            for (const FairLine* line : lines(each.key))
                if (line->taken > 0)
                    records_[line->bar].push_back({exposure, std::max(0, line->taken - line->back), line->back <= 0});
        }
        std::vector<std::vector<DemandRecord>> kinds;
        for (const auto& [bar, records] : records_) kinds.push_back(records);
        prior_ = prior_from(kinds);
        own_hours();
    }

    void own_hours() {
        const Fair* newest = nullptr;
        for (const Fair& each : shop_.all<Fair>()) {
            const bool rather = newest == nullptr || (each.name == fair_.name) > (newest->name == fair_.name) ||
                                ((each.name == fair_.name) == (newest->name == fair_.name) && each.date > newest->date);
            if (stood(each) && rather) newest = &each;
        }
        if (newest == nullptr) return;
        for (const FairTime& line : shop_.all<FairTime>())
            if (line.head == newest->key) plan_.own_hours += number(line.time.time) / 60;
    }

    void add(const BarPrice& price) {
        TakeBars bar;
        bar.bar = price.bar;
        stock(bar);
        bar.pour_by = pour_by(price.bar);
        const auto records = records_.find(price.bar);
        const std::vector<DemandRecord> none;
        const auto& known = records == records_.end() ? none : records->second;
        bar.days_on_record = static_cast<int>(known.size());
        bar.at_least_only = !known.empty() && std::ranges::all_of(known, &DemandRecord::sold_out);
        bar.no_price = !price.shelf;
        bar.no_cost = !price.replacement;
        bar.brings = price.shelf ? prices_.terms.kept(*price.shelf) : 0;
        bar.keeps = price.replacement ? price.replacement->materials : 0;
        Candidate candidate{forecast(prior_, known, plan_.hours * plan_.busy), bar.brings - bar.keeps,
                            terms_.handling + terms_.damaged * bar.keeps};
        bar.expected = candidate.demand.expected();
        candidates_.push_back(std::move(candidate));
        plan_.bars.push_back(std::move(bar));
    }

    // From the day a batch is poured to the day its bars are saleable, as the newest batch of the kind took.
    std::optional<Day> pour_by(Key<Material> bar) const {
        const Cut* newest = nullptr;
        for (const Cut& cut : shop_.all<Cut>()) {
            const Batch* batch = shop_.find(cut.batch);
            if (batch == nullptr || batch->bar != bar || cut.date > ledger_.as_of) continue;
            if (newest == nullptr || cut.date >= newest->date) newest = &cut;
        }
        if (newest == nullptr) return std::nullopt;
        return fair_.date - (newest->cured - shop_.find(newest->batch)->date);
    }

    void stock(TakeBars& bar) const {
        std::vector<std::pair<Day, std::size_t>> ready;
        for (std::size_t i = 0; i < shop_.all<Lot>().size(); ++i) {
            const LotState& state = ledger_.lots[i];
            if (shop_.all<Lot>()[i].material != bar.bar || state.left < 1'000) continue;
            const int bars = static_cast<int>(state.left / 1'000);
            if (held_.why(static_cast<std::uint32_t>(i), ledger_.as_of)) {
                bar.held += bars;
            } else if (state.ready > fair_.date) {
                bar.in_cure += bars;
            } else {
                bar.there += bars;
                ready.emplace_back(state.ready, i);
            }
        }
        std::ranges::sort(ready);
        for (const auto& [day, at] : ready) bar.lots.push_back(shop_.all<Lot>()[at].key);
    }

    // A display of each kind first, then always the bar that is worth most, while it is worth something and fits.
    void fill_table() {
        int room = terms_.room.value_or(1'000'000);
        for (TakeBars& bar : plan_.bars) {
            bar.take = std::min({terms_.at_least, bar.there, room});
            room -= bar.take;
        }
        while (room > 0) {
            std::size_t best = plan_.bars.size();
            double most = 0;
            for (std::size_t i = 0; i < plan_.bars.size(); ++i) {
                const TakeBars& bar = plan_.bars[i];
                if (bar.take >= bar.there) continue;
                const double worth =
                    worth_of_one_more(candidates_[i].demand, bar.take, candidates_[i].gain, candidates_[i].loss);
                if (worth <= most) continue;
                most = worth;
                best = i;
            }
            if (best == plan_.bars.size()) break;
            ++plan_.bars[best].take;
            --room;
        }
    }

    void sum_up() {
        double earned = 0;
        for (std::size_t i = 0; i < plan_.bars.size(); ++i) {
            TakeBars& bar = plan_.bars[i];
            bar.expected_sold = candidates_[i].demand.sold(bar.take);
            plan_.expected_bars += bar.expected_sold;
            earned += bar.expected_sold * (bar.brings - bar.keeps);
        }
        plan_.expected_earned = earned - plan_.fixed;
        if (!(plan_.expected_bars > 0)) return;
        plan_.contribution = earned / plan_.expected_bars;
        plan_.break_even = units_to_earn(plan_.fixed, *plan_.contribution);
        if (prices_.hourly_target)
            plan_.break_even_full =
                units_to_earn(plan_.fixed + plan_.own_hours * *prices_.hourly_target, *plan_.contribution);
    }

    const Shop& shop_;
    const Ledger& ledger_;
    const Fair& fair_;
    const FairTerms& terms_;
    const Prices prices_;
    Holds held_;
    std::map<Key<Material>, std::vector<DemandRecord>> records_;
    RatePrior prior_;
    std::vector<Candidate> candidates_;
    FairPlan plan_;
};

}  // namespace

FairPlan fair_plan(const Shop& shop, const Ledger& ledger, Key<Fair> fair, const FairTerms& terms) {
    const Fair* found = shop.find(fair);
    return found == nullptr ? FairPlan{} : Planning{shop, ledger, *found, terms}.answer();
}

std::optional<Key<Fair>> next_fair(const Shop& shop, Day as_of) {
    const Fair* next = nullptr;
    for (const Fair& each : shop.all<Fair>())
        if (each.date > as_of && each.noted.value_or(as_of) <= as_of && (next == nullptr || each.date < next->date))
            next = &each;
    return next == nullptr ? std::nullopt : std::optional{next->key};
}

}  // namespace dyestead
