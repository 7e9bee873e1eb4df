#include "gui/models/bench/cut_form.h"

#include "domain/decisions/packed_weight.h"
#include "gui/models/bench/bars.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/new_things.h"
#include "reports/batch_cost.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

std::vector<Choice> batches_to_cut(const Books& books, std::optional<Key<Batch>> chosen) {
    return choices_of_kind<Batch>(
        books.shop,
        [&](const Batch& batch) {
            return batch.key == chosen || reports::cut_of(books.shop, books.ledger, batch.key) == nullptr;
        },
        [&](const Batch& batch) {
            return say("{code}, {bar}, poured {day}", arg("code", batch.code),
                       arg("bar", reports::called(books.shop, batch.bar)), arg("day", reports::shown_date(batch.date)));
        });
}

// A guess stands where nobody has typed, and follows what it is guessed from.
void guess(FormField& field, std::string text) {
    if (!field.text.empty() && field.origin.empty()) return;
    field.text = std::move(text);
    field.origin = say("from the recipe");
    field.trouble.clear();
}

void guess_from_recipe(Form& form, const Writing& writing) {
    const auto key = KeyCodes{}.key_of<Batch>(form.text("batch"));
    const Batch* batch = key ? writing.shop().find(*key) : nullptr;
    const Recipe* recipe = batch == nullptr ? nullptr : writing.shop().find(batch->recipe);
    if (form.fact || recipe == nullptr) return;
    guess(form.field("bars"), fmt::to_string(std::int64_t{recipe->bars_per_loaf} * batch->loaves));
    const auto day = read_typed_day(form.text("date"), writing.day, reports::month_names());
    if (!day) return;
    guess(form.field("cured"), day_text(*day + Days{recipe->cure_days}));
    if (recipe->best_days) guess(form.field("best_before"), day_text(*day + Days{*recipe->best_days}));
}

std::string cut_meant(const Writing& after, const Cut& cut) {
    const Shop& shop = after.shop();
    const std::string currency = reports::currency_of(shop);
    for (const ShelfLot& lot : shelf({shop, after.books.ledger}).lots)
        if (lot.lot == cut.lot && lot.held)
            return say_count(
                "One bar, but on hold: {why}. Put it by, and give it to nobody; gloves to handle it.",
                "{count} bars, but on hold: {why}. Put them by, and give none away; gloves to handle them.",
                static_cast<std::uint64_t>(cut.bars - cut.rejected), arg("why", held_words(shop, *lot.held)));
    const auto costs = reports::bar_costs(after.books.shop, after.books.ledger, cut.batch);
    if (!costs) return say("Cut; no good bars came of it.");
    return say_count("One bar, {cash} without your time and {full} with it; ready {day}.",
                     "{count} bars, {cash} each without your time and {full} with it; ready {day}.",
                     static_cast<std::uint64_t>(cut.bars - cut.rejected),
                     arg("cash", reports::shown_money(costs->without_time, currency)),
                     arg("full", reports::shown_money(costs->with_time, currency)),
                     arg("day", reports::shown_date(cut.cured)));
}

}  // namespace

Form cut_form(const Writing& writing, std::optional<Key<Batch>> batch, std::optional<Key<Cut>> corrected) {
    FactForm<Cut> form{writing, "cut", say("A batch cut"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (batch) form.fact().batch = *batch;
    }
    form.add("batch", say("&Batch"), &Cut::batch, {.choices = batches_to_cut(writing.books, form.fact().batch)})
        .add("bars", say("Bars in &all"), &Cut::bars)
        .add("rejected", say("Of them odd one&s"), &Cut::rejected,
             {.help = say("Soft, chipped, crooked: what will not be sold. They carry no cost of their own.")})
        .add("date", say("Cut &on"), &Cut::date)
        .add("cured", say("Rea&dy on"), &Cut::cured, {.help = say("Saleable from this day.")})
        .more("ends", say("&Ends"), &Cut::ends,
              {.help = say("End pieces, kept or thrown; a weight, if you know it."),
               .measuring = [](const FieldHow::Texts&, const Writing&) { return Measuring{.kind = Kind::mass}; }})
        .more("best_before", say("Best be&fore"), &Cut::best_before)
        .more("time", say("&Time"), &Cut::time)
        .more("who", say("&Who"), &Cut::who, {.choices = people_choices(writing.shop())})
        .more("note", say("&Note"), &Cut::note);
    if (form.form().text("rejected").empty()) form.form().field("rejected").text = "0";
    form.look(guess_from_recipe);
    return std::move(form).done([](Cut& cut, Form& shown, const Writing& now, Kept& kept) {
        const Batch* from = now.shop().find(cut.batch);
        if (from == nullptr) return false;
        const auto wrong = [&](std::string_view id, std::string why) {
            shown.field(id).trouble = std::move(why);
            return false;
        };
        if (cut.bars <= 0) return wrong("bars", say("Write how many bars it was cut into, odd ones in."));
        if (cut.rejected > cut.bars)
            return wrong("rejected", say("More odd ones than bars; write the bars in all above, odd ones in."));
        if (cut.date < from->date)
            return wrong("date", say("The batch was poured on {day}; it cannot be cut before.",
                                     arg("day", reports::shown_date(from->date))));
        if (cut.cured < cut.date)
            return wrong("cured", say("Bars are not ready before they are cut; write a later day."));
        const std::string bar = reports::called(now.shop(), from->bar);
        if (const Lot* there = now.shop().find(cut.lot)) {
            // It stays the lot it is, so that what was sold of it is still found.
            if (there->material != from->bar) {
                Lot lot = *there;
                lot.material = from->bar;
                kept.change.put.all<Lot>().push_back(lot);
            }
        } else {
            cut.lot = add_lot(bar, from->bar, cut.date, now, kept);
        }
        kept.title = reports::message("{bar} cut on {day}");
        kept.args = {{"bar", bar}, {"day", reports::shown_date(cut.date)}};
        kept.consequence = [cut](const Writing& after) { return cut_meant(after, cut); };
        return true;
    });
}

namespace {

struct Weighed {
    std::optional<Amount> total{};
    int bars = 1;
    std::string trouble{};
};

// "318 g / 3": so much for so many; one bar where no number follows.
Weighed read_weighed(std::string_view text) {
    const auto slash = text.rfind('/');
    const auto amount = read_typed_amount(text.substr(0, slash), {.kind = Kind::mass});
    if (!amount) return {.trouble = field_trouble(*amount.trouble, text)};
    if ((*amount).quantity.kind() != Kind::mass || (*amount).quantity.is_zero())
        return {.trouble = say("A weight belongs here; write it like 318 g / 3 for three bars together.")};
    Weighed weighed{.total = *amount};
    if (slash == std::string_view::npos) return weighed;
    const auto bars = read_typed_count(text.substr(slash + 1));
    if (!bars) return {.trouble = field_trouble(*bars.trouble, text.substr(slash + 1))};
    if (*bars < 1) return {.trouble = say("Write how many bars lay on the scale: 318 g / 3.")};
    weighed.bars = *bars;
    return weighed;
}

std::string a_bar(const Amount& total, int bars) {
    return reports::shown_quantity({total.quantity.kind(), scaled(total.quantity.in_base(), 1, bars)});
}

std::string below_the_label(const reports::Arg& bar, Quantity declared) {
    const auto label = arg("label", reports::shown_quantity(declared));
    const auto tolerated = tolerated_shortfall(declared);
    if (!tolerated) return say("Now about {bar} a bar: below the {label} on the label.", bar, label);
    return say(
        "Now about {bar} a bar: below the {label} on the label. In Europe and Britain a batch's mean may not be below "
        "it, and a single bar seldom by more than {tolerated}; ask your weights authority what holds where you sell.",
        bar, label, arg("tolerated", reports::shown_quantity(*tolerated)));
}

std::string weight_meant(const Writing& after, Key<Lot> key) {
    const Shop& shop = after.shop();
    for (const ShelfLot& lot : shelf({shop, after.books.ledger}).lots) {
        if (lot.lot != key || !lot.weight) continue;
        const auto bar =
            arg("bar",
                reports::shown_quantity({Kind::mass, scaled(1, lot.weight->per_bar.top, lot.weight->per_bar.bottom)}));
        const Recipe* recipe = recipe_of_bar(shop, lot.bar);
        if (lot.weight->below_declared.value_or(false) && recipe != nullptr)
            return below_the_label(bar, recipe->declared_weight.quantity);
        if (lot.weight->lost)
            return say("Now about {bar} a bar, {share} lighter than at the first weighing.", bar,
                       arg("share", reports::shown_percent(number(*lot.weight->lost))));
        return say("Now about {bar} a bar. Weigh again in a week or two to see it dry.", bar);
    }
    return say("Weighed; none of these bars are left.");
}

}  // namespace

Form weigh_form(const Writing& writing, std::optional<Key<Lot>> lot, std::optional<Key<Weighing>> corrected) {
    FactForm<Weighing> form{writing, "weighing", say("Bars weighed"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (lot) form.fact().lot = *lot;
    }
    std::vector<Choice> lots = bar_lot_choices(writing.books, {});
    const std::string chosen = KeyCodes{}.code_of(form.fact().lot);
    if (!chosen.empty() && std::ranges::find(lots, chosen, &Choice::code) == lots.end())
        lots.push_back({chosen, reports::called(writing.shop(), form.fact().lot)});
    form.add("lot", say("&Bars"), &Weighing::lot, {.choices = std::move(lots)});
    form.extra(
        {.id = "weight",
         .label = say("&Weight"),
         .text = form.is_new() ? std::string{} : fmt::format("{} / {}", print(form.fact().total), form.fact().bars),
         .help = say("Of several bars together: 318 g / 3 is three bars of 318 g in all.")});
    form.add("date", say("Weighed &on"), &Weighing::date);
    form.look([](Form& shown, const Writing&) {
        FormField& field = shown.field("weight");
        field.understood.clear();
        field.trouble.clear();
        if (trimmed(field.text).empty()) return;
        const Weighed weighed = read_weighed(field.text);
        field.trouble = weighed.trouble;
        if (weighed.total) field.understood = say("{weight} a bar", arg("weight", a_bar(*weighed.total, weighed.bars)));
    });
    return std::move(form).done([](Weighing& weighing, Form& shown, const Writing& now, Kept& kept) {
        const Weighed weighed = read_weighed(shown.text("weight"));
        shown.field("weight").trouble = weighed.trouble;
        if (!weighed.total) return false;
        weighing.total = *weighed.total;
        weighing.bars = weighed.bars;
        kept.title = reports::message("bars of lot {lot} weighed");
        kept.args = {{"lot", reports::called(now.shop(), weighing.lot)}};
        kept.consequence = [key = weighing.lot](const Writing& after) { return weight_meant(after, key); };
        return true;
    });
}

}  // namespace dyestead::gui
