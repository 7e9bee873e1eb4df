// Time becomes money only through what an hour is worth.
#include "domain/values/minutes.h"

using namespace dyestead;

#ifdef WRONG
constexpr auto wage = Money{} + Minutes{};  // refused
#else
constexpr auto wage = Money{} + HourlyRate{} * Minutes{};
#endif
