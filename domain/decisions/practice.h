// practice.h - do vats take less time the more of them there have been, and what would that save next season?
//
// The learning curve: each time the number of units doubles, one takes the same share of the time before. A straight
// line is laid through the logs of time and number; nothing is said while it may be chance. The verdict reckons with
// the time that was taken, practised or not: this stands beside it.
#pragma once

#include <optional>
#include <vector>

namespace dyestead {

// The time of one unit (of the average of all so far, where that is what falls). Requires: rate > 0, number >= 1.
double on_learning_curve(double first, double rate, double number);

struct Practice {
    int vats = 0;       // with time on record
    double rate = 1;    // what each doubling leaves of the time
    int to_come = 0;    // vats
    double factor = 1;  // their time, over the usual one
};

// `times`: of all vats of a colour as they were begun, hands-on time over what is usual for so much harvest; nought
// where none is on record. Empty where there are fewer than six, where they do not get quicker, or not beyond doubt
// (one in ten, one-sided, by Student's t), or where those to come would save nothing.
std::optional<Practice> practice(const std::vector<double>& times, int to_come);

}  // namespace dyestead
