#include "gui/models/vat/colour_forms.h"

#include <algorithm>

#include "domain/decisions/starter_methods.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/new_things.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::called;
using reports::say;

namespace {

std::vector<Choice> with_none(std::vector<Choice> choices, std::string none) {
    choices.insert(choices.begin(), Choice{"", std::move(none)});
    return choices;
}

bool is_powder(const Material& material) {
    return material.kind == MaterialKind::pigment;
}

bool is_bought_colour(const Material& material) {
    return material.purpose == Purpose::colourant;
}

std::vector<Choice> powder_lots(const Books& books) {
    std::vector<Choice> choices;
    for (const Lot& lot : books.shop.all<Lot>()) {
        const Material* material = books.shop.find(lot.material);
        if (material != nullptr && is_powder(*material))
            choices.push_back({KeyCodes{}.code_of(lot.key),
                               say("{powder}, {lot}", arg("powder", material->name), arg("lot", lot.code))});
    }
    std::ranges::stable_sort(choices, [](const Choice& one, const Choice& other) { return one.shown > other.shown; });
    return choices;
}

constexpr std::string_view kOther = "other";
constexpr std::string_view kNotComparable = "no";

std::string needed_code(const std::optional<Ratio>& needed) {
    if (!needed) return std::string{kNotComparable};
    for (const int times : {1, 2, 3, 10})
        if (needed->top == times * needed->bottom) return fmt::to_string(times);
    return std::string{kOther};
}

}  // namespace

Form colour_form(const Writing& writing, std::optional<Key<Colour>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<Colour> form{writing, "colour", say("A colour"), corrected};
    form.add("name", say("&Name"), &Colour::name)
        .add("bought_match", say("&Bought in instead"), &Colour::bought_match,
             {.entry = Entry::choice,
              .choices = with_none(material_choices(shop, is_bought_colour), say("nothing yet"))})
        .more("match_strength", say("Strength of the bought &one"), &Colour::match_strength)
        .more("bought_minutes_per_bar", say("Ti&me a bar, bought in"), &Colour::bought_minutes_per_bar)
        .more("own_minutes_per_bar", say("&Time a bar, our own"), &Colour::own_minutes_per_bar)
        .more("own_cost_per_bar", say("&Money a bar, our own"), &Colour::own_cost_per_bar);
    return std::move(form).done([](Colour& colour, Form&, const Writing& now, Kept& kept) {
        if (now.shop().find(colour.key) == nullptr) colour.code = free_code<Colour>(now.shop(), code_from(colour.name));
        kept.title = reports::message("the colour {name}");
        kept.args = {{"name", colour.name}};
        kept.consequence = [name = colour.name](const Writing&) {
            return say(
                "{name} can be chosen at vats and recipes. It may not be allowed everywhere in soap: ask the "
                "assessor before you sow.",
                arg("name", name));
        };
        return true;
    });
}

Form shade_test_form(const Writing& writing, std::optional<Key<ShadeTest>> corrected, std::optional<Key<Lot>> of) {
    const Shop& shop = writing.shop();
    FactForm<ShadeTest> form{writing, "shade-test", say("Try the shade"), corrected};
    if (form.is_new()) {
        form.fact().date = writing.day;
        if (of) form.fact().lot = *of;
    }
    form.add("lot", say("&Powder"), &ShadeTest::lot, {.choices = powder_lots(writing.books)})
        .add("against", say("&Beside"), &ShadeTest::against,
             {.choices = material_choices(
                  shop, [](const Material& material) { return is_powder(material) || is_bought_colour(material); })});
    form.extra({.id = "needed",
                .label = say("For the same shade you &need"),
                .entry = Entry::choice,
                .text = form.is_new() ? std::string{} : needed_code(form.fact().needed_for_same),
                .choices = {{"1", say("as much of yours")},
                            {"2", say("twice as much")},
                            {"3", say("three times as much")},
                            {"10", say("ten times as much")},
                            {std::string{kOther}, say("as written below")},
                            {std::string{kNotComparable}, say("they cannot be compared")}}});
    form.add("times", say("&Times as much"), &ShadeTest::needed_for_same,
             {.help = say("1.5 when half as much again is needed; only with \"as written below\".")})
        .more("date", say("&On"), &ShadeTest::date)
        .more("note", say("N&ote"), &ShadeTest::note);
    return std::move(form).done([](ShadeTest& test, Form& filled, const Writing& now, Kept& kept) {
        const std::string& needed = filled.text("needed");
        if (needed.empty()) {
            filled.field("needed").trouble = say("How much of yours is needed is blank; choose what you see.");
            return false;
        }
        if (needed == kOther && !test.needed_for_same) {
            filled.field("times").trouble = say("Write how many times as much, like 1.5.");
            return false;
        }
        if (needed == kNotComparable)
            test.needed_for_same.reset();
        else if (needed != kOther)
            test.needed_for_same = Ratio{*read_typed_count(needed).value, 1};
        kept.title = reports::message("shade of {lot}");
        kept.args = {{"lot", called(now.shop(), test.lot)}};
        kept.consequence = [test](const Writing& after) {
            const auto powder = arg("lot", called(after.shop(), test.lot));
            const auto beside = arg("beside", called(after.shop(), test.against));
            if (!test.needed_for_same)
                return say(
                    "{lot} cannot be compared with {beside}; the verdict stands on its other tests.", powder, beside);
            const double times =
                static_cast<double>(test.needed_for_same->top) / static_cast<double>(test.needed_for_same->bottom);
            return say("{lot}: {times} g of it for the shade of 1 g of {beside}. Look once more after the cure.",
                       powder, beside, arg("times", reports::shown_number(times)));
        };
        return true;
    });
}

Form allowed_form(const Writing& writing, std::optional<Key<Allowed>> corrected) {
    FactForm<Allowed> form{writing, "allowed", say("May it be sold?"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    form.add("colour", say("&Colour"), &Allowed::colour, {.choices = colour_choices(writing.shop())})
        .add("where", say("W&here it is sold"), &Allowed::where)
        .add("asked", say("&Whom you asked"), &Allowed::asked)
        .add("answer", say("&Answer"), &Allowed::answer,
             {.choices = word_choices<Answer>({say("yes"), say("no"), say("waiting for it")})})
        .add("date", say("&On"), &Allowed::date);
    return std::move(form).done([](Allowed& allowed, Form&, const Writing& now, Kept& kept) {
        kept.title = reports::message("what was asked of {colour}");
        kept.args = {{"colour", called(now.shop(), allowed.colour)}};
        kept.consequence = [](const Writing&) {
            return say("Noted. The books keep the answer; the assessor and the law give it.");
        };
        return true;
    });
}

Form method_form(const Writing& writing, std::optional<Key<Method>> corrected) {
    const Shop& shop = writing.shop();
    const auto weight = [](const FieldHow::Texts&, const Writing&) { return Measuring{.kind = Kind::mass}; };
    FactForm<Method> form{writing, "method", say("How you work a vat"), corrected};
    form.add("name", say("&Name"), &Method::name)
        .add("colour", say("&Colour"), &Method::colour,
             {.entry = Entry::choice, .choices = colour_choices(shop, say("any"))})
        .add("low", say("From a kilo, a &bad vat"), &Method::low, {.measuring = weight})
        .add("usual", say("A &usual one"), &Method::usual, {.measuring = weight})
        .add("high", say("A &good one"), &Method::high, {.measuring = weight})
        .more("note", say("No&te"), &Method::note);
    LineForm<MethodStep> steps{.id = "steps", .name = say("Steps, with what you aim at")};
    steps.add("what", say("what"), &MethodStep::what)
        .add("temperature_low", say("from °C"), &MethodStep::temperature_low)
        .add("temperature_high", say("to °C"), &MethodStep::temperature_high)
        .add("acidity_low", say("from pH"), &MethodStep::acidity_low)
        .add("acidity_high", say("to pH"), &MethodStep::acidity_high)
        .add("hands_on", say("hands-on"), &MethodStep::hands_on)
        .add("hands_on_per_kg", say("and a kilo"), &MethodStep::hands_on_per_kg)
        .add("waiting", say("waiting"), &MethodStep::waiting)
        .add("waiting_high", say("at most"), &MethodStep::waiting_high)
        .add("watch", say("waiting is"), &MethodStep::watch,
             {.choices = word_choices<Watch>({say("free to go away"), say("beside it")})})
        .add("times", say("times"), &MethodStep::times)
        .add("caution", say("caution"), &MethodStep::caution,
             {.choices = word_choices<Caution>({say("none"), say("lye: burns"), say("dust: irritates"), say("hot"),
                                                say("may sensitise the skin"), say("may be invasive")})});
    for (FormField& field : steps.fields) {
        if (field.id == "watch") field.text = std::string{word(Watch::unattended)};
        if (field.id == "times") field.text = "1";
        if (field.id == "caution") field.text = std::string{word(Caution::none)};
    }
    LineForm<MethodUse> uses{.id = "uses", .name = say("What goes in")};
    uses.add("material", say("what"), &MethodUse::material, {.choices = material_choices(shop, {})})
        .add("amount", say("how much"), &MethodUse::amount, {.material = material_in_field("material")})
        .add("per", say("for"), &MethodUse::per,
             {.choices = word_choices<Per>({say("the vat"), say("a kilo of harvest"), say("a litre of water")})});
    for (FormField& field : uses.fields)
        if (field.id == "per") field.text = std::string{word(Per::vat)};
    form.lines(std::move(steps)).lines(std::move(uses));
    return std::move(form).done([](Method& method, Form&, const Writing& now, Kept& kept) {
        if (now.shop().find(method.key) == nullptr) method.code = free_code<Method>(now.shop(), code_from(method.name));
        kept.title = reports::message("the method {name}");
        kept.args = {{"name", method.name}};
        kept.consequence = [name = method.name](const Writing&) {
            return say(
                "{name} can be chosen for a vat; its bands are yours, and what lies outside is said, never refused.",
                arg("name", name));
        };
        return true;
    });
}

std::optional<Kept> take_starter_method(const Writing& writing) {
    Kept kept;
    const auto& materials = writing.shop().all<Material>();
    const auto alkali = std::ranges::find(materials, std::optional{Purpose::alkali}, &Material::purpose);
    const Key<Material> soda = alkali != materials.end() ? alkali->key
                                                         : add_material(say("Soda ash"), MaterialKind::raw,
                                                                        Purpose::alkali, Kind::mass, writing, kept);
    StarterMethod starter = hot_method_for_leaf(soda);
    starter.method.key = writing.new_key<Method>();
    starter.method.code = free_code<Method>(writing.shop(), code_from(starter.method.name));
    for (MethodStep& step : starter.steps) {
        step.key = writing.new_key<MethodStep>();
        step.head = starter.method.key;
        kept.change.put.all<MethodStep>().push_back(step);
    }
    for (MethodUse& use : starter.uses) {
        use.key = writing.new_key<MethodUse>();
        use.head = starter.method.key;
        kept.change.put.all<MethodUse>().push_back(use);
    }
    kept.change.put.all<Method>().push_back(starter.method);
    kept.title = reports::message("the method {name}");
    kept.args = {{"name", starter.method.name}};
    kept.consequence = [name = starter.method.name](const Writing&) {
        return say("{name} is yours from now on: change it as your vats teach you.", arg("name", name));
    };
    return kept;
}

}  // namespace dyestead::gui
