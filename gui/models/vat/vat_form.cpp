#include "gui/models/vat/vat_form.h"

#include <algorithm>

#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/used_lines.h"
#include "gui/models/vat/next_step.h"
#include "gui/models/vat/standing.h"
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

// Energy as the meter has it, or water through a rise of temperature.
LineForm<VatHeat> heat_lines() {
    const auto of_kind = [](Kind kind) {
        return [kind](const FieldHow::Texts&, const Writing& writing) {
            return Measuring{.kind = kind, .own = measures_for(writing.shop(), std::nullopt)};
        };
    };
    LineForm<VatHeat> lines{.id = "heat", .name = say("Heat: by the meter, or litres and temperatures")};
    lines
        .add("source", say("with"), &VatHeat::source,
             {.choices = word_choices<HeatSource>({say("electricity"), say("gas"), say("wood"), say("the sun")})})
        .add("energy", say("by the meter"), &VatHeat::energy,
             {.help = say("Like 1.2 kWh; leave it blank where you write litres and temperatures."),
              .measuring = of_kind(Kind::energy)})
        .add("water", say("water heated"), &VatHeat::water, {.measuring = of_kind(Kind::volume)})
        .add("heated_from", say("from °C"), &VatHeat::heated_from)
        .add("heated_to", say("to °C"), &VatHeat::heated_to)
        .add("efficiency", say("of it into the water"), &VatHeat::efficiency,
             {.help = say("How much of the heat reaches the water: a gas hob about 45 %, a ring about 85 %. Blank: all "
                          "of it.")});
    for (FormField& field : lines.fields)
        if (field.id == "source") field.text = std::string{word(HeatSource::electricity)};
    lines.finish = [](VatHeat& heat, const FieldHow::Texts&, const Writing&, Kept&) -> std::string {
        const bool by_water = heat.water && heat.heated_from && heat.heated_to;
        if (heat.energy || by_water) return {};
        return say(
            "Write what the meter says, like 1.2 kWh, or how much water was heated, from which temperature to "
            "which.");
    };
    return lines;
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
    form.lines(heat_lines());
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

}  // namespace dyestead::gui
