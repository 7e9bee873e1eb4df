#include "gui/models/removal.h"

#include <algorithm>

#include "domain/facts/field_text.h"
#include "domain/ledger/notes.h"
#include "reports/words/fact_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

// visit(FactRef referred to) for every key among the members of a fact.
template <class Fact, class Visit>
void for_each_reference(const Fact& fact, Visit&& visit) {
    for_each_field<Fact>([&](const auto& each) {
        const auto& value = fact.*each.member;
        using Member = std::remove_cvref_t<decltype(value)>;
        if constexpr (field_detail::Is<Member>::key) {
            visit(FactRef{kKindOf<typename field_detail::Is<Member>::Inner>, value.number});
        } else if constexpr (field_detail::Is<Member>::optional) {
            using Inner = typename field_detail::Is<Member>::Inner;
            if constexpr (field_detail::Is<Inner>::key)
                if (value) visit(FactRef{kKindOf<typename field_detail::Is<Inner>::Inner>, value->number});
        }
    });
}

bool among(const std::vector<FactRef>& all, FactRef one) {
    return std::ranges::find(all, one) != all.end();
}

// The kinds that make lots: each has a member `lot` that is never blank and is theirs alone.
template <class Fact>
constexpr bool kMakesLots =
    std::is_same_v<Fact, AlreadyHere> || std::is_same_v<Fact, DeliveryLine> || std::is_same_v<Fact, Harvest> ||
    std::is_same_v<Fact, SeedKept> || std::is_same_v<Fact, Drying> || std::is_same_v<Fact, DryingLot> ||
    std::is_same_v<Fact, Cut>;

template <class Fact>
std::optional<Key<Lot>> lot_made(const Fact& fact) {
    if constexpr (std::is_same_v<Fact, Drying>)
        return fact.lot;
    else if constexpr (kMakesLots<Fact>)
        return fact.lot;
    else
        return std::nullopt;
}

// The record, its lines, and the lots they made.
std::vector<FactRef> what_goes(const Shop& shop, FactRef fact) {
    std::vector<FactRef> going{fact};
    shop.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        for (const Fact& each : list) {
            bool goes = ref(each) == fact;
            if constexpr (Line<Fact>) {
                const FactRef head{kKindOf<typename Fact::Head>, each.head.number};
                if (head == fact) {
                    going.push_back(ref(each));
                    goes = true;
                }
            }
            if (!goes) continue;
            if (const auto lot = lot_made(each)) going.push_back({kKindOf<Lot>, lot->number});
        }
    });
    return going;
}

}  // namespace

Removal removal_of(const Shop& shop, FactRef fact) {
    Removal removal;
    const std::vector<FactRef> going = what_goes(shop, fact);
    shop.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        for (const Fact& each : list) {
            bool goes = among(going, ref(each));
            // A note goes with what it hangs on.
            if constexpr (std::is_same_v<Fact, Note>) {
                const auto about = fact_ref(each.about);
                goes = goes || (about && among(going, *about));
            }
            if (goes) {
                removal.change.remove(each.key);
                continue;
            }
            bool uses = false;
            for_each_reference(each, [&](FactRef used) { uses = uses || among(going, used); });
            if (uses) removal.users.push_back(ref(each));
        }
    });
    return removal;
}

std::optional<Kept> delete_fact(const Writing& writing, FactRef fact, std::string& why_not) {
    Removal removal = removal_of(writing.shop(), fact);
    const std::string what = reports::fact_words(writing.shop(), fact);
    if (!removal.users.empty()) {
        constexpr std::size_t kNamed = 3;
        std::string users;
        for (std::size_t i = 0; i < std::min(removal.users.size(), kNamed); ++i) {
            if (!users.empty()) users += "; ";
            users += reports::fact_words(writing.shop(), removal.users[i]);
            users += " (" + reports::fact_place(writing.shop(), removal.users[i]) + ")";
        }
        why_not = removal.users.size() > kNamed
                      ? say("{what} is still used by {count} other records, among them {users}; delete or correct "
                            "those first.",
                            arg("what", what), arg("count", removal.users.size()), arg("users", users))
                      : say("{what} is still used by {users}; delete or correct that first.", arg("what", what),
                            arg("users", users));
        return std::nullopt;
    }
    if (removal.change.is_empty()) {
        why_not = say("This record is no longer there.");
        return std::nullopt;
    }
    Kept kept;
    kept.change = std::move(removal.change);
    kept.title = reports::message("deleting {what}");
    kept.args = {{"what", what}};
    kept.consequence = [what](const Writing&) { return say("{what} is deleted.", arg("what", what)); };
    return kept;
}

}  // namespace dyestead::gui
