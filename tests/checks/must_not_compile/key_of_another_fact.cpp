// A supplier's key cannot stand where a material's is wanted.
#include "domain/facts/cupboard.h"

using namespace dyestead;

#ifdef WRONG
constexpr Key<Material> ordered = Key<Supplier>{};  // refused
#else
constexpr Key<Material> ordered = Key<Material>{};
#endif
