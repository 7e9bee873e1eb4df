// Money times money is no amount of anything.
#include "domain/values/money.h"

using namespace dyestead;

#ifdef WRONG
constexpr auto product = Money{} * Money{};  // refused
#else
constexpr auto sum = Money{} + Money{};
#endif
