// plants_report.h - which of the colours grown is worth most: by the hour, by the bed, by the gram of equal shade?
#pragma once

#include "domain/decisions/plants_compared.h"
#include "reports/document.h"

namespace dyestead::reports {

Document plants_report(const Shop& shop, const Ledger& ledger, const std::vector<PlantCompared>& plants);

}  // namespace dyestead::reports
