// memory.h - what of the program's memory goes back to the system between two replays? Nothing: each edit replays the
// books anew, and to be handed the same pages again by the system costs more than the replay itself.
#pragma once

namespace dyestead::gui {

// To be called before the first shop is opened.
void keep_memory();

}  // namespace dyestead::gui
