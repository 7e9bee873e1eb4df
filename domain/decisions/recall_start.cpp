#include "domain/decisions/recall_start.h"

#include <algorithm>

namespace dyestead {
namespace {

template <class Fact>
const Fact* coded(const Shop& shop, std::string_view code) {
    const auto& all = shop.all<Fact>();
    const auto found = std::ranges::find(all, code, &Fact::code);
    return found == all.end() ? nullptr : &*found;
}

template <class Fact>
std::optional<Account> account_called(const Shop& shop, Account first, std::string_view code) {
    const Fact* found = coded<Fact>(shop, code);
    if (found == nullptr) return std::nullopt;
    return first + static_cast<Account>(found - shop.all<Fact>().data());
}

}  // namespace

std::vector<Account> recall_start(const Shop& shop, const Ledger& ledger, std::string_view code,
                                  std::optional<Day> from) {
    const AccountPlan& plan = ledger.accounts;
    for (const auto& one :
         {account_called<Lot>(shop, plan.lots, code), account_called<Batch>(shop, plan.batches, code),
          account_called<Vat>(shop, plan.vats, code), account_called<Planting>(shop, plan.plantings, code)})
        if (one) return {*one};

    std::vector<Account> lots;
    const auto add = [&](Key<Lot> key) {
        const Lot* lot = shop.find(key);
        if (lot == nullptr) return;
        const auto place = static_cast<Account>(lot - shop.all<Lot>().data());
        const std::optional<Day> made = ledger.lots[place].made;
        if (!made || (from && *made < *from)) return;
        if (std::ranges::find(lots, plan.lots + place) == lots.end()) lots.push_back(plan.lots + place);
    };
    const Delivery* delivery = coded<Delivery>(shop, code);
    const Supplier* supplier = coded<Supplier>(shop, code);
    const Material* material = coded<Material>(shop, code);
    for (const DeliveryLine& line : shop.all<DeliveryLine>()) {
        const Delivery* head = shop.find(line.head);
        const bool of_delivery = delivery != nullptr && head == delivery;
        const bool of_supplier = supplier != nullptr && head != nullptr && head->supplier == supplier->key;
        if (of_delivery || of_supplier || (!code.empty() && line.supplier_lot == code)) add(line.lot);
    }
    if (material != nullptr)
        for (const Lot& lot : shop.all<Lot>())
            if (lot.material == material->key) add(lot.key);
    return lots;
}

}  // namespace dyestead
