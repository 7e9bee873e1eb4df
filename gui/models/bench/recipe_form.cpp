#include "gui/models/bench/recipe_form.h"

#include "domain/ledger/lye.h"
#include "gui/models/bench/bars.h"
#include "gui/models/bench/use_lines.h"
#include "gui/models/form/new_things.h"
#include "reports/words/caution_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

const std::vector<Choice>& colourings() {
    static const std::vector<Choice> kShown = word_choices<Colouring>({say("plain"), say("bought in"), say("our own")});
    return kShown;
}

// A key, or nothing for a new name, which the head makes a material of once all is read.
template <class LineFact>
std::function<std::string(LineFact&, const FieldHow::Texts&, const Writing&, Kept&)> named(
    std::string id, Key<Material> LineFact::*member) {
    return
        [id = std::move(id), member](LineFact& line, const FieldHow::Texts& texts, const Writing& writing, Kept& kept) {
            const std::string& text = texts(id);
            const Material* there = material_typed(text, writing, kept);
            line.*member = there == nullptr ? Key<Material>{} : there->key;
            return trimmed(text).empty() ? field_trouble(TroubleId::blank, text) : std::string{};
        };
}

// "600 g", or a share of the recipe's oils: "40 %".
std::string read_how_much(RecipePart& part, const std::string& text, const Writing& writing) {
    part.amount.reset();
    part.share.reset();
    if (trimmed(text).empty()) return field_trouble(TroubleId::blank, text);
    const Material* of = writing.shop().find(part.material);
    const bool counted = of != nullptr && of->held_as == HeldAs::count;
    const bool unit =
        std::ranges::any_of(text, [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); });
    if (!unit && !counted) {
        const auto share = read_typed_ratio(text);
        if (!share) return field_trouble(*share.trouble, text);
        part.share = *share;
        return {};
    }
    const auto amount = read_typed_amount(text, {});
    if (!amount) return field_trouble(*amount.trouble, text);
    part.amount = *amount;
    const Reading reading{.measuring = {.kind = Kind::mass}, .material = of};
    return amount_trouble(*amount, reading).value_or(std::string{});
}

LineForm<RecipePart> part_lines(const Shop& shop) {
    LineForm<RecipePart> lines{.id = "parts", .name = say("Oils, scent and what else goes into one loaf")};
    lines.extra({.id = "material",
                 .label = say("Wh&at"),
                 .entry = Entry::name,
                 .help = say("A new name is put down as an oil."),
                 .choices = bench_material_choices(shop)});
    lines.extra({.id = "how_much",
                 .label = say("H&ow much"),
                 .help = say("For one loaf: 600 g; or its share of the oils: 40 %.")});
    lines.show_extra = [](const RecipePart& part) {
        return std::vector<std::pair<std::string, std::string>>{
            {"material", KeyCodes{}.code_of(part.material)},
            {"how_much", part.amount ? field_text(part.amount) : field_text(part.share)}};
    };
    lines.finish = [name = named<RecipePart>("material", &RecipePart::material)](
                       RecipePart& part, const FieldHow::Texts& texts, const Writing& writing, Kept& kept) {
        std::string trouble = name(part, texts, writing, kept);
        return trouble.empty() ? read_how_much(part, texts("how_much"), writing) : trouble;
    };
    lines.note = [](const RecipePart& part, const FieldHow::Texts&, const Writing& writing) -> std::string {
        const Material* material = writing.shop().find(part.material);
        if (material == nullptr) return say("new");
        if (material->purpose == Purpose::oil && !material->saponification)
            return say("no saponification value on record");
        return {};
    };
    return lines;
}

LineForm<RecipeWrapping> wrapping_lines(const Shop& shop) {
    LineForm<RecipeWrapping> lines{.id = "wrapping", .name = say("Wrapping of one bar")};
    lines.add("material", say("Wh&at"), &RecipeWrapping::material, {.choices = bench_material_choices(shop)});
    lines.add("per_bar", say("&For a bar"), &RecipeWrapping::per_bar, {.material = material_in_field("material")});
    return lines;
}

LineForm<RecipeColouring> colouring_lines(const Shop& shop) {
    LineForm<RecipeColouring> lines{.id = "colourings", .name = say("The bars it makes")};
    lines.add("colouring", say("&Coloured"), &RecipeColouring::colouring, {.choices = colourings()});
    lines.add("colour", say("C&olour"), &RecipeColouring::colour, {.choices = colour_choices(shop, say("none"))});
    lines.add("dose", say("Dos&e for a loaf"), &RecipeColouring::dose,
              {.help = say("In grams of the bought-in match; of weaker powder more is weighed out."),
               .measuring = [](const FieldHow::Texts&, const Writing&) { return Measuring{.kind = Kind::mass}; }});
    lines.extra({.id = "bar",
                 .label = say("Ba&r"),
                 .entry = Entry::name,
                 .help = say("What the bar is called; a new name makes a new kind of bar."),
                 .choices = bar_choices(shop)});
    lines.show_extra = [](const RecipeColouring& line) {
        return std::vector<std::pair<std::string, std::string>>{{"bar", KeyCodes{}.code_of(line.bar)}};
    };
    lines.finish = [name = named<RecipeColouring>("bar", &RecipeColouring::bar)](
                       RecipeColouring& line, const FieldHow::Texts& texts, const Writing& writing, Kept& kept) {
        if (line.colouring != Colouring::plain && !line.colour)
            return say("Choose which colour it is, or say that the bar is plain.");
        if (line.colouring == Colouring::plain) {
            line.colour.reset();
            line.dose.reset();
        }
        return name(line, texts, writing, kept);
    };
    return lines;
}

// A new name becomes a material, once.
Key<Material> named_here(const std::string& text, MaterialKind kind, const Writing& writing, Kept& kept) {
    if (const Material* there = material_typed(text, writing, kept)) return there->key;
    const bool bar = kind == MaterialKind::bar;
    return add_material(
        text, kind, bar ? std::nullopt : std::optional{Purpose::oil}, bar ? Kind::count : Kind::mass, writing, kept);
}

// The shop with the recipe as it is being written.
Shop with_recipe(const Shop& shop, const Recipe& recipe, const std::vector<RecipePart>& parts) {
    Shop bench;
    bench.all<Material>() = shop.all<Material>();
    bench.all<Batch>() = shop.all<Batch>();
    bench.all<BatchUse>() = shop.all<BatchUse>();
    bench.all<Recipe>() = {recipe};
    for (RecipePart part : parts) {
        part.head = recipe.key;
        bench.all<RecipePart>().push_back(part);
    }
    return bench;
}

bool check(const Recipe& recipe, Form& shown, const std::vector<RecipePart>& parts) {
    const auto wrong = [&](std::string_view id, std::string why) {
        shown.field(id).trouble = std::move(why);
        return false;
    };
    if (recipe.bars_per_loaf <= 0) return wrong("bars", say("A loaf gives one bar at least; write how many."));
    if (recipe.superfat >= Ratio{1, 1})
        return wrong("superfat", say("All the oil cannot be left over; write a share like 5 %."));
    if (recipe.lye_concentration.is_zero() || recipe.lye_concentration > Ratio{1, 1})
        return wrong("concentration", say("Lye is a share of lye and water together; write one like 33 %."));
    const bool shares = std::ranges::any_of(parts, [](const RecipePart& part) { return part.share.has_value(); });
    if (shares && !recipe.oils)
        return wrong("oils", say("Shares are of the oils of one loaf; write how much oil a loaf takes, like 1 kg."));
    return true;
}

// A recipe with no colouring makes plain bars of its own name.
void add_plain(const Recipe& recipe, const Writing& writing, Kept& kept) {
    RecipeColouring line;
    line.key = writing.new_key<RecipeColouring>();
    line.head = recipe.key;
    line.position = 1;
    line.bar = named_here(recipe.name, MaterialKind::bar, writing, kept);
    kept.change.put.all<RecipeColouring>().push_back(line);
}

}  // namespace

std::string lye_worked_out(const Shop& shop, const Recipe& recipe) {
    const LyeNeed need = lye_need(shop, recipe);
    if (!need.without_saponification.empty())
        return say(
            "{oil}: no saponification value is on record; put it down in the Cupboard, from the supplier's "
            "sheet.",
            arg("oil", reports::called(shop, need.without_saponification.front())));
    if (!need.without_mass.empty())
        return say("{oil}: its weight is not known; write it as a weight.",
                   arg("oil", reports::called(shop, need.without_mass.front())));
    if (!need.lye || !need.water || need.oils.is_zero()) return {};
    const auto oils = arg("oils", reports::shown_quantity(need.oils));
    const auto water = arg("water", reports::shown_quantity(*need.water));
    if (need.potassium.weighed.is_zero())
        return say(
            "One loaf: {oils} of oils take {lye} of sodium hydroxide and {water} of water; check it against the "
            "supplier's own value.",
            oils, arg("lye", reports::shown_quantity(*need.lye)), water);
    return say(
        "One loaf: {oils} of oils take {sodium} of sodium hydroxide, {potassium} of potassium hydroxide and "
        "{water} of water; check it against the supplier's own value.",
        oils, arg("sodium", reports::shown_quantity(need.sodium.weighed)),
        arg("potassium", reports::shown_quantity(need.potassium.weighed)), water);
}

Form recipe_form(const Writing& writing, std::optional<Key<Recipe>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<Recipe> form{writing, "recipe", say("A recipe"), corrected};
    if (form.is_new()) {
        form.fact().superfat = {5, 100};
        form.fact().lye_concentration = {33, 100};
        form.fact().cure_days = 28;
    }
    const auto weighed = [](const FieldHow::Texts&, const Writing&) { return Measuring{.kind = Kind::mass}; };
    form.add("name", say("&Name"), &Recipe::name)
        .add("bars", say("&Bars of one loaf"), &Recipe::bars_per_loaf)
        .add("weight", say("Weight on the &label"), &Recipe::declared_weight,
             {.help = say("Of one bar as it is sold, like 100 g."), .measuring = weighed})
        .add("superfat", say("&Superfat"), &Recipe::superfat,
             {.help = say("The share of the oils that is left as oil.")})
        .add("cure", say("Days of c&ure"), &Recipe::cure_days)
        .more("concentration", say("Lye of lye and &water"), &Recipe::lye_concentration,
              {.help = say("By weight: 33 % is one part of lye in two of water.")})
        .more("oils", say("O&ils of one loaf"), &Recipe::oils,
              {.help = say("Needed where oils are written as shares."), .measuring = weighed})
        .more("potassium", say("Share of po&tassium"), &Recipe::potassium_share,
              {.help = say("Of the lye, for soft soap; blank for none.")})
        .more("best_days", say("Best for so many &days"), &Recipe::best_days, {.help = say("From the cut.")});
    if (form.is_new())
        for (const char* id : {"superfat", "cure", "concentration"}) form.form().field(id).origin = say("usual");
    form.lines(part_lines(shop)).lines(wrapping_lines(shop)).lines(colouring_lines(shop));
    form.form().cautions = {
        reports::lye_caution(), say("Scent: no more than the supplier's limit for skin allows. Fragrance and colour in "
                                    "soap may need an assessor's word where you sell.")};
    form.look_at([](const Recipe& recipe, const Change& lines, Form& shown, const Writing& now) {
        Recipe written = recipe;
        written.key.number = 1;
        const auto& parts = lines.put.all<RecipePart>();
        shown.summary = lye_worked_out(with_recipe(now.shop(), written, parts), written);
    });
    return std::move(form).done([](Recipe& recipe, Form& shown, const Writing& now, Kept& kept) {
        auto& parts = kept.change.put.all<RecipePart>();
        auto& bars = kept.change.put.all<RecipeColouring>();
        if (!check(recipe, shown, parts)) return false;
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (parts[i].material.number == 0)
                parts[i].material = named_here(shown.lines_of("parts").rows[i][0], MaterialKind::raw, now, kept);
        for (std::size_t i = 0; i < bars.size(); ++i)
            if (bars[i].bar.number == 0)
                bars[i].bar = named_here(shown.lines_of("colourings").rows[i][3], MaterialKind::bar, now, kept);
        if (bars.empty()) add_plain(recipe, now, kept);
        recipe.code = shown.fact ? recipe.code : free_code<Recipe>(now.shop(), code_from(recipe.name));
        kept.title = reports::message("recipe {name}");
        kept.args = {{"name", recipe.name}};
        kept.consequence = [key = recipe.key](const Writing& after) {
            const Recipe* now_there = after.shop().find(key);
            const std::string lye = now_there == nullptr ? std::string{} : lye_worked_out(after.shop(), *now_there);
            return lye.empty() ? say("Written down; add its oils for the lye to be worked out.") : lye;
        };
        return true;
    });
}

}  // namespace dyestead::gui
