#include "reports/can_make_report.h"

#include "domain/facts/material_amount.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/words/caution_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/unsaid_words.h"

namespace dyestead::reports {
namespace {

std::string shown(const Shop& shop, Key<Material> key, std::int64_t base) {
    const Material* material = shop.find(key);
    return material == nullptr ? std::string{} : shown_quantity({kind_of(material->held_as), base});
}

std::string headline(const Shop& shop, Key<Material> bar, const CanMake& answer) {
    const Arg name = arg("bar", called(shop, bar));
    if (!answer.loaf.unsaid.empty()) return unsaid_sentence(answer.loaf.unsaid.front(), called(shop, bar));
    if (answer.enough())
        return say_count("Yes: one loaf of {bar} can be made; there is enough for {most}.",
                         "Yes: {count} loaves of {bar} can be made; there is enough for {most}.",
                         static_cast<std::uint64_t>(answer.loaves), name, arg("most", answer.most_loaves));
    if (!answer.runs_out) return say("{bar}: the recipe takes nothing.", name);
    const Arg first = arg("material", called(shop, *answer.runs_out));
    if (answer.most_loaves == 0) return say("Not even one loaf of {bar}: {material} runs out first.", name, first);
    return say_count("Only one loaf of {bar}: {material} runs out first.",
                     "Only {count} loaves of {bar}: {material} runs out first.",
                     static_cast<std::uint64_t>(answer.most_loaves), name, first);
}

}  // namespace

Document can_make_report(const Shop& shop, const Ledger& ledger, Key<Material> bar, const CanMake& answer) {
    Document document = begin_document(
        shop, ledger, "can-make",
        say_count("One loaf of {bar}: is everything there?", "{count} loaves of {bar}: is everything there?",
                  static_cast<std::uint64_t>(answer.loaves), arg("bar", called(shop, bar))));
    document.blocks.push_back(Headline{headline(shop, bar, answer)});
    Table table{.title = tr("What it takes"),
                .columns = {{tr("what")},
                            {tr("needed"), Align::right},
                            {tr("there"), Align::right},
                            {tr("to buy"), Align::right},
                            {tr("take from")}}};
    bool lye = false;
    for (const Ingredient& each : answer.ingredients) {
        std::string take;
        for (const TakeFrom& from : each.take)
            take += (take.empty() ? "" : ", ") + say("{amount} of {lot}",
                                                     arg("amount", shown(shop, each.material, from.quantity)),
                                                     arg("lot", shop.find(from.lot)->code));
        if (each.held > 0)
            take += (take.empty() ? "" : "; ") +
                    say("{amount} is on hold", arg("amount", shown(shop, each.material, each.held)));
        if (each.past_date > 0)
            take += (take.empty() ? "" : "; ") +
                    say("{amount} is past its date", arg("amount", shown(shop, each.material, each.past_date)));
        table.rows.push_back(
            {Cell{.shown = called(shop, each.material)}, Cell{.shown = shown(shop, each.material, each.needed)},
             Cell{.shown = shown(shop, each.material, each.there)},
             each.short_by() > 0 ? Cell{.shown = shown(shop, each.material, each.short_by())} : none_cell(),
             Cell{.shown = take}});
        const Material* material = shop.find(each.material);
        lye = lye || (material != nullptr && material->purpose == Purpose::lye);
    }
    if (!table.rows.empty()) document.blocks.push_back(std::move(table));
    for (const Unsaid what : answer.loaf.unsaid)
        document.blocks.push_back(Paragraph{unsaid_sentence(what, called(shop, bar)), Tone::small});
    if (lye) document.blocks.push_back(Paragraph{lye_caution(), Tone::caution});
    document.figures = {{"loaves", answer.loaves}, {"most_loaves", answer.most_loaves}};
    return document;
}

}  // namespace dyestead::reports
