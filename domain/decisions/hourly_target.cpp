#include "domain/decisions/hourly_target.h"

#include "domain/decisions/records.h"
#include "domain/ledger/in_force.h"

namespace dyestead {

std::optional<double> hourly_target(const Shop& shop, Day day) {
    const Person* person = default_person(shop, day);
    const Pay* pay = person == nullptr ? nullptr : pay_in_force(shop, person->key, day);
    return pay != nullptr && pay->per_hour ? std::optional{number(*pay->per_hour)} : std::nullopt;
}

}  // namespace dyestead
