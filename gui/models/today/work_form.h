// work_form.h - hours that belong to nothing else: cleaning, paperwork, posting.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form work_form(const Writing& writing, std::optional<Key<Work>> corrected = std::nullopt);

}  // namespace dyestead::gui
