#include "domain/ledger/look_over.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

#include "domain/facts/lines_of.h"
#include "domain/ledger/notes.h"

namespace dyestead {
namespace {

class LookOver {
public:
    LookOver(const Shop& shop, Day as_of) : shop_{shop}, as_of_{as_of} {}

    std::vector<Finding> run() {
        vat_steps();
        bundles();
        tries();
        notes();
        without_bars();
        std::ranges::stable_sort(found_, {}, &Finding::day);
        return std::move(found_);
    }

private:
    // Each timed step begins on the vat's day or later, and no sooner than the timed one above it.
    void vat_steps() {
        const LinesOf<VatStep> steps{shop_};
        for (const Vat& vat : shop_.all<Vat>()) {
            if (vat.date > as_of_) continue;
            std::optional<Moment> last;
            for (const VatStep* step : steps(vat)) {
                if (!step->begun) continue;
                const bool backwards =
                    step->begun->day < vat.date || (last && universal(*step->begun) < universal(*last));
                if (backwards) add(FindingCode::vat_steps_backwards, ref(*step), vat.date, {vat.code});
                last = step->begun;
            }
        }
    }

    void bundles() {
        const LinesOf<FairBundle> bundles{shop_};
        const LinesOf<FairLine> lines{shop_};
        for (const Fair& fair : shop_.all<Fair>()) {
            if (fair.date > as_of_) continue;
            Wide bundled = 0;
            for (const FairBundle* bundle : bundles(fair)) bundled += Wide{bundle->bars} * bundle->sold;
            std::int64_t sold = 0;
            for (const FairLine* line : lines(fair)) sold += std::max(0, line->taken - line->back);
            if (bundled > sold)
                add(FindingCode::bundles_more_than_sold, ref(fair), fair.date,
                    {fmt::format("{}", narrow(std::min<Wide>(bundled, INT64_MAX))), fmt::format("{}", sold)});
        }
    }

    void tries() {
        for (const GerminationTry& tried : shop_.all<GerminationTry>()) {
            if (tried.date > as_of_ || tried.came_up <= tried.tried) continue;
            const Lot* lot = shop_.find(tried.lot);
            add(FindingCode::more_came_up_than_laid_out, ref(tried), tried.date,
                {lot == nullptr ? std::string{} : lot->code});
        }
    }

    void notes() {
        for (const Note& note : shop_.all<Note>()) {
            if (note.date > as_of_) continue;
            const auto about = fact_ref(note.about);
            if (!about || name_of(shop_, *about).empty()) add(FindingCode::note_on_nothing, ref(note), note.date, {});
        }
    }

    void without_bars() {
        for (const Recipe& recipe : shop_.all<Recipe>())
            if (recipe.bars_per_loaf <= 0) add(FindingCode::loaf_without_bars, ref(recipe), Day{}, {});
        for (const Overhead& costs : shop_.all<Overhead>())
            if (costs.from <= as_of_ && costs.normal_bars <= 0 && !costs.per_year.is_zero())
                add(FindingCode::running_costs_without_bars, ref(costs), costs.from, {});
    }

    void add(FindingCode code, FactRef about, Day day, std::vector<std::string> args) {
        found_.push_back({code, about, day, std::move(args)});
    }

    const Shop& shop_;
    Day as_of_;
    std::vector<Finding> found_;
};

}  // namespace

std::vector<Finding> look_over(const Shop& shop, Day as_of) {
    return LookOver{shop, as_of}.run();
}

}  // namespace dyestead
