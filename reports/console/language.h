// language.h - in which language does the console program speak?
#pragma once

namespace dyestead::console {

// The one the machine asks for (LANGUAGE, else LC_ALL, LC_MESSAGES or LANG, as gettext does) where there is a catalogue
// for it, else English. Texts alone, and of this thread: how numbers are read and written never changes. Before the
// first sentence.
void choose_language();

}  // namespace dyestead::console
