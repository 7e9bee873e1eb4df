// An amount without its kind is none.
#include "domain/values/quantity.h"

using namespace dyestead;

#ifdef WRONG
constexpr Quantity weight = 750;  // refused
#else
constexpr Quantity weight = Quantity::grams(750);
#endif
