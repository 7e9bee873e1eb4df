#include "gui/models/today/work_form.h"

#include "domain/decisions/records.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

Form work_form(const Writing& writing, std::optional<Key<Work>> corrected) {
    FactForm<Work> form{writing, "work", say("Time that belongs to nothing else"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (writing.shop().all<Person>().size() == 1) form.fact().who = writing.shop().all<Person>().front().key;
    }
    form.add("what", say("&What"), &Work::what,
             {.help = say("Cleaning, paperwork, posting; time at a bed, a vat, a "
                          "batch or a fair is noted there.")})
        .add("time", say("&How long"), &Work::time, {.help = say("90 min, 1.5 h, about an hour: ~1 h.")})
        .add("date", say("&On"), &Work::date)
        .add("who", say("Wh&o"), &Work::who, {.entry = Entry::choice, .choices = people_choices(writing.shop())});
    return std::move(form).done([](Work& work, Form&, const Writing&, Kept& kept) {
        kept.title = reports::message("time: {what}");
        kept.args = {{"what", work.what}};
        kept.consequence = [day = work.date](const Writing& after) {
            double minutes = 0;
            for (const Work& each : after.shop().all<Work>())
                if (year_of(each.date) == year_of(day)) minutes += number(each.time.time);
            return say("Time of this kind in {year}: {hours} so far.", arg("year", year_of(day)),
                       arg("hours", reports::shown_hours(minutes / 60)));
        };
        return true;
    });
}

}  // namespace dyestead::gui
