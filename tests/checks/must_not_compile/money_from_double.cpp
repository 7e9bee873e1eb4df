// A double cannot hold every millionth: money is made from whole numbers.
#include "domain/values/money.h"

using namespace dyestead;

#ifdef WRONG
constexpr Money price{3.8};  // refused
#else
constexpr Money price = Money::hundredths(380);
#endif
