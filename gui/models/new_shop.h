// new_shop.h - what a shop holds before the first entry: its name and its currency.
#pragma once

#include <string>

#include "domain/facts/shop.h"

namespace dyestead::gui {

// `name` may be blank; `currency` is an ISO 4217 code.
Shop first_records(const std::string& name, const std::string& currency, std::int64_t key_number);

}  // namespace dyestead::gui
