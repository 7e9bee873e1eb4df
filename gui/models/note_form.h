// note_form.h - a note, or the name of a photograph or bill, on any record; and what was noted of one.
#pragma once

#include <string>
#include <vector>

#include "gui/models/form/form.h"

namespace dyestead::gui {

// On a record of any kind; of a correction `about` is the note's own.
Form note_form(const Writing& writing, FactRef about);
Form note_form(const Writing& writing, Key<Note> corrected);

// What is noted of a record and of its lines, a sentence each, the oldest first.
std::vector<std::string> notes_told(const Books& books, FactRef about);

}  // namespace dyestead::gui
