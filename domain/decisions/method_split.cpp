#include "domain/decisions/method_split.h"

#include <map>

#include "domain/decisions/steps_as_done.h"
#include "domain/facts/lines_of.h"
#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

// How much of something the methods of all vats together ask for, and how much of it was recorded.
struct Asked {
    double fixed = 0;
    double with_harvest = 0;
    double cash = 0;
    double minutes = 0;
    std::optional<double> fixed_share() const {
        const double all = fixed + with_harvest;
        return all > 0 ? std::optional{fixed / all} : std::nullopt;
    }
};

class Splitter {
public:
    Splitter(const Records& records, const std::vector<FinishedVat>& vats)
        : records_{records}, steps_{records.shop}, uses_{records.shop} {
        for (const FinishedVat& vat : vats) {
            const bool has_method = vat.vat->method && records_.shop.find(*vat.vat->method) != nullptr;
            if (has_method)
                ask(vat);
            else
                ++split_.without_method;
            for (const Movement* movement : vat.went_in) record(*movement, has_method);
        }
    }

    VatSplit split() {
        const double labour = labour_.fixed_share().value_or(1);
        split_.minutes_fixed += labour_.minutes * labour;
        split_.cash_fixed += labour_.cash * labour;
        split_.cash_fixed += heat_cash_ * water_.fixed_share().value_or(0);
        for (const auto& [material, asked] : of_material_) {
            const double share = asked.fixed_share().value_or(0);
            split_.cash_fixed += asked.cash * share;
            split_.minutes_fixed += asked.minutes * share;
        }
        return split_;
    }

private:
    void ask(const FinishedVat& vat) {
        const Key<Method> method = *vat.vat->method;
        const double share = number(waiting_share_in_force(records_.shop, vat.vat->date));
        for (const MethodStep* step : steps_(method)) {
            const double times = times_done(*vat.vat, *step);
            const double waiting = step->watch == Watch::attended && step->waiting ? number(step->waiting->time) : 0;
            const double hands_on = step->hands_on ? number(step->hands_on->time) : 0;
            labour_.fixed += times * (hands_on + share * waiting);
            if (step->hands_on_per_kg) labour_.with_harvest += times * number(step->hands_on_per_kg->time) * vat.kg;
        }
        Asked water;
        for (const MethodUse* use : uses_(method)) {
            const Material* material = records_.shop.find(use->material);
            if (material != nullptr && material->purpose == Purpose::water) ask(*use, *material, vat.kg, {}, water);
        }
        water_.fixed += water.fixed;
        water_.with_harvest += water.with_harvest;
        for (const MethodUse* use : uses_(method)) {
            const Material* material = records_.shop.find(use->material);
            if (material != nullptr) ask(*use, *material, vat.kg, water, of_material_[material->key]);
        }
    }

    // An amount to the litre goes as the method's water does; where that says nothing, it is the vat's.
    static void ask(const MethodUse& use, const Material& material, double kg, const Asked& water, Asked& of) {
        const auto held = as_held(material, use.amount);
        if (!held) return;
        const auto amount = static_cast<double>(held->in_base());
        switch (use.per) {
            case Per::vat: of.fixed += amount; break;
            case Per::kg: of.with_harvest += amount * kg; break;
            case Per::litre: {
                const double litre = 1e6;  // base units
                const bool known = water.fixed_share().has_value();
                of.fixed += amount * (known ? water.fixed / litre : 1);
                of.with_harvest += amount * water.with_harvest / litre;
                break;
            }
        }
    }

    void record(const Movement& movement, bool has_method) {
        const bool use = records_.from<VatUse>(movement) != nullptr;
        if (use && records_.material(movement).kind == MaterialKind::harvest) return;
        const double cash = number(movement.cost.cash());
        const double minutes = number(movement.cost.hands_on);
        split_.cash += cash;
        split_.minutes += minutes;
        if (!has_method) {
            split_.minutes_fixed += minutes;
        } else if (use) {
            Asked& of = of_material_[records_.material(movement).key];
            of.cash += cash;
            of.minutes += minutes;
        } else if (movement.from == account(Boundary::hours) || movement.from == account(Boundary::wages)) {
            labour_.cash += cash;
            labour_.minutes += minutes;
        } else if (movement.from == account(Boundary::energy)) {
            heat_cash_ += cash;
        }
    }

    const Records& records_;
    LinesOf<MethodStep> steps_;
    LinesOf<MethodUse> uses_;
    Asked labour_;
    Asked water_;
    double heat_cash_ = 0;
    std::map<Key<Material>, Asked> of_material_;
    VatSplit split_;
};

}  // namespace

VatSplit split_by_method(const Records& records, const std::vector<FinishedVat>& vats) {
    return Splitter{records, vats}.split();
}

}  // namespace dyestead
