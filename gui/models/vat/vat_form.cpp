#include "gui/models/vat/vat_form.h"

#include <algorithm>

#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/used_lines.h"
#include "gui/models/vat/standing.h"
#include "reports/words/caution_words.h"
#include "reports/words/method_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

bool goes_into_a_vat(const Material& material) {
    if (material.kind == MaterialKind::harvest || material.kind == MaterialKind::pigment) return true;
    if (material.kind != MaterialKind::raw || !material.purpose) return false;
    switch (*material.purpose) {
        case Purpose::water:
        case Purpose::alkali:
        case Purpose::mordant:
        case Purpose::acid:
        case Purpose::other: return true;
        case Purpose::oil:
        case Purpose::lye:
        case Purpose::colourant:
        case Purpose::scent:
        case Purpose::wrapping:
        case Purpose::feed: return false;
    }
    return false;
}

std::vector<Choice> method_choices(const Shop& shop) {
    return choices_of_kind<Method>(
        shop, {}, [](const Method& method) { return method.name; }, say("none"));
}

const Vat* last_vat(const Shop& shop, Day day) {
    const Vat* last = nullptr;
    for (const Vat& vat : shop.all<Vat>())
        if (vat.date <= day && (last == nullptr || vat.date >= last->date)) last = &vat;
    return last;
}

// The first step of the method that no step of the vat names; none when all are done, or without a method.
const MethodStep* next_step(const Shop& shop, const Vat& vat) {
    if (!vat.method) return nullptr;
    const MethodStep* next = nullptr;
    for (const MethodStep& step : shop.all<MethodStep>()) {
        if (step.head != *vat.method || (next != nullptr && next->position < step.position)) continue;
        bool done = false;
        for (const VatStep& each : shop.all<VatStep>())
            done = done || (each.head == vat.key && each.method_step == step.position);
        if (!done) next = &step;
    }
    return next;
}

// "Your method says: at 48 to 52 °C, pH 8.5 to 9.5, 15 min hands-on, 8 h waiting."
std::string target_of(const MethodStep& step) {
    const std::string target = reports::step_targets(step);
    return target.empty() ? target : say("Your method says: {target}.", arg("target", target));
}

std::string vat_name(const Shop& shop, const Vat& vat) {
    return say("vat of {day}, {colour}", arg("day", reports::shown_date(vat.date)),
               arg("colour", reports::colour_in_a_sentence(shop, vat.colour)));
}

}  // namespace

Form vat_form(const Writing& writing, std::optional<Key<Vat>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<Vat> form{writing, "vat", say("A vat"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    form.add("date", say("Begun &on"), &Vat::date)
        .add("colour", say("&Colour"), &Vat::colour, {.choices = colour_choices(shop)})
        .add("hands_on", say("&Hands-on, in all"), &Vat::hands_on,
             {.help = say("When the steps are not noted one by one; shared over them by the method. ~90 min will do.")})
        .add("washes", say("&Washes"), &Vat::washes, {.help = say("How often clear water was put on.")})
        .add("note", say("No&te"), &Vat::note)
        .more(
            "method", say("By which &method"), &Vat::method, {.entry = Entry::choice, .choices = method_choices(shop)})
        .more("waiting", say("Waited beside &it"), &Vat::waiting, {.help = say("When you could not go away.")})
        .more("who", say("Wh&o"), &Vat::who, {.entry = Entry::choice, .choices = people_choices(shop)});
    if (const Vat* last = last_vat(shop, writing.day); last != nullptr && form.is_new()) {
        form.guess("colour", KeyCodes{}.code_of(last->colour), say("from your last"));
        if (last->method) form.guess("method", KeyCodes{}.code_of(*last->method), say("from your last"));
    }
    form.lines(used_lines<VatUse>(
        writing, say("What went in: leaf, water (count the empties), alkali"), goes_into_a_vat, corrected));
    return std::move(form).done([](Vat& vat, Form&, const Writing& now, Kept& kept) {
        kept.title = reports::message("{vat}");
        kept.args = {{"vat", vat_name(now.shop(), vat)}};
        kept.consequence = [key = vat.key](const Writing& after) {
            const Vat* found = after.shop().find(key);
            if (found == nullptr) return std::string{};
            const double kg = harvest_kg(after.shop(), *found);
            if (kg == 0)
                return say(
                    "The vat stands. No leaf is noted in it, so what it gives cannot be told by the kilo; correct it "
                    "when you know.");
            return say("The vat stands, with {kg} of harvest in it. Note its steps as they are done, or dry and weigh.",
                       arg("kg", reports::shown_kilograms(kg)));
        };
        return true;
    });
}

Form vat_steps_form(const Writing& writing, Key<Vat> key) {
    const Shop& shop = writing.shop();
    const Vat* vat = shop.find(key);
    FactForm<Vat> form{writing, "vat-steps",
                       vat == nullptr ? say("Steps") : say("Steps of the {vat}", arg("vat", vat_name(shop, *vat))),
                       key};
    LineForm<VatStep> lines{.id = "steps", .name = say("Each step as it was done; - is not measured")};
    lines.add("what", say("what"), &VatStep::what)
        .add("hands_on", say("hands-on"), &VatStep::hands_on)
        .add("waiting", say("waiting"), &VatStep::waiting)
        .add("temperature", say("°C"), &VatStep::temperature)
        .add("acidity", say("pH"), &VatStep::acidity)
        .add("watch", say("waiting was"), &VatStep::watch,
             {.choices = word_choices<Watch>({say("free to go away"), say("beside it")})})
        .add("who", say("who"), &VatStep::who, {.entry = Entry::choice, .choices = people_choices(shop)})
        .add("method_step", say("step of the method"), &VatStep::method_step);
    const MethodStep* next = vat == nullptr ? nullptr : next_step(shop, *vat);
    if (next != nullptr) {
        for (FormField& field : lines.fields) {
            if (field.id == "what") field.text = next->what;
            if (field.id == "method_step") field.text = fmt::to_string(next->position);
            if (field.id == "watch") field.text = std::string{word(next->watch)};
        }
    } else {
        for (FormField& field : lines.fields)
            if (field.id == "watch") field.text = std::string{word(Watch::unattended)};
    }
    form.lines(std::move(lines));
    if (next != nullptr) {
        form.form().summary = say("Next: {step}. {target}", arg("step", next->what), arg("target", target_of(*next)));
        const std::string caution = reports::caution_sentence(next->caution, next->what);
        if (!caution.empty()) form.form().cautions.push_back(caution);
    }
    return std::move(form).done([](Vat& done, Form&, const Writing& now, Kept& kept) {
        kept.title = reports::message("steps of the {vat}");
        kept.args = {{"vat", vat_name(now.shop(), done)}};
        kept.consequence = [key = done.key](const Writing& after) {
            const Vat* found = after.shop().find(key);
            if (found == nullptr) return std::string{};
            // What lies outside the method's band is said once, never refused.
            const auto outside = readings_outside(after.shop(), *found);
            int last = 0;
            for (const VatStep& step : after.shop().all<VatStep>())
                if (step.head == key) last = std::max(last, step.position);
            for (const OutsideBand& each : outside)
                if (each.step == last) return reports::outside_sentence(after.shop(), each);
            const MethodStep* then = next_step(after.shop(), *found);
            if (then == nullptr) return say("Noted. No step of the method is left: dry and weigh when it is ready.");
            return say("Noted. Next: {step}. {target}", arg("step", then->what), arg("target", target_of(*then)));
        };
        return true;
    });
}

}  // namespace dyestead::gui
