#include "gui/models/cupboard/shelf_forms.h"

#include "domain/decisions/records.h"
#include "domain/decisions/starter_oils.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/new_things.h"
#include "reports/words/caution_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

std::vector<Choice> with_none(std::vector<Choice> choices, std::string none) {
    choices.insert(choices.begin(), Choice{"", std::move(none)});
    return choices;
}

std::vector<Choice> reasons() {
    return word_choices<LossReason>({say("spoiled"), say("spilled"), say("past its date"), say("other"),
                                     say("given away"), say("a sample"), say("used ourselves"),
                                     say("used for a test")});
}

std::string cost_of_loss(Key<Loss> loss, const Writing& after) {
    const Records records{after.shop(), after.books.ledger};
    Cost cost;
    for (const Movement& movement : after.books.ledger.movements)
        if (const Loss* found = records.from<Loss>(movement); found != nullptr && found->key == loss)
            cost += movement.cost;
    return say("Noted: {money} gone without your own hours, {full} with them.",
               arg("money", reports::rough_money(number(cost.cash()), reports::currency_of(after.shop()))),
               arg("full", reports::rough_money(number(cost.full()), reports::currency_of(after.shop()))));
}

// What is published of an oil of that name stands in the fields until something better does. Of the saponification
// value it is the lowest: the soap is then mild if the tub's own is higher.
void guess_of_an_oil(Form& form) {
    const bool oil = form.text("purpose") == word(Purpose::oil);
    const auto starter = oil ? starter_oil(form.text("name")) : std::nullopt;
    const auto guess = [&](std::string_view id, const std::string& text, const std::string& origin) {
        FormField& field = form.field(id);
        if (!field.text.empty() && field.origin.empty()) return;
        field.text = text;
        field.origin = text.empty() ? std::string{} : origin;
    };
    form.summary.clear();
    if (!starter) {
        guess("saponification", {}, {});
        guess("density", {}, {});
        return;
    }
    guess("saponification", fmt::to_string(starter->saponification_low),
          say("the lowest published, {low} to {high} ({source}); your supplier's own value wins",
              arg("low", starter->saponification_low), arg("high", starter->saponification_high),
              arg("source", std::string{starter->source})));
    if (!form.field("saponification").origin.empty())
        form.summary =
            say("Lye is worked out with {value} mg KOH per g, the lowest published for it ({low} to {high}); under "
                "\"More\" your supplier's own value wins.",
                arg("value", starter->saponification_low), arg("low", starter->saponification_low),
                arg("high", starter->saponification_high));
    const auto density = usual_density(*starter);
    guess("density", density ? field_text(*density) : std::string{},
          say("published, at {degrees} °C ({source})", arg("degrees", starter->degrees),
              arg("source", std::string{starter->source})));
}

}  // namespace

Form loss_form(const Writing& writing, std::optional<Key<Loss>> corrected, std::optional<Key<Material>> of) {
    const Shop& shop = writing.shop();
    FactForm<Loss> form{writing, "loss", say("Something lost or given away"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (of) form.fact().material = *of;
    }
    std::vector<Choice> lots{{"", say("by rule")}};
    if (form.fact().material.number != 0) lots = lot_choices(writing.books, form.fact().material);
    form.add("material", say("&What"), &Loss::material, {.choices = material_choices(shop, {})})
        .add("amount", say("How &much"), &Loss::amount, {.material = material_in_field("material")})
        .add("reason", say("Wh&y"), &Loss::reason, {.choices = reasons()})
        .add("date", say("&On"), &Loss::date)
        .more("lot", say("Fro&m"), &Loss::lot, {.entry = Entry::choice, .choices = lots})
        .more("note", say("No&te"), &Loss::note);
    form.look([](Form& filled, const Writing& now) {
        // The lots are those of what was chosen last.
        FormField& lot = filled.field("lot");
        const auto material = KeyCodes{}.key_of<Material>(filled.text("material"));
        lot.choices = material ? lot_choices(now.books, *material) : std::vector<Choice>{{"", say("by rule")}};
        if (std::ranges::find(lot.choices, lot.text, &Choice::code) == lot.choices.end()) lot.text.clear();
    });
    return std::move(form).done([](Loss& loss, Form&, const Writing& now, Kept& kept) {
        kept.title = reports::message("loss of {what}");
        kept.args = {{"what", reports::called(now.shop(), loss.material)}};
        kept.consequence = [key = loss.key](const Writing& after) { return cost_of_loss(key, after); };
        return true;
    });
}

Form material_form(const Writing& writing, std::optional<Key<Material>> corrected) {
    FactForm<Material> form{writing, "material", say("Something in the cupboard"), corrected};
    form.add("name", say("&Name"), &Material::name)
        .add("kind", say("&What it is"), &Material::kind,
             {.choices = word_choices<MaterialKind>({say("bought in"), say("seed"), say("leaf, root or herb"),
                                                     say("powder of our own"), say("bars of soap")})})
        .add("purpose", say("What &for"), &Material::purpose,
             {.entry = Entry::choice,
              .choices =
                  with_none(word_choices<Purpose>({say("oil or butter"), say("lye"), say("water"), say("alkali"),
                                                   say("mordant"), say("acid"), say("bought-in colour"), say("scent"),
                                                   say("wrapping"), say("feed for the garden"), say("something else")}),
                            say("not said"))})
        .add("held_as", say("Counted &by"), &Material::held_as,
             {.choices = word_choices<HeldAs>({say("weight"), say("volume"), say("number")})})
        .add("caution", say("&Caution"), &Material::caution,
             {.choices = word_choices<Caution>({say("none"), say("lye: burns"), say("dust: irritates"), say("hot"),
                                                say("may sensitise the skin"), say("may be invasive")})})
        .more("saponification", say("Saponification &value, mg KOH per g"), &Material::saponification,
              {.help = say("The supplier's own figure; mixing it up with mg NaOH burns skin.")})
        .more("density", say("&Density, g per ml"), &Material::density)
        .more("spoon_density", say("Density in a &spoon, g per ml"), &Material::spoon_density)
        .more("colour", say("C&olour"), &Material::colour,
              {.entry = Entry::choice, .choices = colour_choices(writing.shop(), say("none"))})
        .more("alkali", say("L&ye of"), &Material::alkali,
              {.entry = Entry::choice,
               .choices = with_none(word_choices<Alkali>({say("sodium"), say("potassium")}), say("not said: sodium"))})
        .more("purity", say("&Purity of the lye"), &Material::purity)
        .more("shelf_life_days", say("&Keeps, days"), &Material::shelf_life_days)
        .more("shelf_room", say("Room for at &most"), &Material::shelf_room);
    form.look([](Form& filled, const Writing&) { guess_of_an_oil(filled); });
    return std::move(form).done([](Material& material, Form&, const Writing& now, Kept& kept) {
        if (now.shop().find(material.key) == nullptr)
            material.code = free_code<Material>(now.shop(), code_from(material.name));
        kept.title = reports::message("what is known of {what}");
        kept.args = {{"what", material.name}};
        kept.consequence = [material](const Writing&) {
            const std::string caution = reports::caution_sentence(material.caution, material.name);
            return caution.empty() ? say("{what} is put down as you said.", arg("what", material.name)) : caution;
        };
        return true;
    });
}

Form own_measure_form(const Writing& writing, std::optional<Key<OwnMeasure>> corrected) {
    FactForm<OwnMeasure> form{writing, "own-measure", say("A measure of your own"), corrected};
    form.add("name", say("&Name"), &OwnMeasure::name, {.help = say("bucket, scoop, old cup")})
        .add("amount", say("How &much it holds"), &OwnMeasure::amount, {.material = material_in_field("material")})
        .add("material", say("&Of what"), &OwnMeasure::material,
             {.entry = Entry::choice, .choices = with_none(material_choices(writing.shop(), {}), say("of anything"))});
    return std::move(form).done([](OwnMeasure& measure, Form&, const Writing& now, Kept& kept) {
        if (now.shop().find(measure.key) == nullptr)
            measure.code = free_code<OwnMeasure>(now.shop(), code_from(measure.name));
        kept.title = reports::message("the measure {name}");
        kept.args = {{"name", measure.name}};
        kept.consequence = [name = measure.name](const Writing&) {
            return say("\"2 {name}\" is understood from now on, wherever an amount is asked for.", arg("name", name));
        };
        return true;
    });
}

}  // namespace dyestead::gui
