#include "reports/words/verdict_finding_words.h"

#include "domain/text/decimal.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

using std::string_view;
using Code = VerdictFindingCode;

// `name` is of the fact it is about, `detail` its first argument, made readable.
struct Words {
    string_view code;
    string_view sentence;
};

Words words(Code code, string_view detail) {
    const bool own = detail == "own";
    const bool plain = detail == "plain";
    switch (code) {
        case Code::strength_untested:
            return {"strength-untested",
                    message("The shade of the {name} powder was never tried against the bought-in one, so its strength "
                            "is not known: make a test bar of each and note how much is needed for the same shade.")};
        case Code::strength_partly_tested:
            return {"strength-partly-tested",
                    message("Only {detail} of the {name} powder was tried for its shade; the strength is taken from "
                            "that part: try the rest too.")};
        case Code::price_from_belief:
            if (own) {
                return {"price-from-belief",
                        message("No shelf price of {name} with your own colour is on record, so what you believe "
                                "people would pay is taken: enter a price when you set one.")};
            }
            if (plain) {
                return {"price-from-belief",
                        message("No shelf price of plain {name} is on record, so what you believe people would pay is "
                                "taken: enter a price when you set one.")};
            }
            return {"price-from-belief",
                    message("No shelf price of {name} with bought-in colour is on record, so what you believe people "
                            "would pay is taken: enter a price when you set one.")};
        case Code::price_from_plain:
            if (own) {
                return {"price-from-plain",
                        message("No price of {name} with your own colour is on record, so the plain bar's price is "
                                "taken: enter one, or what you believe people would pay.")};
            }
            return {"price-from-plain",
                    message("No price of {name} with bought-in colour is on record, so the plain bar's price is taken: "
                            "enter one, or what you believe people would pay.")};
        case Code::no_price:
            if (own) {
                return {
                    "no-price", message("Nothing says what {name} with your own colour sells at: enter its price.")};
            }
            if (plain) return {"no-price", message("Nothing says what plain {name} sells at: enter its price.")};
            return {"no-price", message("Nothing says what {name} with bought-in colour sells at: enter its price.")};
        case Code::no_bought_match:
            return {"no-bought-match",
                    message("No bought-in colourant is named to hold the {name} against: say which one gives the same "
                            "colour.")};
        case Code::bought_never_bought:
            return {"bought-never-bought",
                    message("{name} was never delivered, so a supplier's price stands in for what it would cost: "
                            "enter its delivery when there is one.")};
        case Code::bought_price_unknown:
            return {"bought-price-unknown",
                    message("Nothing says what {name} costs: enter a delivery of it or a supplier's price.")};
        case Code::no_base_recipe:
            return {"no-base-recipe",
                    message("No loaf of a recipe for the {name} was poured and cut in this time, so there is no bar to "
                            "reckon with: record one.")};
        case Code::colour_never_poured:
            return {"colour-never-poured",
                    message("No bar of {name} was poured in this colour in this time; its plain bars are taken as the "
                            "base, and nothing shows yet how the colour turns out.")};
        case Code::no_dose:
            return {
                "no-dose", message("The recipe {name} does not say how much colour goes into a loaf: enter its dose.")};
        case Code::bars_not_wrapped:
            return {"bars-not-wrapped",
                    message("{detail} good bars of {name} are not wrapped yet, so the cost of wrapping is counted on "
                            "the others only.")};
        case Code::no_vat_finished:
            return {"no-vat-finished",
                    message("No vat of the {name} was dried in this time: dry one and weigh the powder.")};
        case Code::method_missing:
            return {"method-missing",
                    message("No method says what some vats of the {name} take whatever their size, so all the time "
                            "of these is counted by the vat and all their money by the kilo of harvest: name the "
                            "method they went by.")};
        case Code::weighed_damp:
            return {"weighed-damp",
                    message("The powder of the vat {name} was weighed damp, so how much of it is water is not known "
                            "and the vat is left out: weigh it dry.")};
        case Code::no_sales_yet:
            return {"no-sales-yet",
                    message("Nothing was sold in the last 12 months, so fees are taken from the settings and the time "
                            "of selling is not known: enter fairs and sales.")};
        case Code::no_fair_in_12_months:
            return {"no-fair-in-12-months",
                    message("No fair of the last 12 months was stood to its end, so an hour of soap is reckoned as if "
                            "every bar sold: enter how the fairs went.")};
        case Code::more_came_home:
            return {"more-came-home",
                    message("From most fairs of the last 12 months bars came home, so more soap would not have sold: "
                            "an hour of soap is worth less than it looks.")};
        case Code::no_plain_recipe:
            return {"no-plain-recipe",
                    message("No recipe without colour is on record, so what the same hour would earn with more soap is "
                            "not known.")};
        case Code::no_hourly_target:
            return {"no-hourly-target",
                    message("Nothing says what an hour of yours should bring, so costs with your time are not known: "
                            "enter it if you want advice.")};
        case Code::allowed_not_asked:
            return {"allowed-not-asked",
                    message("Nobody is on record as asked whether the {name} is allowed where you sell: ask the "
                            "assessor and enter the answer.")};
        case Code::allowed_no:
            return {"allowed-no", message("The answer {name} says that this colour is not allowed where you sell.")};
        case Code::allowed_waiting:
            return {"allowed-waiting",
                    message("The answer {name}, whether this colour is allowed where you sell, is still to come.")};
    }
    return {};
}

std::string name_in_a_sentence(const Shop& shop, FactRef about) {
    if (about.kind == kKindOf<dyestead::Colour>) return colour_in_a_sentence(shop, {about.key});
    return called(shop, about);
}

std::string readable(Code code, const std::string& detail) {
    if (code != Code::strength_partly_tested) return detail;
    const auto share = read_decimal(detail);
    if (!share) return detail;
    return shown_percent(static_cast<double>((*share).digits) / static_cast<double>(power_of_ten((*share).places)));
}

}  // namespace

string_view code_of(Code code) {
    return words(code, "own").code;
}

std::vector<FindingLine> verdict_finding_lines(const Shop& shop, const std::vector<VerdictFinding>& findings) {
    std::vector<FindingLine> lines;
    for (const VerdictFinding& finding : findings) {
        const std::string detail = finding.args.empty() ? std::string{} : finding.args.front();
        const Words say_it = words(finding.code, detail);
        lines.push_back({std::string{say_it.code},
                         say(say_it.sentence, arg("name", name_in_a_sentence(shop, finding.about)),
                             arg("detail", readable(finding.code, detail))),
                         name_of(shop, finding.about)});
    }
    return lines;
}

}  // namespace dyestead::reports
