// The shop itself, its people, its bills and its tools.
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/settings/settings_forms.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

std::vector<Choice> dye_only_choices() {
    return word_choices<DyeOnly>({say("the shop in general"), say("the dye beds alone"), say("the dye vats alone")});
}

}  // namespace

Form about_form(const Writing& writing) {
    const auto& all = writing.shop().all<About>();
    FactForm<About> form{
        writing, "about", say("The shop itself"), all.empty() ? std::nullopt : std::optional{all.front().key}};
    form.add("name", say("&Name"), &About::name)
        .add("currency", say("C&urrency"), &About::currency, {.help = say("Its three letters: GBP, EUR, USD.")})
        .more("year_begins", say("Financial &year begins in month"), &About::year_begins,
              {.help = say("1 to 12; blank is January.")})
        .more("shown_as_of", say("&Held at the day"), &About::shown_as_of,
              {.help = say("For a closed or a sample shop: the books always stand at this day. Blank is today.")});
    return std::move(form).done([](About& about, Form& filled, const Writing&, Kept& kept) {
        std::string letters;
        for (const char letter : about.currency)
            letters += letter >= 'a' && letter <= 'z' ? static_cast<char>(letter - 'a' + 'A') : letter;
        const bool three = letters.size() == 3 &&
                           std::ranges::all_of(letters, [](char letter) { return letter >= 'A' && letter <= 'Z'; });
        if (!three) {
            filled.field("currency").trouble = say("A currency is written with its three letters, like GBP or EUR.");
            return false;
        }
        about.currency = letters;
        if (about.year_begins && (*about.year_begins < 1 || *about.year_begins > 12)) {
            filled.field("year_begins").trouble = say("A month is a number from 1 to 12.");
            return false;
        }
        if (about.code.empty()) about.code = "shop";
        kept.title = reports::message("the shop itself");
        kept.consequence = [name = about.name](const Writing&) {
            return say("The shop is called {name}.", arg("name", name));
        };
        return true;
    });
}

Form person_form(const Writing& writing, std::optional<Key<Person>> corrected) {
    FactForm<Person> form{writing, "person", say("Somebody who works here"), corrected};
    form.add("name", say("&Name"), &Person::name);
    return std::move(form).done([](Person& person, Form&, const Writing& now, Kept& kept) {
        if (now.shop().find(person.key) == nullptr) person.code = free_code<Person>(now.shop(), code_from(person.name));
        kept.title = reports::message("person {name}");
        kept.args = {{"name", person.name}};
        kept.consequence = [name = person.name](const Writing&) {
            return say("{name} can be chosen wherever time is noted. Say what an hour is to bring, or leave it.",
                       arg("name", name));
        };
        return true;
    });
}

Form paid_out_form(const Writing& writing, std::optional<Key<PaidOut>> corrected) {
    FactForm<PaidOut> form{writing, "paid-out", say("A bill paid, for no delivery"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    form.add("what", say("&What for"), &PaidOut::what)
        .add("amount", say("How &much"), &PaidOut::amount)
        .add("date", say("&On"), &PaidOut::date)
        .add("dye_only", say("F&or"), &PaidOut::dye_only, {.choices = dye_only_choices()})
        .more("colour", say("One colo&ur"), &PaidOut::colour,
              {.entry = Entry::choice, .choices = colour_choices(writing.shop(), say("any"))})
        .more("avoidable", say("S&hare you could have avoided"), &PaidOut::avoidable,
              {.help = say("By not growing the dye at all; blank is all of it.")})
        .more("note", say("No&te"), &PaidOut::note);
    return std::move(form).done([](PaidOut& paid, Form&, const Writing&, Kept& kept) {
        kept.title = reports::message("paid for {what}");
        kept.args = {{"what", paid.what}};
        kept.consequence = [paid](const Writing&) {
            return paid.dye_only == DyeOnly::no
                       ? say("Noted as money out. Bars bear running costs through the yearly figure, so no bar is "
                             "dearer for it.")
                       : say("Noted; it goes to the dye work that is in hand on that day.");
        };
        return true;
    });
}

Form equipment_form(const Writing& writing, std::optional<Key<Equipment>> corrected) {
    FactForm<Equipment> form{writing, "equipment", say("A tool that wears out"), corrected};
    if (form.is_new()) {
        form.fact().bought = writing.day;
        form.fact().years = 0;
    }
    form.add("name", say("&What"), &Equipment::name)
        .add("price", say("&Price"), &Equipment::price)
        .add("bought", say("Bought &on"), &Equipment::bought)
        .add("years", say("Lasts &years"), &Equipment::years)
        .add("dye_only", say("F&or"), &Equipment::dye_only, {.choices = dye_only_choices()})
        .more("gone", say("Broken or &sold on"), &Equipment::gone);
    return std::move(form).done([](Equipment& equipment, Form& filled, const Writing&, Kept& kept) {
        if (equipment.years < 1) {
            filled.field("years").trouble = say("A tool lasts a year at least; write a whole number of years.");
            return false;
        }
        kept.title = reports::message("tool: {what}");
        kept.args = {{"what", equipment.name}};
        kept.consequence = [equipment](const Writing& after) {
            const double a_year = static_cast<double>(equipment.price.in_millionths()) / 1e6 / equipment.years;
            return say("{what} costs {money} a year while it lasts.", arg("what", equipment.name),
                       arg("money", reports::rough_money(a_year, reports::currency_of(after.shop()))));
        };
        return true;
    });
}

}  // namespace dyestead::gui
