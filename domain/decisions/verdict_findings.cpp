#include "domain/decisions/verdict_findings.h"

#include <fmt/format.h>

namespace dyestead {
namespace {

using Code = VerdictFindingCode;

class Finder {
public:
    Finder(const Records& records, const Gathered& gathered, const Verdict& verdict)
        : records_{records}, gathered_{gathered}, verdict_{verdict}, colour_{ref(*gathered.colour)} {}

    std::vector<VerdictFinding> take() { return std::move(found_); }

    void pigment() {
        const StandsOn& on = verdict_.stands_on;
        if (on.vats_finished == 0)
            find(Code::no_vat_finished, colour_);
        else if (gathered_.pool.without_method > 0)
            find(Code::method_missing, colour_);
        for (const auto& [vat, drying] : first_dryings(records_, gathered_.colour->key))
            if (drying->dryness == Dryness::damp && verdict_.window.contains(drying->date))
                find(Code::weighed_damp, ref(*records_.shop.find(vat)));
        if (gathered_.pool.grams() > 0) {
            if (!verdict_.figures.pigment.strength)
                find(Code::strength_untested, colour_);
            else if (on.tested_share < 1)
                find(Code::strength_partly_tested, colour_, {fmt::format("{:.2f}", on.tested_share)});
        }
        if (!verdict_.hourly_target) find(Code::no_hourly_target, colour_);
    }

    void bought_in() {
        if (!verdict_.bought_match) return find(Code::no_bought_match, colour_);
        const FactRef material{kKindOf<Material>, verdict_.bought_match->number};
        if (gathered_.landed.from == BoughtPriceFrom::offer) find(Code::bought_never_bought, material);
        if (gathered_.landed.from == BoughtPriceFrom::none) find(Code::bought_price_unknown, material);
    }

    void base_loaf(const BaseRecipe& base) {
        if (base.recipe == nullptr) return find(Code::no_base_recipe, colour_);
        const FactRef recipe = ref(*base.recipe);
        if (!base.colour_poured) find(Code::colour_never_poured, recipe);
        if (!verdict_.dose_per_loaf) find(Code::no_dose, recipe);
        const double unwrapped = gathered_.base.good_bars - gathered_.base.wrapped_bars;
        if (unwrapped > 0) find(Code::bars_not_wrapped, recipe, {fmt::format("{:.0f}", unwrapped)});
        price(*base.recipe, Colouring::plain, gathered_.prices.plain);
        price(*base.recipe, Colouring::bought, gathered_.prices.bought);
        price(*base.recipe, Colouring::own, gathered_.prices.own);
    }

    void selling(const SoapHour& soap, Window year) {
        const FactRef shop =
            records_.shop.all<About>().empty() ? FactRef{kKindOf<About>, 0} : ref(records_.shop.all<About>().front());
        if (gathered_.selling.bars <= 0) find(Code::no_sales_yet, shop);
        if (!soap.earned)
            find(Code::no_plain_recipe, shop);
        else if (!soap.taken_to_fair)
            find(Code::no_fair_in_12_months, shop);
        const FairsStood fairs = fairs_stood(records_, year);
        if (fairs.with_bars_back * 2 > fairs.fairs) find(Code::more_came_home, shop);
    }

    void allowed() {
        const auto& answer = verdict_.stands_on.allowed;
        if (!answer) return find(Code::allowed_not_asked, colour_);
        switch (answer->answer) {
            case Answer::yes: return;
            case Answer::no: return find(Code::allowed_no, ref(*answer));
            case Answer::waiting: return find(Code::allowed_waiting, ref(*answer));
        }
    }

private:
    void find(Code code, FactRef about, std::vector<std::string> args = {}) {
        found_.push_back({code, about, std::move(args)});
    }

    void price(const Recipe& recipe, Colouring colouring, const ShelfPrice& price) {
        const std::string which{word(colouring)};
        switch (price.from) {
            case PriceFrom::price_list: return;
            case PriceFrom::none: return find(Code::no_price, ref(recipe), {which});
            case PriceFrom::belief: return find(Code::price_from_belief, ref(recipe), {which});
            case PriceFrom::plain: return find(Code::price_from_plain, ref(recipe), {which});
        }
    }

    const Records& records_;
    const Gathered& gathered_;
    const Verdict& verdict_;
    FactRef colour_;
    std::vector<VerdictFinding> found_;
};

}  // namespace

std::vector<VerdictFinding> verdict_findings(const Records& records, const Gathered& gathered, const Verdict& verdict,
                                             const BaseRecipe& base, const SoapHour& soap) {
    Finder finder{records, gathered, verdict};
    finder.pigment();
    finder.bought_in();
    finder.base_loaf(base);
    finder.selling(soap, months_to(records.ledger.as_of, 12));
    finder.allowed();
    return finder.take();
}

}  // namespace dyestead
