#include "reports/words/names.h"

#include "reports/words/language.h"

namespace dyestead::reports {

std::string called(const Shop& shop, FactRef about) {
    std::string name;
    std::uint8_t place = 0;
    shop.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        if (FactKind{place++} != about.kind) return;
        if constexpr (requires(const Fact& fact) { std::string{fact.name}; }) {
            if (const Fact* fact = shop.find(Key<Fact>{about.key})) name = fact->name;
        }
    });
    return name.empty() ? name_of(shop, about) : name;
}

std::string colour_in_a_sentence(const Shop& shop, Key<dyestead::Colour> colour) {
    std::string name = called(shop, colour);
    // Not every language writes a colour small within a sentence.
    if (language_here() != "en") return name;
    const bool one_word = name.find(' ') == std::string::npos;
    if (one_word && name.size() > 1 && name[0] >= 'A' && name[0] <= 'Z' && name[1] >= 'a' && name[1] <= 'z')
        name[0] = static_cast<char>(name[0] - 'A' + 'a');
    return name;
}

std::string currency_of(const Shop& shop) {
    const auto& about = shop.all<About>();
    return about.empty() ? std::string{} : about.front().currency;
}

}  // namespace dyestead::reports
