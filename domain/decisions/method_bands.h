// method_bands.h - which readings and results of a vat lie outside what its method names? The method is the
// maker's own: what lies outside is said, never refused.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/decisions/pigment_pool.h"

namespace dyestead {

enum class Band : std::uint8_t { temperature, acidity, waiting, yield };

struct OutsideBand {
    Band band{};
    Key<Vat> vat{};
    int step = 0;      // position in the vat; 0 for the yield
    std::string what;  // the step
    double found = 0;  // degrees Celsius, pH, minutes, or g of powder from a kg of harvest
    std::optional<double> low;
    std::optional<double> high;
};

// The readings at the vat's steps that name a step of its method. A band with one end is open at the other. A wait has
// a band only where the method says "2 to 3 hours"; where none is noted it is told by the clock, from when the step was
// begun to when the next was, less the hands' time.
std::vector<OutsideBand> readings_outside(const Shop& shop, const Vat& vat);
// Nothing where the harvest was not weighed, the vat gave nothing, or the method names no yield.
std::optional<OutsideBand> yield_outside(const Shop& shop, const FinishedVat& vat);

}  // namespace dyestead
