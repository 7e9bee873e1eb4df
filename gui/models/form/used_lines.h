// used_lines.h - what was used up in a bed, a vat, a batch or a wrapping, line by line: which material, how much of
// it (also "half" of what is there, or by the maker's own measures), and from which lot where that matters.
#pragma once

#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/named.h"

namespace dyestead::gui {

// What is there of a material, or of one lot of it where that is named; nothing where the material is not known.
std::optional<Amount> amount_there(const Books& books, const Material* material, std::optional<Key<Lot>> lot);

// Lots with something left of the wanted materials, "by rule" first: "alum, can-of-may, 1.2 kg left". `also`: these,
// whatever is left of them.
std::vector<Choice> lots_of(const Books& books, const std::function<bool(const Material&)>& wanted,
                            const std::vector<Key<Lot>>& also = {});

// What an amount may be told by in a line or form with the fields "material" and "lot".
Measuring measuring_of_material(const FieldHow::Texts& texts, const Writing& writing);

template <class Use>
LineForm<Use> used_lines(const Writing& writing, const std::string& name,
                         const std::function<bool(const Material&)>& wanted,
                         std::optional<Key<typename Use::Head>> corrected = std::nullopt) {
    using reports::say;
    std::vector<Key<Lot>> named;
    for (const Use& use : writing.shop().template all<Use>())
        if (use.lot && use.head == corrected) named.push_back(*use.lot);
    LineForm<Use> lines{.id = "used", .name = name};
    lines.add("material", say("What was used"), &Use::material, {.choices = material_choices(writing.shop(), wanted)})
        .add("amount", say("Amount"), &Use::amount,
             {.help = say("A weight, a volume or a number; \"half\" is half of what is there."),
              .material = material_in_field("material"),
              .measuring = measuring_of_material})
        .add("lot", say("From"), &Use::lot, {.choices = lots_of(writing.books, wanted, named)});
    lines.finish = [](Use& use, const FieldHow::Texts&, const Writing& in, Kept&) -> std::string {
        const Lot* lot = use.lot ? in.shop().find(*use.lot) : nullptr;
        if (lot == nullptr || lot->material == use.material) return {};
        return say("That lot is of another material; choose one of {material}, or leave it to the rule.",
                   reports::arg("material", reports::called(in.shop(), use.material)));
    };
    lines.note = [](const Use& use, const FieldHow::Texts&, const Writing& in) -> std::string {
        return said_back(use.amount, {.material = in.shop().find(use.material)});
    };
    return lines;
}

}  // namespace dyestead::gui
