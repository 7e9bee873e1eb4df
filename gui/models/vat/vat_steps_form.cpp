#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/vat/next_step.h"
#include "gui/models/vat/vat_form.h"
#include "reports/words/caution_words.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

Form vat_steps_form(const Writing& writing, Key<Vat> key) {
    const Shop& shop = writing.shop();
    const Vat* vat = shop.find(key);
    FactForm<Vat> form{writing, "vat-steps",
                       vat == nullptr ? say("Steps") : say("Steps of the {vat}", arg("vat", vat_name(shop, *vat))),
                       key};
    LineForm<VatStep> lines{.id = "steps", .name = say("Each step as it was done; - is not measured")};
    lines.add("what", say("what"), &VatStep::what)
        .add("begun", say("begun at"), &VatStep::begun,
             {.help = say("14:10, or 5 July 7:30 when it was another day than the one written for.")})
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
        kept.consequence = [key = done.key](const Writing& after) { return told_after_a_step(after.shop(), key); };
        return true;
    });
}

}  // namespace dyestead::gui
