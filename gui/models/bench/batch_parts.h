// batch_parts.h - what the two forms of a batch share: its time, its lye, and what is said of it.
#pragma once

#include "domain/decisions/can_make.h"
#include "gui/models/form/fact_form.h"

namespace dyestead::gui {

// A new batch is asked for its time as a whole; one that is there shows it line by line.
void add_time(FactForm<Batch>& form, const Writing& writing);
// Looks at the time of a new batch; false, with the trouble at its field, where it cannot be kept so.
bool read_time(Form& form);
bool keep_time(const Batch& batch, Form& form, const Writing& writing, Kept& kept);

// The lye that was weighed beside what the oils weighed in call for, as far as both are known.
std::string lye_said(const Shop& shop, const Batch& batch, const std::vector<BatchUse>& uses);
// "Shea runs short; there is enough for 1 loaf." Blank where all is there.
std::string enough_said(const Shop& shop, Key<Material> bar, const CanMake& answer);
std::string joined(std::initializer_list<std::string> sentences);

// What keeping it is called, and what it then means: `title` has {bar} and {day}.
void say_kept(Kept& kept, const Shop& shop, const Batch& batch, std::string_view title);

}  // namespace dyestead::gui
