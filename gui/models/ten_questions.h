// ten_questions.h - the ten questions as a form: a first answer before a single record is kept.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

// Earlier answers for the colour stand in the fields; without one, those for a colour of a new name.
Form ten_questions_form(const Writing& writing, std::optional<Key<Colour>> colour = std::nullopt);

// The colour on record that the answers are about.
std::optional<Key<Colour>> colour_answered(const Form& form, const Books& books);

}  // namespace dyestead::gui
