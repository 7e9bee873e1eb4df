#include "gui/models/vat/vat_place.h"

#include <algorithm>

#include "domain/decisions/records.h"
#include "domain/ledger/in_force.h"
#include "domain/text/amounts.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/vat/colour_forms.h"
#include "gui/models/vat/powder.h"
#include "gui/models/vat/standing.h"
#include "gui/models/vat/vat_form.h"
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

enum List : std::size_t { kVats, kPowder, kDrying, kShades, kMethods, kColours };

bool row_holds(const std::vector<reports::Cell>& row, std::string_view find) {
    return std::ranges::any_of(row, [&](const reports::Cell& cell) { return holds({cell.shown}, find); });
}

// Of a table and what its rows stand for, those that hold the letters.
Listing only_found(Listing list, std::string_view find) {
    Listing kept{.name = list.name, .table = list.table, .rows = {}, .empty = list.empty};
    kept.table.rows.clear();
    for (std::size_t i = 0; i < list.rows.size(); ++i) {
        if (!row_holds(list.table.rows[i], find)) continue;
        kept.table.rows.push_back(list.table.rows[i]);
        kept.rows.push_back(list.rows[i]);
    }
    return kept;
}

Listing vats_listed(const Books& books) {
    VatList found = vat_list(books);
    Listing list{
        .name = say("Vats"),
        .table = std::move(found.table),
        .empty = say("No vat yet. Begin one here, or type one in from the sheet beside the pan: leaf, water, washes "
                     "and how long it took are enough.")};
    // The state takes the powder's place where there is none, and the hours stand beside the selected vat.
    constexpr std::size_t kState = 2;
    constexpr std::size_t kPowderCell = 4;
    constexpr std::size_t kHours = 7;
    for (auto& row : list.table.rows) {
        if (row[kPowderCell].no_value || row[kPowderCell].number == 0.0) row[kPowderCell].shown = row[kState].shown;
        row.erase(row.begin() + kHours);
        row.erase(row.begin() + kState);
    }
    list.table.columns.erase(list.table.columns.begin() + kHours);
    list.table.columns.erase(list.table.columns.begin() + kState);
    for (const Key<Vat> vat : found.vats) list.rows.push_back({kKindOf<Vat>, vat.number});
    return list;
}

Listing powder_listed(const Books& books) {
    PowderList found = powder_list(books);
    Listing list{.name = say("Powder"),
                 .table = std::move(found.table),
                 .empty = say("No powder of your own yet: dry and weigh a vat.")};
    for (const Key<Lot> lot : found.lots) list.rows.push_back({kKindOf<Lot>, lot.number});
    return list;
}

template <class Fact>
std::vector<const Fact*> newest_first(const Books& books) {
    std::vector<const Fact*> all;
    for (const Fact& fact : books.shop.all<Fact>())
        if (fact.date <= books.as_of()) all.push_back(&fact);
    std::ranges::stable_sort(all, [](const Fact* one, const Fact* other) { return one->date > other->date; });
    return all;
}

Listing drying_listed(const Books& books) {
    Listing list{.name = say("Drying"),
                 .table = {.title = say("Dried and weighed"),
                           .columns = {{say("on"), Align::right},
                                       {say("vats"), Align::right},
                                       {say("powder"), Align::right},
                                       {say("lot")},
                                       {say("time"), Align::right}}},
                 .empty = say("Nothing dried yet.")};
    for (const Drying* drying : newest_first<Drying>(books)) {
        const auto vats = std::ranges::count(books.shop.all<DryingVat>(), drying->key, &DryingVat::head);
        list.table.rows.push_back(
            {day_cell(drying->date), count_cell(static_cast<std::size_t>(vats)),
             drying->amount ? words_cell(print(*drying->amount)) : words_cell(say("nothing")),
             drying->lot ? words_cell(called(books.shop, *drying->lot)) : no_cell(),
             drying->time ? number_cell(number(drying->time->time), reports::shown_minutes(number(drying->time->time)))
                          : no_cell()});
        list.rows.push_back(ref(*drying));
    }
    return list;
}

Listing shades_listed(const Books& books) {
    Listing list{.name = say("Shades"),
                 .table = {.title = say("Shades tried"),
                           .columns = {{say("on"), Align::right},
                                       {say("powder")},
                                       {say("beside")},
                                       {say("times as much"), Align::right}}},
                 .empty = say("No shade tried yet. Pour a test bar of yours and of the bought one and look at both.")};
    for (const ShadeTest* test : newest_first<ShadeTest>(books)) {
        list.table.rows.push_back(
            {day_cell(test->date), words_cell(called(books.shop, test->lot)),
             words_cell(called(books.shop, test->against)),
             test->needed_for_same
                 ? number_cell(number(*test->needed_for_same), reports::shown_number(number(*test->needed_for_same)))
                 : words_cell(say("cannot be compared"))});
        list.rows.push_back(ref(*test));
    }
    return list;
}

Listing methods_listed(const Books& books) {
    Listing list{
        .name = say("Methods"),
        .table = {.title = say("Methods"),
                  .columns = {{say("name")},
                              {say("colour")},
                              {say("steps"), Align::right},
                              {say("usual, from a kilo"), Align::right}}},
        .empty = say("No method yet. Take over the starter method and change it as your vats teach you, or write "
                     "down your own.")};
    for (const Method& method : books.shop.all<Method>()) {
        const auto steps = std::ranges::count(books.shop.all<MethodStep>(), method.key, &MethodStep::head);
        list.table.rows.push_back(
            {words_cell(method.name),
             method.colour ? words_cell(called(books.shop, *method.colour)) : words_cell(say("any")),
             count_cell(static_cast<std::size_t>(steps)), method.usual ? words_cell(print(*method.usual)) : no_cell()});
        list.rows.push_back(ref(method));
    }
    return list;
}

Listing colours_listed(const Books& books) {
    Listing list{.name = say("Colours"),
                 .table = {.title = say("Colours"),
                           .columns = {{say("name")}, {say("bought in instead")}, {say("may be sold")}}},
                 .empty = say("No colour yet. Put one down: it is what is grown for and decided about.")};
    for (const Colour& colour : books.shop.all<Colour>()) {
        const Allowed* last = allowed_in_force(books.shop, colour.key, books.as_of());
        const std::string answer = last == nullptr               ? say("not asked")
                                   : last->answer == Answer::yes ? say("yes, {where}", arg("where", last->where))
                                   : last->answer == Answer::no  ? say("no, {where}", arg("where", last->where))
                                                                 : say("waiting, {where}", arg("where", last->where));
        list.table.rows.push_back(
            {words_cell(colour.name),
             colour.bought_match ? words_cell(called(books.shop, *colour.bought_match)) : no_cell(),
             words_cell(answer)});
        list.rows.push_back(ref(colour));
    }
    return list;
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
        return {only_found(vats_listed(books), find),    only_found(powder_listed(books), find),
                only_found(drying_listed(books), find),  only_found(shades_listed(books), find),
                only_found(methods_listed(books), find), only_found(colours_listed(books), find)};
    }

    std::vector<Doing> doings(std::size_t listing) const override {
        const Doing vat =
            opens(say("New &vat, or from a sheet"), [](const Writing& writing) { return vat_form(writing); });
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
                        {.label = say("Ste&ps of it"),
                         .to_selected = true,
                         .begin = [](const Writing& writing, Selected row) -> std::optional<Form> {
                             const auto at = vat_at(row);
                             return at ? std::optional{vat_steps_form(writing, *at)} : std::nullopt;
                         }},
                        dry,
                        shade,
                        sheet};
            case kPowder: return {shade};
            case kDrying: return {dry};
            case kShades: return {shade};
            case kMethods:
                return {opens(say("New &method"), [](const Writing& writing) { return method_form(writing); }),
                        {.label = say("Take over the s&tarter method"),
                         .at_once = [](const Writing& writing, Selected) { return take_starter_method(writing); }},
                        sheet};
            default:
                return {opens(say("New c&olour"), [](const Writing& writing) { return colour_form(writing); }),
                        opens(say("May it be sold?"), [](const Writing& writing) { return allowed_form(writing); })};
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
