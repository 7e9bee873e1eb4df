#include "gui/models/vat/vat_place.h"

#include <algorithm>

#include "domain/decisions/records.h"
#include "domain/ledger/in_force.h"
#include "domain/text/amounts.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/cupboard/supply_forms.h"
#include "gui/models/stall/sale_form.h"
#include "gui/models/vat/colour_forms.h"
#include "gui/models/vat/powder.h"
#include "gui/models/vat/standing.h"
#include "gui/models/vat/vat_form.h"
#include "gui/models/vat/vat_lists.h"
#include "gui/models/vat/vats.h"
#include "reports/sheets_report.h"
#include "reports/words/caution_words.h"
#include "reports/words/method_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::called;
using reports::say;
using reports::say_count;

namespace {

using Selected = std::optional<FactRef>;

enum List : std::size_t { kVats, kPowder, kDrying, kShades, kMethods, kColours, kAnswers };

// What the powder of a lot came from, to be corrected there.
std::optional<Form> correct_lot(const Writing& writing, Key<Lot> lot) {
    for (const Drying& drying : writing.shop().all<Drying>())
        if (drying.lot == lot) return drying_form(writing, drying.key);
    for (const DryingLot& further : writing.shop().all<DryingLot>())
        if (further.lot == lot) return drying_form(writing, further.head);
    for (const AlreadyHere& here : writing.shop().all<AlreadyHere>())
        if (here.lot == lot) return already_here_form(writing, here.key);
    return std::nullopt;
}

std::optional<Key<Vat>> vat_at(const Selected& row) {
    if (row && row->kind == kKindOf<Vat>) return Key<Vat>{row->key};
    return std::nullopt;
}

Doing opens(std::string label, Form (*form)(const Writing&)) {
    return {.label = std::move(label),
            .begin = [form](const Writing& writing, Selected) -> std::optional<Form> { return form(writing); }};
}

// For the method of the selected vat, or the selected one; for every method where neither is.
reports::Document sheet_for(const Books& books, Selected row) {
    std::optional<Key<Method>> method;
    if (row && row->kind == kKindOf<Method>) method = Key<Method>{row->key};
    if (const auto key = vat_at(row))
        if (const Vat* vat = books.shop.find(*key)) method = vat->method;
    return reports::vat_sheets(books.shop, books.ledger, method);
}

// One row for each of the last vats: how long it stood.
std::optional<reports::Chart> vats_picture(const Books& books) {
    constexpr std::size_t kMostRows = 8;
    reports::Timeline line{.today = books.as_of()};
    std::size_t standing = 0;
    for (const Vat* vat : newest_first<Vat>(books)) {
        if (line.rows.size() == kMostRows) break;
        const Drying* dried = nullptr;
        for (const DryingVat& each : books.shop.all<DryingVat>())
            if (each.vat == vat->key) dried = books.shop.find(each.head);
        const bool stands = dried == nullptr || dried->date > books.as_of();
        if (stands) ++standing;
        reports::TimelineRow row{.label = called(books.shop, vat->colour)};
        row.spans.push_back({.from = vat->date,
                             .to = stands ? books.as_of() : dried->date,
                             .shade = stands ? reports::Shade::solid : reports::Shade::light,
                             .word = stands ? say("stands") : std::string{}});
        if (!stands) row.signs.push_back({.on = dried->date, .sign = reports::Sign::notch, .word = say("dried")});
        line.rows.push_back(std::move(row));
    }
    if (line.rows.empty()) return std::nullopt;
    line.legend = {{reports::Shade::solid, say("stands")},
                   {reports::Shade::light, say("from begun to dry")},
                   {reports::Sign::notch, say("dried")}};
    const std::string sentence =
        standing == 0 ? say("None of these vats is standing.")
                      : say_count("One of these vats is standing.", "{count} of these vats are standing.", standing);
    return reports::Chart{.title = say("The last vats"), .sentence = sentence, .data = std::move(line)};
}

class VatPlace : public PlaceModel {
public:
    std::string state(const Books& books) const override { return vat_state(books); }

    std::size_t waiting(const Books& books) const override { return standing_vats(books.shop, books.as_of()).size(); }

    std::vector<Listing> listings(const Books& books, std::string_view find) const override {
        return vat_listings(books, find);
    }

    std::vector<Doing> doings(std::size_t listing) const override {
        const Doing vat =
            opens(say("New &vat, or from a sheet"), [](const Writing& writing) { return vat_form(writing); });
        const Doing asked = opens(say("May it be sold?"), [](const Writing& writing) { return allowed_form(writing); });
        const Doing dry = opens(say("&Dry and weigh"), [](const Writing& writing) { return drying_form(writing); });
        const Doing shade{
            .label = say("Try the &shade"), .begin = [](const Writing& writing, Selected row) -> std::optional<Form> {
                const bool lot = row && row->kind == kKindOf<Lot>;
                return shade_test_form(writing, std::nullopt, lot ? std::optional{Key<Lot>{row->key}} : std::nullopt);
            }};
        const Doing sheet{.label = say("P&rint a vat sheet"), .paper = sheet_for};
        switch (listing) {
            case kVats:
                return {vat,
                        {.label = say("&Work it at the pan"), .at_the_pan = true},
                        {.label = say("Ste&ps of it"),
                         .to_selected = true,
                         .begin = [](const Writing& writing, Selected row) -> std::optional<Form> {
                             const auto at = vat_at(row);
                             return at ? std::optional{vat_steps_form(writing, *at)} : std::nullopt;
                         }},
                        dry,
                        shade,
                        sheet};
            case kPowder:
                return {shade,
                        {.label = say("&Sell some of it"),
                         .to_selected = true,
                         .begin = [](const Writing& writing, Selected row) -> std::optional<Form> {
                             if (!row || row->kind != kKindOf<Lot>) return std::nullopt;
                             return powder_sale_form(writing, Key<Lot>{row->key});
                         }}};
            case kDrying: return {dry};
            case kShades: return {shade};
            case kMethods:
                return {opens(say("New &method"), [](const Writing& writing) { return method_form(writing); }),
                        {.label = say("Take over the s&tarter method"),
                         .at_once = [](const Writing& writing, Selected) { return take_starter_method(writing); }},
                        sheet};
            case kAnswers: return {asked};
            default:
                return {opens(say("New c&olour"), [](const Writing& writing) { return colour_form(writing); }), asked};
        }
    }

    Detail detail(const Books& books, std::size_t, FactRef row) const override {
        Detail told;
        const auto key = vat_at(row);
        const Vat* vat = key ? books.shop.find(*key) : nullptr;
        if (vat == nullptr) return told;
        told.sentence = vat_sentence(books, *key);
        const auto outside = readings_outside(books.shop, *vat);
        if (!outside.empty())
            told.sentence = say("{vat} {outside}", arg("vat", told.sentence),
                                arg("outside", reports::outside_sentence(books.shop, outside.front())));
        told.table = step_list(books, *key);
        return told;
    }

    std::optional<Form> correct(const Writing& writing, FactRef row) const override {
        if (row.kind == kKindOf<Vat>) return vat_form(writing, Key<Vat>{row.key});
        if (row.kind == kKindOf<Drying>) return drying_form(writing, Key<Drying>{row.key});
        if (row.kind == kKindOf<ShadeTest>) return shade_test_form(writing, Key<ShadeTest>{row.key});
        if (row.kind == kKindOf<Method>) return method_form(writing, Key<Method>{row.key});
        if (row.kind == kKindOf<Allowed>) return allowed_form(writing, Key<Allowed>{row.key});
        if (row.kind == kKindOf<Lot>) return correct_lot(writing, Key<Lot>{row.key});
        if (row.kind == kKindOf<Colour>) return colour_form(writing, Key<Colour>{row.key});
        return std::nullopt;
    }

    std::optional<reports::Chart> picture(const Books& books, std::size_t listing, Selected) const override {
        return listing == kVats ? vats_picture(books) : std::nullopt;
    }

    std::vector<std::string> cautions() const override { return reports::vat_cautions(); }
};

}  // namespace

std::unique_ptr<PlaceModel> vat_place() {
    return std::make_unique<VatPlace>();
}

}  // namespace dyestead::gui
