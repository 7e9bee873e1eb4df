// A price needs the quantity it is quoted for: only a Rate multiplies.
#include "domain/values/rate.h"

using namespace dyestead;

#ifdef WRONG
constexpr auto cost = Money::units(4) * Quantity::grams(750);  // refused
#else
constexpr auto cost = Rate{Money::units(4), Quantity::grams(500)} * Quantity::grams(750);
#endif
