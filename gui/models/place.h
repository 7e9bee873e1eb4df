// place.h - what a place of the window offers: its lists, what can be done there, the form to correct a row with, and
// the picture that serves it. Each place is one implementation without any window; gui/places/work_page shows them all.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gui/models/form/form.h"
#include "gui/models/places.h"
#include "reports/document.h"

namespace dyestead::gui {

// A list of the place; each on a tab when there are several.
struct Listing {
    std::string name;             // "Batches"
    reports::Table table{};       // at most six columns, one line each
    std::vector<FactRef> rows{};  // what each row of the table stands for
    std::string empty{};          // what to do next where there are no rows
};

// What a button of the place begins. A form, or an entry made at once (and taken back with Undo), or a page to print.
struct Doing {
    std::string label;         // with its letter for Alt; no two alike at one place
    bool to_selected = false;  // needs a selected row; `selected` is then never blank
    std::function<std::optional<Form>(const Writing&, std::optional<FactRef> selected)> begin{};
    std::function<std::optional<Kept>(const Writing&, std::optional<FactRef> selected)> at_once{};
    bool at_the_pan = false;  // or the vat worked live, over the whole window
    std::function<reports::Document(const Books&, std::optional<FactRef> selected)> paper{};
};

// What is told about the selected row.
struct Detail {
    std::string sentence{};
    std::optional<reports::Table> table{};
    std::vector<std::string> cautions{};
};

class PlaceModel {
public:
    virtual ~PlaceModel() = default;

    // How things stand, in one sentence.
    virtual std::string state(const Books& books) const = 0;
    // How many things here want doing; shown beside the name of the place.
    virtual std::size_t waiting(const Books& /*books*/) const { return 0; }
    // `find`: rows that hold these letters, all for none.
    virtual std::vector<Listing> listings(const Books& books, std::string_view find) const = 0;
    // Of one list, by its place among them. The first is begun with Ctrl+N.
    virtual std::vector<Doing> doings(std::size_t listing) const = 0;
    virtual Detail detail(const Books& /*books*/, std::size_t /*listing*/, FactRef /*row*/) const { return {}; }
    // The form that corrects the record of a row; nothing when it is not one that is typed in.
    virtual std::optional<Form> correct(const Writing& /*writing*/, FactRef /*row*/) const { return std::nullopt; }
    // Where a row is seen to, when that is another place: Enter on it goes there.
    virtual std::optional<Place> leads_to(const Books& /*books*/, std::size_t /*listing*/, FactRef /*row*/) const {
        return std::nullopt;
    }
    virtual std::optional<reports::Chart> picture(const Books& /*books*/, std::size_t /*listing*/,
                                                  std::optional<FactRef> /*row*/) const {
        return std::nullopt;
    }
    // Shown small at the foot of the place, always.
    virtual std::vector<std::string> cautions() const { return {}; }
};

// True when one of the texts holds the letters, whatever their case (A to Z).
bool holds(std::initializer_list<std::string_view> texts, std::string_view find);

}  // namespace dyestead::gui
