// language.h - which language the texts are in. Texts alone: how numbers are read and written never changes with it.
#pragma once

namespace dyestead::gui {

// The language the desktop asks for where there is a catalogue for it, else English. Before the first sentence.
void choose_language();

}  // namespace dyestead::gui
