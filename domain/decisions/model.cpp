#include "domain/decisions/model.h"

namespace dyestead {

double Model::home_cash() const {
    return kg_per_bar() * (vat_cash_fixed / kg_per_vat + vat_cash_per_kg + garden_cash_per_kg);
}

double Model::home_minutes() const {
    return kg_per_bar() * (minutes_per_vat() / kg_per_vat + garden_minutes_per_kg);
}

double Model::fixed_per_vat() const {
    return kg_per_bar() / kg_per_vat * (vat_cash_fixed + target_per_minute() * vat_minutes_fixed);
}

Difference home_less_bought(const Model& m) {
    return {m.kept_share() * m.premium() - (m.home_cash() - m.bought_cash()) - m.home_cash_per_bar,
            (m.home_minutes() + m.home_minutes_per_bar - m.bought_minutes_per_bar) / 60};
}

Difference home_less_plain(const Model& m) {
    return {m.kept_share() * (m.home_price - m.plain_price) - m.home_cash() - m.home_cash_per_bar,
            (m.home_minutes() + m.home_minutes_per_bar) / 60};
}

Difference bought_less_plain(const Model& m) {
    return {m.kept_share() * (m.bought_price - m.plain_price) - m.bought_cash(), m.bought_minutes_per_bar / 60};
}

}  // namespace dyestead
