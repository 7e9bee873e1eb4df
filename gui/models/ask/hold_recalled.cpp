#include "gui/models/ask/hold_recalled.h"

#include "domain/decisions/recall.h"
#include "domain/decisions/recall_start.h"
#include "domain/text/amounts.h"
#include "domain/text/typed.h"
#include "gui/models/bench/hold_form.h"
#include "gui/models/form/field_values.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

std::string put_by(const Writing& after, std::size_t lots, int not_made_up) {
    std::string told = held_meant(after);
    told += " " + say_count("One lot was put by.", "{count} lots were put by.", lots);
    if (not_made_up > 0)
        told += " " + say_count(
                          "One bed, vat or batch that may hold some has nothing to be put by yet: ask again once it "
                          "is dried or cut.",
                          "{count} beds, vats or batches that may hold some have nothing to be put by yet: ask again "
                          "once they are dried or cut.",
                          static_cast<std::uint64_t>(not_made_up));
    return told;
}

}  // namespace

RecalledHere recalled_here(const Books& books, const Asked& asked) {
    RecalledHere here;
    if (trimmed(asked.about).empty()) return here;
    std::optional<Day> from;
    if (!trimmed(asked.from).empty()) {
        const auto day = read_typed_day(asked.from, books.as_of(), reports::month_names());
        if (!day) return here;
        from = *day;
    }
    const auto of = recall_start(books.shop, books.ledger, asked.about, from);
    if (of.empty()) return here;
    for (const Whereabouts& each : recall(books.shop, books.ledger, of).whereabouts) {
        if (each.heap != Heap::here || each.held) continue;
        if (books.ledger.accounts.kind(each.of) != AccountKind::lot)
            ++here.not_made_up;
        else
            here.lots.push_back(books.shop.all<Lot>()[books.ledger.accounts.index(each.of)].key);
    }
    return here;
}

std::optional<Kept> hold_recalled(const Writing& writing, const Asked& asked) {
    const RecalledHere here = recalled_here(writing.books, asked);
    if (here.lots.empty()) return std::nullopt;
    Kept kept;
    std::vector<std::string> taken;
    for (const Key<Lot> lot : here.lots) {
        Hold hold;
        hold.key = writing.new_key<Hold>();
        hold.code = free_code<Hold>(writing.shop(), "hold-" + print(writing.day), taken);
        taken.push_back(hold.code);
        hold.date = writing.day;
        hold.lot = lot;
        hold.why = say("recalled: {what}", arg("what", asked.about));
        kept.change.put.all<Hold>().push_back(std::move(hold));
    }
    kept.title = reports::message("what is here of {what} put on hold");
    kept.args = {{"what", asked.about}};
    kept.consequence = [lots = here.lots.size(), not_made_up = here.not_made_up](const Writing& after) {
        return put_by(after, lots, not_made_up);
    };
    return kept;
}

}  // namespace dyestead::gui
