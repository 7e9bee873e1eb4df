#include "gui/models/bench/bars.h"
#include "gui/models/bench/batch_form.h"
#include "gui/models/bench/batch_parts.h"
#include "gui/models/bench/use_lines.h"
#include "reports/batch_cost.h"
#include "reports/words/caution_words.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

Form split_form(const Writing& writing, std::optional<Key<Batch>> from, std::optional<Key<Batch>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<Batch> form{writing, "batch_split", say("Poured off from a batch"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        form.fact().split_from = from;
        if (const Batch* whole = from ? shop.find(*from) : nullptr) {
            form.fact().date = whole->date;
            form.fact().bar = whole->bar;
        }
    }
    const auto open = [&](const Batch& batch) {
        return form.fact().split_from == batch.key ||
               reports::cut_of(writing.books.shop, writing.books.ledger, batch.key) == nullptr;
    };
    form.add("from", say("&From batch"), &Batch::split_from,
             {.choices = choices_of_kind<Batch>(shop, open,
                                                [&](const Batch& batch) {
                                                    return say("{code}, {bar}", arg("code", batch.code),
                                                               arg("bar", reports::called(shop, batch.bar)));
                                                })})
        .add("share", say("&Share of it"), &Batch::split_share,
             {.help = say("Of all that went into it: 1/2, 40 %, 0.25.")})
        .add("bar", say("To become &bar"), &Batch::bar, {.choices = bar_choices(shop)})
        .add("loaves", say("&Loaves"), &Batch::loaves)
        .add("date", say("&Poured off on"), &Batch::date)
        .more("note", say("&Note"), &Batch::note);
    if (form.is_new() && form.form().text("loaves").empty()) form.form().field("loaves").text = "1";
    add_time(form, writing);
    if (form.is_new()) form.form().field("time").more = true;
    form.lines(use_lines<Batch>(writing, say("What was added to it")));
    form.form().cautions = {reports::lye_caution()};
    return std::move(form).done([](Batch& batch, Form& shown, const Writing& now, Kept& kept) {
        const Batch* whole = batch.split_from ? now.shop().find(*batch.split_from) : nullptr;
        if (whole == nullptr) shown.field("from").trouble = say("Choose the batch it was poured off from.");
        const bool share = batch.split_share && !batch.split_share->is_zero() && *batch.split_share < Ratio{1, 1};
        if (!share)
            shown.field("share").trouble = say("Write which share of it, more than none and less than all: 1/2.");
        if (whole == nullptr || !share) return false;
        if (whole->date > batch.date) {
            shown.field("date").trouble = say("The batch was poured on {day}; it cannot be poured off before.",
                                              arg("day", reports::shown_date(whole->date)));
            return false;
        }
        batch.recipe = whole->recipe;
        if (!shown.fact && !keep_time(batch, shown, now, kept)) return false;
        say_kept(kept, now.shop(), batch, reports::message("{bar} poured off on {day}"));
        return true;
    });
}

}  // namespace dyestead::gui
