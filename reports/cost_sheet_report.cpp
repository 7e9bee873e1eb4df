#include "reports/cost_sheet_report.h"

#include <utility>

#include "reports/batch_cost.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/words/caution_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

const Batch* batch_of(const Shop& shop, const Ledger& ledger, const std::string& code) {
    for (const Batch& batch : shop.all<Batch>()) {
        if (batch.date > ledger.as_of) continue;
        const Cut* cut = cut_of(shop, ledger, batch.key);
        const Lot* bars = cut == nullptr ? nullptr : shop.find(cut->lot);
        if (batch.code == code || (bars != nullptr && bars->code == code)) return &batch;
    }
    return nullptr;
}

const Batch* last_cut(const Shop& shop, const Ledger& ledger) {
    const Cut* last = nullptr;
    for (const Cut& cut : shop.all<Cut>())
        if (cut.date <= ledger.as_of && (last == nullptr || cut.date >= last->date)) last = &cut;
    if (last != nullptr) return shop.find(last->batch);
    const Batch* poured = nullptr;
    for (const Batch& batch : shop.all<Batch>())
        if (batch.date <= ledger.as_of && (poured == nullptr || batch.date >= poured->date)) poured = &batch;
    return poured;
}

Trouble no_such_batch(const Shop& shop, const Ledger& ledger, const std::string& code) {
    std::string choices;
    for (const Batch& batch : shop.all<Batch>())
        if (batch.date <= ledger.as_of) choices += (choices.empty() ? "" : ", ") + batch.code;
    return {TroubleId::not_one_of, {{"value", code}, {"choices", choices}}};
}

// Part by part, of one bar and of all of them.
Table a_bar(const BatchCost& cost, const std::string& currency) {
    Table table{.title = tr("What it comes to, part by part"),
                .columns = {{tr("what")},
                            {say("{currency} a bar", arg("currency", currency)), Align::right},
                            {say("{currency} in all", arg("currency", currency)), Align::right}},
                .emphasise_last_row = true};
    const auto add = [&](std::string what, double bar) {
        table.rows.push_back(
            {Cell{.shown = std::move(what)}, money_cell(bar, currency), money_cell(bar * cost.bars, currency)});
    };
    bool time_begun = false;
    for (std::size_t i = 0; i < kBarParts; ++i) {
        const BarPart part{static_cast<std::uint8_t>(i)};
        if (is_time(part) && !std::exchange(time_begun, true))
            add(tr("together, without your time"), cost.without_time());
        if (cost.parts[i] != 0) add(part_name(part), cost.parts[i]);
    }
    add(tr("all together"), cost.with_time());
    return table;
}

std::vector<Figure> figures_of(const BatchCost& cost) {
    const auto part = [&](BarPart each) { return cost.parts[static_cast<std::size_t>(each)]; };
    return {{"bars", cost.bars},
            {"cash_cost_per_bar", cost.without_time()},
            {"full_cost_per_bar", cost.with_time()},
            {"cash_cost", cost.without_time() * cost.bars},
            {"full_cost", cost.with_time() * cost.bars},
            {"minutes_per_bar", cost.minutes},
            {"colour_minutes_per_bar", cost.colour_minutes},
            {"oils_per_bar", part(BarPart::oils)},
            {"lye_and_water_per_bar", part(BarPart::lye_and_water)},
            {"colour_per_bar", part(BarPart::colour)},
            {"scent_per_bar", part(BarPart::scent)},
            {"wrapping_per_bar", part(BarPart::wrapping)},
            {"other_per_bar", part(BarPart::other)},
            {"running_costs_per_bar", part(BarPart::running_costs)},
            {"garden_time_per_bar", part(BarPart::garden_time)},
            {"vat_time_per_bar", part(BarPart::vat_time)},
            {"bench_time_per_bar", part(BarPart::bench_time)}};
}

}  // namespace

Document cost_sheet(const Shop& shop, const Ledger& ledger, Key<Batch> key) {
    const Batch& batch = *shop.find(key);
    Document document =
        begin_document(shop, ledger, "cost-sheet",
                       say("What the batch {batch} cost: {bar}, poured on {day}", arg("batch", batch.code),
                           arg("bar", called(shop, batch.bar)), arg("day", shown_date(batch.date))));
    const auto cost = batch_cost(shop, ledger, batch.key);
    if (!cost) {
        document.blocks.push_back(Headline{tr("No bars come of this batch, so there is no cost of one.")});
        document.blocks.push_back(batch_inputs(shop, ledger, batch.key));
        return document;
    }
    const std::string currency = currency_of(shop);
    document.blocks.push_back(Headline{batch_sentence(shop, ledger, batch.key)});
    document.blocks.push_back(a_bar(*cost, currency));
    // The headline says what the picture's own sentence would.
    Chart picture = batch_chart(shop, ledger, batch.key).value_or(Chart{});
    picture.sentence = say_count("One good bar, {minutes} of hands in it, {colour} of them for the colour.",
                                 "{count} good bars, {minutes} of hands in each, {colour} of them for the colour.",
                                 static_cast<std::uint64_t>(cost->bars), arg("minutes", shown_minutes(cost->minutes)),
                                 arg("colour", shown_minutes(cost->colour_minutes)));
    document.blocks.push_back(std::move(picture));
    document.blocks.push_back(batch_inputs(shop, ledger, batch.key));
    document.blocks.push_back(Paragraph{
        tr("What went in is the batch as it was poured; the parts above are the bars as they are now, wrapping and "
           "running costs in. Rejected bars are paid for by the good ones."),
        Tone::small});
    document.blocks.push_back(Paragraph{lye_caution(), Tone::caution});
    document.figures = figures_of(*cost);
    return document;
}

std::variant<Document, Trouble> cost_sheet_report(const Shop& shop, const Ledger& ledger,
                                                  const std::optional<std::string>& of) {
    const Batch* batch = of ? batch_of(shop, ledger, *of) : last_cut(shop, ledger);
    if (batch != nullptr) return cost_sheet(shop, ledger, batch->key);
    const Batch* any = last_cut(shop, ledger);
    if (of && any != nullptr) return no_such_batch(shop, ledger, *of);
    Document document = begin_document(shop, ledger, "cost-sheet", tr("What a batch cost"));
    document.blocks.push_back(
        Headline{tr("No batch is on record yet: pour one at the Bench, and its cost stands here.")});
    return document;
}

}  // namespace dyestead::reports
