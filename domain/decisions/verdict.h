// verdict.h - was growing this colour worth the hours, next to buying the pigment in and to plain bars?
//
// Looking back over a window of months: prices, wages and tariffs as the books have them, quantities
// and failures as they were. Looking ahead: the same quantities, minutes and failures at one day's prices
// (todays_prices.h), from where the maker stands. Doubles: a decision, not books. Money in the shop's currency, without
// sales tax except where a name says shelf. All figures are ratios of totals over the window; what
// cannot be known is empty, never nought. Formulas: model.h, breakeven.h.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/decisions/breakeven.h"
#include "domain/decisions/doubt.h"
#include "domain/decisions/ruling.h"
#include "domain/decisions/stand.h"
#include "domain/decisions/window.h"
#include "domain/ledger/ledger.h"

namespace dyestead {

// One bar of the base recipe, coloured in one of the three ways.
struct Alternative {
    std::optional<double> shelf_price_per_bar;
    std::optional<double> price_per_bar;  // net of sales tax
    std::optional<double> fees_per_bar;
    std::optional<double> materials_per_bar;  // and bought-in work
    std::optional<double> labour_per_bar;
    std::optional<double> energy_per_bar;
    std::optional<double> overhead_per_bar;
    std::optional<double> cash_cost_per_bar;
    std::optional<double> full_cost_per_bar;
    std::optional<double> cash_margin_per_bar;
    std::optional<double> full_margin_per_bar;
    std::optional<double> hands_on_minutes_per_bar;
    std::optional<double> earnings_per_hour;
    std::optional<double> selling_cost_per_bar;
    std::optional<double> selling_minutes_per_bar;
    std::optional<double> earnings_per_hour_with_selling;
};

// Decision figures: failed crops, failed vats and lost powder are in.
struct PigmentFigures {
    std::optional<double> full_cost_per_gram;
    std::optional<double> cash_cost_per_gram;
    std::optional<double> hands_on_minutes_per_gram;
    std::optional<double> strength;  // g of the standard in one g; empty while untested
    std::optional<double> yield_g_per_kg;
    std::optional<double> harvest_kg_per_vat;
    std::optional<double> hands_on_minutes_per_vat;
};

// Totals of the window. A negative difference: growing left the shop worse off than buying.
struct SeasonFigures {
    std::optional<double> dye_hours;
    std::optional<double> bars;  // what all the powder colours, used or not
    std::optional<double> cash_difference;
    std::optional<double> full_difference;
};

struct ExtraDyeHour {
    std::optional<double> earned;
    std::optional<double> hurdle;     // the greater of hourly target and soap hour
    std::optional<double> soap_hour;  // the same hour making more soap without colour
};

// A gram of the powder sold as it is, beside the same gram poured into soap; only where a price of the powder is on
// record. Own hours are not taken off: what is left over is what they earn.
struct PowderSold {
    double price_per_gram = 0;   // as the customer pays
    double brings_per_gram = 0;  // of it: without sales tax and the share that fees take
    std::optional<double> left_per_gram;
    std::optional<double> left_per_dye_hour;
    // What the bars it colours leave more than the better of bought-in and plain ones.
    std::optional<double> soap_left_per_gram;
    std::optional<double> soap_left_per_dye_hour;
    std::optional<double> even_price_per_gram;  // at which both leave the same
};

// Everything that depends on how strong the powder is taken to be.
struct VerdictFigures {
    double strength = 1;  // that these figures are worked out at
    Alternative home;
    Alternative bought;
    Alternative plain;
    PigmentFigures pigment;
    SeasonFigures season;
    ExtraDyeHour extra_dye_hour;
    std::optional<PowderSold> powder;
    Breakevens breakeven;
    Breakevens breakeven_cash;

    // For the sentences. Empty where the model is not complete.
    std::optional<Model> model;
    std::optional<double> premium;               // pi: home over bought-in, shelf
    std::optional<double> premium_at_hurdle;     // the premium at which home is even at the hurdle
    std::optional<Difference> home_less_bought;  // a bar
    std::optional<Difference> home_less_plain;
    std::optional<Difference> bought_less_plain;
    std::optional<double> full_difference_at_hurdle;  // D(h, pi), a bar
    bool hurdle_turns_it = false;                     // D and D(h, pi) differ in sign
};

enum class PriceFrom : std::uint8_t { none, price_list, belief, plain };
enum class BoughtPriceFrom : std::uint8_t { none, deliveries_in_window, last_delivery, already_here, offer };

// What a finding of the verdict is about; its sentence is in reports/words.
enum class VerdictFindingCode : std::uint8_t {
    strength_untested,       // colour
    strength_partly_tested,  // colour; the share of the grams that is tested, as 0.75
    price_from_belief,       // recipe; "bought" or "own" or "plain"
    price_from_plain,        // recipe; "bought" or "own"
    no_price,                // recipe; "bought" or "own" or "plain"
    no_bought_match,         // colour
    bought_never_bought,     // material: no delivery; an offer stands in
    bought_price_unknown,    // material: no delivery and no offer
    no_base_recipe,          // colour: no loaf in a recipe for it was poured and cut in the window
    colour_never_poured,     // recipe: taken as the base, but no bar of this colour in the window
    no_dose,                 // recipe: how much of the colour goes into a loaf is not stated
    bars_not_wrapped,        // recipe; how many good bars of the window are not wrapped yet
    no_vat_finished,         // colour
    method_missing,          // colour: of vats without one all cash is taken per kg, all minutes per vat
    weighed_damp,            // vat: left out
    no_sales_yet,            // fees from the settings, nothing known about selling
    no_fair_in_12_months,    // the soap hour is taken as if every bar sold
    more_came_home,          // at most fairs of the 12 months: more soap would not have sold
    no_plain_recipe,         // no soap hour
    no_hourly_target,
    allowed_not_asked,  // colour
    allowed_no,         // allowed
    allowed_waiting,    // allowed
};

struct VerdictFinding {
    VerdictFindingCode code{};
    FactRef about{};
    std::vector<std::string> args{};
};

struct VatRow {
    Key<Vat> vat{};
    Day begun{};
    Day dried{};
    int season = 0;  // year its harvest was cut in
    double kg = 0;   // of harvest
    // Where several vats dried on one plate: its grams, shared by kg of harvest.
    double grams = 0;
    bool shared_plate = false;
    std::optional<double> g_per_kg;
    std::optional<double> full_cost_per_gram_booked;  // as its lot came into the books
    std::optional<double> cash_cost_per_gram_booked;
    std::optional<double> strength;  // of what was tested of it
    double hours = 0;                // hands-on at the vat
    double cash = 0;                 // all that went in, its harvest's share too
};

struct SeasonRow {
    int year = 0;  // the harvest was cut in
    int vats = 0;  // finished
    int failed_vats = 0;
    double kg = 0;
    double grams = 0;  // less lost
    std::optional<double> g_per_kg;
    std::optional<double> strength;  // empty: untested
    double dye_hours = 0;
    double cash = 0;
    std::optional<double> full_cost_per_gram;
    std::optional<double> full_difference_at_hurdle;             // a bar, at today's premium
    std::optional<double> full_difference_at_hurdle_no_premium;  // a bar
};

struct PriceSold {
    Colouring colouring{};
    double shelf_price = 0;
    double bars = 0;
};

// What the figures stand on, and what was left out of them.
struct StandsOn {
    int vats_finished = 0;  // in the window
    int vats_failed = 0;    // of these, gave nothing
    double failed_hours = 0;
    double failed_cash = 0;
    int vats_on_record = 0;  // begun by the day, any year
    int harvest_years = 0;   // with a finished vat, any year
    double kg = 0;           // harvest those vats used
    double grams_dried = 0;
    double grams_lost = 0;
    double grams_given = 0;
    double grams_sold = 0;  // as powder
    double grams_used = 0;
    double grams_left = 0;
    std::optional<double> loaves_left;          // what is left would colour
    double tested_share = 0;                    // of the grams, less lost
    std::vector<Key<Planting>> plantings_lost;  // closed in the window, never harvested
    double plantings_closed_cash = 0;           // what plantings closed in the window left, lost ones too
    double plantings_closed_hours = 0;
    double leaf_lost_cash = 0;
    double leaf_lost_hours = 0;
    double bills_cash = 0;  // avoidable dye-only bills with no bed or vat in hand
    double dye_cash = 0;    // all that counts
    std::optional<double> dye_labour;
    // left out, and named
    std::vector<Key<Planting>> standing_beds;
    double leaf_kg = 0;  // harvested, not yet vatted
    std::vector<Key<Vat>> vats_not_dry;
    double already_spent = 0;  // dye-only money spent either way

    std::optional<Allowed> allowed;  // the newest answer
    PriceFrom home_price_from{};
    PriceFrom bought_bar_price_from{};
    PriceFrom plain_price_from{};
    BoughtPriceFrom bought_price_from{};
    std::optional<double> best_g_per_kg;  // the best vat on record
};

struct Verdict {
    Key<Colour> colour{};
    Window window{};
    std::optional<Stand> ahead;  // empty: looking back
    bool from_memory = false;    // nothing of the colour is on record but the ten answers (memory.h)
    std::optional<Key<Recipe>> base_recipe;
    std::optional<Key<Material>> bought_match;
    double base_bars = 0;                         // good bars the base loaf is taken over
    std::optional<double> dose_per_loaf;          // g of the standard
    std::optional<double> dose_per_bar;           // Q, in one good bar
    std::optional<double> bought_price_per_gram;  // b, landed
    std::optional<double> hourly_target;          // W, blended over the dye hours
    double fee_share = 0;                         // f
    double fee_per_bar = 0;                       // phi
    double sales_tax = 0;                         // tau

    VerdictFigures figures;
    std::optional<VerdictFigures> if_weaker;  // untested: the same at a third of the strength
    Doubt doubt;                              // unknown where there is no model
    Ruling ruling;
    StandsOn stands_on;
    std::vector<VatRow> vats;        // finished in the window, by day
    std::vector<SeasonRow> seasons;  // on record, oldest first
    std::vector<PriceSold> sold_at;  // bars of the base recipe, last 12 months
    std::vector<VerdictFinding> findings;
};

inline constexpr int kVerdictMonths = 24;

// The months up to ledger.as_of. Requires: ledger == replay(shop, ledger.as_of); colour is in shop.
// `draws`: seasons drawn to say how sure it is; 0 leaves the doubt out, and the ruling goes by the seasons on record.
Verdict verdict(const Shop& shop, const Ledger& ledger, Key<Colour> colour, int months = kVerdictMonths,
                int draws = kDraws);

// The next season, were it like those months, at the prices of as_of. Requires: colour is in shop.
Verdict look_ahead(const Shop& shop, Day as_of, Key<Colour> colour, Stand stand, int months = kVerdictMonths,
                   int draws = kDraws);

// The colour that took most hours at bed and vat in those months, the first by code where that decides
// nothing. Empty when the shop has no colour.
std::optional<Key<Colour>> most_worked_colour(const Shop& shop, const Ledger& ledger, int months = kVerdictMonths);
std::optional<Key<Colour>> colour_by_code(const Shop& shop, std::string_view code);

}  // namespace dyestead
