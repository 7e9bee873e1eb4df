#include "domain/decisions/improve.h"

#include <algorithm>
#include <functional>
#include <set>

#include "domain/decisions/prices.h"
#include "domain/decisions/records.h"

namespace dyestead {
namespace {

// Half the time of a step is what a better tool or a steadier hand might bring.
constexpr double kQuicker = 0.5;
constexpr double kFuller = 1.2;  // a largest vat not much above the usual is no advice

class Trying {
public:
    Trying(const Shop& shop, const Ledger& ledger, const Verdict& verdict)
        : records_{shop, ledger},
          verdict_{verdict},
          model_{*verdict.figures.model},
          hour_{*verdict.figures.extra_dye_hour.hurdle},
          vats_{static_cast<double>(verdict.vats.size())} {
        today_ = season(model_, vats_);
    }

    std::vector<Improving> all() {
        water();
        size();
        steps();
        failures();
        best_season();
        price();
        return std::move(found_);
    }

private:
    // All bars the vats' powder colours, grown less bought in.
    double season(const Model& model, double vats) const {
        const double grams = vats * model.kg_per_vat * model.yield;
        return grams * model.strength / model.dose * home_less_bought(model).full(hour_);
    }

    void add(Improvement what, std::string step, double now, double then, const Model& model, double vats) {
        const double gain = season(model, vats) - today_;
        if (gain <= 0) return;
        found_.push_back(
            {what, std::move(step), now, then, gain, today_ < 0 && home_less_bought(model).full(hour_) >= 0});
    }

    void water() {
        std::set<Key<Vat>> counted;
        for (const VatRow& row : verdict_.vats) counted.insert(row.vat);
        double spent = 0;
        double kilos = 0;
        for (const VatRow& row : verdict_.vats) kilos += row.kg;
        Day first = records_.ledger.as_of;
        for (const VatRow& row : verdict_.vats) first = std::min(first, row.begun);
        for (const Movement& movement : records_.movements_since(first)) {
            if (records_.kind(movement.to) != AccountKind::vat || records_.from<VatUse>(movement) == nullptr) continue;
            if (!counted.contains(records_.vat(movement.to).key)) continue;
            if (records_.material(movement).purpose == Purpose::water) spent += number(movement.cost.cash());
        }
        if (spent <= 0 || kilos <= 0) return;
        Model model = model_;
        // Some of it may not grow with the harvest; all of it is saved.
        const double fixed = std::min(model.vat_cash_fixed, spent / vats_);
        model.vat_cash_fixed -= fixed;
        model.vat_cash_per_kg = std::max(0.0, model.vat_cash_per_kg - (spent - fixed * vats_) / kilos);
        add(Improvement::free_water, {}, spent / kilos, 0, model, vats_);
    }

    void size() {
        double largest = 0;
        for (const VatRow& row : verdict_.vats) largest = std::max(largest, row.kg);
        Model model = model_;
        const bool fuller = largest > kFuller * model_.kg_per_vat;
        if (!fuller && vats_ < 2) return;
        model.kg_per_vat = fuller ? largest : 2 * model_.kg_per_vat;
        add(fuller ? Improvement::fuller_vats : Improvement::bigger_vats, {}, model_.kg_per_vat, model.kg_per_vat,
            model, vats_ * model_.kg_per_vat / model.kg_per_vat);
    }

    // The harvest stays, the time at the vat goes by a share.
    Model quicker_by(double minutes_a_vat) const {
        Model model = model_;
        const double all = model_.minutes_per_vat();
        if (all <= 0) return model;
        const double left = std::max(0.0, 1 - minutes_a_vat / all);
        model.vat_minutes_fixed *= left;
        model.vat_minutes_per_kg *= left;
        return model;
    }

    void steps() {
        bool longest = true;
        for (const StepHours& step : dye_hours(records_.shop, verdict_)) {
            if (step.at != HoursAt::step) continue;
            const double a_vat = step.minutes / vats_;
            if (longest)
                add(Improvement::quicker_step, step.what, a_vat, a_vat * kQuicker, quicker_by(a_vat * (1 - kQuicker)),
                    vats_);
            longest = false;
            if (step.times >= 2)
                add(Improvement::one_wash_less, step.what, step.times, step.times - 1, quicker_by(a_vat / step.times),
                    vats_);
        }
    }

    void failures() {
        const double failed = verdict_.stands_on.vats_failed;
        if (failed <= 0 || failed >= vats_) return;
        Model model = model_;
        model.yield *= vats_ / (vats_ - failed);
        add(Improvement::no_failed_vat, {}, failed, 0, model, vats_);
    }

    void best_season() {
        double best = 0;
        for (const SeasonRow& season : verdict_.seasons) best = std::max(best, season.g_per_kg.value_or(0));
        if (best <= model_.yield) return;
        Model model = model_;
        model.yield = best;
        add(Improvement::best_season, {}, model_.yield, best, model, vats_);
    }

    void price() {
        Model model = model_;
        model.home_price += price_aim(records_.shop, records_.ledger.as_of).price_step;
        add(Improvement::higher_price, {}, model_.home_price, model.home_price, model, vats_);
    }

    Records records_;
    const Verdict& verdict_;
    Model model_;
    double hour_;
    double vats_;
    double today_ = 0;
    std::vector<Improving> found_;
};

}  // namespace

std::vector<Improving> improvements(const Shop& shop, const Ledger& ledger, const Verdict& verdict, std::size_t most) {
    if (!verdict.figures.model || !verdict.figures.extra_dye_hour.hurdle || verdict.vats.empty() || verdict.ahead)
        return {};
    std::vector<Improving> found = Trying{shop, ledger, verdict}.all();
    std::ranges::stable_sort(found, std::greater{}, &Improving::gain);
    if (found.size() > most) found.resize(most);
    return found;
}

}  // namespace dyestead
