#include "domain/facts/shop.h"

#include <algorithm>

namespace dyestead {

void Shop::sort() {
    for_each_list([](auto& list) {
        using Fact = typename std::remove_reference_t<decltype(list)>::value_type;
        std::ranges::sort(list, {}, &Fact::key);
    });
}

}  // namespace dyestead
