#include "domain/text/typed.h"

#include <algorithm>

#include "domain/text/decimal.h"
#include "domain/text/typed_tokens.h"

namespace dyestead {

namespace {

struct CurrencySign {
    std::string_view sign;
    std::string_view codes;
};

constexpr std::array<CurrencySign, 4> kSigns{
    {{"£", "gbp"}, {"€", "eur"}, {"$", "usd aud cad nzd sgd hkd"}, {"¥", "jpy cny"}}};

// Takes a sign or a code of three letters off either end; false when it is of another currency than `currency`.
bool take_currency(std::string_view& text, std::string_view currency) {
    for (const auto& [sign, codes] : kSigns) {
        if (text.starts_with(sign))
            text.remove_prefix(sign.size());
        else if (text.ends_with(sign))
            text.remove_suffix(sign.size());
        else
            continue;
        text = trimmed(text);
        return currency.empty() || codes.find(currency) != std::string_view::npos;
    }
    constexpr std::size_t kCode = 3;
    const auto is_code = [](std::string_view word) {
        return std::ranges::all_of(word, [](char c) { return c >= 'a' && c <= 'z'; });
    };
    if (text.size() <= kCode) return true;
    const auto front = text.substr(0, kCode);
    const auto back = text.substr(text.size() - kCode);
    if (!is_code(front) && !is_code(back)) return true;
    text = trimmed(is_code(front) ? text.substr(kCode) : text.substr(0, text.size() - kCode));
    return currency.empty() || currency == (is_code(front) ? front : back);
}

// Digits with one decimal mark, thousands parted by blanks or by nothing.
Read<std::string> one_number(std::string_view text) {
    const auto blank = text.find(' ');
    if (blank == std::string_view::npos) return pointed(text);
    std::string joined{text.substr(0, blank)};
    if (blank > 3 || joined.find_first_of(".,") != std::string::npos) return TroubleId::not_a_number;
    for (auto rest = text.substr(blank); !rest.empty();) {
        constexpr std::size_t kGroup = 3;
        const auto digits = std::min(rest.find_first_not_of("0123456789", 1), rest.size()) - 1;
        const bool more = rest.size() > digits + 1 && rest[digits + 1] == ' ';
        if (rest[0] != ' ' || digits != kGroup) return TroubleId::not_a_number;
        joined += rest.substr(1, more ? kGroup : std::string_view::npos);
        rest = more ? rest.substr(kGroup + 1) : std::string_view{};
    }
    return pointed(joined);
}

}  // namespace

std::string with_point(std::string_view text) {
    std::string pointed{trimmed(text)};
    if (std::ranges::count(pointed, ',') == 1 && pointed.find('.') == std::string::npos)
        std::ranges::replace(pointed, ',', '.');
    return pointed;
}

Read<Money> read_typed_money(std::string_view text, std::string_view currency) {
    const std::string plain = plain_text(text);
    std::string_view number = plain;
    if (!take_currency(number, plain_text(currency))) return TroubleId::other_currency;
    const auto digits = one_number(number);
    if (!digits) return *digits.trouble;
    return read_money(*digits);
}

Read<Ratio> read_typed_ratio(std::string_view text) {
    const std::string plain = plain_text(text);
    const auto end = std::min(plain.find_first_not_of("0123456789.,"), plain.size());
    const auto number = pointed(plain.substr(0, end));
    if (!number) return *number.trouble;
    return read_ratio(*number + plain.substr(end));
}

Read<int> read_typed_count(std::string_view text) {
    const auto digits = one_number(plain_text(text));
    if (!digits) return *digits.trouble;
    const auto decimal = read_decimal(*digits);
    if (!decimal) return *decimal.trouble;
    if ((*decimal).digits < 0) return TroubleId::below_zero;
    if ((*decimal).places > 0) return TroubleId::not_a_whole_number;
    constexpr std::int64_t kMost = 1'000'000'000;
    if ((*decimal).digits > kMost) return TroubleId::too_large;
    return static_cast<int>((*decimal).digits);
}

}  // namespace dyestead
