// batch_form.h - pouring a batch, and pouring off a part of one that stands.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

// What is poured; with the bar it is to become chosen already, where a row of recipes or plans was.
Form batch_form(const Writing& writing, std::optional<Key<Batch>> corrected = std::nullopt,
                std::optional<Key<Material>> bar = std::nullopt);

// A share of another batch, coloured or scented by itself.
Form split_form(const Writing& writing, std::optional<Key<Batch>> from,
                std::optional<Key<Batch>> corrected = std::nullopt);

}  // namespace dyestead::gui
