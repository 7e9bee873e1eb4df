#include "reports/words/recall_words.h"

#include <algorithm>
#include <array>

#include "reports/words/fact_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

constexpr std::size_t kNamesInASentence = 6;

template <class Fact>
const Fact* fact_of(const Shop& shop, const Whereabouts& there) {
    return there.fact && there.fact->kind == kKindOf<Fact> ? shop.find(Key<Fact>{there.fact->key}) : nullptr;
}

// Each once, in the order given, the first few by name.
std::string listed(const std::vector<std::string>& names) {
    std::vector<std::string> once;
    for (const std::string& name : names)
        if (std::ranges::find(once, name) == once.end()) once.push_back(name);
    std::string list;
    for (std::size_t at = 0; at < std::min(once.size(), kNamesInASentence); ++at)
        list += (list.empty() ? "" : ", ") + once[at];
    if (once.size() <= kNamesInASentence) return list;
    return say_count("{names} and {count} more listed above", "{names} and {count} more listed above",
                     once.size() - kNamesInASentence, arg("names", list));
}

std::string sold_to(const Shop& shop, Key<Sale> key) {
    const Sale* sale = shop.find(key);
    if (sale == nullptr) return {};
    std::string buyer = sale->buyer.value_or("");
    const std::string order = sale->order_number.value_or("");
    if (!buyer.empty() && !order.empty())
        return say("{buyer}, order {order}", arg("buyer", buyer), arg("order", order));
    if (!buyer.empty()) return buyer;
    if (!order.empty()) return say("order {order}", arg("order", order));
    switch (sale->channel) {
        case Channel::cash: return tr("sold for cash, nobody noted");
        case Channel::card: return tr("sold by card, nobody noted");
        case Channel::online: return tr("sold online, no order noted");
        case Channel::wholesale: return tr("sold wholesale, nobody noted");
        case Channel::other: return tr("sold, nobody noted");
    }
    return {};
}

std::string lost_as(const Loss& loss) {
    switch (loss.reason) {
        case LossReason::spoiled: return tr("spoiled");
        case LossReason::spilled: return tr("spilled");
        case LossReason::expired: return tr("past its date");
        case LossReason::other: return tr("lost otherwise");
        case LossReason::given: return tr("given away");
        case LossReason::sample: return tr("samples");
        case LossReason::own_use: return tr("own use");
        case LossReason::test: return tr("tests");
    }
    return {};
}

}  // namespace

std::string name_of(Known known) {
    switch (known) {
        case Known::named: return tr("named");
        case Known::by_rule: return tr("by rule");
        case Known::could_be: return tr("could be");
    }
    return {};
}

std::string name_of(Heap heap) {
    switch (heap) {
        case Heap::here: return tr("Still here");
        case Heap::reachable: return tr("Out, and there is somebody to ask");
        case Heap::out_of_reach: return tr("Out, and nobody is on record");
        case Heap::gone: return tr("Used up or thrown away");
    }
    return {};
}

std::string_view key_of(Known known) {
    constexpr std::array<std::string_view, kKnown> kKeys{"named", "by_rule", "could_be"};
    return kKeys[static_cast<std::size_t>(known)];
}

std::string_view key_of(Heap heap) {
    constexpr std::array<std::string_view, kHeaps> kKeys{"here", "reachable", "out_of_reach", "gone"};
    return kKeys[static_cast<std::size_t>(heap)];
}

Called called(const Shop& shop, const Ledger& ledger, Account account) {
    const std::uint32_t index = ledger.accounts.index(account);
    switch (ledger.accounts.kind(account)) {
        case AccountKind::lot: {
            const Lot& lot = shop.all<Lot>()[index];
            return {called(shop, lot.material), lot.code};
        }
        case AccountKind::batch: {
            const Batch& batch = shop.all<Batch>()[index];
            return {say("batch of {bar}", arg("bar", called(shop, batch.bar))), batch.code};
        }
        case AccountKind::vat: {
            const Vat& vat = shop.all<Vat>()[index];
            return {say("vat of {colour}", arg("colour", colour_in_a_sentence(shop, vat.colour))), vat.code};
        }
        case AccountKind::planting: {
            const Planting& planting = shop.all<Planting>()[index];
            return {say("bed of {plant}", arg("plant", called(shop, planting.plant))), planting.code};
        }
        case AccountKind::boundary:
        case AccountKind::out:
        case AccountKind::pool: break;
    }
    return {};
}

std::string went_to(const Shop& shop, const Whereabouts& there) {
    if (!there.fact) return {};
    if (const auto* line = fact_of<SaleLine>(shop, there)) return sold_to(shop, line->head);
    if (const auto* line = fact_of<PowderLine>(shop, there)) return sold_to(shop, line->head);
    if (const auto* line = fact_of<FairLine>(shop, there)) return called(shop, line->head);
    if (const auto* out = fact_of<OutAtShop>(shop, there)) return out->where;
    if (const auto* settled = fact_of<OutSettled>(shop, there)) {
        const OutAtShop* out = shop.find(settled->out);
        return say("sold at {shop}", arg("shop", out == nullptr ? std::string{} : out->where));
    }
    if (const auto* loss = fact_of<Loss>(shop, there)) return lost_as(*loss);
    if (fact_of<CountLine>(shop, there) != nullptr) return tr("missing at a stock-take");
    if (fact_of<Returned>(shop, there) != nullptr) return tr("brought back, spoiled");
    return fact_place(shop, *there.fact);
}

std::string went_to_with_note(const Shop& shop, const Whereabouts& there) {
    std::string place = went_to(shop, there);
    const auto* loss = fact_of<Loss>(shop, there);
    if (loss == nullptr || !loss->note || loss->note->empty()) return place;
    return say("{reason}: {note}", arg("reason", place), arg("note", *loss->note));
}

std::string what_to_do(const Shop& shop, const Ledger& ledger, const Recall& found) {
    std::vector<std::string> keep;
    std::vector<std::string> ask;
    std::vector<std::string> places;
    for (const Whereabouts& each : found.whereabouts) {
        if (each.heap == Heap::here) keep.push_back(called(shop, ledger, each.of).code);
        if (each.heap == Heap::reachable) ask.push_back(went_to(shop, each));
        if (each.heap == Heap::out_of_reach) places.push_back(went_to(shop, each));
    }
    static constexpr std::array<std::string_view, 8> kSentences{
        message("Nothing of it is here or out, so there is nothing to do with it; whether it must be reported all the "
                "same, the rules where you sell and your licensed assessor say."),
        message("Put by and hold {keep}; what must be called back or reported, and to whom, the rules where you sell "
                "and your licensed assessor say."),
        message("Write to those on record ({ask}); what must be called back or reported, and to whom, the rules where "
                "you sell and your "
                "licensed assessor say."),
        message("Put by and hold {keep}, and write to those on record ({ask}); what must be called back or reported, "
                "and to whom, the "
                "rules where you sell and your licensed assessor say."),
        message("Put up a notice for those who cannot be asked ({places}); what must be called back or reported, and "
                "to whom, the rules where you sell and your licensed assessor say."),
        message("Put by and hold {keep}, and put up a notice for those who cannot be asked ({places}); what must be "
                "called back or reported, and to whom, the rules where you sell and your licensed assessor say."),
        message("Write to those on record ({ask}), and put up a notice for those who cannot be asked ({places}); what "
                "must be called "
                "back or reported, and to whom, the rules where you sell and your licensed assessor say."),
        message("Put by and hold {keep}, write to those on record ({ask}), and put up a notice for those who cannot be "
                "asked ({places}); "
                "what must be called back or reported, and to whom, the rules where you sell and your licensed "
                "assessor say.")};
    const std::size_t which = (keep.empty() ? 0U : 1U) + (ask.empty() ? 0U : 2U) + (places.empty() ? 0U : 4U);
    return say_with(
        kSentences[which], {arg("keep", listed(keep)), arg("ask", listed(ask)), arg("places", listed(places))});
}

}  // namespace dyestead::reports
