#include "domain/ledger/finding.h"

#include <fmt/format.h>

namespace dyestead {
namespace {

// Calls visit(list) for the list that holds facts of this kind.
template <class Visit>
void visit_list(const Shop& shop, FactKind kind, Visit visit) {
    std::uint8_t place = 0;
    shop.for_each_list([&](const auto& list) {
        if (FactKind{place++} == kind) visit(list);
    });
}

}  // namespace

std::string name_of(const Shop& shop, FactRef about) {
    std::string name;
    visit_list(shop, about.kind, [&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        const Fact* fact = shop.find(Key<Fact>{about.key});
        if (fact == nullptr) return;
        if constexpr (Line<Fact>) {
            const auto* head = shop.find(fact->head);
            name = fmt::format("{}:{}", head == nullptr ? "" : head->code, fact->position);
        } else {
            name = fact->code;
        }
    });
    return name;
}

std::string_view table_of(FactKind kind) {
    std::string_view table;
    visit_list(
        Shop{}, kind, [&](const auto& list) { table = std::remove_cvref_t<decltype(list)>::value_type::kTable; });
    return table;
}

}  // namespace dyestead
