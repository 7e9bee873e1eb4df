#include "domain/decisions/bought_twice.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <tuple>

#include "domain/decisions/window.h"
#include "domain/facts/lines_of.h"

namespace dyestead {
namespace {

// In small letters, in the order of the alphabet; whatever is no letter or digit parts them.
std::string words_of(const std::string& name) {
    std::multiset<std::string> words;
    std::string word;
    const auto end = [&] {
        if (!word.empty()) words.insert(word);
        word.clear();
    };
    for (const char letter : name) {
        const bool capital = letter >= 'A' && letter <= 'Z';
        const bool plain = (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9');
        const bool beyond_ascii = static_cast<unsigned char>(letter) >= 0x80;
        if (capital)
            word += static_cast<char>(letter - 'A' + 'a');
        else if (plain || beyond_ascii)
            word += letter;
        else
            end();
    }
    end();
    std::string all;
    for (const std::string& each : words) all += each + " ";
    return all;
}

using Alike = std::tuple<std::string, std::optional<Purpose>, HeldAs>;
using From = std::set<std::pair<Key<Supplier>, Key<Material>>>;

From bought_from(const Records& records) {
    const Window year = months_to(records.ledger.as_of, 12);
    const LinesOf<DeliveryLine> lines{records.shop};
    From from;
    for (const Delivery& delivery : records.shop.all<Delivery>()) {
        if (!year.contains(delivery.date)) continue;
        for (const DeliveryLine* line : lines(delivery.key))
            if (const Lot* lot = records.shop.find(line->lot)) from.emplace(delivery.supplier, lot->material);
    }
    return from;
}

std::optional<double> a_unit(const Material& material, const Offer& offer) {
    const auto pack = as_held(material, offer.pack);
    if (!pack || pack->in_base() <= 0) return std::nullopt;
    const double unit = material.held_as == HeldAs::count ? 1e3 : 1e6;  // base units in a piece, kilogram or litre
    return number(offer.price) / static_cast<double>(pack->in_base()) * unit;
}

void add_offers(const Records& records, const From& from, BoughtTwice& to) {
    for (const Key<Material> key : to.materials) {
        const Material& material = *records.shop.find(key);
        std::map<Key<Supplier>, const Offer*> newest;
        for (const Offer& each : records.shop.all<Offer>()) {
            const Day day = records.ledger.as_of;
            if (each.material != key || each.noted > day || each.from > day) continue;
            const Offer*& known = newest[each.supplier];
            if (known == nullptr || each.from >= known->from) known = &each;
        }
        for (const auto& [supplier, offer] : newest)
            if (const auto price = a_unit(material, *offer))
                to.from.push_back({offer->key, *price, from.contains({supplier, key})});
    }
    std::ranges::sort(to.from, {}, [](const BoughtTwice::From& each) { return std::pair{each.a_unit, each.offer}; });
}

}  // namespace

std::vector<BoughtTwice> bought_twice(const Records& records) {
    const From from = bought_from(records);
    std::map<Alike, BoughtTwice> alike;
    for (const Material& material : records.shop.all<Material>()) {
        const bool bought = std::ranges::any_of(from, [&](const auto& each) { return each.second == material.key; });
        if (material.kind == MaterialKind::raw && bought)
            alike[{words_of(material.name), material.purpose, material.held_as}].materials.push_back(material.key);
    }
    std::vector<BoughtTwice> all;
    for (auto& [name, each] : alike) {
        const Key<Material> first = each.materials.front();
        const auto suppliers = std::ranges::count_if(from, [&](const auto& one) { return one.second == first; });
        if (each.materials.size() < 2 && suppliers < 2) continue;
        add_offers(records, from, each);
        all.push_back(std::move(each));
    }
    return all;
}

}  // namespace dyestead
