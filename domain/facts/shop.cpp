#include "domain/facts/shop.h"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace dyestead {
namespace {

using Numbered = std::vector<std::pair<std::int64_t, std::size_t>>;

// The places of a list's facts in key order; nothing where they stand so already.
template <class Fact>
Numbered out_of_order(const std::vector<Fact>& list) {
    bool sorted = true;
    for (std::size_t i = 1; i < list.size(); ++i) sorted = sorted && !(list[i].key < list[i - 1].key);
    Numbered order;
    for (std::size_t i = 0; !sorted && i < list.size(); ++i) order.emplace_back(list[i].key.number, i);
    return order;
}

}  // namespace

Shop::Shop() = default;
Shop::Shop(const Shop& other) = default;
Shop::Shop(Shop&& other) noexcept = default;
Shop& Shop::operator=(const Shop& other) {
    Shop copy{other};
    return *this = std::move(copy);
}
Shop& Shop::operator=(Shop&& other) noexcept = default;
Shop::~Shop() = default;

void Shop::sort() {
    for_each_list([]<class Fact>(std::vector<Fact>& list) {
        Numbered order = out_of_order(list);
        if (order.empty()) return;
        std::sort(order.begin(), order.end());
        std::vector<Fact> sorted(list.size());
        for (std::size_t i = 0; i < order.size(); ++i) sorted[i] = std::move(list[order[i].second]);
        list.swap(sorted);
    });
}

}  // namespace dyestead
