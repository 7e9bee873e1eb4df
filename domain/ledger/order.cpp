#include "domain/ledger/order.h"

#include <algorithm>
#include <map>

#include "domain/ledger/in_force.h"
#include "domain/ledger/makers_first.h"
#include "domain/ledger/sort_events.h"

namespace dyestead {
namespace {

using Content = std::array<std::int64_t, 3>;

constexpr std::int64_t kNoBestBefore = INT64_MAX;

std::int64_t number(const std::optional<Day>& day) {
    return day ? day->time_since_epoch().count() : kNoBestBefore;
}
std::int64_t number(const std::optional<Money>& money) {
    return money ? money->in_millionths() : 0;
}
std::int64_t number(const std::optional<Span>& span) {
    return span ? span->time.in_millionths() : 0;
}

// Sums that only decide an order may wrap around rather than stop the books.
std::int64_t plus(std::int64_t a, std::int64_t b) {
    return static_cast<std::int64_t>(static_cast<std::uint64_t>(a) + static_cast<std::uint64_t>(b));
}

// Which lots each fact makes and names, and what its lines come to.
class Gatherer {
public:
    Gatherer(const Shop& shop, const ShopLines& lines, Day as_of) : shop_{shop}, lines_{lines}, as_of_{as_of} {}

    std::vector<Event> gather() {
        std::size_t most = 0;
        shop_.for_each_list([&]<class Fact>(const std::vector<Fact>& list) {
            if constexpr (Head<Fact> && !std::is_same_v<Fact, Lot>) most += list.size();
        });
        events_.reserve(most);
        stock();
        garden();
        vats();
        bench();
        stall();
        working_day();
        makers_first(events_, sort_events(events_), made_, named_);
        return std::move(events_);
    }

private:
    template <class Fact, class Describe>
    void each(Phase phase, Day Fact::*day, Describe content) {
        std::uint32_t index = 0;
        for (const Fact& fact : shop_.all<Fact>()) {
            if (fact.*day <= as_of_)
                events_.push_back({fact.*day, content(fact), fact.key.number, index, phase, kKindOf<Fact>, false});
            ++index;
        }
    }

    template <class Of>
    Content uses(const LinesOf<UseIn<Of>>& lines, const Of& fact, std::int64_t more = 0) {
        Content content{kNoBestBefore, 0, more};
        for (const auto* line : lines(fact)) {
            content[1] = plus(content[1], line->amount.quantity.in_base());
            names(line->lot);
        }
        return content;
    }

    // Of the event that is being described, which comes next into the list.
    void names(const std::optional<Key<Lot>>& lot) {
        if (lot) named_.push_back({static_cast<std::uint32_t>(events_.size()), lot->number});
    }
    void makes(Key<Lot> lot) { made_.push_back({static_cast<std::uint32_t>(events_.size()), lot.number}); }

    void stock() {
        each(Phase::already_here, &AlreadyHere::date, [&](const AlreadyHere& fact) {
            makes(fact.lot);
            return Content{number(fact.best_before), fact.amount.quantity.in_base(), number(fact.cost)};
        });
        each(Phase::delivery, &Delivery::date, [&](const Delivery& fact) {
            Content content{kNoBestBefore, 0, fact.carriage.in_millionths()};
            for (const DeliveryLine* line : lines_.delivered(fact)) {
                makes(line->lot);
                content[0] = std::min(content[0], number(line->best_before));
                content[1] = plus(content[1], line->amount.quantity.in_base());
                content[2] = plus(content[2], line->price.in_millionths());
            }
            return content;
        });
        each(Phase::loss, &Loss::date, [&](const Loss& fact) {
            names(fact.lot);
            return Content{kNoBestBefore, fact.amount.quantity.in_base(), 0};
        });
        each(Phase::correction, &CostCorrection::date, [](const CostCorrection& fact) {
            return Content{kNoBestBefore, 0, fact.amount.in_millionths()};
        });
        counts_and_rules();
        each(Phase::last, &PaidOut::date, [](const PaidOut& fact) {
            return Content{kNoBestBefore, 0, fact.amount.in_millionths()};
        });
    }

    void counts_and_rules() {
        each(Phase::count, &Count::date, [&](const Count& fact) {
            Content content{kNoBestBefore, 0, 0};
            for (const CountLine* line : lines_.counted(fact))
                if (line->counted) content[1] = plus(content[1], line->counted->quantity.in_base());
            return content;
        });
        const Content none{kNoBestBefore, 0, 0};
        each(Phase::settings, &CostRule::from, [&](const CostRule&) { return none; });
        // A rule that has to wait comes up again on the day on which it takes effect.
        std::uint32_t index = 0;
        for (const CostRule& rule : shop_.all<CostRule>()) {
            const Day day = takes_effect(shop_, rule);
            if (day != rule.from && day <= as_of_)
                events_.push_back({day, none, rule.key.number, index, Phase::settings, kKindOf<CostRule>, false});
            ++index;
        }
    }

    void garden() {
        each(Phase::sow, &Planting::sown, [&](const Planting& fact) { return uses(lines_.sown, fact); });
        each(Phase::sow, &StandingBed::date, [](const StandingBed& fact) {
            return Content{kNoBestBefore, number(fact.time), number(fact.cost)};
        });
        each(Phase::tend, &Tending::date,
             [&](const Tending& fact) { return uses(lines_.fed, fact, number(fact.time)); });
        each(Phase::harvest, &Harvest::date, [&](const Harvest& fact) {
            makes(fact.lot);
            return Content{kNoBestBefore, fact.amount.quantity.in_base(), number(fact.time)};
        });
        each(Phase::harvest, &SeedKept::date, [&](const SeedKept& fact) {
            makes(fact.lot);
            return Content{kNoBestBefore, fact.amount.quantity.in_base(), number(fact.time)};
        });
        each(Phase::bed_lost, &BedLost::date, [](const BedLost& fact) {
            return Content{kNoBestBefore, fact.area.quantity.in_base(), 0};
        });
        each(Phase::last, &PlantingEnd::date, [](const PlantingEnd&) { return Content{kNoBestBefore, 0, 0}; });
        assumed_ends();
    }

    // An end recorded later than the assumed one does not undo it: nothing earlier ever changes.
    void assumed_ends() {
        std::map<std::int64_t, Day> ended;
        for (const PlantingEnd& end : shop_.all<PlantingEnd>()) {
            const Day earliest = std::min(end.date, ended.try_emplace(end.planting.number, end.date).first->second);
            ended[end.planting.number] = earliest;
        }
        std::uint32_t index = 0;
        for (const Planting& planting : shop_.all<Planting>()) {
            const Plant* plant = shop_.find(planting.plant);
            const Day last = plant == nullptr ? Day::max() : assumed_end(planting, *plant);
            const auto end = ended.find(planting.key.number);
            if (last <= as_of_ && (end == ended.end() || end->second > last))
                events_.push_back(
                    {last, {kNoBestBefore, 0, 0}, planting.key.number, index, Phase::last, kKindOf<PlantingEnd>, true});
            ++index;
        }
    }

    void vats() {
        each(Phase::vat, &Vat::date, [&](const Vat& fact) {
            Content content = uses(lines_.steeped, fact);
            // A vat has no best before; by the clock it comes before one of that day whose time is not known.
            for (const VatStep* step : lines_.steps(fact))
                if (step->begun) content[0] = std::min(content[0], universal(*step->begun));
            return content;
        });
        each(Phase::drying, &Drying::date, [&](const Drying& fact) {
            if (fact.lot) makes(*fact.lot);
            std::int64_t dried = fact.amount ? fact.amount->quantity.in_base() : 0;
            for (const DryingLot* line : lines_.dried_further(fact)) {
                makes(line->lot);
                dried = plus(dried, line->amount.quantity.in_base());
            }
            return Content{kNoBestBefore, dried, number(fact.time)};
        });
    }

    void bench() {
        each(Phase::batch, &Batch::date, [&](const Batch& fact) { return uses(lines_.poured, fact, fact.loaves); });
        splits_last();
        each(Phase::cut, &Cut::date, [&](const Cut& fact) {
            makes(fact.lot);
            return Content{number(fact.cured), fact.bars, fact.rejected};
        });
        each(Phase::wrap, &Wrapping::date, [&](const Wrapping& fact) {
            names(fact.lot);
            return uses(lines_.wrapped, fact, fact.bars);
        });
    }

    // A batch is poured off after the one it comes from, over however many of them.
    void splits_last() {
        constexpr std::int64_t kLongest = 1'000;  // whoever is poured off from himself ends here
        for (Event& event : events_) {
            if (event.kind != kKindOf<Batch>) continue;
            const Batch* batch = &shop_.all<Batch>()[event.index];
            std::int64_t depth = 0;
            while (batch != nullptr && batch->split_from && depth < kLongest) {
                batch = shop_.find(*batch->split_from);
                ++depth;
            }
            if (depth == 0) continue;
            event.phase = Phase::split;
            event.content[0] = depth;
        }
    }

    void working_day() {
        each(Phase::sitting, &Sitting::date, [](const Sitting& fact) {
            return Content{kNoBestBefore, fact.time.time.in_millionths(), 0};
        });
        each(Phase::last, &Work::date, [](const Work& fact) {
            return Content{kNoBestBefore, fact.time.time.in_millionths(), 0};
        });
        each(Phase::last, &Equipment::bought, [](const Equipment& fact) {
            return Content{kNoBestBefore, 0, fact.price.in_millionths()};
        });
    }

    void stall() {
        each(Phase::sale, &OutAtShop::date, [&](const OutAtShop& fact) {
            names(fact.lot);
            return Content{kNoBestBefore, fact.bars, fact.price.in_millionths()};
        });
        each(Phase::settled, &OutSettled::date, [](const OutSettled& fact) {
            return Content{kNoBestBefore, fact.sold, fact.back};
        });
        each(Phase::returned, &Returned::date, [](const Returned& fact) {
            return Content{kNoBestBefore, fact.bars, fact.refund.in_millionths()};
        });
        each(Phase::sale, &Fair::date, [&](const Fair& fact) {
            Content content{kNoBestBefore, 0, fact.fee.in_millionths()};
            for (const FairLine* line : lines_.taken(fact)) {
                content[1] = plus(content[1], line->taken - line->back);
                names(line->lot);
            }
            return content;
        });
        each(Phase::sale, &Sale::date, [&](const Sale& fact) {
            Content content{kNoBestBefore, 0, 0};
            for (const SaleLine* line : lines_.sold(fact)) {
                content[1] = plus(content[1], line->bars);
                content[2] = plus(content[2], line->price.in_millionths());
                names(line->lot);
            }
            for (const PowderLine* line : lines_.powder(fact)) {
                content[1] = plus(content[1], line->amount.quantity.in_base());
                content[2] = plus(content[2], line->price.in_millionths());
                names(line->lot);
            }
            return content;
        });
    }

    const Shop& shop_;
    const ShopLines& lines_;
    Day as_of_;
    std::vector<Event> events_;
    std::vector<LotOfEvent> named_;
    std::vector<LotOfEvent> made_;
};

}  // namespace

Day assumed_end(const Planting& planting, const Plant& plant) {
    constexpr std::int64_t kLastYear = 9999;
    const std::int64_t last =
        std::int64_t{year_of(planting.sown)} + plant.years_to_first + std::max(plant.crops, 1) - 1;
    return day_of(static_cast<int>(std::min(last, kLastYear)), 12, 31);
}

std::vector<Event> in_order(const Shop& shop, const ShopLines& lines, Day as_of) {
    return Gatherer{shop, lines, as_of}.gather();
}

}  // namespace dyestead
