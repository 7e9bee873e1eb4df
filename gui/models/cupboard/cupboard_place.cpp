#include "gui/models/cupboard/cupboard_place.h"

#include <algorithm>

#include "gui/models/cupboard/cupboard_lists.h"
#include "gui/models/cupboard/shelf_forms.h"
#include "gui/models/cupboard/stock.h"
#include "gui/models/cupboard/supply_forms.h"
#include "reports/sheets_report.h"
#include "reports/words/caution_words.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

enum List : std::size_t { kStock, kToOrder, kDeliveries, kPrices, kLosses, kCounts };

using Selected = std::optional<FactRef>;

std::optional<Key<Material>> material_at(const Selected& row) {
    if (row && row->kind == kKindOf<Material>) return Key<Material>{row->key};
    return std::nullopt;
}

// A button that opens a form which needs nothing selected.
Doing opens(std::string label, Form (*form)(const Writing&)) {
    return {.label = std::move(label),
            .begin = [form](const Writing& writing, Selected) -> std::optional<Form> { return form(writing); }};
}

Doing new_delivery() {
    return opens(say("New &delivery"), [](const Writing& writing) { return delivery_form(writing); });
}
Doing new_price() {
    return {.label = say("New &price"), .begin = [](const Writing& writing, Selected row) -> std::optional<Form> {
                return offer_form(writing, std::nullopt, material_at(row));
            }};
}
Doing new_loss() {
    return {.label = say("&Something lost"), .begin = [](const Writing& writing, Selected row) -> std::optional<Form> {
                return loss_form(writing, std::nullopt, material_at(row));
            }};
}
Doing stock_take() {
    return opens(say("Stock-&take"), [](const Writing& writing) { return count_form(writing); });
}
Doing print_sheet() {
    return {.label = say("Print a co&unt sheet"),
            .paper = [](const Books& books, Selected) { return reports::count_sheets(books.shop, books.ledger); }};
}
Doing here_already() {
    return opens(say("&Already here"), [](const Writing& writing) { return already_here_form(writing); });
}

class CupboardPlace : public PlaceModel {
public:
    std::string state(const Books& books) const override {
        const Reorder answer = reorder(books.shop, books.ledger);
        std::string stock = cupboard_state(books);
        const auto wanted = std::ranges::find_if(answer.rows, &ReorderRow::wanted);
        if (wanted == answer.rows.end()) return stock;
        return say(
            "{stock} {order}", arg("stock", stock), arg("order", order_sentence(books, answer, wanted->material)));
    }

    std::size_t waiting(const Books& books) const override {
        const Reorder answer = reorder(books.shop, books.ledger);
        return static_cast<std::size_t>(std::ranges::count_if(answer.rows, &ReorderRow::wanted));
    }

    std::vector<Listing> listings(const Books& books, std::string_view find) const override {
        MaterialList stock = cupboard_list(books, find);
        Listing first{.name = say("Stock"),
                      .table = std::move(stock.table),
                      .empty = say("The cupboard is bare in here. Put down what is already here, roughly; or lay the "
                                   "last bill beside you and enter a delivery.")};
        for (const Key<Material> material : stock.materials) first.rows.push_back({kKindOf<Material>, material.number});
        return {std::move(first),           order_list(books, reorder(books.shop, books.ledger), find),
                delivery_list(books, find), offer_list(books, find),
                loss_list(books, find),     count_list(books, find)};
    }

    std::vector<Doing> doings(std::size_t listing) const override {
        switch (listing) {
            case kDeliveries: return {new_delivery()};
            case kToOrder: return {new_delivery(), new_price()};
            case kPrices: return {new_price()};
            case kLosses: return {new_loss()};
            case kCounts: return {stock_take(), print_sheet()};
            default:
                return {new_delivery(),
                        new_price(),
                        new_loss(),
                        stock_take(),
                        print_sheet(),
                        here_already(),
                        opens(say("Ne&w thing"), [](const Writing& writing) { return material_form(writing); })};
        }
    }

    Detail detail(const Books& books, std::size_t listing, FactRef row) const override {
        Detail told;
        if (const auto material = material_at(row)) {
            if (listing == kToOrder) {
                const Reorder answer = reorder(books.shop, books.ledger);
                told.sentence = order_sentence(books, answer, *material);
                const std::string colour = colour_told(books, answer, *material);
                if (!colour.empty()) told.sentence += " " + colour;
                told.table = draft_order(books, answer, *material);
            } else {
                told.sentence = material_sentence(books, *material);
                const std::string colour = colour_told(books, reorder(books.shop, books.ledger), *material);
                if (!colour.empty()) told.sentence += " " + colour;
                told.table = lot_list(books, *material);
            }
            if (const Material* found = books.shop.find(*material)) {
                const std::string caution = reports::caution_sentence(found->caution, found->name);
                if (!caution.empty()) told.cautions.push_back(caution);
            }
        } else if (row.kind == kKindOf<Delivery>) {
            told.table = delivery_lines(books, Key<Delivery>{row.key});
        }
        return told;
    }

    std::optional<Form> correct(const Writing& writing, FactRef row) const override {
        if (row.kind == kKindOf<Material>) return material_form(writing, Key<Material>{row.key});
        if (row.kind == kKindOf<Delivery>) return delivery_form(writing, Key<Delivery>{row.key});
        if (row.kind == kKindOf<Offer>) return offer_form(writing, Key<Offer>{row.key});
        if (row.kind == kKindOf<Loss>) return loss_form(writing, Key<Loss>{row.key});
        if (row.kind == kKindOf<Count>) return count_form(writing, Key<Count>{row.key});
        return std::nullopt;
    }
};

}  // namespace

std::unique_ptr<PlaceModel> cupboard_place() {
    return std::make_unique<CupboardPlace>();
}

}  // namespace dyestead::gui
