#include "domain/decisions/shop_hour.h"

#include "domain/decisions/records.h"
#include "domain/ledger/hours.h"
#include "domain/ledger/money_flow.h"

namespace dyestead {

ShopHour shop_hour(const Shop& shop, const Ledger& ledger, Period period) {
    const MoneyFlow flow = money_flow(shop, ledger, period);
    ShopHour answer;
    answer.taken = number(flow.total_in());
    answer.spent = number(flow.total_out());
    // What went into stock that was already here was worked before.
    for (const StageHours& each : hours(shop, ledger, period))
        if (each.stage != Stage::before_the_books) answer.hours += number(each.time) / 60;
    if (answer.hours > 0) answer.per_hour = (answer.taken - answer.spent) / answer.hours;
    return answer;
}

}  // namespace dyestead
