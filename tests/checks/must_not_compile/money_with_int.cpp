// A bare number cannot be added to money.
#include "domain/values/money.h"

using namespace dyestead;

#ifdef WRONG
constexpr auto dearer = Money{} + 1;  // refused
#else
constexpr auto dearer = Money{} + Money::units(1);
#endif
