#include "domain/ledger/order.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "domain/facts/lines_of.h"
#include "domain/ledger/in_force.h"

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
    Gatherer(const Shop& shop, Day as_of) : shop_{shop}, as_of_{as_of} {}

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
        std::ranges::sort(events_, [](const Event& a, const Event& b) {
            return std::tie(a.day, a.phase, a.content, a.kind, a.key, a.assumed) <
                   std::tie(b.day, b.phase, b.content, b.kind, b.key, b.assumed);
        });
        makers_first();
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
        for (const auto* line : lines(fact.key)) {
            content[1] = plus(content[1], line->amount.quantity.in_base());
            names(fact, line->lot);
        }
        return content;
    }

    template <class Fact>
    void names(const Fact& fact, const std::optional<Key<Lot>>& lot) {
        if (lot) named_.push_back({{kKindOf<Fact>, fact.key.number}, lot->number});
    }
    template <class Fact>
    void makes(const Fact& fact, Key<Lot> lot) {
        made_.push_back({lot.number, fact.date, {kKindOf<Fact>, fact.key.number}});
    }

    void stock() {
        each(Phase::already_here, &AlreadyHere::date, [&](const AlreadyHere& fact) {
            makes(fact, fact.lot);
            return Content{number(fact.best_before), fact.amount.quantity.in_base(), number(fact.cost)};
        });
        const LinesOf<DeliveryLine> lines{shop_};
        each(Phase::delivery, &Delivery::date, [&](const Delivery& fact) {
            Content content{kNoBestBefore, 0, fact.carriage.in_millionths()};
            for (const DeliveryLine* line : lines(fact.key)) {
                makes(fact, line->lot);
                content[0] = std::min(content[0], number(line->best_before));
                content[1] = plus(content[1], line->amount.quantity.in_base());
                content[2] = plus(content[2], line->price.in_millionths());
            }
            return content;
        });
        each(Phase::loss, &Loss::date, [&](const Loss& fact) {
            names(fact, fact.lot);
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
        const LinesOf<CountLine> counted{shop_};
        each(Phase::count, &Count::date, [&](const Count& fact) {
            Content content{kNoBestBefore, 0, 0};
            for (const CountLine* line : counted(fact.key))
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
        const LinesOf<PlantingUse> sown{shop_};
        each(Phase::sow, &Planting::sown, [&](const Planting& fact) { return uses(sown, fact); });
        each(Phase::sow, &StandingBed::date, [](const StandingBed& fact) {
            return Content{kNoBestBefore, number(fact.time), number(fact.cost)};
        });
        const LinesOf<TendingUse> fed{shop_};
        each(Phase::tend, &Tending::date, [&](const Tending& fact) { return uses(fed, fact, number(fact.time)); });
        each(Phase::harvest, &Harvest::date, [&](const Harvest& fact) {
            makes(fact, fact.lot);
            return Content{kNoBestBefore, fact.amount.quantity.in_base(), number(fact.time)};
        });
        each(Phase::harvest, &SeedKept::date, [&](const SeedKept& fact) {
            makes(fact, fact.lot);
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
        const LinesOf<VatUse> used{shop_};
        const LinesOf<VatStep> steps{shop_};
        each(Phase::vat, &Vat::date, [&](const Vat& fact) {
            Content content = uses(used, fact);
            // A vat has no best before; by the clock it comes before one of that day whose time is not known.
            for (const VatStep* step : steps(fact.key))
                if (step->begun) content[0] = std::min(content[0], universal(*step->begun));
            return content;
        });
        const LinesOf<DryingLot> further{shop_};
        each(Phase::drying, &Drying::date, [&](const Drying& fact) {
            if (fact.lot) makes(fact, *fact.lot);
            std::int64_t dried = fact.amount ? fact.amount->quantity.in_base() : 0;
            for (const DryingLot* line : further(fact.key)) {
                makes(fact, line->lot);
                dried = plus(dried, line->amount.quantity.in_base());
            }
            return Content{kNoBestBefore, dried, number(fact.time)};
        });
    }

    void bench() {
        const LinesOf<BatchUse> poured{shop_};
        each(Phase::batch, &Batch::date, [&](const Batch& fact) { return uses(poured, fact, fact.loaves); });
        splits_last();
        each(Phase::cut, &Cut::date, [&](const Cut& fact) {
            makes(fact, fact.lot);
            return Content{number(fact.cured), fact.bars, fact.rejected};
        });
        const LinesOf<WrappingUse> wrapped{shop_};
        each(Phase::wrap, &Wrapping::date, [&](const Wrapping& fact) {
            names(fact, fact.lot);
            return uses(wrapped, fact, fact.bars);
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
            names(fact, fact.lot);
            return Content{kNoBestBefore, fact.bars, fact.price.in_millionths()};
        });
        each(Phase::settled, &OutSettled::date, [](const OutSettled& fact) {
            return Content{kNoBestBefore, fact.sold, fact.back};
        });
        each(Phase::returned, &Returned::date, [](const Returned& fact) {
            return Content{kNoBestBefore, fact.bars, fact.refund.in_millionths()};
        });
        const LinesOf<FairLine> taken{shop_};
        each(Phase::sale, &Fair::date, [&](const Fair& fact) {
            Content content{kNoBestBefore, 0, fact.fee.in_millionths()};
            for (const FairLine* line : taken(fact.key)) {
                content[1] = plus(content[1], line->taken - line->back);
                names(fact, line->lot);
            }
            return content;
        });
        const LinesOf<SaleLine> sold{shop_};
        const LinesOf<PowderLine> powder{shop_};
        each(Phase::sale, &Sale::date, [&](const Sale& fact) {
            Content content{kNoBestBefore, 0, 0};
            for (const SaleLine* line : sold(fact.key)) {
                content[1] = plus(content[1], line->bars);
                content[2] = plus(content[2], line->price.in_millionths());
                names(fact, line->lot);
            }
            for (const PowderLine* line : powder(fact.key)) {
                content[1] = plus(content[1], line->amount.quantity.in_base());
                content[2] = plus(content[2], line->price.in_millionths());
                names(fact, line->lot);
            }
            return content;
        });
    }

    // Within each day, moves every maker of a lot in front of the first event that names the lot.
    void makers_first() {
        std::ranges::sort(named_);
        std::ranges::sort(made_);
        for (auto begin = events_.begin(); begin != events_.end();) {
            const auto end = std::find_if(begin, events_.end(), [&](const Event& e) { return e.day != begin->day; });
            std::size_t moves = static_cast<std::size_t>(end - begin);  // a fact naming its own lot must not loop
            for (auto at = begin; at != end;) {
                const auto named = std::ranges::lower_bound(named_, who(*at), {}, &Naming::who);
                const auto named_end = std::ranges::upper_bound(named_, who(*at), {}, &Naming::who);
                const auto today = [&](const Naming& each) { return is_made_on(at->day, each.lot); };
                if (std::none_of(named, named_end, today)) {
                    ++at;
                    continue;
                }
                const auto maker = std::find_if(at + 1, end, [&](const Event& e) {
                    return std::any_of(named, named_end, [&](const Naming& each) { return makes(e, each.lot); });
                });
                if (maker != end && moves > 0) {
                    std::rotate(at, maker, maker + 1);
                    --moves;
                } else {
                    ++at;
                }
            }
            begin = end;
        }
    }

    using Who = std::pair<FactKind, std::int64_t>;
    struct Naming {
        Who who;
        std::int64_t lot = 0;
        friend auto operator<=>(const Naming&, const Naming&) = default;
    };
    struct Making {
        std::int64_t lot = 0;
        Day day{};
        Who who;
        friend auto operator<=>(const Making&, const Making&) = default;
    };

    static Who who(const Event& event) { return {event.kind, event.key}; }
    bool makes(const Event& event, std::int64_t lot) const {
        return std::ranges::binary_search(made_, Making{lot, event.day, who(event)});
    }
    bool is_made_on(Day day, std::int64_t lot) const {
        const auto found = std::ranges::lower_bound(made_, Making{lot, day, {}});
        return found != made_.end() && found->lot == lot && found->day == day;
    }

    const Shop& shop_;
    Day as_of_;
    std::vector<Event> events_;
    std::vector<Naming> named_;
    std::vector<Making> made_;
};

}  // namespace

Day assumed_end(const Planting& planting, const Plant& plant) {
    constexpr std::int64_t kLastYear = 9999;
    const std::int64_t last =
        std::int64_t{year_of(planting.sown)} + plant.years_to_first + std::max(plant.crops, 1) - 1;
    return day_of(static_cast<int>(std::min(last, kLastYear)), 12, 31);
}

std::vector<Event> in_order(const Shop& shop, Day as_of) {
    return Gatherer{shop, as_of}.gather();
}

}  // namespace dyestead
