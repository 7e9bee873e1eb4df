#include "gui/models/vat/vat_lists.h"

#include "domain/decisions/records.h"
#include "domain/ledger/in_force.h"
#include "domain/text/amounts.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/vat/powder.h"
#include "gui/models/vat/vats.h"
#include "reports/words/language.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::called;
using reports::say;

namespace {

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
             drying->amount ? words_cell(reports::in_marks_here(print(*drying->amount))) : words_cell(say("nothing")),
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
             count_cell(static_cast<std::size_t>(steps)),
             method.usual ? words_cell(reports::in_marks_here(print(*method.usual))) : no_cell()});
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

Listing answers_listed(const Books& books) {
    Listing list{
        .name = say("Answers"),
        .table =
            {.title = say("May it be sold?"),
             .columns = {{say("on"), Align::right}, {say("colour")}, {say("where")}, {say("asked")}, {say("answer")}}},
        .empty = say("Nobody was asked yet whether a colour may be sold. Ask before you sow, and note the "
                     "answer.")};
    for (const Allowed* allowed : newest_first<Allowed>(books)) {
        const std::string answer = allowed->answer == Answer::yes  ? say("yes")
                                   : allowed->answer == Answer::no ? say("no")
                                                                   : say("waiting for it");
        list.table.rows.push_back({day_cell(allowed->date), words_cell(called(books.shop, allowed->colour)),
                                   words_cell(allowed->where), words_cell(allowed->asked), words_cell(answer)});
        list.rows.push_back(ref(*allowed));
    }
    return list;
}

}  // namespace

std::vector<Listing> vat_listings(const Books& books, std::string_view find) {
    return {only_found(vats_listed(books), find),    only_found(powder_listed(books), find),
            only_found(drying_listed(books), find),  only_found(shades_listed(books), find),
            only_found(methods_listed(books), find), only_found(colours_listed(books), find),
            only_found(answers_listed(books), find)};
}

}  // namespace dyestead::gui
