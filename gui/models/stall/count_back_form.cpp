#include "gui/models/stall/fair_form.h"
#include "gui/models/stall/fair_lines.h"
#include "gui/models/stall/fair_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

LineForm<FairLine> fair_lines(const Writing& writing, std::optional<Key<Fair>> fair) {
    const Shop& shop = writing.shop();
    const Fair* there = fair ? shop.find(*fair) : nullptr;
    const bool counted = there != nullptr && !to_count_back(shop, *there, Day::max());
    LineForm<FairLine> lines{.id = "bars", .name = say("Bars taken")};
    lines.add("bar", say("&Bar"), &FairLine::bar, {.choices = bar_choices(shop)})
        .add("taken", say("Ta&ke"), &FairLine::taken)
        .extra({.id = "back",
                .label = say("Back ho&me"),
                .help = say("Once the fair is over. Blank: as the bars that came home in all are shared out.")})
        .add("price", say("Pr&ice"), &FairLine::price, {.help = say("Blank: by the price list.")})
        .add("lot", say("Fro&m lot"), &FairLine::lot,
             {.choices = sellable_lot_choices(
                  writing.books, fair ? lots_named<FairLine>(shop, *fair) : std::vector<std::optional<Key<Lot>>>{})});
    lines.show_extra = [counted](const FairLine& line) {
        return std::vector<std::pair<std::string, std::string>>{
            {"back", counted ? fmt::to_string(line.back) : std::string{}}};
    };
    lines.finish = [](FairLine& line, const FieldHow::Texts& texts, const Writing& now, Kept&) -> std::string {
        line.back = 0;
        if (!trimmed(texts("back")).empty()) {
            const auto back = read_typed_count(texts("back"));
            if (!back) return field_trouble(*back.trouble, texts("back"));
            line.back = *back;
        }
        if (line.back > line.taken) return say("More came home than were taken; mend one of the two.");
        return lot_trouble(now.shop(), line.lot, line.bar);
    };
    return lines;
}

LineForm<FairBundle> bundle_lines() {
    LineForm<FairBundle> lines{.id = "bundles", .name = say("Bundles sold")};
    lines.add("what", say("Wh&at"), &FairBundle::what, {.help = say("Three for two, gift box.")})
        .add("bars", say("Bars &in one"), &FairBundle::bars)
        .add("price", say("&For"), &FairBundle::price)
        .add("sold", say("&How many"), &FairBundle::sold);
    return lines;
}

LineForm<FairTime> fair_time_lines(const Shop& shop) {
    LineForm<FairTime> lines{.id = "times", .name = say("Hours at it")};
    lines.add("who", say("&Who"), &FairTime::who, {.choices = people_choices(shop)})
        .add("time", say("&Time"), &FairTime::time, {.help = say("With packing and the way there: 9 h.")});
    return lines;
}

namespace {

// Bars that came home, shared over the lines nothing was said of, by what was taken of each; no line gets more than
// was taken of it.
void share_home(std::vector<FairLine*>& lines, int home) {
    int taken = 0;
    for (const FairLine* line : lines) taken += line->taken;
    int rest_taken = taken;
    int rest = home;
    for (FairLine* line : lines) {
        // What is left to share over what is left to share it by: every bar finds its place, rounded as it goes.
        line->back =
            rest_taken == 0 ? 0 : static_cast<int>((std::int64_t{rest} * line->taken + rest_taken / 2) / rest_taken);
        rest -= line->back;
        rest_taken -= line->taken;
    }
}

// What came home of each kind; false, with the trouble at its field, where that cannot be told.
bool count_home(const Fair& fair, Form& form, std::vector<FairLine>& lines) {
    FormField& field = form.field("home");
    const auto wrong = [&](std::string why) {
        field.trouble = std::move(why);
        return false;
    };
    if (fair.ended == FairEnded::did_not_happen) {
        for (FairLine& line : lines) line.back = line.taken;
        return true;
    }
    std::vector<FairLine*> open;
    int told = 0;
    int may_be = 0;
    const FormLines& rows = form.lines_of("bars");
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (trimmed(rows.rows[i][column(rows, "back")]).empty()) {
            open.push_back(&lines[i]);
            may_be += lines[i].taken;
        }
        told += lines[i].back;
    }
    if (trimmed(field.text).empty()) {
        if (open.empty()) return true;
        return wrong(say("Write how many bars came home, in all or of each kind; 0 for none."));
    }
    const auto home = read_typed_count(field.text);
    if (!home) return wrong(field_trouble(*home.trouble, field.text));
    const int rest = *home - told;
    if (rest < 0 || rest > may_be)
        return wrong(
            say("With {home} home in all, {rest} are left for kinds of which nothing is said; mend one of "
                "the two.",
                arg("home", *home), arg("rest", rest)));
    share_home(open, rest);
    return true;
}

}  // namespace

Form count_back_form(const Writing& writing, Key<Fair> fair) {
    const Shop& shop = writing.shop();
    FactForm<Fair> form{writing, "count_back", say("Counting back"), fair};
    form.add("cash", say("&Cash in the tin"), &Fair::cash_in_tin,
             {.help = say("As counted, the change taken along in.")})
        .add("float", say("Of it t&aken along"), &Fair::change_float)
        .add("card", say("Car&d takings"), &Fair::card_takings);
    form.extra({.id = "home",
                .label = say("Home in a&ll"),
                .help = say("Bars that came home; shared over the kinds below unless you say of each.")});
    form.add("ended", say("The day &was"), &Fair::ended,
             {.choices = word_choices<FairEnded>({say("as usual"), say("cut short"), say("did not happen")}),
              .help = say("A day cut short is left out of what you expect next time.")})
        .more("payments", say("Card pa&yments"), &Fair::card_payments)
        .more("open", say("H&ours open"), &Fair::open)
        .more("reductions", say("Let off the &prices"), &Fair::reductions, {.help = say("Bundles aside.")})
        .more("note", say("&Note"), &Fair::note);
    form.lines(fair_lines(writing, fair)).lines(bundle_lines()).lines(fair_time_lines(shop));
    form.form().keep_label = say("Count back");
    return std::move(form).done([](Fair& counted, Form& shown, const Writing&, Kept& kept) {
        if (!count_home(counted, shown, kept.change.put.all<FairLine>())) return false;
        if (counted.cash_in_tin && counted.change_float && *counted.cash_in_tin < *counted.change_float) {
            shown.field("cash").trouble =
                say("Less than was taken along; count the tin with that change in, or mend what was taken along.");
            return false;
        }
        kept.title = reports::message("fair {name} of {day} counted back");
        kept.args = {{"name", counted.name}, {"day", reports::shown_date(counted.date)}};
        kept.consequence = [key = counted.key](const Writing& after) { return fair_told(after.books, key); };
        return true;
    });
}

}  // namespace dyestead::gui
