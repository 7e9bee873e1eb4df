#include "gui/models/bench/batch_form.h"

#include "gui/models/bench/bars.h"
#include "gui/models/bench/batch_parts.h"
#include "gui/models/bench/use_lines.h"
#include "reports/words/caution_words.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

const Batch* newest_batch(const Shop& shop, Day day) {
    const Batch* newest = nullptr;
    for (const Batch& batch : shop.all<Batch>())
        if (batch.date <= day && !batch.split_from && (newest == nullptr || batch.date >= newest->date))
            newest = &batch;
    return newest;
}

// The kinds of bar of the recipe that was chosen; the first where the one chosen is not of it.
void offer_bars(Form& form, const Writing& writing) {
    const auto recipe = KeyCodes{}.key_of<Recipe>(form.text("recipe"));
    FormField& bar = form.field("bar");
    bar.choices = recipe ? bars_of_recipe(writing.shop(), *recipe) : bar_choices(writing.shop());
    // A batch that is there keeps its bar, though its recipe may no longer make it.
    const auto kept = KeyCodes{}.key_of<Material>(bar.text);
    const auto has = [&] {
        return std::ranges::any_of(bar.choices, [&](const Choice& each) { return each.code == bar.text; });
    };
    if (form.fact && kept && !has()) bar.choices.push_back({bar.text, reports::called(writing.shop(), *kept)});
    if (!recipe || has()) return;
    bar.text = bar.choices.empty() ? std::string{} : bar.choices.front().code;
    bar.trouble.clear();
}

// Bars that were cut from a batch are what it is said to have become.
void rename_bars(const Batch& batch, const Shop& shop, Kept& kept) {
    for (const Cut& cut : shop.all<Cut>()) {
        const Lot* lot = cut.batch == batch.key ? shop.find(cut.lot) : nullptr;
        if (lot == nullptr || lot->material == batch.bar) continue;
        Lot renamed = *lot;
        renamed.material = batch.bar;
        kept.change.put.all<Lot>().push_back(renamed);
    }
}

}  // namespace

Form batch_form(const Writing& writing, std::optional<Key<Batch>> corrected, std::optional<Key<Material>> bar) {
    const Shop& shop = writing.shop();
    FactForm<Batch> form{writing, "batch", say("A batch"), corrected};
    const Batch* last = newest_batch(shop, writing.day);
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (bar) {
            form.fact().bar = *bar;
            if (const Recipe* recipe = recipe_of_bar(shop, *bar)) form.fact().recipe = recipe->key;
        } else if (last != nullptr) {
            form.fact().recipe = last->recipe;
            form.fact().bar = last->bar;
            form.fact().loaves = last->loaves;
        }
    }
    form.add("recipe", say("&Recipe"), &Batch::recipe, {.choices = recipe_choices(shop)})
        .add("bar", say("Which &bar"), &Batch::bar, {.choices = bar_choices(shop)})
        .add("loaves", say("&Loaves"), &Batch::loaves)
        .add("date", say("&Poured on"), &Batch::date);
    if (form.is_new() && !bar && last != nullptr)
        for (const char* id : {"recipe", "bar", "loaves"}) form.form().field(id).origin = say("from your last");
    if (form.is_new() && form.form().text("loaves").empty()) form.form().field("loaves").text = "1";
    add_time(form, writing);
    form.more("note", say("&Note"), &Batch::note);
    form.lines(use_lines<Batch>(writing, say("What goes in")));
    form.form().keep_label = say("Pour it");
    form.form().cautions = {reports::lye_caution()};
    form.look_at([filled = std::make_shared<FilledLines>()](
                     const Batch&, const Change& lines, Form& shown, const Writing& now) {
        offer_bars(shown, now);
        if (!shown.fact) read_time(shown);
        const auto kind = KeyCodes{}.key_of<Material>(shown.text("bar"));
        const auto loaves = read_typed_count(shown.text("loaves"));
        const auto recipe = KeyCodes{}.key_of<Recipe>(shown.text("recipe"));
        shown.summary.clear();
        if (!kind || !loaves || !recipe) return;
        const CanMake answer = can_make(now.shop(), now.books.ledger, *kind, *loaves, now.day);
        FormLines& uses = shown.lines_of("uses");
        std::vector<BatchUse> going_in = lines.put.all<BatchUse>();
        if (!shown.fact) {
            std::vector<Need> needs;
            for (const Need& need : answer.loaf.needs) {
                const Material* material = now.shop().find(need.material);
                if (material != nullptr && material->purpose != Purpose::wrapping) needs.push_back(need);
            }
            filled->fill(
                uses, fmt::format("{} {}", kind->number, *loaves), [&] { return rows_for(now.shop(), needs); });
            uses.notes.resize(uses.rows.size());
            going_in.clear();
            for (std::size_t i = 0; i < uses.rows.size(); ++i) {
                const auto material = KeyCodes{}.key_of<Material>(uses.rows[i][0]);
                const auto amount = read_typed_amount(uses.rows[i][1], {});
                if (!material || !amount) continue;
                going_in.push_back({{}, *material, KeyCodes{}.key_of<Lot>(uses.rows[i][2]), *amount});
                const auto part = std::ranges::find(answer.ingredients, *material, &Ingredient::material);
                if (part != answer.ingredients.end() && uses.rows[i][2].empty())
                    uses.notes[i] = taken_from(now.books, *part);
            }
        }
        Batch poured;
        poured.key.number = 1;
        poured.date = now.day;
        poured.recipe = *recipe;
        poured.bar = *kind;
        poured.loaves = *loaves;
        const Recipe* of = now.shop().find(*recipe);
        const std::string bars =
            of == nullptr ? std::string{}
                          : say_count("One bar.", "{count} bars.",
                                      static_cast<std::uint64_t>(of->bars_per_loaf) * static_cast<unsigned>(*loaves));
        shown.summary = joined({bars, lye_said(now.shop(), poured, going_in),
                                shown.fact ? std::string{} : enough_said(now.shop(), *kind, answer)});
    });
    return std::move(form).done([](Batch& batch, Form& shown, const Writing& now, Kept& kept) {
        if (batch.loaves <= 0) {
            shown.field("loaves").trouble = say("A batch is one loaf at least; write how many.");
            return false;
        }
        if (!shown.fact && !keep_time(batch, shown, now, kept)) return false;
        rename_bars(batch, now.shop(), kept);
        say_kept(kept, now.shop(), batch, reports::message("batch of {bar} poured on {day}"));
        return true;
    });
}

}  // namespace dyestead::gui
