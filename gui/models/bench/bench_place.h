// bench_place.h - the Bench: recipes with their lye, batches, the curing shelf, what a bar cost part by part.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

class BenchModel : public PlaceModel {
public:
    std::string state(const Books& books) const override;
    // Batches to cut, and lots on hold.
    std::size_t waiting(const Books& books) const override;
    std::vector<Listing> listings(const Books& books, std::string_view find) const override;
    std::vector<Doing> doings(std::size_t listing) const override;
    Detail detail(const Books& books, std::size_t listing, FactRef row) const override;
    std::optional<Form> correct(const Writing& writing, FactRef row) const override;
    std::optional<reports::Chart> picture(const Books& books, std::size_t listing,
                                          std::optional<FactRef> row) const override;
    std::vector<std::string> cautions() const override;
};

}  // namespace dyestead::gui
