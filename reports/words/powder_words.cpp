#include "reports/words/powder_words.h"

#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

struct Told {
    std::string currency;
    std::string money(double value) const { return fine_money(value, currency); }
};

// What its maker does not know yet: the colour in a bar, the price of one, or how strong the powder is.
std::string powder_alone(const PowderSold& powder, const Told& told) {
    const auto price = arg("price", told.money(powder.price_per_gram));
    const auto left = arg("left", told.money(*powder.left_per_gram));
    if (!powder.left_per_dye_hour)
        return say(
            "Sold as powder at {price} a gram, it leaves {left} a gram; what it would leave in soap is not known.",
            price, left);
    return say(
        "Sold as powder at {price} a gram, it leaves {left} a gram, {hour} for each dye hour; what it would leave in "
        "soap is not known.",
        price, left, arg("hour", told.money(*powder.left_per_dye_hour)));
}

std::string untested(const PowderSold& strong, const PowderSold& weak, const Told& told) {
    return say(
        "Sold as powder at {price} a gram, it leaves {left} a gram; poured into soap {soap} if it is as strong as the "
        "bought-in, {weak} if a third as strong.",
        arg("price", told.money(strong.price_per_gram)), arg("left", told.money(*strong.left_per_gram)),
        arg("soap", told.money(*strong.soap_left_per_gram)), arg("weak", told.money(*weak.soap_left_per_gram)));
}

std::string sell_it(const PowderSold& powder, const Told& told) {
    const auto price = arg("price", told.money(powder.price_per_gram));
    const auto left = arg("left", told.money(*powder.left_per_gram));
    const auto soap = arg("soap", told.money(*powder.soap_left_per_gram));
    if (!powder.left_per_dye_hour || !powder.soap_left_per_dye_hour)
        return say("Rather sell it as powder: at {price} a gram it leaves {left}, poured into soap {soap}.", price,
                   left, soap);
    return say(
        "Rather sell it as powder: at {price} a gram it leaves {left}, {hour} for each dye hour; poured into soap "
        "{soap}, {soap_hour} for each.",
        price, left, arg("hour", told.money(*powder.left_per_dye_hour)), soap,
        arg("soap_hour", told.money(*powder.soap_left_per_dye_hour)));
}

std::string pour_it(const PowderSold& powder, const Told& told) {
    const auto price = arg("price", told.money(powder.price_per_gram));
    const auto left = arg("left", told.money(*powder.left_per_gram));
    const auto soap = arg("soap", told.money(*powder.soap_left_per_gram));
    const auto even = arg("even", told.money(powder.even_price_per_gram.value_or(0)));
    if (!powder.left_per_dye_hour || !powder.soap_left_per_dye_hour)
        return say(
            "Rather pour it into soap than sell it as powder: a gram leaves {soap} in soap and {left} at {price}; as "
            "powder it would have to fetch {even}.",
            soap, left, price, even);
    return say(
        "Rather pour it into soap than sell it as powder: a gram leaves {soap} in soap, {soap_hour} for each dye hour, "
        "and at {price} {left}, {hour} for each; as powder it would have to fetch {even}.",
        soap, arg("soap_hour", told.money(*powder.soap_left_per_dye_hour)), price, left,
        arg("hour", told.money(*powder.left_per_dye_hour)), even);
}

}  // namespace

std::string powder_line(const Shop& shop, const Verdict& verdict) {
    const auto& powder = verdict.figures.powder;
    if (!powder || !powder->left_per_gram) return {};
    const Told told{currency_of(shop)};
    if (!powder->soap_left_per_gram) return powder_alone(*powder, told);
    if (verdict.if_weaker && verdict.if_weaker->powder && verdict.if_weaker->powder->soap_left_per_gram)
        return untested(*powder, *verdict.if_weaker->powder, told);
    return *powder->left_per_gram > *powder->soap_left_per_gram ? sell_it(*powder, told) : pour_it(*powder, told);
}

std::string powder_caution(const Verdict& verdict) {
    if (!verdict.figures.powder || !verdict.figures.powder->left_per_gram) return {};
    return tr(
        "Powder sold as such may fall under rules of its own, for labels and for what its buyers make of it: ask your "
        "adviser first. Packing it and finding buyers are not reckoned.");
}

std::string powder_selling_caution() {
    return tr(
        "To whom powder may be sold, and under which rules, is for your local codes: ask your adviser before the first "
        "pack goes out.");
}

}  // namespace dyestead::reports
