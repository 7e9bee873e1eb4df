#include "gui/models/stall/fair_form.h"

#include "domain/decisions/fair_plan.h"
#include "gui/models/stall/fair_lines.h"
#include "gui/models/stall/fair_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

// The plan of a fair that is being written, reckoned again only when it would come out otherwise.
class PlanAhead {
public:
    const FairPlan& of(Fair fair, const Writing& writing) {
        const std::string what_for =
            fmt::format("{} {} {} {} {}", print(fair.date), fair.name, print(fair.fee),
                        fair.travel ? print(*fair.travel) : "", fair.open ? print(*fair.open) : "");
        if (what_for == what_for_) return plan_;
        what_for_ = what_for;
        if (fair.key.number == 0) fair.key.number = std::numeric_limits<std::int64_t>::max();
        Change change;
        change.put.all<Fair>().push_back(fair);
        const Shop with_it = applied(writing.shop(), change);
        plan_ = fair_plan(with_it, writing.books.ledger, fair.key);
        return plan_;
    }

private:
    std::string what_for_;
    FairPlan plan_;
};

const Fair* last_of_name(const Shop& shop, std::string_view name, Day day) {
    const Fair* last = nullptr;
    for (const Fair& fair : shop.all<Fair>())
        if (fair.name == name && fair.date < day && (last == nullptr || fair.date > last->date)) last = &fair;
    return last;
}

void guess(FormField& field, const std::string& text) {
    if (!field.text.empty() && field.origin.empty()) return;
    field.text = text;
    field.origin = text.empty() ? std::string{} : say("from your last");
    field.trouble.clear();
}

void guess_from_last(Form& form, const Writing& writing) {
    const auto date = read_typed_day(form.text("date"), writing.day, reports::month_names());
    const Fair* last = last_of_name(writing.shop(), trimmed(form.text("name")), date ? *date : Day::max());
    if (last == nullptr) return;
    guess(form.field("fee"), field_text(last->fee));
    guess(form.field("travel"), field_text(last->travel));
    guess(form.field("open"), field_text(last->open));
    guess(form.field("float"), field_text(last->change_float));
}

std::vector<std::string> row_for(const FormLines& lines, const TakeBars& bar) {
    std::vector<std::string> row(lines.fields.size());
    row[column(lines, "bar")] = KeyCodes{}.code_of(bar.bar);
    row[column(lines, "taken")] = fmt::to_string(bar.take);
    return row;
}

std::string why_so_many(const TakeBars& bar) {
    const auto there = arg("there", bar.there);
    if (bar.no_price) return say("no price on the list; {there} ready", there);
    if (bar.days_on_record == 0) return say("never taken before; {there} ready", there);
    if (bar.at_least_only)
        return say("sold out every time: at least {bars} wanted; {there} ready",
                   arg("bars", reports::shown_fixed(bar.expected, 0)), there);
    return say("about {bars} wanted; {there} ready", arg("bars", reports::shown_fixed(bar.expected, 0)), there);
}

void plan_it(PlanAhead& ahead, std::vector<std::vector<std::string>>& filled, Form& form, const Fair& fair,
             const Writing& writing) {
    form.summary.clear();
    FormLines& lines = form.lines_of("bars");
    if (fair.name.empty() || fair.date < writing.books.as_of()) return;
    const FairPlan& plan = ahead.of(fair, writing);
    if (!form.fact && (lines.rows.empty() || lines.rows == filled)) {
        lines.rows.clear();
        for (const TakeBars& bar : plan.bars)
            if (bar.take > 0) lines.rows.push_back(row_for(lines, bar));
        filled = lines.rows;
        lines.notes.assign(lines.rows.size(), {});
    }
    for (std::size_t i = 0; i < lines.rows.size(); ++i) {
        const auto bar = KeyCodes{}.key_of<Material>(lines.rows[i][column(lines, "bar")]);
        const auto planned =
            std::ranges::find_if(plan.bars, [&](const TakeBars& each) { return bar && each.bar == *bar; });
        if (planned != plan.bars.end() && lines.notes[i].empty()) lines.notes[i] = why_so_many(*planned);
    }
    int take = 0;
    for (const TakeBars& bar : plan.bars) take += bar.take;
    const std::string pays = fair_ahead(writing.books, plan);
    form.summary = take == 0 ? pays
                             : say_count("Take one bar. {pays}", "Take {count} bars. {pays}",
                                         static_cast<std::uint64_t>(take), arg("pays", pays));
}

}  // namespace

bool to_count_back(const Shop& shop, const Fair& fair, Day day) {
    if (fair.date > day || fair.ended == FairEnded::did_not_happen || fair.cash_in_tin || fair.card_takings)
        return false;
    bool taken = false;
    for (const FairLine& line : shop.all<FairLine>()) {
        if (line.head != fair.key) continue;
        if (line.back != 0) return false;
        taken = taken || line.taken > 0;
    }
    return taken;
}

Form fair_form(const Writing& writing, std::optional<Key<Fair>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<Fair> form{writing, "fair", say("A fair"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    form.add("name", say("&Name"), &Fair::name, {.entry = Entry::name, .choices = names_typed<Fair>(shop, &Fair::name)})
        .add("date", say("&On"), &Fair::date)
        .add("fee", say("&Stall"), &Fair::fee, {.help = say("What the place costs; 0 for nothing.")})
        .add("travel", say("&Travel"), &Fair::travel, {.help = say("Petrol, fares, parking: there and back.")})
        .add("open", say("&Hours open"), &Fair::open, {.help = say("How long there are customers: 6 h.")})
        .more("float", say("&Change taken along"), &Fair::change_float)
        .more("noted", say("P&ut down on"), &Fair::noted)
        .more("paid", say("Stall &paid on"), &Fair::fee_paid, {.help = say("Blank: on the day.")})
        .more("note", say("Not&e"), &Fair::note);
    form.lines(fair_lines(writing, corrected));
    form.look_at(
        [ahead = std::make_shared<PlanAhead>(), filled = std::make_shared<std::vector<std::vector<std::string>>>()](
            const Fair& fair, const Change&, Form& shown, const Writing& now) {
            if (!shown.fact) guess_from_last(shown, now);
            Fair written = fair;
            if (const auto fee = read_typed_money(shown.text("fee")); fee) written.fee = *fee;
            if (const auto open = read_typed_span(shown.text("open")); open) written.open = *open;
            plan_it(*ahead, *filled, shown, written, now);
        });
    return std::move(form).done([](Fair& fair, Form& shown, const Writing& now, Kept& kept) {
        if (!shown.fact && !fair.noted && fair.date > now.day) fair.noted = now.day;
        if (fair.noted && *fair.noted > fair.date) {
            shown.field("noted").trouble =
                say("A fair cannot be put down after it was; write an earlier day, or none.");
            return false;
        }
        kept.title = reports::message("fair {name} on {day}");
        kept.args = {{"name", fair.name}, {"day", reports::shown_date(fair.date)}};
        kept.consequence = [key = fair.key](const Writing& after) -> std::string {
            const Fair* there = after.shop().find(key);
            if (there == nullptr) return {};
            if (there->date > after.books.as_of())
                return fair_ahead(after.books, fair_plan(after.shop(), after.books.ledger, key));
            if (to_count_back(after.shop(), *there, after.books.as_of()))
                return say(
                    "Put down. Count back what came home and what is in the tin; until then all counts as sold.");
            return fair_told(after.books, key);
        };
        return true;
    });
}

}  // namespace dyestead::gui
