// Units, hundredths and millionths are whole (the compiler's warnings are errors here).
#include "domain/values/money.h"

using namespace dyestead;

#ifdef WRONG
const Money price = Money::units(3.8);  // refused
#else
const Money price = Money::hundredths(380);
#endif
