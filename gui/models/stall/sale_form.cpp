#include "gui/models/stall/sale_form.h"

#include <algorithm>

#include "domain/decisions/fair_plan.h"
#include "domain/decisions/window.h"
#include "domain/ledger/in_force.h"
#include "gui/models/stall/powder_lines.h"
#include "gui/models/stall/sales_earned.h"
#include "gui/models/stall/sold_lines.h"
#include "reports/words/powder_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

LineForm<SaleLine> sale_lines(const Writing& writing, std::optional<Key<Sale>> sale) {
    LineForm<SaleLine> lines{.id = "bars", .name = say("Bars")};
    lines.add("bar", say("&Bar"), &SaleLine::bar, {.choices = bar_choices(writing.shop())})
        .add("bars", say("How man&y"), &SaleLine::bars)
        .extra({.id = "price",
                .label = say("A bar at p&rice"),
                .help = say("As the customer pays for one; blank: by the price list.")})
        .add("lot", say("Fro&m lot"), &SaleLine::lot,
             {.choices = sellable_lot_choices(writing.books, sale ? lots_named<SaleLine>(writing.shop(), *sale)
                                                                  : std::vector<std::optional<Key<Lot>>>{})});
    lines.show_extra = [](const SaleLine& line) {
        return std::vector<std::pair<std::string, std::string>>{{"price", money_text(line.price)}};
    };
    lines.finish = [](SaleLine& line, const FieldHow::Texts& texts, const Writing& now, Kept&) -> std::string {
        if (line.bars <= 0) return say("Write how many bars; one at least.");
        line.price = {};
        if (!trimmed(texts("price")).empty()) {
            const auto price = read_typed_money(texts("price"), reports::currency_of(now.shop()));
            if (!price) return field_trouble(*price.trouble, texts("price"));
            line.price = *price;
        }
        return lot_trouble(now.shop(), line.lot, line.bar);
    };
    return lines;
}

// Lines without a price get the list's of the day; false where the list has none.
bool price_by_list(const Sale& sale, Form& form, const Shop& shop, std::vector<SaleLine>& lines) {
    FormLines& rows = form.lines_of("bars");
    bool fine = true;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!trimmed(rows.rows[i][column(rows, "price")]).empty()) continue;
        if (const auto listed = shelf_price_in_force(shop, lines[i].bar, sale.date)) {
            lines[i].price = *listed;
            continue;
        }
        rows.notes[i] = say("The list has no price for it on that day; write what was paid for one.");
        fine = false;
    }
    return fine;
}

// "2 bars and 5 g of powder, 19.50 with postage."
std::string in_all(std::int64_t bars, const PowderSum& powder, Money sum, const std::string& currency) {
    const auto money = arg("sum", reports::shown_money(sum, currency));
    const auto of_it = arg("powder", reports::shown_quantity(Quantity{Kind::mass, powder.milligrams}));
    if (bars == 0 && powder.milligrams == 0) return {};
    if (bars == 0) return say("{powder} of powder, {sum} with postage.", of_it, money);
    const auto count = static_cast<std::uint64_t>(bars);
    if (powder.milligrams == 0)
        return say_count("One bar, {sum} with postage.", "{count} bars, {sum} with postage.", count, money);
    return say_count("One bar and {powder} of powder, {sum} with postage.",
                     "{count} bars and {powder} of powder, {sum} with postage.", count, of_it, money);
}

void look_at_lines(const Sale& sale, const Change& lines, Form& form, const Writing& now) {
    FormLines& rows = form.lines_of("bars");
    const std::string currency = reports::currency_of(now.shop());
    if (!form.fact) say_ready(rows, "bars", now.books);
    Money sum = sale.postage_paid.value_or(Money{});
    std::int64_t bars = 0;
    for (std::size_t i = 0; i < rows.rows.size(); ++i) {
        const auto bar = KeyCodes{}.key_of<Material>(rows.rows[i][column(rows, "bar")]);
        const auto count = read_typed_count(rows.rows[i][column(rows, "bars")]);
        const auto typed = read_typed_money(rows.rows[i][column(rows, "price")], currency);
        auto price = typed ? std::optional{*typed} : std::nullopt;
        if (!price && bar && trimmed(rows.rows[i][column(rows, "price")]).empty()) {
            price = shelf_price_in_force(now.shop(), *bar, sale.date);
            if (price && rows.notes[i].empty())
                rows.notes[i] = say("{price} by the list", arg("price", reports::shown_money(*price, currency)));
        }
        if (!count || !price) continue;
        bars += *count;
        sum += Rate{*price, Quantity::pieces(1)} * Quantity::pieces(*count);
    }
    const PowderSum powder = look_at_powder(sale, form, now, lines.put.all<PowderLine>());
    form.summary = in_all(bars, powder, sum + powder.money, currency);
}

const Sale* last_order(const Shop& shop, Day day) {
    const Sale* last = nullptr;
    for (const Sale& sale : shop.all<Sale>())
        if (sale.channel == Channel::online && sale.date <= day && (last == nullptr || sale.date >= last->date))
            last = &sale;
    return last;
}

std::vector<Choice> channels() {
    return word_choices<Channel>(
        {say("in cash"), say("by card"), say("online"), say("to a shop, for resale"), say("otherwise")});
}

// What fairs of the last year left of each unit of what their bars were priced at, before what those cost to make.
std::optional<double> kept_at_fairs(const Books& books) {
    const Window year = months_to(books.as_of(), 12);
    double priced = 0;
    double kept = 0;
    for (const Fair& fair : books.shop.all<Fair>()) {
        if (!year.contains(fair.date) || fair.ended == FairEnded::did_not_happen) continue;
        const FairResult result = fair_result(books.shop, books.ledger, fair.key);
        for (const FairResult::Line& line : result.lines) priced += line.takings();
        kept += result.left + result.making_cash;
    }
    return priced > 0 ? std::optional{kept / priced} : std::nullopt;
}

template <class LineFact>
bool has_any(const Shop& shop, Key<Sale> sale) {
    return std::ranges::any_of(shop.all<LineFact>(), [&](const LineFact& line) { return line.head == sale; });
}

// The same bars at the list's prices of the day, on an average fair.
std::optional<double> at_a_fair(const Books& books, const Sale& sale, double making) {
    const auto kept = kept_at_fairs(books);
    if (!kept) return std::nullopt;
    double priced = 0;
    for (const SaleLine& line : books.shop.all<SaleLine>()) {
        if (line.head != sale.key) continue;
        const auto listed = shelf_price_in_force(books.shop, line.bar, sale.date);
        if (!listed) return std::nullopt;
        priced += number(*listed) * line.bars;
    }
    return priced * *kept - making;
}

Form finished(FactForm<Sale>&& form, const Writing& writing, std::optional<Key<Sale>> corrected, bool powder) {
    form.lines(sale_lines(writing, corrected));
    if (powder) {
        form.lines(powder_lines(writing, corrected));
        form.form().cautions = {reports::powder_selling_caution()};
    }
    form.look_at([](const Sale& sale, const Change& lines, Form& shown, const Writing& now) {
        look_at_lines(sale, lines, shown, now);
    });
    return std::move(form).done([powder](Sale& sale, Form& shown, const Writing& now, Kept& kept) {
        auto& lines = kept.change.put.all<SaleLine>();
        auto& of_powder = kept.change.put.all<PowderLine>();
        const bool bars_priced = price_by_list(sale, shown, now.shop(), lines);
        if (!price_powder(sale, shown, now.shop(), of_powder) || !bars_priced) return false;
        if (lines.empty() && of_powder.empty()) {
            shown.field("date").trouble = powder
                                              ? say("Nothing is sold yet; add a line with bars or with powder below.")
                                              : say("Nothing is sold yet; add a line with the bars below.");
            return false;
        }
        kept.title = reports::message("sale of {day}");
        kept.args = {{"day", reports::shown_date(sale.date)}};
        if (sale.order_number) {
            kept.title = reports::message("order {number}");
            kept.args = {{"number", *sale.order_number}};
        }
        kept.consequence = [key = sale.key](const Writing& after) { return sale_told(after.books, key); };
        return true;
    });
}

Form counter_sale(const Writing& writing, std::optional<Key<Sale>> corrected, bool powder) {
    FactForm<Sale> form{writing, "sale", say("A sale"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        form.fact().channel = Channel::cash;
    }
    form.add("date", say("&On"), &Sale::date)
        .add("channel", say("Pai&d"), &Sale::channel, {.choices = channels()})
        .add("buyer", say("To whom, if it &helps"), &Sale::buyer)
        .more("number", say("&Number"), &Sale::order_number)
        .more("postage", say("Post and bo&x"), &Sale::postage)
        .more("paid", say("&Postage they paid"), &Sale::postage_paid)
        .more("time", say("&Time"), &Sale::time)
        .more("who", say("&Who"), &Sale::who, {.choices = people_choices(writing.shop())});
    return finished(std::move(form), writing, corrected, powder);
}

}  // namespace

Form order_form(const Writing& writing, std::optional<Key<Sale>> corrected) {
    FactForm<Sale> form{writing, "order", say("An order"), corrected};
    const Sale* last = last_order(writing.shop(), writing.day);
    if (form.is_new()) {
        form.fact().date = writing.day;
        form.fact().channel = Channel::online;
        if (last != nullptr) {
            form.fact().postage = last->postage;
            form.fact().postage_paid = last->postage_paid;
            form.fact().time = last->time;
        }
    }
    form.add("number", say("&Number"), &Sale::order_number)
        .add("date", say("&On"), &Sale::date)
        .add("paid", say("&Postage they paid"), &Sale::postage_paid)
        .add("postage", say("Post and bo&x"), &Sale::postage, {.help = say("What sending it cost you.")})
        .more("channel", say("Pai&d"), &Sale::channel, {.choices = channels()})
        .more("buyer", say("B&uyer"), &Sale::buyer, {.help = say("Only if you need it: a name is not needed here.")})
        .more("time", say("&Time to pack"), &Sale::time)
        .more("who", say("&Who"), &Sale::who, {.choices = people_choices(writing.shop())});
    if (form.is_new() && last != nullptr)
        for (const char* id : {"paid", "postage", "time"})
            if (!form.form().text(id).empty()) form.form().field(id).origin = say("from your last");
    return finished(std::move(form), writing, corrected, may_sell_powder(writing.shop()));
}

Form sale_form(const Writing& writing, std::optional<Key<Sale>> corrected) {
    return counter_sale(writing, corrected, may_sell_powder(writing.shop()));
}

Form powder_sale_form(const Writing& writing, Key<Lot> lot) {
    Form form = counter_sale(writing, std::nullopt, true);
    const Lot* sold = writing.shop().find(lot);
    if (sold == nullptr) return form;
    form.lines_of("powder").rows = {
        {KeyCodes{}.code_of(sold->material), pack_text(writing, *sold), {}, KeyCodes{}.code_of(lot)}};
    std::ranges::reverse(form.lines);  // what the sale begins with stands above
    form.look(form, writing);
    return form;
}

Form correct_sale(const Writing& writing, Key<Sale> key) {
    const Sale* sale = writing.shop().find(key);
    const bool order = sale != nullptr && (sale->channel == Channel::online || sale->order_number);
    return order ? order_form(writing, key) : sale_form(writing, key);
}

std::string sale_told(const Books& books, Key<Sale> key) {
    const auto all = sales_earned(books);
    const auto earned = all.find(key);
    if (earned == all.end()) return {};
    const auto& [making, kept] = earned->second;
    const Sale& sale = *books.shop.find(key);
    const std::string currency = reports::currency_of(books.shop);
    const auto left = arg("earned", reports::shown_money(kept, currency));
    if (has_any<PowderLine>(books.shop, key)) {
        const auto cost = arg("cost", reports::shown_money(making, currency));
        return has_any<SaleLine>(books.shop, key)
                   ? say("This sale earned {earned} after fees, post and the {cost} its bars and powder had cost to "
                         "make; your time is not paid.",
                         left, cost)
                   : say("This sale earned {earned} after fees, post and the {cost} its powder had cost to make; your "
                         "time is not paid.",
                         left, cost);
    }
    const auto fair = at_a_fair(books, sale, making);
    if (!fair)
        return sale.order_number
                   ? say("This order earned {earned} after post, box and what the bars cost to make.", left)
                   : say("This sale earned {earned} after what the bars cost to make.", left);
    const auto there = arg("fair", reports::shown_money(*fair, currency));
    return sale.order_number ? say("This order earned {earned} after post, box and what the bars cost to make; at a "
                                   "fair it would have been {fair}.",
                                   left, there)
                             : say("This sale earned {earned} after what the bars cost to make; at a fair it would "
                                   "have been {fair}.",
                                   left, there);
}

}  // namespace dyestead::gui
