#include "gui/models/books.h"

#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

const About* about(const Shop& shop) {
    const auto& all = shop.all<About>();
    return all.empty() ? nullptr : &all.front();
}

}  // namespace

Day shown_day(const Shop& shop, Day today) {
    const About* shop_itself = about(shop);
    return shop_itself != nullptr ? shop_itself->shown_as_of.value_or(today) : today;
}

std::string shop_name(const Shop& shop) {
    const About* shop_itself = about(shop);
    return shop_itself != nullptr ? shop_itself->name : std::string{};
}

std::string day_sentence(const Books& books) {
    const std::string day = reports::shown_date(books.as_of());
    const About* shop_itself = about(books.shop);
    if (shop_itself != nullptr && shop_itself->shown_as_of) {
        return say("The books stand at {day}", arg("day", day));
    }
    return say("The books as of today, {day}", arg("day", day));
}

}  // namespace dyestead::gui
