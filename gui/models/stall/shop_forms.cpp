#include "gui/models/stall/shop_forms.h"

#include "domain/ledger/fees.h"
#include "domain/ledger/in_force.h"
#include "gui/models/stall/sold_lines.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

// What the shop hands over for so many bars sold there.
double handed_over(const OutAtShop& out, int bars) {
    const std::int64_t sold = std::int64_t{bars} * 1'000;
    const Money paid = Rate{out.price, Quantity::pieces(1)} * Quantity{Kind::count, sold};
    return number(paid - fees_of(out, sold).total());
}

void guess_price(Form& form, const Writing& now) {
    FormField& price = form.field("price");
    const auto bar = KeyCodes{}.key_of<Material>(form.text("bar"));
    const auto day = read_typed_day(form.text("date"), now.day, reports::month_names());
    if (form.fact || !bar || !day || (!price.text.empty() && price.origin.empty())) return;
    const auto listed = shelf_price_in_force(now.shop(), *bar, *day);
    price.text = listed ? money_text(*listed) : std::string{};
    price.origin = listed ? say("from the price list") : std::string{};
    price.trouble.clear();
}

std::string out_words(const Shop& shop, const OutAtShop& out, int left) {
    return say("{where}, {bar}, {left} of {bars} out since {day}", arg("where", out.where),
               arg("bar", reports::called(shop, out.bar)), arg("left", left), arg("bars", out.bars),
               arg("day", reports::shown_date(out.date)));
}

}  // namespace

int still_out(const Shop& shop, const OutAtShop& out, Day day, Key<OutSettled> but_for) {
    int left = out.bars;
    for (const OutSettled& settled : shop.all<OutSettled>())
        if (settled.out == out.key && settled.date <= day && settled.key != but_for)
            left -= settled.sold + settled.back;
    return std::max(0, left);
}

Form out_form(const Writing& writing, std::optional<Key<OutAtShop>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<OutAtShop> form{writing, "out_at_shop", say("Out at a shop"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    form.add("where", say("&Where"), &OutAtShop::where,
             {.entry = Entry::name, .choices = names_typed<OutAtShop>(shop, &OutAtShop::where)})
        .add("bar", say("&Bar"), &OutAtShop::bar, {.choices = bar_choices(shop)})
        .add("bars", say("How man&y"), &OutAtShop::bars)
        .add("price", say("&Price there"), &OutAtShop::price, {.help = say("What the customer pays for one bar.")})
        .add("date", say("&On"), &OutAtShop::date)
        .more("share", say("The &shop keeps"), &OutAtShop::share, {.help = say("Of what is paid there: 30 %.")})
        .more("lot", say("Fro&m lot"), &OutAtShop::lot,
              {.choices = sellable_lot_choices(writing.books, {form.fact().lot})});
    form.look(guess_price);
    return std::move(form).done([](OutAtShop& out, Form& shown, const Writing& now, Kept& kept) {
        if (out.bars <= 0) {
            shown.field("bars").trouble = say("Write how many bars; one at least.");
            return false;
        }
        shown.field("lot").trouble = lot_trouble(now.shop(), out.lot, out.bar);
        if (!shown.field("lot").trouble.empty()) return false;
        kept.title = reports::message("{bars} bars of {bar} out at {where}");
        kept.args = {
            {"bars", fmt::to_string(out.bars)}, {"bar", reports::called(now.shop(), out.bar)}, {"where", out.where}};
        kept.consequence = [out](const Writing& after) {
            return say_count(
                "Out, and yours until it is sold: {money} comes back to you then.",
                "{count} bars are out, and yours until they are sold: {money} comes back to you then.",
                static_cast<std::uint64_t>(out.bars),
                arg("money", reports::shown_money(handed_over(out, out.bars), reports::currency_of(after.shop()))));
        };
        return true;
    });
}

Form settled_form(const Writing& writing, std::optional<Key<OutAtShop>> out, std::optional<Key<OutSettled>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<OutSettled> form{writing, "out_settled", say("What became of them"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (out) form.fact().out = *out;
    }
    const Key<OutAtShop> chosen = form.fact().out;
    form.add("out", say("&Which"), &OutSettled::out,
             {.choices = choices_of_kind<OutAtShop>(
                  shop,
                  [&](const OutAtShop& each) { return each.key == chosen || still_out(shop, each, writing.day) > 0; },
                  [&](const OutAtShop& each) { return out_words(shop, each, still_out(shop, each, writing.day)); })})
        .add("sold", say("&Sold there"), &OutSettled::sold)
        .add("back", say("&Come back"), &OutSettled::back)
        .add("date", say("&On"), &OutSettled::date)
        .more("note", say("&Note"), &OutSettled::note);
    for (const char* id : {"sold", "back"})
        if (form.form().text(id).empty()) form.form().field(id).text = "0";
    return std::move(form).done([](OutSettled& settled, Form& shown, const Writing& now, Kept& kept) {
        const OutAtShop* from = now.shop().find(settled.out);
        if (from == nullptr) return false;
        const int left = still_out(now.shop(), *from, Day::max(), settled.key);
        if (settled.sold + settled.back == 0 || settled.sold + settled.back > left) {
            shown.field("sold").trouble = say(
                "{bars} are out there; write how many of them were sold, and how many came back.", arg("bars", left));
            return false;
        }
        if (settled.date < from->date) {
            shown.field("date").trouble =
                say("They went out on {day}; write a later day.", arg("day", reports::shown_date(from->date)));
            return false;
        }
        kept.title = reports::message("{sold} sold and {back} back from {where}");
        kept.args = {
            {"sold", fmt::to_string(settled.sold)}, {"back", fmt::to_string(settled.back)}, {"where", from->where}};
        kept.consequence = [settled](const Writing& after) -> std::string {
            const OutAtShop* there = after.shop().find(settled.out);
            if (there == nullptr) return {};
            return say("{money} comes to you for what was sold; {left} still out.",
                       arg("money",
                           reports::shown_money(handed_over(*there, settled.sold), reports::currency_of(after.shop()))),
                       arg("left", still_out(after.shop(), *there, Day::max())));
        };
        return true;
    });
}

Form returned_form(const Writing& writing, std::optional<Key<Returned>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<Returned> form{writing, "returned", say("Brought back by a customer"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    const auto of_bars = [&](const Lot& lot) {
        const Material* material = shop.find(lot.material);
        return material != nullptr && material->kind == MaterialKind::bar;
    };
    form.add("lot", say("&Lot"), &Returned::lot,
             {.choices = choices_of_kind<Lot>(shop, of_bars,
                                              [&](const Lot& lot) {
                                                  return say("{bar}, lot {lot}",
                                                             arg("bar", reports::called(shop, lot.material)),
                                                             arg("lot", lot.code));
                                              }),
              .help = say("It stands on the label.")})
        .add("bars", say("How man&y"), &Returned::bars)
        .add("refund", say("&Money given back"), &Returned::refund, {.help = say("For all of them; 0 for none.")})
        .add("fit", say("The&y are"), &Returned::fit,
             {.choices = word_choices<Fit>({say("fit to be sold again"), say("spoiled")})})
        .add("date", say("&On"), &Returned::date)
        .more("note", say("&Note"), &Returned::note);
    return std::move(form).done([](Returned& returned, Form& shown, const Writing& now, Kept& kept) {
        if (returned.bars <= 0) {
            shown.field("bars").trouble = say("Write how many bars; one at least.");
            return false;
        }
        kept.title = reports::message("{bars} bars of lot {lot} brought back");
        kept.args = {{"bars", fmt::to_string(returned.bars)}, {"lot", reports::called(now.shop(), returned.lot)}};
        kept.consequence = [returned](const Writing& after) {
            std::int64_t taken_back = 0;
            for (const ReturnedLine& line : after.books.ledger.returned)
                if (line.fact == ref(returned)) taken_back += line.bars;
            if (whole_bars(taken_back) < returned.bars)
                return say("Fewer bars of that lot were sold than came back; look again which lot it was.");
            return returned.fit == Fit::to_sell
                       ? say("Back among the bars of their lot, at what they had cost; the money is off the takings.")
                       : say("Their cost counts as lost; the money is off the takings. Ask what was wrong with them: "
                             "more of the lot may be.");
        };
        return true;
    });
}

}  // namespace dyestead::gui
