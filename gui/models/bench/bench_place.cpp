#include "gui/models/bench/bench_place.h"

#include "domain/decisions/can_make.h"
#include "domain/decisions/shelf.h"
#include "gui/models/bench/bars.h"
#include "gui/models/bench/batch_form.h"
#include "gui/models/bench/batch_parts.h"
#include "gui/models/bench/bench_lists.h"
#include "gui/models/bench/cut_form.h"
#include "gui/models/bench/hold_form.h"
#include "gui/models/bench/recipe_form.h"
#include "gui/models/bench/shelf_picture.h"
#include "reports/batch_cost.h"
#include "reports/cost_sheet_report.h"
#include "reports/labels_report.h"
#include "reports/words/caution_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

enum : std::size_t { kBatches, kRecipes, kShelf, kPlans, kWrapped };

template <class Fact>
std::optional<Key<Fact>> row_of(std::optional<FactRef> row) {
    if (!row || row->kind != kKindOf<Fact>) return std::nullopt;
    return Key<Fact>{row->key};
}

using Begin = std::function<std::optional<Form>(const Writing&, std::optional<FactRef>)>;

Doing doing(std::string label, Begin begin, bool to_selected = false) {
    return {.label = std::move(label), .to_selected = to_selected, .begin = std::move(begin)};
}

// The bar a recipe makes first.
std::optional<Key<Material>> first_bar(const Shop& shop, std::optional<Key<Recipe>> recipe) {
    if (!recipe) return std::nullopt;
    const auto& lines = shop.all<RecipeColouring>();
    const auto line = std::ranges::find(lines, *recipe, &RecipeColouring::head);
    return line == lines.end() ? std::nullopt : std::optional{line->bar};
}

std::optional<Form> pour_planned(const Writing& writing, std::optional<FactRef> row) {
    const auto key = row_of<Plan>(row);
    const Plan* plan = key ? writing.shop().find(*key) : nullptr;
    if (plan == nullptr) return std::nullopt;
    Form form = batch_form(writing, std::nullopt, plan->bar);
    form.type("loaves", fmt::to_string(plan->loaves), writing);
    return form;
}

Doing cost_sheet() {
    return {
        .label = say("Cost &sheet"), .to_selected = true, .paper = [](const Books& books, std::optional<FactRef> row) {
            const auto batch = row_of<Batch>(row);
            return batch ? reports::cost_sheet(books.shop, books.ledger, *batch)
                         : std::get<reports::Document>(
                               reports::cost_sheet_report(books.shop, books.ledger, std::nullopt));
        }};
}

std::vector<Doing> shelf_doings() {
    const auto lot = [](std::optional<FactRef> row) { return row_of<Lot>(row); };
    return {doing(
                say("&Weigh bars..."), [lot](const Writing& w, auto row) { return weigh_form(w, lot(row)); }, true),
            doing(
                say("Wra&p them..."), [lot](const Writing& w, auto row) { return wrap_form(w, lot(row)); }, true),
            doing(
                say("Put on hol&d..."), [lot](const Writing& w, auto row) { return hold_form(w, lot(row)); }, true),
            doing(
                say("Set &free..."), [lot](const Writing& w, auto row) { return release_form(w, lot(row)); }, true),
            {.label = say("Print la&bels"), .paper = [](const Books& books, std::optional<FactRef>) {
                 return std::get<reports::Document>(reports::labels_report(books.shop, books.ledger, std::nullopt));
             }}};
}

Detail lot_detail(const Books& books, Key<Lot> key) {
    for (const ShelfLot& lot : shelf({books.shop, books.ledger}).lots) {
        if (lot.lot != key) continue;
        Detail detail;
        detail.sentence =
            say_count("One bar of {bar}: {state}.", "{count} bars of {bar}: {state}.",
                      static_cast<std::uint64_t>(whole_bars(lot.bars)),
                      arg("bar", reports::called(books.shop, lot.bar)), arg("state", bar_state_words(books, lot)));
        if (lot.weight && lot.weight->below_declared.value_or(false))
            detail.cautions.push_back(
                say("The bars weigh less than their label says. The weight on a label must be true on the day it is "
                    "sold."));
        if (lot.state == BarState::held)
            detail.cautions.push_back(
                say("On hold: may burn skin. Gloves to handle them; not to be sold, used or given away until you have "
                    "set them free."));
        return detail;
    }
    return {};
}

std::optional<Key<Batch>> batch_of(const Books& books, std::optional<FactRef> row) {
    if (const auto batch = row_of<Batch>(row)) return batch;
    if (const auto recipe = row_of<Recipe>(row)) {
        const Batch* newest = nullptr;
        for (const Batch& batch : books.shop.all<Batch>())
            if (batch.recipe == *recipe && batch.date <= books.as_of() &&
                (newest == nullptr || batch.date >= newest->date))
                newest = &batch;
        if (newest != nullptr) return newest->key;
    }
    return std::nullopt;
}

class BenchPlace : public PlaceModel {
public:
    std::string state(const Books& books) const override;
    std::size_t waiting(const Books& books) const override;  // batches to cut, and lots on hold
    std::vector<Listing> listings(const Books& books, std::string_view find) const override;
    std::vector<Doing> doings(std::size_t listing) const override;
    Detail detail(const Books& books, std::size_t listing, FactRef row) const override;
    std::optional<Form> correct(const Writing& writing, FactRef row) const override;
    std::optional<reports::Chart> picture(const Books& books, std::size_t listing,
                                          std::optional<FactRef> row) const override;
    std::vector<std::string> cautions() const override;
};

std::string BenchPlace::state(const Books& books) const {
    if (books.shop.all<Recipe>().empty()) return say("No recipe is written down yet.");
    return bench_state(books);
}

std::size_t BenchPlace::waiting(const Books& books) const {
    std::size_t count = 0;
    for (const Batch& batch : books.shop.all<Batch>())
        if (batch.date < books.as_of() && reports::cut_of(books.shop, books.ledger, batch.key) == nullptr) ++count;
    for (const ShelfLot& lot : shelf({books.shop, books.ledger}).lots)
        if (lot.state == BarState::held) ++count;
    return count;
}

std::vector<Listing> BenchPlace::listings(const Books& books, std::string_view find) const {
    return {batch_list(books, find), recipe_list(books, find), shelf_list(books, find), plan_list(books, find),
            wrapping_list(books, find)};
}

std::vector<Doing> BenchPlace::doings(std::size_t listing) const {
    switch (listing) {
        case kBatches:
            return {doing(say("&Pour a batch..."), [](const Writing& w, auto) { return batch_form(w); }),
                    doing(
                        say("C&ut it..."), [](const Writing& w, auto row) { return cut_form(w, row_of<Batch>(row)); },
                        true),
                    doing(
                        say("Pour off a p&art..."),
                        [](const Writing& w, auto row) { return split_form(w, row_of<Batch>(row)); }, true),
                    cost_sheet()};
        case kRecipes:
            return {
                doing(say("&Write down a recipe..."), [](const Writing& w, auto) { return recipe_form(w); }),
                doing(
                    say("&Pour it..."),
                    [](const Writing& w, auto row) {
                        return batch_form(w, std::nullopt, first_bar(w.shop(), row_of<Recipe>(row)));
                    },
                    true),
                doing(
                    say("P&lan it..."),
                    [](const Writing& w, auto row) { return plan_form(w, first_bar(w.shop(), row_of<Recipe>(row))); },
                    true)};
        case kShelf: return shelf_doings();
        case kPlans:
            return {doing(say("P&lan loaves..."), [](const Writing& w, auto) { return plan_form(w, std::nullopt); }),
                    doing(say("&Pour them..."), pour_planned, true)};
        case kWrapped:
            return {doing(say("Wra&p bars..."), [](const Writing& w, auto) { return wrap_form(w, std::nullopt); })};
        default: return {};
    }
}

Detail BenchPlace::detail(const Books& books, std::size_t, FactRef row) const {
    if (const auto batch = row_of<Batch>(row))
        return {.sentence = reports::batch_sentence(books.shop, books.ledger, *batch),
                .table = reports::batch_inputs(books.shop, books.ledger, *batch)};
    if (const auto recipe = row_of<Recipe>(row))
        if (const Recipe* found = books.shop.find(*recipe))
            return {.sentence = lye_worked_out(books.shop, *found),
                    .table = lye_table(books.shop, *found),
                    .cautions = {reports::lye_caution()}};
    if (const auto lot = row_of<Lot>(row)) return lot_detail(books, *lot);
    if (const auto key = row_of<Plan>(row))
        if (const Plan* plan = books.shop.find(*key)) {
            const std::string missing = enough_said(
                books.shop, plan->bar, can_make(books.shop, books.ledger, plan->bar, plan->loaves, books.as_of()));
            return {.sentence = missing.empty() ? say("All there is for it is in hand.") : missing};
        }
    return {};
}

std::optional<Form> BenchPlace::correct(const Writing& writing, FactRef row) const {
    if (const auto key = row_of<Batch>(row)) {
        const Batch* batch = writing.shop().find(*key);
        if (batch == nullptr) return std::nullopt;
        return batch->split_from ? split_form(writing, std::nullopt, *key) : batch_form(writing, *key);
    }
    if (const auto key = row_of<Recipe>(row)) return recipe_form(writing, *key);
    if (const auto key = row_of<Plan>(row)) return plan_form(writing, std::nullopt, *key);
    if (const auto key = row_of<Wrapping>(row)) return wrap_form(writing, std::nullopt, *key);
    if (const auto key = row_of<Cut>(row)) return cut_form(writing, std::nullopt, *key);
    if (const auto key = row_of<Weighing>(row)) return weigh_form(writing, std::nullopt, *key);
    if (const auto key = row_of<Hold>(row)) return hold_form(writing, std::nullopt, *key);
    if (const auto key = row_of<Release>(row)) return release_form(writing, std::nullopt, *key);
    // Bars on the shelf are what was cut.
    if (const auto key = row_of<Lot>(row))
        for (const Cut& cut : writing.shop().all<Cut>())
            if (cut.lot == *key) return cut_form(writing, std::nullopt, cut.key);
    return std::nullopt;
}

std::optional<reports::Chart> BenchPlace::picture(const Books& books, std::size_t listing,
                                                  std::optional<FactRef> row) const {
    if (listing == kShelf) return shelf_picture(books);
    const auto batch = batch_of(books, row);
    return batch ? reports::batch_chart(books.shop, books.ledger, *batch) : std::nullopt;
}

std::vector<std::string> BenchPlace::cautions() const {
    return {reports::lye_caution(),
            say("Lye left open draws water and grows weaker. Spoons and blenders for lye or dye never go back to "
                "food."),
            say("Bars on hold may be lye-heavy: gloves to handle them, and none given away either.")};
}

}  // namespace

std::unique_ptr<PlaceModel> bench_place() {
    return std::make_unique<BenchPlace>();
}

}  // namespace dyestead::gui
