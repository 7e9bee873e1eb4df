#include "reports/words/fact_words.h"

#include "domain/facts/dated.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

template <class Visit>
void visit_fact(const Shop& shop, FactRef about, Visit visit) {
    std::uint8_t place = 0;
    shop.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        if (FactKind{place++} != about.kind) return;
        if (const Fact* fact = shop.find(Key<Fact>{about.key})) visit(*fact);
    });
}

std::string material_of(const Shop& shop, Key<Lot> key) {
    const Lot* lot = shop.find(key);
    return lot == nullptr ? std::string{} : called(shop, lot->material);
}

template <class Fact>
std::string subject(const Shop& shop, const Fact& fact) {
    if constexpr (requires { std::string{fact.what}; }) {
        return fact.what;
    } else if constexpr (requires { Key<Material>{fact.material}; }) {
        return called(shop, fact.material);
    } else if constexpr (requires { Key<Material>{fact.bar}; }) {
        return called(shop, fact.bar);
    } else if constexpr (requires { Key<Material>{fact.pigment}; }) {
        return called(shop, fact.pigment);
    } else if constexpr (requires { Key<Planting>{fact.planting}; }) {
        return called(shop, fact.planting);
    } else if constexpr (requires { Key<Lot>{fact.lot}; }) {
        return material_of(shop, fact.lot);
    } else if constexpr (Line<Fact>) {
        return called(shop, fact.head);
    } else {
        return {};
    }
}

}  // namespace

std::string fact_words(const Shop& shop, FactRef about) {
    std::string words;
    visit_fact(shop, about, [&](const auto& fact) { words = subject(shop, fact); });
    return words.empty() ? called(shop, about) : words;
}

std::string fact_place(const Shop& shop, FactRef about) {
    const std::string name = name_of(shop, about);
    if (name.empty()) return std::string{table_of(about.kind)};
    std::string place = name;
    visit_fact(shop, about, [&](const auto& fact) {
        using Fact = std::remove_cvref_t<decltype(fact)>;
        if constexpr (Line<Fact>)
            place =
                say("{code}, line {line}", arg("code", name.substr(0, name.rfind(':'))), arg("line", fact.position));
    });
    return place;
}

std::optional<Day> fact_day(const Shop& shop, FactRef about) {
    std::optional<Day> day;
    visit_fact(shop, about, [&](const auto& fact) {
        using Fact = std::remove_cvref_t<decltype(fact)>;
        if constexpr (Line<Fact>) {
            if (const auto* head = shop.find(fact.head)) day = dated(*head);
        } else {
            day = dated(fact);
        }
    });
    return day;
}

}  // namespace dyestead::reports
