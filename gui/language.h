// language.h - which language the texts are in. Texts alone: how numbers are read and written never changes with it.
#pragma once

#include <string>

namespace dyestead::gui {

// The language the desktop asks for where there is a catalogue for it, else English. Before the first sentence.
void choose_language();

// The currency of the desktop's region as an ISO 4217 code; GBP where it does not say.
std::string currency_here();

}  // namespace dyestead::gui
