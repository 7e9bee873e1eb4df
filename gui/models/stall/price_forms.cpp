#include "gui/models/stall/price_forms.h"

#include "domain/decisions/verdict.h"
#include "domain/ledger/in_force.h"
#include "gui/models/bench/bars.h"
#include "gui/models/form/fact_form.h"
#include "reports/words/powder_words.h"
#include "reports/words/price_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/unsaid_words.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

std::optional<double> left_over(const Prices& prices, const BarPrice& bar) {
    if (!bar.shelf || !bar.replacement) return std::nullopt;
    return prices.terms.kept(*bar.shelf) - bar.replacement->without_labour() - prices.selling_cost;
}

std::string price_told(const Books& books, const Prices& prices, Key<Material> key) {
    const auto found = std::ranges::find(prices.bars, key, &BarPrice::bar);
    const std::string currency = reports::currency_of(books.shop);
    const auto bar = arg("bar", reports::called(books.shop, key));
    if (found == prices.bars.end()) return say("{bar}: no recipe makes it, so what it costs cannot be told.", bar);
    if (!found->unsaid.empty()) return reports::unsaid_sentence(found->unsaid.front(), bar.value);
    if (!found->without_price.empty())
        return say("{bar}: no price of {material} is on record; put down a supplier's price or a delivery of it.", bar,
                   arg("material", reports::called(books.shop, found->without_price.front())));
    if (!found->shelf) return say("{bar} has no price yet; put one down from a day on.", bar);
    const auto left = left_over(prices, *found);
    const auto price = arg("price", reports::shown_money(*found->shelf, currency));
    if (!left) return say("{bar} sells for {price}; what making it again costs is not known.", bar, price);
    const auto over = arg("left", reports::shown_money(*left, currency));
    if (found->under_aim)
        return say(
            "{bar} sells for {price}: {left} a bar is left over before your time. {advised} would reach what you "
            "aim at.",
            bar, price, over, arg("advised", reports::shown_money(*found->advised, currency)));
    if (found->per_hour)
        return say(
            "{bar} sells for {price}: {left} a bar is left over before your time, {hour} for each hour of making "
            "and selling.",
            bar, price, over, arg("hour", reports::shown_money(*found->per_hour, currency)));
    return say("{bar} sells for {price}: {left} a bar is left over before your time.", bar, price, over);
}

std::string bar_told(const Books& books, const Prices& answer, Key<Material> bar) {
    std::string told = price_told(books, answer, bar);
    const auto add = [&](const std::string& sentence) {
        if (!sentence.empty()) told += " " + sentence;
    };
    const auto found = std::ranges::find(answer.bars, bar, &BarPrice::bar);
    if (found != answer.bars.end()) add(reports::wholesale_sentence(books.shop, *found));
    for (const BundlePrice& bundle : answer.bundles)
        if (std::ranges::count(bundle.under_floor, bar) + std::ranges::count(bundle.under_cost, bar) > 0)
            add(reports::bundle_sentence(books.shop, bundle));
    return told;
}

Form price_form(const Writing& writing, std::optional<Key<Material>> bar, std::optional<Key<Price>> corrected) {
    FactForm<Price> form{writing, "price", say("A price from a day on"), corrected};
    if (form.is_new()) {
        form.fact().from = writing.day;
        if (bar) form.fact().bar = *bar;
    }
    form.add("bar", say("&Bar"), &Price::bar, {.choices = bar_choices(writing.shop())})
        .add("price", say("&Price"), &Price::shelf, {.help = say("As the customer pays it, any sales tax in.")})
        .add("from", say("From &on"), &Price::from);
    form.look_at([](const Price& price, const Change&, Form& shown, const Writing& now) {
        shown.summary.clear();
        if (price.bar.number == 0) return;
        if (const auto listed = shelf_price_in_force(now.shop(), price.bar, now.day))
            shown.summary = say("Today it sells for {price}.",
                                arg("price", reports::shown_money(*listed, reports::currency_of(now.shop()))));
    });
    return std::move(form).done([](Price& price, Form&, const Writing& now, Kept& kept) {
        kept.title = reports::message("price of {bar} from {day}");
        kept.args = {{"bar", reports::called(now.shop(), price.bar)}, {"day", reports::shown_date(price.from)}};
        kept.consequence = [price](const Writing& after) {
            if (price.from > after.books.as_of())
                return say("{bar} sells for {price} from {day} on.",
                           arg("bar", reports::called(after.shop(), price.bar)),
                           arg("price", reports::shown_money(price.shelf, reports::currency_of(after.shop()))),
                           arg("day", reports::shown_date(price.from)));
            return price_told(after.books, prices(after.shop(), after.books.ledger), price.bar);
        };
        return true;
    });
}

Form wholesale_price_form(const Writing& writing, std::optional<Key<Material>> bar,
                          std::optional<Key<WholesalePrice>> corrected) {
    FactForm<WholesalePrice> form{writing, "wholesale_price", say("A price for shops, from a day on"), corrected};
    if (form.is_new()) {
        form.fact().from = writing.day;
        if (bar) form.fact().bar = *bar;
    }
    form.add("bar", say("&Bar"), &WholesalePrice::bar, {.choices = bar_choices(writing.shop())})
        .add("price", say("&Price"), &WholesalePrice::price,
             {.help = say("What a shop that sells on pays for a bar, any sales tax in.")})
        .add("from", say("From &on"), &WholesalePrice::from);
    return std::move(form).done([](WholesalePrice& price, Form&, const Writing& now, Kept& kept) {
        kept.title = reports::message("price of {bar} for shops from {day}");
        kept.args = {{"bar", reports::called(now.shop(), price.bar)}, {"day", reports::shown_date(price.from)}};
        kept.consequence = [price](const Writing& after) {
            const Prices answer = prices(after.shop(), after.books.ledger);
            const auto found = std::ranges::find(answer.bars, price.bar, &BarPrice::bar);
            if (price.from > after.books.as_of() || found == answer.bars.end() || !found->wholesale.left)
                return say("Shops are asked {price} for {bar} from {day} on.",
                           arg("price", reports::shown_money(price.price, reports::currency_of(after.shop()))),
                           arg("bar", reports::called(after.shop(), price.bar)),
                           arg("day", reports::shown_date(price.from)));
            return reports::wholesale_sentence(after.shop(), *found);
        };
        return true;
    });
}

Form powder_price_form(const Writing& writing, std::optional<Key<PowderPrice>> corrected) {
    FactForm<PowderPrice> form{writing, "powder_price", say("A price of powder, from a day on"), corrected};
    if (form.is_new()) form.fact().from = writing.day;
    form.add("colour", say("Co&lour"), &PowderPrice::colour, {.choices = colour_choices(writing.shop())})
        .add("pack", say("P&ack"), &PowderPrice::pack,
             {.help = say("By weight, like 10 g."),
              .measuring = [](const FieldHow::Texts&, const Writing&) { return Measuring{.kind = Kind::mass}; }})
        .add("price", say("&Price"), &PowderPrice::price,
             {.help = say("Of the pack, as the customer pays it, any sales tax in.")})
        .add("from", say("From &on"), &PowderPrice::from);
    form.form().cautions = {reports::powder_selling_caution()};
    return std::move(form).done([](PowderPrice& price, Form& shown, const Writing& now, Kept& kept) {
        if (price.pack.quantity.is_zero()) {
            shown.field("pack").trouble = say("Write how much is in a pack, like 10 g.");
            return false;
        }
        kept.title = reports::message("price of {colour} powder from {day}");
        kept.args = {{"colour", reports::called(now.shop(), price.colour)}, {"day", reports::shown_date(price.from)}};
        kept.consequence = [price](const Writing& after) {
            const Verdict answer = verdict(after.shop(), after.books.ledger, price.colour, kVerdictMonths, 0);
            std::string told = reports::powder_line(after.shop(), answer);
            if (!told.empty() && price.from <= after.books.as_of()) return told;
            return say(
                "The verdict holds it against pouring the powder into soap, once there is some and the day has "
                "come.");
        };
        return true;
    });
}

Form belief_form(const Writing& writing, std::optional<Key<PriceBelief>> corrected) {
    FactForm<PriceBelief> form{writing, "price_belief", say("What people would pay, in your belief"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    form.add("colour", say("Co&lour"), &PriceBelief::colour, {.choices = colour_choices(writing.shop())})
        .add("plain", say("&Plain"), &PriceBelief::plain)
        .add("bought", say("Bou&ght in"), &PriceBelief::bought)
        .add("own", say("O&ur own"), &PriceBelief::own)
        .add("date", say("From &on"), &PriceBelief::date);
    return std::move(form).done([](PriceBelief& belief, Form& shown, const Writing& now, Kept& kept) {
        if (!belief.plain && !belief.bought && !belief.own) {
            shown.field("own").trouble = say("Write what people would pay for at least one of the three.");
            return false;
        }
        kept.title = reports::message("what people would pay for {colour}");
        kept.args = {{"colour", reports::called(now.shop(), belief.colour)}};
        kept.consequence = [](const Writing&) { return say("Counted wherever no price of the list says it."); };
        return true;
    });
}

}  // namespace dyestead::gui
