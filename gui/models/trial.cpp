#include "gui/models/trial.h"

#include <algorithm>
#include <cmath>

#include "domain/text/decimal.h"
#include "reports/words/currency.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

// What the colour of one bar takes beyond a plain bar.
struct ColourPart {
    double cash = 0;
    double minutes = 0;
    double price = 0;  // shelf
};

ColourPart home(const Model& model) {
    return {model.home_cash() + model.home_cash_per_bar, model.home_minutes() + model.home_minutes_per_bar,
            model.home_price};
}

ColourPart bought(const Model& model) {
    return {model.bought_cash(), model.bought_minutes_per_bar, model.bought_price};
}

ColourPart plain(const Model& model) {
    return {0, 0, model.plain_price};
}

class Trial {
public:
    Trial(const Verdict& verdict, const Model& tried) : verdict_{verdict}, was_{*verdict.figures.model}, now_{tried} {}

    Alternative bar(Alternative bar, ColourPart (*part)(const Model&)) const {
        if (!bar.cash_cost_per_bar) return bar;
        const ColourPart before = part(was_);
        const ColourPart after = part(now_);
        *bar.materials_per_bar += after.cash - before.cash;
        *bar.cash_cost_per_bar += after.cash - before.cash;
        const double minutes = *bar.hands_on_minutes_per_bar;
        bar.hands_on_minutes_per_bar = minutes + after.minutes - before.minutes;
        const double rest_minutes = minutes - before.minutes;
        const double rest_labour = rest(bar, before, rest_minutes);
        if (verdict_.hourly_target || now_.hourly_target > 0) {
            bar.labour_per_bar = rest_labour + now_.target_per_minute() * after.minutes;
            bar.full_cost_per_bar = *bar.cash_cost_per_bar + *bar.labour_per_bar;
        }
        if (bar.shelf_price_per_bar) left_over(bar, after.price);
        return bar;
    }

private:
    // The dial is a factor on all hourly targets: bench people may have another than dye people.
    double rest(const Alternative& bar, const ColourPart& before, double rest_minutes) const {
        if (was_.hourly_target <= 0) return now_.target_per_minute() * rest_minutes;
        const double labour = bar.labour_per_bar.value_or(0) - was_.target_per_minute() * before.minutes;
        return labour * now_.hourly_target / was_.hourly_target;
    }

    void left_over(Alternative& bar, double shelf) const {
        bar.shelf_price_per_bar = shelf;
        bar.price_per_bar = shelf / (1 + now_.sales_tax);
        bar.fees_per_bar = now_.fee_share * shelf + verdict_.fee_per_bar;
        bar.cash_margin_per_bar = *bar.price_per_bar - *bar.fees_per_bar - *bar.cash_cost_per_bar;
        if (bar.labour_per_bar) bar.full_margin_per_bar = *bar.cash_margin_per_bar - *bar.labour_per_bar;
        const double minutes = *bar.hands_on_minutes_per_bar;
        bar.earnings_per_hour = minutes > 0 ? std::optional{*bar.cash_margin_per_bar / (minutes / 60)} : std::nullopt;
        if (!bar.selling_cost_per_bar || !bar.selling_minutes_per_bar) return;
        const double all = minutes + *bar.selling_minutes_per_bar;
        if (all > 0) {
            bar.earnings_per_hour_with_selling = (*bar.cash_margin_per_bar - *bar.selling_cost_per_bar) / (all / 60);
        }
    }

    const Verdict& verdict_;
    const Model& was_;
    const Model& now_;
};

std::optional<double> hurdle(const Verdict& verdict, const Model& tried) {
    const auto soap = verdict.figures.extra_dye_hour.soap_hour;
    if (!verdict.hourly_target && tried.hourly_target <= 0) return soap;
    return std::max(tried.hourly_target, soap.value_or(tried.hourly_target));
}

}  // namespace

VerdictFigures tried_figures(const Verdict& verdict, const Model& tried) {
    const Trial trial{verdict, tried};
    VerdictFigures figures = verdict.figures;
    figures.model = tried;
    figures.home = trial.bar(figures.home, home);
    figures.bought = trial.bar(figures.bought, bought);
    figures.plain = trial.bar(figures.plain, plain);
    figures.premium = tried.premium();
    figures.home_less_bought = home_less_bought(tried);
    if (figures.home_less_plain) figures.home_less_plain = home_less_plain(tried);
    if (figures.bought_less_plain) figures.bought_less_plain = bought_less_plain(tried);
    figures.breakeven = breakevens(tried);
    figures.breakeven_cash = cash_breakevens(tried);
    figures.extra_dye_hour.earned = figures.home_less_bought->earned_per_hour();
    figures.extra_dye_hour.hurdle = hurdle(verdict, tried);
    figures.full_difference_at_hurdle.reset();
    figures.premium_at_hurdle.reset();
    figures.hurdle_turns_it = false;
    if (const auto hour = figures.extra_dye_hour.hurdle) {
        const double at_hurdle = figures.home_less_bought->full(*hour);
        figures.full_difference_at_hurdle = at_hurdle;
        const double at_target = figures.home_less_bought->full(tried.hourly_target);
        figures.hurdle_turns_it = tried.hourly_target > 0 && (at_target >= 0) != (at_hurdle >= 0);
        if (tried.kept_share() > 0) figures.premium_at_hurdle = tried.premium() - at_hurdle / tried.kept_share();
    }
    return figures;
}

std::string tried_headline(const std::string& colour, const VerdictFigures& tried, const std::string& currency) {
    const auto hour = tried.extra_dye_hour.hurdle;
    const double difference = hour ? tried.home_less_bought->full(*hour) : tried.home_less_bought->cash;
    const auto name = arg("colour", colour);
    const std::string size = reports::shown_money(std::abs(difference), currency);
    const auto money = arg("money", size);
    const double least = 1.0 / static_cast<double>(power_of_ten(reports::minor_places(currency)));
    const bool even = std::abs(difference) < least / 2;
    if (!hour) {
        if (even)
            return say(
                "If it were so, growing the {colour} and buying it in would leave you the same, your hours aside.",
                name);
        if (difference > 0) {
            return say(
                "If it were so, growing the {colour} would leave you {money} more a bar than buying it in, your hours "
                "aside.",
                name, money);
        }
        return say(
            "If it were so, growing the {colour} would leave you {money} less a bar than buying it in, even with your "
            "hours free.",
            name, money);
    }
    const std::string worth = reports::shown_money(*hour, currency);
    const auto an_hour = arg("hour", worth);
    if (even) {
        return say("If it were so, growing the {colour} and buying it in would come out even, an hour taken at {hour}.",
                   name, an_hour);
    }
    if (difference > 0) {
        return say(
            "If it were so, growing the {colour} would pay: {money} more a bar than buying it in, an hour taken at "
            "{hour}.",
            name, money, an_hour);
    }
    return say(
        "If it were so, buying the {colour} in would pay better: growing it leaves {money} less a bar, an hour taken "
        "at "
        "{hour}.",
        name, money, an_hour);
}

}  // namespace dyestead::gui
