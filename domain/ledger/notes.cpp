#include "domain/ledger/notes.h"

#include <algorithm>
#include <string>
#include <tuple>

namespace dyestead {
namespace {

// The record's own key, or that of the head it is a line of.
bool hangs_on(const Shop& shop, const AnyKey& any, FactRef about) {
    bool hangs = false;
    shop.for_each_list([&]<class Fact>(const std::vector<Fact>&) {
        if (Fact::kTable != any.table) return;
        hangs = FactRef{kKindOf<Fact>, any.number} == about;
        if constexpr (Line<Fact>) {
            const Fact* line = shop.find(Key<Fact>{any.number});
            const bool of_head = line != nullptr && FactRef{kKindOf<typename Fact::Head>, line->head.number} == about;
            hangs = hangs || of_head;
        }
    });
    return hangs;
}

}  // namespace

AnyKey any_key(FactRef about) {
    return {std::string{table_of(about.kind)}, about.key};
}

std::optional<FactRef> fact_ref(const AnyKey& any) {
    std::optional<FactRef> found;
    Shop{}.for_each_list([&]<class Fact>(const std::vector<Fact>&) {
        if (Fact::kTable == any.table) found = FactRef{kKindOf<Fact>, any.number};
    });
    return found;
}

std::vector<const Note*> notes_on(const Shop& shop, FactRef about) {
    std::vector<const Note*> notes;
    for (const Note& note : shop.all<Note>())
        if (hangs_on(shop, note.about, about)) notes.push_back(&note);
    std::ranges::sort(notes, [](const Note* one, const Note* other) {
        return std::tie(one->date, one->key) < std::tie(other->date, other->key);
    });
    return notes;
}

}  // namespace dyestead
