#include "reports/labels_report.h"

#include <algorithm>
#include <map>

#include "domain/decisions/shelf.h"
#include "domain/text/amounts.h"
#include "reports/begin_document.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

class Labels {
public:
    Labels(const Shop& shop, const Ledger& ledger) : shop_{shop}, records_{shop, ledger} {
        for (const Cut& cut : shop.all<Cut>())
            if (cut.date <= ledger.as_of) cuts_[cut.lot] = &cut;
    }

    const Cut* cut_of(Key<Lot> lot) const {
        const auto found = cuts_.find(lot);
        return found == cuts_.end() ? nullptr : found->second;
    }

    bool is_of(const ShelfLot& lot, const std::string& code) const {
        const Cut* cut = cut_of(lot.lot);
        const Batch* batch = cut == nullptr ? nullptr : shop_.find(cut->batch);
        return shop_.find(lot.lot)->code == code || (batch != nullptr && batch->code == code);
    }

    std::vector<Cell> row(const ShelfLot& lot) const {
        const Cut* cut = cut_of(lot.lot);
        const Batch* batch = cut == nullptr ? nullptr : shop_.find(cut->batch);
        const Recipe* recipe = batch == nullptr ? nullptr : shop_.find(batch->recipe);
        constexpr std::int64_t kThousandths = 1'000;
        const std::int64_t whole_bars = lot.bars / kThousandths;
        return {words(called(shop_, lot.bar)),
                words(state(lot)),
                words(recipe == nullptr ? std::string{} : print(recipe->declared_weight)),
                words(batch == nullptr ? std::string{} : batch->code),
                words(shop_.find(lot.lot)->code),
                words(batch == nullptr ? std::string{} : shown_date(batch->date)),
                words(shown_date(lot.ready)),
                words(lot.best_before ? shown_date(*lot.best_before) : std::string{}),
                {.shown = fmt::to_string(whole_bars), .number = static_cast<double>(whole_bars)},
                words(batch == nullptr ? std::string{} : went_in(*batch))};
    }

private:
    static Cell words(std::string text) { return {.shown = std::move(text)}; }

    static std::string state(const ShelfLot& lot) {
        switch (lot.state) {
            case BarState::held: return tr("ON HOLD: not to be sold, not to be given away");
            case BarState::past_best: return tr("past its best");
            case BarState::in_cure: return tr("in cure");
            case BarState::ready: return tr("ready");
        }
        return {};
    }

    // The heaviest first, as far as weights lead there; what is only counted last. A batch poured off another holds
    // what that one took.
    std::string went_in(const Batch& batch) const {
        std::map<Key<Material>, double> grams_of;
        const auto add = [&](Key<Batch> head) {
            for (const BatchUse& use : shop_.all<BatchUse>()) {
                const Material* material = shop_.find(use.material);
                if (use.head != head || material == nullptr || material->purpose == Purpose::wrapping) continue;
                const auto held = as_held(*material, use.amount);
                const auto weight = held ? grams(*material, held->in_base()) : std::nullopt;
                grams_of[use.material] += weight.value_or(0);
            }
        };
        add(batch.key);
        if (batch.split_from) add(*batch.split_from);
        std::vector<std::pair<double, std::string>> listed;
        for (const auto& [material, weight] : grams_of) listed.emplace_back(-weight, called(shop_, material));
        std::ranges::sort(listed);
        std::string all;
        for (const auto& [weight, name] : listed) all += (all.empty() ? "" : ", ") + name;
        return all;
    }

    const Shop& shop_;
    Records records_;
    std::map<Key<Lot>, const Cut*> cuts_;
};

}  // namespace

std::variant<Document, Trouble> labels_report(const Shop& shop, const Ledger& ledger,
                                              const std::optional<std::string>& of) {
    Document document = begin_document(
        shop, ledger, "labels", say("Labels for the bars on the shelf, {day}", arg("day", shown_date(ledger.as_of))));
    document.findings.clear();
    const Labels labels{shop, ledger};
    Table table{.title = {},
                .columns = {{tr("bar")},
                            {tr("state")},
                            {tr("weight")},
                            {tr("batch")},
                            {tr("lot")},
                            {tr("poured on")},
                            {tr("ready from")},
                            {tr("best before")},
                            {.heading = tr("bars here"), .align = Align::right},
                            {tr("what went in, heaviest first")}},
                .as_labels = true};
    std::string codes;
    for (const ShelfLot& lot : shelf({shop, ledger}).lots) {
        codes += (codes.empty() ? "" : ", ") + shop.find(lot.lot)->code;
        if (!of || labels.is_of(lot, *of)) table.rows.push_back(labels.row(lot));
    }
    document.figures = {{"labels", static_cast<double>(table.rows.size())}};
    if (codes.empty()) {
        document.blocks.push_back(Headline{tr("No bars are on the shelf, so there is nothing to label.")});
        return document;
    }
    if (table.rows.empty()) return Trouble{TroubleId::not_one_of, {{"value", *of}, {"choices", codes}}};
    document.blocks.push_back(Paragraph{
        tr("For the crate and the shelf. What must stand on a bar that is sold, names of ingredients and allergens "
           "among it, differs from place to place and is not on record here: look it up where you sell, and have it "
           "checked by the safety assessor. What went in goes by the shop's own names. The weight on a label must be "
           "true on the day the bar is sold."),
        Tone::caution});
    document.blocks.push_back(std::move(table));
    return document;
}

}  // namespace dyestead::reports
