// A day plus a day is no day.
#include "domain/values/date.h"

using namespace dyestead;

#ifdef WRONG
constexpr auto later = Day{} + Day{};  // refused
#else
constexpr auto later = Day{} + Days{};
#endif
