#include "domain/decisions/records.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/cupboard/supply_forms.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/new_things.h"
#include "reports/words/caution_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

bool is_bought(const Material& material) {
    return material.kind == MaterialKind::raw || material.kind == MaterialKind::seed;
}

std::vector<Choice> purposes() {
    auto choices = word_choices<Purpose>({say("oil or butter"), say("lye"), say("water"), say("alkali"), say("mordant"),
                                          say("acid"), say("bought-in colour"), say("scent"), say("wrapping"),
                                          say("feed for the garden"), say("something else")});
    choices.insert(choices.begin(), Choice{"", say("as it is on record")});
    return choices;
}

const Material* material_of_line(const FieldHow::Texts& texts, const Writing& writing) {
    return material_typed(texts("what"), writing, {});
}

std::string finish_line(DeliveryLine& line, const FieldHow::Texts& texts, const Writing& writing, Kept& kept) {
    const std::string& what = texts("what");
    if (trimmed(what).empty()) return say("What came is blank; choose it, or write a new name.");
    const Material* known = material_typed(what, writing, kept);
    Key<Material> material;
    std::string name{trimmed(what)};
    if (known != nullptr) {
        material = known->key;
        name = known->name;
    } else {
        const auto purpose = read_field<std::optional<Purpose>>(texts("for"), KeyCodes{});
        material = add_material(what, MaterialKind::raw, purpose ? (*purpose).value_or(Purpose::other) : Purpose::other,
                                line.amount.quantity.kind(), writing, kept);
    }
    const Lot* lot = writing.shop().find(line.lot);
    if (lot == nullptr || lot->material != material) line.lot = add_lot(name, material, writing.day, writing, kept);
    return {};
}

std::string line_note(const DeliveryLine& line, const FieldHow::Texts& texts, const Writing& writing) {
    const Material* material = material_of_line(texts, writing);
    if (material == nullptr) return say("new: {name}", arg("name", texts("what")));
    const auto held = as_held(*material, line.amount);
    if (!held) return {};
    return price_cell(*material, line.price, held->in_base(), reports::currency_of(writing.shop())).shown;
}

Money goods_of(const Form& form) {
    Money goods;
    for (const FormLines& lines : form.lines)
        for (const auto& row : lines.rows)
            if (const auto price = read_typed_money(row[2])) goods += *price;
    return goods;
}

void add_up(Form& form, const Writing& writing) {
    const Money goods = goods_of(form);
    if (goods.is_zero()) {
        form.summary.clear();
        return;
    }
    const auto postage = read_typed_money(form.text("carriage"));
    const Money carriage = postage ? *postage : Money{};
    const std::string currency = reports::currency_of(writing.shop());
    form.summary = say("{goods} for the goods and {postage} postage and delivery: {all}.",
                       arg("goods", reports::shown_money(goods, currency)),
                       arg("postage", reports::shown_money(carriage, currency)),
                       arg("all", reports::shown_money(goods + carriage, currency)));
}

// What the dearest line costs with delivery, beside what the last lot of it cost.
std::string what_it_means(Key<Delivery> delivery, const Writing& after) {
    const Records records{after.shop(), after.books.ledger};
    const std::string currency = reports::currency_of(after.shop());
    const DeliveryLine* dearest = nullptr;
    for (const DeliveryLine& line : after.shop().all<DeliveryLine>())
        if (line.head == delivery && (dearest == nullptr || line.price > dearest->price)) dearest = &line;
    const Lot* lot = dearest == nullptr ? nullptr : after.shop().find(dearest->lot);
    const Material* material = lot == nullptr ? nullptr : after.shop().find(lot->material);
    const LotState* state = lot == nullptr ? nullptr : records.state(lot->key);
    if (material == nullptr || state == nullptr || state->received <= 0) return say("Entered.");
    const std::string now = price_cell(*material, state->cost_in.cash(), state->received, currency).shown;
    const LotState* last = nullptr;
    for (const Lot& other : after.shop().all<Lot>()) {
        const LotState* before = records.state(other.key);
        if (other.material != material->key || other.key == lot->key || before == nullptr || !before->made ||
            before->received <= 0 || *before->made > *state->made)
            continue;
        if (last == nullptr || *before->made > *last->made) last = before;
    }
    const auto what = arg("what", material->name);
    if (last == nullptr) return say("Entered. With delivery {what} is {price}.", what, arg("price", now));
    return say("Entered. With delivery {what} is {price}; the lot before was {before}.", what, arg("price", now),
               arg("before", price_cell(*material, last->cost_in.cash(), last->received, currency).shown));
}

}  // namespace

Form delivery_form(const Writing& writing, std::optional<Key<Delivery>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<Delivery> form{writing, "delivery", say("A delivery"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    const std::string supplier = form.is_new() ? std::string{} : KeyCodes{}.code_of(form.fact().supplier);
    form.extra({.id = "from",
                .label = say("&From"),
                .entry = Entry::name,
                .text = supplier,
                .help = say("Who it came from; a new name is put down as a new supplier."),
                .choices = supplier_choices(shop)});
    form.add("date", say("O&n"), &Delivery::date)
        .more("carriage", say("&Postage and delivery"), &Delivery::carriage)
        .more("share_by", say("Shared by"), &Delivery::share_by,
              {.choices = word_choices<ShareBy>({say("price"), say("weight")})})
        .more("discount", say("Discount on the whole"), &Delivery::discount)
        .more("duty", say("Import duty"), &Delivery::duty)
        .more("currency", say("Currency of the bill"), &Delivery::currency)
        .more("rate", say("Ours for one of it"), &Delivery::rate)
        .more("ordered", say("Ordered on"), &Delivery::ordered)
        .more("note", say("Note"), &Delivery::note);
    // Postage is asked for every time: it belongs to the cost of the goods.
    form.form().field("carriage").more = false;
    if (form.form().text("carriage").empty()) form.form().field("carriage").text = "0";

    LineForm<DeliveryLine> lines{.id = "lines", .name = say("What came")};
    lines
        .extra({.id = "what", .label = say("what"), .entry = Entry::name, .choices = material_choices(shop, is_bought)})
        .add("amount", say("how much"), &DeliveryLine::amount, {.material = material_of_line})
        .add("price", say("price"), &DeliveryLine::price)
        .add("best_before", say("best before"), &DeliveryLine::best_before)
        .add("supplier_lot", say("their lot number"), &DeliveryLine::supplier_lot)
        .add("tax", say("tax on top"), &DeliveryLine::tax)
        .extra({.id = "for", .label = say("what for, when new"), .entry = Entry::choice, .choices = purposes()});
    lines.show_extra = [&shop](const DeliveryLine& line) {
        const Lot* lot = shop.find(line.lot);
        return std::vector<std::pair<std::string, std::string>>{
            {"what", lot == nullptr ? std::string{} : KeyCodes{}.code_of(lot->material)}};
    };
    lines.finish = finish_line;
    lines.note = line_note;
    form.lines(std::move(lines)).look(add_up);
    return std::move(form).done([](Delivery& delivery, Form& filled, const Writing& now, Kept& kept) {
        FormField& from = filled.field("from");
        from.trouble.clear();
        if (trimmed(from.text).empty()) {
            from.trouble = say("Who it came from is blank; choose a supplier, or write a new name.");
            return false;
        }
        if (filled.lines_of("lines").rows.empty()) {
            filled.summary = say("Nothing came yet: write what, how much and its price below, and add the line.");
            return false;
        }
        const Supplier* known = supplier_typed(from.text, now, kept);
        delivery.supplier = known != nullptr ? known->key : add_supplier(from.text, now, kept);
        kept.title = reports::message("delivery of {day}");
        kept.args = {{"day", reports::shown_date(delivery.date)}};
        kept.consequence = [key = delivery.key](const Writing& after) { return what_it_means(key, after); };
        return true;
    });
}

}  // namespace dyestead::gui
