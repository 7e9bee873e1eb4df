// use_lines.h - lines of what goes into a batch or a wrapping: filled from the recipe, lots by rule, changed at will.
#pragma once

#include <memory>

#include "domain/decisions/can_make.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "reports/words/say.h"

namespace dyestead::gui {

// Lots with something left of what a bar is made from or wrapped in: "olive oil, can of 3 May, 1.2 kg left".
std::vector<Choice> bench_lot_choices(const Books& books);
std::vector<Choice> bench_material_choices(const Shop& shop);
// Which lots a material would be taken from by rule, "600 g of can of 3 May"; what is short is said too.
std::string taken_from(const Books& books, const Ingredient& ingredient);

// The texts of the lines for a need.
std::vector<std::vector<std::string>> rows_for(const Shop& shop, const std::vector<Need>& needs);

// Lines that a form fills while nobody has touched them: filled again when what they are for changes.
class FilledLines {
public:
    // `what_for`: by which it is told that they must be filled again.
    template <class Fill>
    void fill(FormLines& lines, const std::string& what_for, Fill rows) {
        if (what_for == what_for_ || (!lines.rows.empty() && lines.rows != filled_)) return;
        what_for_ = what_for;
        lines.rows = rows();
        filled_ = lines.rows;
    }

private:
    std::string what_for_;
    std::vector<std::vector<std::string>> filled_;
};

template <class Of>
LineForm<UseIn<Of>> use_lines(const Writing& writing, const std::string& name) {
    LineForm<UseIn<Of>> lines{.id = "uses", .name = name};
    const auto measured = [](const FieldHow::Texts& texts, const Writing& in) {
        const Material* material = material_in_field("material")(texts, in);
        Measuring measuring;
        if (material == nullptr) return measuring;
        measuring.kind = kind_of(material->held_as);
        measuring.own = measures_for(in.shop(), material->key);
        return measuring;
    };
    lines.add(
        "material", reports::say("&What"), &UseIn<Of>::material, {.choices = bench_material_choices(writing.shop())});
    lines.add("amount", reports::say("How m&uch"), &UseIn<Of>::amount,
              {.help = reports::say("A weight like 750 g, or a number of what is counted."),
               .material = material_in_field("material"),
               .measuring = measured});
    lines.add("lot", reports::say("Fro&m lot"), &UseIn<Of>::lot,
              {.choices = bench_lot_choices(writing.books),
               .help = reports::say("By rule: the open one first, then what expires first, then the oldest.")});
    lines.finish = [](UseIn<Of>& use, const FieldHow::Texts&, const Writing& in, Kept&) -> std::string {
        const Lot* lot = use.lot ? in.shop().find(*use.lot) : nullptr;
        if (lot == nullptr || lot->material == use.material) return {};
        return reports::say("The lot {lot} holds {material}; choose one of what stands in the line, or by rule.",
                            reports::arg("lot", lot->code),
                            reports::arg("material", reports::called(in.shop(), lot->material)));
    };
    return lines;
}

}  // namespace dyestead::gui
