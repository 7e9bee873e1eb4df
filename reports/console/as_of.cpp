#include "reports/console/as_of.h"

#include <time.h>

#include "domain/text/amounts.h"
#include "reports/console/failures.h"

namespace dyestead::console {
namespace {

Day today() {
    const time_t now = time(nullptr);
    tm local{};
    localtime_r(&now, &local);
    return day_of(local.tm_year + 1900, static_cast<unsigned>(local.tm_mon + 1), static_cast<unsigned>(local.tm_mday));
}

}  // namespace

Day day_asked(const std::string& text, const std::string& option) {
    const auto day = read_day(text);
    if (!day) throw Refused{{*day.trouble, {{"value", text}}, option}};
    return *day;
}

Day as_of(const Shop& shop, const std::optional<std::string>& asked) {
    if (asked) return day_asked(*asked, "--as-of");
    const auto& about = shop.all<About>();
    if (!about.empty() && about.front().shown_as_of) return *about.front().shown_as_of;
    return today();
}

}  // namespace dyestead::console
