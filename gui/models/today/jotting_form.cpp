#include "gui/models/today/jotting_form.h"

#include "gui/models/form/fact_form.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

Form jotting_form(const Writing& writing, std::optional<Key<Jotting>> corrected) {
    FactForm<Jotting> form{writing, "jotting", say("A jotting"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    form.add("text", say("&What"), &Jotting::text, {.help = say("A few words are enough; enter it properly later.")})
        .add("date", say("&On"), &Jotting::date)
        .more("done", say("&Seen to on"), &Jotting::done);
    return std::move(form).done([](Jotting& jotting, Form&, const Writing&, Kept& kept) {
        kept.title = reports::message("jotting: {text}");
        kept.args = {{"text", jotting.text}};
        kept.consequence = [](const Writing&) { return say("Jotted down; it waits on Today until it is entered."); };
        return true;
    });
}

std::optional<Kept> jotting_done(const Writing& writing, Key<Jotting> jotting) {
    const Jotting* found = writing.shop().find(jotting);
    if (found == nullptr) return std::nullopt;
    Kept kept;
    Jotting done = *found;
    done.done = writing.day;
    kept.change.put.all<Jotting>().push_back(done);
    kept.title = reports::message("seen to: {text}");
    kept.args = {{"text", done.text}};
    kept.consequence = [](const Writing&) { return say("Taken off the list of jottings."); };
    return kept;
}

}  // namespace dyestead::gui
