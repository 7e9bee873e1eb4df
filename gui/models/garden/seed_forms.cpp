#include "gui/models/garden/seed_forms.h"

#include "domain/decisions/records.h"
#include "gui/models/form/named.h"
#include "gui/models/form/used_lines.h"
#include "gui/models/garden/garden_choices.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

bool fill_in_seed(Material& material, Form& form, const Writing& writing, Kept& /*kept*/) {
    material.kind = MaterialKind::seed;
    const auto amount = read_typed_field<Amount>(form.text("amount"), {.writing_for = writing.day});
    material.held_as = amount && (*amount).quantity.kind() == Kind::count ? HeldAs::count : HeldAs::mass;
    return true;
}

bool read_seed(SeedKept& kept_seed, Form& form, const Writing& writing, Kept* kept) {
    const auto key = read_name<Material>("seed", form, writing, kept, fill_in_seed);
    if (!key) return false;
    if (kept == nullptr) return true;
    const Material* material = in_change_or_shop(*kept, writing.shop(), *key);
    if (!is_seed(*material)) {
        form.field("seed").trouble =
            say("{seed} is no seed; give the seed a name of its own.", arg("seed", material->name));
        return false;
    }
    const Lot* lot = writing.shop().find(kept_seed.lot);
    if (lot == nullptr) {
        kept_seed.lot = new_lot(*material, kept_seed.date, writing, *kept);
    } else if (lot->material != *key) {
        Lot changed = *lot;
        changed.material = *key;
        kept->change.put.all<Lot>().push_back(changed);
    }
    return true;
}

std::string seed_name(const Shop& shop, Key<Planting> key) {
    const Planting* planting = shop.find(key);
    return planting == nullptr ? std::string{}
                               : say("{plant} seed", arg("plant", reports::called(shop, planting->plant)));
}

// The seed follows the planting while nobody typed over it.
void guess_seed(Form& form, const Writing& writing) {
    FormField& seed = form.field("seed");
    if (form.fact || (seed.origin.empty() && !seed.text.empty())) return;
    const auto planting = KeyCodes{}.key_of<Planting>(form.text("planting"));
    if (!planting) return;
    const std::string name = seed_name(writing.shop(), *planting);
    const Material* there = named_fact<Material>(writing.shop(), name);
    seed.text = there != nullptr ? KeyCodes{}.code_of(there->key) : name;
    seed.origin = say("from the plant");
}

std::string after_keeping_seed(const Writing& after, Key<SeedKept> key) {
    const SeedKept* seed = after.shop().find(key);
    const Lot* lot = seed != nullptr ? after.shop().find(seed->lot) : nullptr;
    const Material* material = lot != nullptr ? after.shop().find(lot->material) : nullptr;
    if (material == nullptr) return {};
    const auto amount = arg("amount", said_back(seed->amount, {.material = material}));
    Cost taken;
    for (const Movement& movement : after.books.ledger.movements) {
        const bool from_bed = after.books.ledger.accounts.kind(movement.from) == AccountKind::planting;
        if (from_bed && after.books.ledger.sources[movement.source].fact == ref(*seed)) taken += movement.cost;
    }
    if (taken.is_zero())
        return say(
            "{amount} kept. No price of it is on record, so it takes nothing off what the harvest costs.", amount);
    return say("{amount} kept, worth {money}: so much less is carried by the harvest.", amount,
               arg("money", reports::shown_money(taken.full(), reports::currency_of(after.shop()))));
}

}  // namespace

Form seed_kept_form(const Writing& writing, std::optional<Key<Planting>> selected,
                    std::optional<Key<SeedKept>> corrected) {
    FactForm<SeedKept> form{writing, "seed_kept", say("Seed kept"), corrected};
    const Shop& shop = writing.shop();
    if (form.is_new()) form.fact().date = writing.day;
    FormField seed{.id = "seed",
                   .label = say("What &seed"),
                   .entry = Entry::name,
                   .help = say("Choose it, or type a name; it then stands among the seed in the Cupboard."),
                   .choices = material_choices(shop, is_seed)};
    if (const Lot* lot = shop.find(form.fact().lot)) seed.text = KeyCodes{}.code_of(lot->material);
    form.add("date", say("&On"), &SeedKept::date)
        .add("planting", say("From which &planting"), &SeedKept::planting,
             {.choices = plantings_to_choose(writing, planting_of(shop, corrected))});
    form.extra(std::move(seed));
    form.add("amount", say("How &much"), &SeedKept::amount,
             {.help = say("By weight, or by number where it is counted."), .material = material_in_field("seed")})
        .more("time", say("&Time it took"), &SeedKept::time)
        .more("who", say("&Who"), &SeedKept::who, {.choices = people_choices(shop)});
    if (form.is_new()) guess_planting(form, writing, selected);
    form.also_read([](SeedKept& fact, Form& filled, const Writing& in, Kept* kept) {
        guess_seed(filled, in);
        return read_seed(fact, filled, in, kept);
    });
    return std::move(form).done([](SeedKept& fact, Form&, const Writing& in, Kept& kept) {
        kept.title = reports::message("{amount} of seed kept from {planting}");
        kept.args = {{"amount", reports::shown_quantity(fact.amount.quantity)},
                     {"planting", planting_in_short(in.shop(), fact.planting)}};
        kept.consequence = [key = fact.key](const Writing& after) { return after_keeping_seed(after, key); };
        return true;
    });
}

namespace {

std::string after_trying(const Writing& after, Key<GerminationTry> key) {
    const GerminationTry* tried = after.shop().find(key);
    if (tried == nullptr) return {};
    const auto came_up = arg("came_up", tried->came_up);
    const auto of = arg("tried", tried->tried);
    if (tried->came_up == 0) return say("None of {tried} came up: do not count on this seed.", of);
    if (tried->came_up == tried->tried) return say("All {tried} came up: sow as thick as usual.", of);
    const double more = static_cast<double>(tried->tried) / tried->came_up;
    return say("{came_up} of {tried} came up: sow about {times} times as much for the same stand.", came_up, of,
               arg("times", reports::shown_fixed(more, 1)));
}

}  // namespace

Form germination_form(const Writing& writing, std::optional<Key<GerminationTry>> corrected) {
    FactForm<GerminationTry> form{writing, "germination_try", say("A germination try"), corrected};
    if (form.is_new()) form.fact().date = writing.day;
    std::vector<Key<Lot>> also;
    if (!form.is_new()) also.push_back(form.fact().lot);
    std::vector<Choice> lots = lots_of(writing.books, is_seed, also);
    lots.erase(lots.begin());  // "by rule": a try is of one lot
    form.add("lot", say("Which &seed"), &GerminationTry::lot, {.choices = lots})
        .add("tried", say("How many &laid out"), &GerminationTry::tried, {.help = say("Ten on wet paper are enough.")})
        .add("came_up", say("How many &came up"), &GerminationTry::came_up)
        .add("date", say("Counted &on"), &GerminationTry::date);
    if (lots.size() == 1) form.guess("lot", lots.front().code, say("the only seed there is"));
    return std::move(form).done([](GerminationTry& fact, Form& filled, const Writing& in, Kept& kept) {
        if (fact.tried == 0) {
            filled.field("tried").trouble = say("At least one seed must have been laid out.");
            return false;
        }
        if (fact.came_up > fact.tried) {
            filled.field("came_up").trouble =
                say("No more can come up than the {tried} laid out.", arg("tried", fact.tried));
            return false;
        }
        const Lot* lot = in.shop().find(fact.lot);
        kept.title = reports::message("{came_up} of {tried} seeds of {seed} came up");
        kept.args = {{"came_up", fmt::to_string(fact.came_up)},
                     {"tried", fmt::to_string(fact.tried)},
                     {"seed", reports::called(in.shop(), lot->material)}};
        kept.consequence = [key = fact.key](const Writing& after) { return after_trying(after, key); };
        return true;
    });
}

}  // namespace dyestead::gui
