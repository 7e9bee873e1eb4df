#include "domain/decisions/records.h"
#include "gui/models/cupboard/shelf_forms.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

std::int64_t in_hand(const Books& books, Key<Material> material) {
    const Records records{books.shop, books.ledger};
    std::int64_t left = 0;
    for (const Lot& lot : books.shop.all<Lot>())
        if (const LotState* state = records.state(lot.key); lot.material == material && state != nullptr)
            left += state->left;
    return left;
}

const Material* material_of(const FieldHow::Texts& texts, const Writing& writing) {
    const auto key = KeyCodes{}.key_of<Material>(texts("what"));
    return key ? writing.shop().find(*key) : nullptr;
}

// "the books say 1.9 kg", and how far the count is from it.
std::string beside_the_books(const CountLine& line, const FieldHow::Texts&, const Writing& writing) {
    const Material* material = writing.shop().find(line.material);
    if (material == nullptr) return {};
    const Kind kind = kind_of(material->held_as);
    const std::int64_t left = in_hand(writing.books, material->key);
    const auto book = arg("book", reports::shown_quantity({kind, left}));
    if (!line.counted) return say("the books say {book}; not counted", book);
    const auto counted = as_held(*material, *line.counted);
    if (!counted) return {};
    const std::int64_t less = left - counted->in_base();
    if (less == 0) return say("as in the books");
    const auto by = arg("by", reports::shown_quantity({kind, less < 0 ? -less : less}));
    return less > 0 ? say("the books say {book}: {by} less", book, by)
                    : say("the books say {book}: {by} more", book, by);
}

std::string what_it_means(Key<Count> count, const Writing& after) {
    const Records records{after.shop(), after.books.ledger};
    std::size_t counted = 0;
    std::size_t all = 0;
    for (const CountLine& line : after.shop().all<CountLine>()) {
        if (line.head != count) continue;
        ++all;
        if (line.counted) ++counted;
    }
    double less = 0;
    for (const Movement& movement : after.books.ledger.movements) {
        const CountLine* line = records.from<CountLine>(movement);
        if (line == nullptr || line->head != count) continue;
        const bool found =
            records.kind(movement.to) == AccountKind::lot || records.kind(movement.to) == AccountKind::pool;
        less += (found ? -1 : 1) * number(movement.cost.cash());
    }
    const std::string currency = reports::currency_of(after.shop());
    const auto told = arg("counted", counted);
    const auto of = arg("all", all);
    const auto money = arg("money", reports::rough_money(less < 0 ? -less : less, currency));
    if (less > 0.005) return say("{counted} of {all} counted. {money} less than the books said.", told, of, money);
    if (less < -0.005) return say("{counted} of {all} counted. {money} more than the books said.", told, of, money);
    return say("{counted} of {all} counted; the books were right.", told, of);
}

}  // namespace

Form count_form(const Writing& writing, std::optional<Key<Count>> corrected) {
    const Shop& shop = writing.shop();
    FactForm<Count> form{writing, "count", say("A stock-take"), corrected};
    const bool fresh = form.is_new();
    if (fresh) form.fact().date = writing.day;
    form.add("date", say("&On"), &Count::date).more("note", say("No&te"), &Count::note);
    LineForm<CountLine> lines{
        .id = "lines",
        .name = say("Select a line, write what is there, Enter goes on. Blank is not counted, = is as in the books.")};
    const FieldHow counted{.material = material_of, .measuring = [](const FieldHow::Texts& texts, const Writing& now) {
                               const Material* material = material_of(texts, now);
                               if (material == nullptr) return Measuring{};
                               const Kind kind = kind_of(material->held_as);
                               const Amount there{{kind, in_hand(now.books, material->key)},
                                                  kind == Kind::mass     ? Unit::g
                                                  : kind == Kind::volume ? Unit::ml
                                                                         : Unit::piece};
                               return Measuring{
                                   .kind = kind, .there = there, .own = measures_for(now.shop(), material->key)};
                           }};
    auto reasons =
        word_choices<LossReason>({say("spoiled"), say("spilled"), say("past its date"), say("other"), say("given away"),
                                  say("a sample"), say("used ourselves"), say("used for a test")});
    reasons.insert(reasons.begin(), Choice{"", say("not known")});
    lines.add("what", say("what"), &CountLine::material, {.choices = material_choices(shop, {})})
        .add("counted", say("counted"), &CountLine::counted, counted)
        .add("reason", say("why less"), &CountLine::reason, {.entry = Entry::choice, .choices = reasons});
    lines.note = beside_the_books;
    form.lines(std::move(lines));
    if (fresh) {
        for (const Choice& each :
             material_choices(shop, [&](const Material& material) { return in_hand(writing.books, material.key) > 0; }))
            form.form().lines_of("lines").rows.push_back({each.code, "", ""});
    }
    return std::move(form).done([](Count& count, Form&, const Writing&, Kept& kept) {
        kept.title = reports::message("stock-take of {day}");
        kept.args = {{"day", reports::shown_date(count.date)}};
        kept.consequence = [key = count.key](const Writing& after) { return what_it_means(key, after); };
        return true;
    });
}

}  // namespace dyestead::gui
