#include "reports/words/currency.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

using std::string_view;

constexpr std::array<string_view, 17> kNoPlaces{"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG",
                                                "RWF", "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF"};
constexpr std::array<string_view, 7> kThreePlaces{"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"};
constexpr std::array<string_view, 2> kFourPlaces{"CLF", "UYW"};

struct CurrencySign {
    string_view currency;
    string_view sign;
};
constexpr std::array<CurrencySign, 5> kSigns{{{"GBP", "£"}, {"EUR", "€"}, {"USD", "$"}, {"JPY", "¥"}, {"INR", "₹"}}};

bool among(const auto& list, string_view currency) {
    return std::ranges::find(list, currency) != list.end();
}

}  // namespace

int minor_places(string_view currency) {
    if (among(kNoPlaces, currency)) return 0;
    if (among(kThreePlaces, currency)) return 3;
    if (among(kFourPlaces, currency)) return 4;
    return 2;
}

string_view currency_sign(string_view currency) {
    const auto* found = std::ranges::find(kSigns, currency, &CurrencySign::currency);
    return found == kSigns.end() ? string_view{} : found->sign;
}

std::string with_currency(string_view digits, bool negative, string_view currency) {
    const string_view minus = negative ? "-" : "";
    const string_view sign = currency_sign(currency);
    if (currency.empty()) return fmt::format("{}{}", minus, digits);
    if (!sign.empty())
        // TRANSLATORS: an amount of money with its sign: -£12.50.
        return say("{minus}{sign}{digits}", arg("minus", std::string{minus}), arg("sign", std::string{sign}),
                   arg("digits", std::string{digits}));
    return fmt::format("{}{}\u00a0{}", minus, digits, currency);
}

}  // namespace dyestead::reports
