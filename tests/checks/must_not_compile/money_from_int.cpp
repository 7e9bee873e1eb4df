// A bare number does not say whether it counts units, hundredths or millionths.
#include "domain/values/money.h"

using namespace dyestead;

#ifdef WRONG
constexpr Money price = 4;  // refused
#else
constexpr Money price = Money::units(4);
#endif
