#include "gui/desktop/memory.h"

#include <cstdlib>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace dyestead::gui {

// Elsewhere the C library is left to itself.
void keep_memory() {
#ifdef __GLIBC__
    constexpr int kLargestKept = 256 * 1024 * 1024;  // one list of a replay; an older library takes no more than 32
    constexpr int kMostKept = 512 * 1024 * 1024;
    mallopt(M_MMAP_THRESHOLD, kLargestKept);
    mallopt(M_TRIM_THRESHOLD, kMostKept);
#endif
}

}  // namespace dyestead::gui
