// next_step.h - what is to be done next at a vat, and what does its method say of it?
#pragma once

#include <string>

#include "domain/facts/shop.h"

namespace dyestead::gui {

// The first step of the method that the vat has not been through as often as the method says; none when all are done,
// or without a method.
const MethodStep* next_step(const Shop& shop, const Vat& vat);
// How often a step of the vat's method is noted at it.
int times_noted(const Shop& shop, const Vat& vat, int method_step);

// "Your method says: at 48 to 52 °C, pH 8.5 to 9.5, 15 min hands-on, 8 h waiting." Blank when it says nothing.
std::string target_of(const MethodStep& step);

// What the last step noted means: a reading outside the method's band, said once and never refused, else what is next.
std::string told_after_a_step(const Shop& shop, Key<Vat> vat);

// "vat of 3 July 2026, blue"
std::string vat_name(const Shop& shop, const Vat& vat);

}  // namespace dyestead::gui
