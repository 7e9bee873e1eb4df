#include "gui/models/garden/tending_form.h"

#include <algorithm>

#include "domain/decisions/records.h"
#include "gui/models/form/used_lines.h"
#include "gui/models/garden/garden_choices.h"
#include "gui/models/garden/planting_story.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

// The further plantings of the form; nothing, with the reason beside the line, where one cannot be taken.
std::optional<std::vector<Key<Planting>>> further_plantings(Form& form, Key<Planting> first, const Shop& shop) {
    FormLines& lines = form.lines_of("also_at");
    lines.notes.assign(lines.rows.size(), {});
    std::vector<Key<Planting>> all;
    bool fine = true;
    for (std::size_t row = 0; row < lines.rows.size(); ++row) {
        const auto key = KeyCodes{}.key_of<Planting>(lines.rows[row].at(0));
        if (!key || shop.find(*key) == nullptr) {
            lines.notes[row] = say("Choose a planting here, or take the line out.");
        } else if (*key == first || std::ranges::find(all, *key) != all.end()) {
            lines.notes[row] = say("This planting is named already; take the line out.");
        } else {
            all.push_back(*key);
            continue;
        }
        fine = false;
    }
    if (!fine) return std::nullopt;
    return all;
}

// One sitting over all of them: the books share its minutes by area.
void share_time(Tending& first, const std::vector<Key<Planting>>& further, const Writing& writing, Kept& kept) {
    Sitting sitting;
    sitting.key = writing.new_key<Sitting>();
    sitting.code = free_code<Sitting>(writing.shop(), "sitting-" + print(first.date));
    sitting.date = first.date;
    sitting.who = first.who;
    sitting.time = *first.time;
    first.time.reset();
    first.who.reset();
    int position = 0;
    const auto at = [&](Key<Tending> tending) {
        SittingAt line;
        line.key = writing.new_key<SittingAt>();
        line.head = sitting.key;
        line.position = ++position;
        line.tending = tending;
        kept.change.put.all<SittingAt>().push_back(line);
    };
    at(first.key);
    std::vector<std::string> taken{first.code};
    for (const Key<Planting> planting : further) {
        Tending tending;
        tending.key = writing.new_key<Tending>();
        tending.code = free_code<Tending>(writing.shop(), "tending-" + print(first.date), taken);
        taken.push_back(tending.code);
        tending.date = first.date;
        tending.planting = planting;
        tending.what = first.what;
        at(tending.key);
        kept.change.put.all<Tending>().push_back(tending);
    }
    kept.change.put.all<Sitting>().push_back(sitting);
}

std::string after_tending(const Writing& after, Key<Tending> key) {
    const Tending* tending = after.shop().find(key);
    const Planting* planting = tending != nullptr ? after.shop().find(tending->planting) : nullptr;
    if (planting == nullptr) return {};
    const PlantingFigures figures = planting_figures(after.books, *planting);
    Minutes all;
    for (const Planting& each : after.shop().all<Planting>()) {
        const PlantingFigures of = planting_figures(after.books, each);
        if (!of.ended) all += of.spent.hands_on;
    }
    const auto name = arg("planting", planting_in_short(after.shop(), planting->key));
    const auto hours = arg("hours", reports::shown_minutes(number(figures.spent.hands_on)));
    const auto garden = arg("garden", reports::shown_minutes(number(all)));
    return say("{planting}: {hours} so far. All that grows now: {garden}.", name, hours, garden);
}

bool has_time_or_lines(const Tending& tending, Form& form) {
    if (tending.time || !form.lines_of("used").rows.empty() || tending.what) return true;
    form.field("time").trouble = say("Say how long it took, what was given, or what was done.");
    return false;
}

}  // namespace

Form tending_form(const Writing& writing, std::optional<Key<Planting>> selected, TendingAs as,
                  std::optional<Key<Tending>> corrected) {
    const bool again = as == TendingAs::sown_again && !corrected;
    FactForm<Tending> form{writing, "tending", again ? say("Sown again") : say("Time in the garden"), corrected};
    const Shop& shop = writing.shop();
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (again) form.fact().what = say("sown again");
    }
    form.add("date", say("&On"), &Tending::date)
        .add("planting", say("At which &planting"), &Tending::planting,
             {.choices = plantings_to_choose(writing, planting_of(shop, corrected))})
        .add("time", say("&How long"), &Tending::time,
             {.help = say("Like 1 h 30 or ~2 h. Of several plantings: all of it; it is shared by their area.")})
        .add("what", say("What was &done"), &Tending::what, {.help = say("Weeding, planting out, sown again.")})
        .more("who", say("&Who"), &Tending::who, {.choices = people_choices(shop)})
        .lines(used_lines<TendingUse>(writing, say("What it was given"), is_garden_goods, corrected));
    if (form.is_new()) {
        form.form().lines.push_back({.id = "also_at",
                                     .name = say("Also at"),
                                     .fields = {{.id = "planting",
                                                 .label = say("Planting"),
                                                 .entry = Entry::choice,
                                                 .choices = plantings_to_choose(writing)}}});
        form.also_read([](Tending& tending, Form& filled, const Writing& in, Kept*) {
            return further_plantings(filled, tending.planting, in.shop()).has_value();
        });
    }
    guess_planting(form, writing, selected);
    return std::move(form).done([](Tending& tending, Form& filled, const Writing& in, Kept& kept) {
        if (!has_time_or_lines(tending, filled)) return false;
        if (!filled.fact) {
            const auto further = further_plantings(filled, tending.planting, in.shop());
            if (further && !further->empty() && !tending.time) {
                filled.field("time").trouble = say("Say how long all of it took; it is shared over the plantings.");
                return false;
            }
            if (further && !further->empty()) share_time(tending, *further, in, kept);
        }
        kept.title = reports::message("{what} at {planting}");
        kept.args = {
            {"what", tending.what.value_or(say("time"))}, {"planting", planting_in_short(in.shop(), tending.planting)}};
        kept.consequence = [key = tending.key](const Writing& after) { return after_tending(after, key); };
        return true;
    });
}

}  // namespace dyestead::gui
