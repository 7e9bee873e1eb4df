#include "gui/models/stall/stall_place.h"

#include "domain/decisions/verdict.h"
#include "gui/models/settings/settings_forms.h"
#include "gui/models/stall/fair_form.h"
#include "gui/models/stall/fair_words.h"
#include "gui/models/stall/price_forms.h"
#include "gui/models/stall/sale_form.h"
#include "gui/models/stall/shop_forms.h"
#include "gui/models/stall/stall_lists.h"
#include "reports/sheets_report.h"
#include "reports/words/caution_words.h"
#include "reports/words/powder_words.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

enum : std::size_t { kBars, kFairs, kOrders, kPrices };

using Selected = std::optional<FactRef>;

template <class Fact>
std::optional<Key<Fact>> row_of(const Selected& row) {
    if (!row || row->kind != kKindOf<Fact>) return std::nullopt;
    return Key<Fact>{row->key};
}

using Begin = std::function<std::optional<Form>(const Writing&, Selected)>;

Doing doing(std::string label, Begin begin, bool to_selected = false) {
    return {.label = std::move(label), .to_selected = to_selected, .begin = std::move(begin)};
}

Doing new_price() {
    return doing(
        say("New &price..."), [](const Writing& w, Selected row) { return price_form(w, row_of<Material>(row)); });
}

Doing new_fair() {
    return doing(say("Put down a f&air..."), [](const Writing& w, Selected) { return fair_form(w); });
}

std::optional<Form> count_back(const Writing& writing, Selected row) {
    const auto fair = row_of<Fair>(row);
    if (!fair || writing.shop().find(*fair) == nullptr) return std::nullopt;
    return count_back_form(writing, *fair);
}

// For the selected fair while it is still to come, else for the next one.
Doing print_sheet() {
    return {.label = say("P&rint the fair sheet"), .paper = [](const Books& books, Selected row) {
                auto key = row_of<Fair>(row);
                const Fair* fair = key ? books.shop.find(*key) : nullptr;
                if (fair == nullptr || fair->date < books.as_of()) key.reset();
                return reports::fair_sheets(books.shop, books.ledger, key);
            }};
}

// What was settled, or the bars out themselves.
std::optional<Key<OutAtShop>> out_at(const Shop& shop, const Selected& row) {
    if (const auto settled = row_of<OutSettled>(row))
        if (const OutSettled* found = shop.find(*settled)) return found->out;
    return row_of<OutAtShop>(row);
}

class StallPlace : public PlaceModel {
public:
    std::string state(const Books& books) const override { return stall_state(books); }

    // Fairs to be counted back.
    std::size_t waiting(const Books& books) const override {
        std::size_t fairs = 0;
        for (const Fair& fair : books.shop.all<Fair>())
            if (to_count_back(books.shop, fair, books.as_of())) ++fairs;
        return fairs;
    }

    std::vector<Listing> listings(const Books& books, std::string_view find) const override {
        return {bar_list(books, find), fair_list(books, find), order_list(books, find), price_list(books, find)};
    }

    std::vector<Doing> doings(std::size_t listing) const override {
        switch (listing) {
            case kBars: return {new_price(), new_fair(), print_sheet()};
            case kFairs: return {new_fair(), doing(say("Count &back..."), count_back, true), print_sheet()};
            case kOrders:
                return {
                    doing(say("An &order..."), [](const Writing& w, Selected) { return order_form(w); }),
                    doing(say("Another &sale..."), [](const Writing& w, Selected) { return sale_form(w); }),
                    doing(say("O&ut at a shop..."), [](const Writing& w, Selected) { return out_form(w); }),
                    doing(
                        say("&What became of them..."),
                        [](const Writing& w, Selected row) { return settled_form(w, out_at(w.shop(), row)); }, true),
                    doing(say("Brough&t back..."), [](const Writing& w, Selected) { return returned_form(w); })};
            case kPrices:
                return {
                    new_price(),
                    doing(
                        say("Price for &shops..."),
                        [](const Writing& w, Selected row) { return wholesale_price_form(w, row_of<Material>(row)); }),
                    doing(say("Price of p&owder..."), [](const Writing& w, Selected) { return powder_price_form(w); }),
                    doing(say("&What people would pay..."), [](const Writing& w, Selected) { return belief_form(w); }),
                    doing(
                        say("Fees of being pai&d..."), [](const Writing& w, Selected) { return channel_fee_form(w); })};
            default: return {};
        }
    }

    Detail detail(const Books& books, std::size_t, FactRef row) const override {
        if (const auto bar = row_of<Material>(row)) {
            const Prices answer = prices(books.shop, books.ledger);
            return {.sentence = bar_told(books, answer, *bar), .table = bar_table(books, answer, *bar)};
        }
        if (const auto key = row_of<Price>(row))
            if (const Price* price = books.shop.find(*key))
                return {.sentence = price_told(books, prices(books.shop, books.ledger), price->bar)};
        if (const auto key = row_of<WholesalePrice>(row))
            if (const WholesalePrice* price = books.shop.find(*key))
                return {.sentence = bar_told(books, prices(books.shop, books.ledger), price->bar)};
        if (const auto key = row_of<PowderPrice>(row))
            if (const PowderPrice* price = books.shop.find(*key))
                return {.sentence = reports::powder_line(
                            books.shop, verdict(books.shop, books.ledger, price->colour, kVerdictMonths, 0))};
        if (const auto sale = row_of<Sale>(row)) return {.sentence = sale_told(books, *sale)};
        const auto key = row_of<Fair>(row);
        const Fair* fair = key ? books.shop.find(*key) : nullptr;
        if (fair == nullptr) return {};
        Detail detail{.table = fair_table(books, *key)};
        if (fair->date > books.as_of())
            detail.sentence = fair_ahead(books, fair_plan(books.shop, books.ledger, *key));
        else if (to_count_back(books.shop, *fair, books.as_of()))
            detail.sentence = say("Not counted back yet; until then all that was taken counts as sold.");
        else
            detail.sentence = fair_told(books, *key);
        return detail;
    }

    std::optional<Form> correct(const Writing& writing, FactRef row) const override {
        if (const auto key = row_of<Fair>(row)) return fair_form(writing, *key);
        if (const auto key = row_of<Sale>(row)) return correct_sale(writing, *key);
        if (const auto key = row_of<OutAtShop>(row)) return out_form(writing, *key);
        if (const auto key = row_of<OutSettled>(row)) return settled_form(writing, std::nullopt, *key);
        if (const auto key = row_of<Returned>(row)) return returned_form(writing, *key);
        if (const auto key = row_of<Price>(row)) return price_form(writing, std::nullopt, *key);
        if (const auto key = row_of<WholesalePrice>(row)) return wholesale_price_form(writing, std::nullopt, *key);
        if (const auto key = row_of<PowderPrice>(row)) return powder_price_form(writing, *key);
        if (const auto key = row_of<PriceBelief>(row)) return belief_form(writing, *key);
        return std::nullopt;
    }

    // Of the chosen fair; of the next one where none is chosen.
    std::optional<reports::Chart> picture(const Books& books, std::size_t listing, Selected row) const override {
        if (listing != kFairs) return std::nullopt;
        auto fair = row_of<Fair>(row);
        if (!fair) fair = next_fair(books.shop, books.as_of());
        return fair ? fair_picture(books, *fair) : std::nullopt;
    }

    std::vector<std::string> cautions() const override { return reports::stall_cautions(); }
};

}  // namespace

std::unique_ptr<PlaceModel> stall_place() {
    return std::make_unique<StallPlace>();
}

}  // namespace dyestead::gui
