#include "domain/ledger/planned_from.h"

#include <algorithm>

namespace dyestead {
namespace {

// Whether this colouring takes the material for its colour.
bool colours(const Shop& shop, const RecipeColouring& line, const Material& material) {
    switch (line.colouring) {
        case Colouring::plain: return false;
        case Colouring::bought: {
            const Colour* colour = line.colour ? shop.find(*line.colour) : nullptr;
            return colour != nullptr && colour->bought_match == material.key;
        }
        case Colouring::own:
            return material.kind == MaterialKind::pigment && line.colour && material.colour == line.colour;
    }
    return false;
}

template <class RecipeLine>
bool names(const Shop& shop, Key<Recipe> recipe, Key<Material> material) {
    return std::ranges::any_of(shop.all<RecipeLine>(), [&](const RecipeLine& line) {
        return line.head == recipe && line.material == material;
    });
}

}  // namespace

std::vector<Key<Material>> planned_from(const Shop& shop, Key<Material> key) {
    std::vector<Key<Material>> bars;
    const Material* material = shop.find(key);
    if (material == nullptr) return bars;
    const bool in_all = material->purpose == Purpose::lye || material->purpose == Purpose::water;
    for (const RecipeColouring& line : shop.all<RecipeColouring>())
        if (in_all || names<RecipePart>(shop, line.head, key) || names<RecipeWrapping>(shop, line.head, key) ||
            colours(shop, line, *material))
            bars.push_back(line.bar);
    std::ranges::sort(bars);
    bars.erase(std::unique(bars.begin(), bars.end()), bars.end());
    return bars;
}

std::vector<const RecipeWrapping*> wrapping_of(const Shop& shop, Key<Material> bar) {
    std::vector<const RecipeWrapping*> lines;
    const auto found = std::ranges::find(shop.all<RecipeColouring>(), bar, &RecipeColouring::bar);
    if (found == shop.all<RecipeColouring>().end()) return lines;
    for (const RecipeWrapping& line : shop.all<RecipeWrapping>())
        if (line.head == found->head) lines.push_back(&line);
    return lines;
}

}  // namespace dyestead
