#include "gui/models/stall/powder_lines.h"

#include <map>

#include "domain/facts/material_amount.h"
#include "domain/ledger/holds.h"
#include "domain/ledger/in_force.h"
#include "gui/models/form/used_lines.h"
#include "gui/models/stall/sold_lines.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

constexpr std::string_view kLines = "powder";

bool is_powder(const Material& material) {
    return material.kind == MaterialKind::pigment;
}

// Held lots are no choice, unless the sale names them already.
std::vector<Choice> lots_to_sell(const Writing& writing, const std::vector<Key<Lot>>& named) {
    const Shop& shop = writing.shop();
    std::vector<Choice> choices = lots_of(writing.books, is_powder, named);
    const Holds held = holds(shop, writing.books.ledger);
    for (std::size_t i = 0; i < shop.all<Lot>().size() && i < writing.books.ledger.lots.size(); ++i) {
        const Key<Lot> lot = shop.all<Lot>()[i].key;
        if (std::ranges::find(named, lot) != named.end()) continue;
        if (held.why(static_cast<std::uint32_t>(i), writing.books.as_of()))
            std::erase_if(choices, [&](const Choice& each) { return each.code == KeyCodes{}.code_of(lot); });
    }
    return choices;
}

// Null where no price of it is put down by then.
const PowderPrice* price_of(const Shop& shop, const Material& powder, Day day) {
    const PowderPrice* price = powder.colour ? powder_price_in_force(shop, *powder.colour, day) : nullptr;
    return price == nullptr || price->pack.quantity.is_zero() ? nullptr : price;
}

bool has_price(const FormLines& rows, std::size_t row) {
    return !trimmed(rows.rows[row][column(rows, "price")]).empty();
}

}  // namespace

bool may_sell_powder(const Shop& shop) {
    return !shop.all<PowderPrice>().empty() || !shop.all<PowderLine>().empty();
}

LineForm<PowderLine> powder_lines(const Writing& writing, std::optional<Key<Sale>> sale) {
    std::vector<Key<Lot>> named;
    for (const PowderLine& line : writing.shop().all<PowderLine>())
        if (line.lot && line.head == sale) named.push_back(*line.lot);
    LineForm<PowderLine> lines{.id = std::string{kLines}, .name = say("Powder sold as it is")};
    lines
        .add("material", say("Powd&er"), &PowderLine::pigment, {.choices = material_choices(writing.shop(), is_powder)})
        .add("amount", say("How mu&ch of it"), &PowderLine::amount,
             {.help = say("By weight, like 10 g."),
              .material = material_in_field("material"),
              .measuring = measuring_of_material})
        .extra({.id = "price",
                .label = say("&For all of it"),
                .help = say("As the customer pays; blank: by the price of powder that is put down.")})
        .add("lot", say("Of wh&ich lot"), &PowderLine::lot, {.choices = lots_to_sell(writing, named)});
    lines.show_extra = [](const PowderLine& line) {
        return std::vector<std::pair<std::string, std::string>>{{"price", money_text(line.price)}};
    };
    lines.finish = [](PowderLine& line, const FieldHow::Texts& texts, const Writing& now, Kept&) -> std::string {
        if (line.amount.quantity.is_zero()) return say("Write how much was sold, like 10 g.");
        line.price = {};
        if (!trimmed(texts("price")).empty()) {
            const auto price = read_typed_money(texts("price"), reports::currency_of(now.shop()));
            if (!price) return field_trouble(*price.trouble, texts("price"));
            line.price = *price;
        }
        const Lot* lot = line.lot ? now.shop().find(*line.lot) : nullptr;
        if (lot == nullptr || lot->material == line.pigment) return {};
        return say("The lot {lot} holds {material}; choose one of what stands in the line, or by rule.",
                   arg("lot", lot->code), arg("material", reports::called(now.shop(), lot->material)));
    };
    return lines;
}

std::optional<Money> powder_asked(const Shop& shop, Key<Material> pigment, const Amount& amount, Day day) {
    const Material* material = shop.find(pigment);
    const PowderPrice* price = material == nullptr ? nullptr : price_of(shop, *material, day);
    if (price == nullptr) return std::nullopt;
    const auto pack = as_held(*material, price->pack);
    const auto sold = as_held(*material, amount);
    if (!pack || !sold || pack->is_zero()) return std::nullopt;
    return Rate{price->price, *pack} * *sold;
}

std::string pack_text(const Writing& writing, const Lot& lot) {
    const Material* material = writing.shop().find(lot.material);
    const auto left = amount_there(writing.books, material, lot.key);
    if (!left) return {};
    const PowderPrice* price = price_of(writing.shop(), *material, writing.day);
    const auto pack = price == nullptr ? std::nullopt : as_held(*material, price->pack);
    if (pack && pack->in_base() <= left->quantity.in_base()) return field_text(price->pack);
    return field_text(Amount{left->quantity, left->unit, Mark::measured});
}

bool price_powder(const Sale& sale, Form& form, const Shop& shop, std::vector<PowderLine>& lines) {
    if (lines.empty()) return true;
    FormLines& rows = form.lines_of(kLines);
    bool fine = true;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (has_price(rows, i)) continue;
        if (const auto asked = powder_asked(shop, lines[i].pigment, lines[i].amount, sale.date)) {
            lines[i].price = *asked;
            continue;
        }
        rows.notes[i] = say("No price of this powder is put down for that day; write what was paid for all of it.");
        fine = false;
    }
    return fine;
}

PowderSum look_at_powder(const Sale& sale, Form& form, const Writing& now, const std::vector<PowderLine>& lines) {
    PowderSum sum;
    if (lines.empty()) return sum;
    FormLines& rows = form.lines_of(kLines);
    const std::string currency = reports::currency_of(now.shop());
    std::map<Key<Material>, std::int64_t> wanted;
    for (const PowderLine& line : lines) {
        const auto row = static_cast<std::size_t>(line.position - 1);
        const Material* material = now.shop().find(line.pigment);
        if (material == nullptr) continue;
        const auto held = as_held(*material, line.amount);
        const auto there = amount_there(now.books, material, std::nullopt);
        if (!held || !there) continue;
        const Quantity sold = held.value();
        if (sold.kind() == Kind::mass) sum.milligrams += sold.in_base();
        auto price = has_price(rows, row) ? std::optional{line.price} : std::nullopt;
        if (!price) {
            price = powder_asked(now.shop(), line.pigment, line.amount, sale.date);
            if (price)
                rows.notes[row] =
                    say("{price} by the price of powder", arg("price", reports::shown_money(*price, currency)));
        }
        sum.money += price.value_or(Money{});
        wanted[line.pigment] += sold.in_base();
        if (!form.fact && wanted[line.pigment] > there->quantity.in_base())
            rows.notes[row] = say("only {amount} there", arg("amount", reports::shown_quantity(there->quantity)));
    }
    return sum;
}

}  // namespace dyestead::gui
