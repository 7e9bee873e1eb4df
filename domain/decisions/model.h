// model.h - what does a bar coloured with home pigment cost beyond one coloured with bought-in
// pigment, at equal shade, and what does an extra dye hour earn? The pure formula, no records.
//
// Doubles: these are estimates for a decision, not books. Money in currency units without sales tax
// reclaimed, weights in g and kg, times in minutes unless a name says hours. The letters in the
// comments are those of the formulas below; k = 1/(1 + tau) - f.
#pragma once

#include <optional>

namespace dyestead {

// Requires: dose, strength, bought_strength, yield, kg_per_vat > 0; all else but prices >= 0.
struct Model {
    double dose = 0;                    // Q   g of the standard in one good bar
    double strength = 1;                // s   g of the standard in one g of home pigment
    double bought_strength = 1;         // s_b ... in one g of the bought-in
    double yield = 0;                   // y   g of pigment from one kg of harvest
    double kg_per_vat = 0;              // K
    double vat_cash_fixed = 0;          // V0  a vat
    double vat_cash_per_kg = 0;         // v
    double garden_cash_per_kg = 0;      // g
    double garden_minutes_per_kg = 0;   // t_g
    double vat_minutes_fixed = 0;       // T0  a vat
    double vat_minutes_per_kg = 0;      // t
    double hourly_target = 0;           // W   0: cash figures
    double bought_price_per_gram = 0;   // b   landed
    double home_price = 0;              // P_h shelf
    double bought_price = 0;            // P_b shelf
    double plain_price = 0;             // P   shelf
    double sales_tax = 0;               // tau 0.2 for 20 %
    double fee_share = 0;               // f   of the shelf price
    double bought_minutes_per_bar = 0;  // m_b beyond plain
    double home_minutes_per_bar = 0;    // a   beyond plain
    double home_cash_per_bar = 0;       // A   beyond plain

    double kept_share() const { return 1 / (1 + sales_tax) - fee_share; }                           // k
    double premium() const { return home_price - bought_price; }                                    // pi
    double target_per_minute() const { return hourly_target / 60; }                                 // omega
    double minutes_per_vat() const { return vat_minutes_fixed + vat_minutes_per_kg * kg_per_vat; }  // T
    double home_grams() const { return dose / strength; }                                           // q_h
    double bought_grams() const { return dose / bought_strength; }                                  // q_b
    double kg_per_bar() const { return dose / (strength * yield); }                                 // kappa
    double bars_per_vat() const { return kg_per_vat / kg_per_bar(); }                               // n_v

    double home_cash() const;     // C_h = kappa (V0/K + v + g)
    double home_minutes() const;  // m_h = kappa (T/K + t_g)
    double home_full() const { return home_cash() + target_per_minute() * home_minutes(); }  // L
    double fixed_per_vat() const;                                                  // F = kappa/K (V0 + omega T0)
    double bought_cash() const { return bought_grams() * bought_price_per_gram; }  // C_b
};

// One bar of the first kind less one of the second.
struct Difference {
    double cash = 0;   // Delta M, money
    double hours = 0;  // Delta H
    // D(x): at so much for an hour.
    double full(double hour) const { return cash - hour * hours; }
    // Under 6 seconds a bar there is no real difference in hours.
    bool in_hours() const { return hours * 3600 >= 6 || hours * 3600 <= -6; }
    // E: what each extra hour earned; nothing without a real difference in hours.
    std::optional<double> earned_per_hour() const { return in_hours() ? std::optional{cash / hours} : std::nullopt; }
};

Difference home_less_bought(const Model& model);
Difference home_less_plain(const Model& model);
Difference bought_less_plain(const Model& model);

}  // namespace dyestead
