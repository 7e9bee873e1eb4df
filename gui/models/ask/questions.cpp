#include "gui/models/ask/questions.h"

#include <algorithm>
#include <map>

#include "domain/decisions/shelf.h"
#include "domain/decisions/shop_hour.h"
#include "domain/ledger/as_it_stood.h"
#include "domain/text/typed.h"
#include "gui/models/form/field_values.h"
#include "gui/models/place.h"
#include "reports/registry.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/trouble_words.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

template <class Fact, class Named>
std::vector<Choice> by_code(const Shop& shop, Named named) {
    std::vector<Choice> choices;
    for (const Fact& fact : shop.all<Fact>()) choices.push_back({fact.code, named(fact)});
    std::ranges::stable_sort(choices, {}, &Choice::shown);
    return choices;
}

// Of what has a day, the newest first.
template <class Fact, class Named>
std::vector<Choice> by_day(const Shop& shop, Named named) {
    std::vector<const Fact*> facts;
    for (const Fact& fact : shop.all<Fact>()) facts.push_back(&fact);
    std::ranges::stable_sort(facts, [](const Fact* a, const Fact* b) { return a->date > b->date; });
    std::vector<Choice> choices;
    for (const Fact* fact : facts) choices.push_back({fact->code, named(*fact)});
    return choices;
}

std::string batch_named(const Shop& shop, const Batch& batch) {
    return say("batch of {day}, {bar} ({code})", arg("day", reports::shown_date(batch.date)),
               arg("bar", reports::called(shop, batch.bar)), arg("code", batch.code));
}

// Lots of which bars are on the shelf.
std::vector<Choice> batches_here(const Books& books) {
    std::vector<Choice> choices;
    for (const ShelfLot& lot : shelf({books.shop, books.ledger}).lots) {
        const std::string code = books.shop.find(lot.lot)->code;
        choices.push_back(
            {code, say("{what}, lot {lot}", arg("what", reports::called(books.shop, lot.bar)), arg("lot", code))});
    }
    std::ranges::stable_sort(choices, {}, &Choice::shown);
    return choices;
}

// What a trace can start from, the plain figures first.
std::vector<Choice> traceable(const Shop& shop) {
    std::vector<Choice> choices{{"in", say("all that came in")},
                                {"stock", say("all that is in stock")},
                                {"in-progress", say("all that is in progress")},
                                {"sold", say("all that was sold")},
                                {"lost", say("all that was lost")},
                                {"given", say("all that was given away")},
                                {"period", say("what the period took")}};
    const auto add = [&](std::vector<Choice> more) { choices.insert(choices.end(), more.begin(), more.end()); };
    add(by_code<Lot>(shop, [&](const Lot& lot) {
        return say("{what}, lot {lot}", arg("what", reports::called(shop, lot.material)), arg("lot", lot.code));
    }));
    add(by_day<Batch>(shop, [&](const Batch& batch) { return batch_named(shop, batch); }));
    add(by_day<Vat>(shop, [&](const Vat& vat) {
        return say("vat of {day}, {colour} ({code})", arg("day", reports::shown_date(vat.date)),
                   arg("colour", reports::called(shop, vat.colour)), arg("code", vat.code));
    }));
    return choices;
}

// What a recall can start from, as it stands in a supplier's letter or on a jar; what there are few of first.
std::vector<Choice> recallable(const Shop& shop) {
    std::vector<Choice> choices;
    const auto add = [&](std::vector<Choice> more) { choices.insert(choices.end(), more.begin(), more.end()); };
    std::map<Key<Lot>, std::string> suppliers_lot;
    for (const DeliveryLine& line : shop.all<DeliveryLine>())
        if (line.supplier_lot) suppliers_lot[line.lot] = *line.supplier_lot;
    add(by_code<Material>(
        shop, [](const Material& material) { return say("every lot of {what}", arg("what", material.name)); }));
    add(by_code<Supplier>(shop, [](const Supplier& supplier) {
        return say("everything from {supplier}", arg("supplier", supplier.name));
    }));
    add(by_code<Lot>(shop, [&](const Lot& lot) {
        const auto what = arg("what", reports::called(shop, lot.material));
        const auto code = arg("lot", lot.code);
        const auto theirs = suppliers_lot.find(lot.key);
        if (theirs == suppliers_lot.end()) return say("{what}, lot {lot}", what, code);
        return say("{what}, lot {lot} (the supplier's {theirs})", what, code, arg("theirs", theirs->second));
    }));
    add(by_day<Batch>(shop, [&](const Batch& batch) { return batch_named(shop, batch); }));
    add(by_day<Delivery>(shop, [&](const Delivery& delivery) {
        return say("delivery of {day} from {supplier} ({code})", arg("day", reports::shown_date(delivery.date)),
                   arg("supplier", reports::called(shop, delivery.supplier)), arg("code", delivery.code));
    }));
    return choices;
}

std::vector<Choice> bars_made(const Shop& shop) {
    std::vector<Choice> choices;
    for (const RecipeColouring& line : shop.all<RecipeColouring>())
        if (const Material* bar = shop.find(line.bar)) choices.push_back({bar->code, bar->name});
    std::ranges::stable_sort(choices, {}, &Choice::shown);
    return choices;
}

std::vector<Choice> fairs(const Shop& shop) {
    return by_day<Fair>(shop, [](const Fair& fair) {
        return say("{fair}, {day}", arg("fair", fair.name), arg("day", reports::shown_date(fair.date)));
    });
}

}  // namespace

std::vector<Choice> narrowed(const std::vector<Choice>& choices, std::string_view find) {
    std::vector<Choice> found;
    for (const Choice& each : choices) {
        if (found.size() == kMostChoices) break;
        if (holds({each.shown}, find)) found.push_back(each);
    }
    return found;
}

std::vector<BooksQuestion> books_questions(const Books& books) {
    const Shop& shop = books.shop;
    std::vector<BooksQuestion> all{
        {.label = say("Where did it go? What is in it?"),
         .report = "recall",
         .period = true,
         .about_label = say("&Of what"),
         .about = recallable(shop)},
        {.label = say("What is it all worth on a day?"), .report = "stock-value"},
        {.label = say("Which records does a figure come from?"),
         .report = "trace",
         .period = true,
         .about_label = say("&What"),
         .about = traceable(shop)},
        {.label = say("What did the year cost and earn?"), .report = "year", .period = true},
        {.label = say("What money came in and went out?"), .report = "money", .period = true},
        {.label = say("Where did our hours go?"), .report = "hours", .period = true},
        {.label = say("What was lost or given away?"), .report = "losses", .period = true},
        {.label = say("Which plant is worth most?"), .report = "plants"},
        {.label = say("What should a bar sell for?"), .report = "prices"},
        {.label = say("What must be ordered?"), .report = "reorder"},
        {.label = say("What must be sown for next year's bars?"), .report = "sowing"},
        {.label = say("What earns best with what there is?"), .report = "earns-best"},
        {.label = say("Can I make it?"), .report = "can-make", .about_label = say("&Bar"), .about = bars_made(shop)},
        {.label = say("What goes to the fair?"),
         .report = "fair-plan",
         .about_label = say("&Fair"),
         .about = fairs(shop)},
        {.label = say("How did the fair go?"),
         .report = "fair-result",
         .about_label = say("&Fair"),
         .about = fairs(shop)},
        {.label = say("What did a batch cost?"),
         .report = "cost-sheet",
         .about_label = say("&Batch"),
         .about = by_day<Batch>(shop, [&](const Batch& batch) { return batch_named(shop, batch); })},
        {.label = say("What did each kind of bar bring in?"), .report = "margins", .period = true},
        {.label = say("What falls due when?"), .report = "calendar"},
        {.label = say("Labels to print"),
         .report = "labels",
         .about_label = say("&Batch"),
         .about = batches_here(books)},
        {.label = say("Sheets to print"),
         .report = "sheets",
         .about_label = say("&Which"),
         .about = {{"vat", say("vat sheets")},
                   {"garden", say("garden cards")},
                   {"count", say("a count sheet")},
                   {"fair", say("a fair sheet")}}},
        {.label = say("Is growing a colour worth it?"),
         .report = "verdict",
         .about_label = say("&Colour"),
         .about = by_code<Colour>(shop, [](const Colour& colour) { return colour.name; })}};
    // Bars, fairs and colours need not be chosen: the next or the last one is meant, or the one most worked for.
    for (BooksQuestion& each : all)
        if (!each.about_label.empty() && each.report != "trace" && each.report != "recall")
            each.about.insert(each.about.begin(), Choice{"", each.report == "labels" || each.report == "sheets"
                                                                 ? say("all of them")
                                                                 : say("the one that comes to mind first")});
    return all;
}

Answer answer(const Books& books, const BooksQuestion& question, const Asked& asked) {
    Day as_of = books.as_of();
    if (!trimmed(asked.as_of).empty()) {
        const auto day = read_typed_day(asked.as_of, books.as_of(), reports::month_names());
        if (!day) return {.trouble = field_trouble(*day.trouble, asked.as_of)};
        as_of = *day;
    }
    std::optional<Day> from;
    if (question.period && !trimmed(asked.from).empty()) {
        const auto day = read_typed_day(asked.from, books.as_of(), reports::month_names());
        if (!day) return {.trouble = field_trouble(*day.trouble, asked.from)};
        from = *day;
    }
    const auto report = reports::report_named(question.report);
    if (const auto* trouble = std::get_if<Trouble>(&report)) return {.trouble = reports::trouble_sentence(*trouble)};
    std::optional<Ledger> other;
    if (as_of != books.as_of()) other = as_it_stood(books.shop, books.ledger, as_of);
    reports::Question put{.shop = books.shop, .ledger = other ? *other : books.ledger, .from = from};
    if (!asked.about.empty()) {
        for (const std::string_view of : {"trace", "recall", "cost-sheet", "labels", "sheets"})
            if (question.report == of) put.of = asked.about;
        if (question.report == "can-make") put.bar = asked.about;
        if (question.report == "verdict") put.colour = asked.about;
        if (question.report == "fair-plan" || question.report == "fair-result") put.fair = asked.about;
    }
    reports::Reply reply = std::get<reports::Report>(report).make(put);
    if (const auto* trouble = std::get_if<Trouble>(&reply)) {
        if (trouble->id == TroubleId::not_one_of || trouble->id == TroubleId::nothing_to_trace)
            return {.trouble = say("There is nothing of this kind to ask about yet; record one first.")};
        return {.trouble = reports::trouble_sentence(*trouble)};
    }
    return {.document = std::get<reports::Document>(std::move(reply))};
}

std::string books_state(const Books& books) {
    const auto& about = books.shop.all<About>();
    const int month = about.empty() ? 1 : about.front().year_begins.value_or(1);
    const Period year = Period::year_to(books.as_of(), static_cast<unsigned>(month));
    const ShopHour earned = shop_hour(books.shop, books.ledger, year);
    const std::string currency = reports::currency_of(books.shop);
    if (earned.taken == 0 && earned.spent == 0 && earned.hours == 0)
        return say("Nothing in the books yet. What you enter in the other places adds up here by itself.");
    const auto since = arg("day", reports::shown_date(year.first));
    const auto taken = arg("taken", reports::rough_money(earned.taken, currency));
    const auto spent = arg("spent", reports::rough_money(earned.spent, currency));
    const auto hours = arg("hours", reports::shown_hours(earned.hours));
    if (!earned.per_hour) return say("Since {day}: taken {taken}, spent {spent}, no hours noted.", since, taken, spent);
    return say("Since {day}: taken {taken}, spent {spent}, {hours}. An hour in the shop earned {money}.", since, taken,
               spent, hours, arg("money", reports::rough_money(*earned.per_hour, currency)));
}

}  // namespace dyestead::gui
