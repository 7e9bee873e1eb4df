#include "domain/ledger/makers_first.h"

#include <algorithm>
#include <span>

namespace dyestead {
namespace {

class ByEvent {
public:
    ByEvent(const std::vector<LotOfEvent>& lots, std::size_t events) : lots_{lots} {
        first_.reserve(events + 1);
        std::uint32_t at = 0;
        for (std::uint32_t event = 0; event <= events; ++event) {
            while (at < lots.size() && lots[at].event < event) ++at;
            first_.push_back(at);
        }
    }
    std::span<const LotOfEvent> operator()(std::uint32_t event) const {
        return std::span{lots_}.subspan(first_[event], first_[event + 1] - first_[event]);
    }

private:
    const std::vector<LotOfEvent>& lots_;
    std::vector<std::uint32_t> first_;
};

class DayByDay {
public:
    DayByDay(std::vector<Event>& events, std::vector<std::uint32_t> gathered, const std::vector<LotOfEvent>& made,
             const std::vector<LotOfEvent>& named)
        : events_{events}, gathered_{std::move(gathered)}, made_{made, events.size()}, named_{named, events.size()} {}

    void put_in_order() {
        for (std::size_t begin = 0; begin < events_.size();) {
            std::size_t end = begin;
            while (end < events_.size() && events_[end].day == events_[begin].day) ++end;
            gather_makers(begin, end);
            if (!makers_.empty()) put_in_order(begin, end);
            begin = end;
        }
    }

private:
    void gather_makers(std::size_t begin, std::size_t end) {
        makers_.clear();
        for (std::size_t at = begin; at < end; ++at)
            for (const LotOfEvent& each : made_(gathered_[at])) makers_.push_back(each);
        std::ranges::sort(makers_, {}, &LotOfEvent::lot);
    }

    void put_in_order(std::size_t begin, std::size_t end) {
        std::size_t moves = end - begin;  // a fact naming its own lot must not loop
        for (std::size_t at = begin; at < end;) {
            const std::size_t maker = maker_after(at, end);
            if (maker == end || moves == 0) {
                ++at;
                continue;
            }
            bring_forward(events_, maker, at);
            bring_forward(gathered_, maker, at);
            --moves;
        }
    }

    // The next event after this one that makes a lot it names; `end` where none does.
    std::size_t maker_after(std::size_t at, std::size_t end) {
        wanted_.clear();
        for (const LotOfEvent& named : named_(gathered_[at]))
            for (auto maker = std::ranges::lower_bound(makers_, named.lot, {}, &LotOfEvent::lot);
                 maker != makers_.end() && maker->lot == named.lot; ++maker)
                wanted_.push_back(maker->event);
        if (wanted_.empty()) return end;
        for (std::size_t later = at + 1; later < end; ++later)
            if (std::ranges::find(wanted_, gathered_[later]) != wanted_.end()) return later;
        return end;
    }

    template <class List>
    static void bring_forward(List& list, std::size_t from, std::size_t to) {
        const auto at = [&](std::size_t place) { return list.begin() + static_cast<std::ptrdiff_t>(place); };
        std::rotate(at(to), at(from), at(from) + 1);
    }

    std::vector<Event>& events_;
    std::vector<std::uint32_t> gathered_;
    ByEvent made_;
    ByEvent named_;
    std::vector<LotOfEvent> makers_;  // of the day, by lot
    std::vector<std::uint32_t> wanted_;
};

}  // namespace

void makers_first(std::vector<Event>& events, std::vector<std::uint32_t> gathered, const std::vector<LotOfEvent>& made,
                  const std::vector<LotOfEvent>& named) {
    DayByDay{events, std::move(gathered), made, named}.put_in_order();
}

}  // namespace dyestead
