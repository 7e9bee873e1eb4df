#include "domain/text/typed_tokens.h"

#include <algorithm>
#include <array>

#include "domain/text/decimal.h"
#include "domain/text/typed_words.h"

namespace dyestead {

namespace {

constexpr std::string_view kDigits = "0123456789";
constexpr std::string_view kMarks = ".,";

bool digit(char c) {
    return c >= '0' && c <= '9';
}

// One sign or word character: letters, and any byte of a letter beyond ASCII.
bool in_word(char c) {
    return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

struct Spelling {
    std::string_view from;
    std::string_view to;
};

constexpr std::array<Spelling, 12> kPlain{{
    {"\u00a0", " "},
    {"\u202f", " "},
    {"\u2009", " "},
    {"\u00d7", "x"},
    {"\u2212", "-"},
    {"\u2013", "-"},
    {"\u00b2", "2"},
    {"\u00bd", " 1/2"},
    {"\u00bc", " 1/4"},
    {"\u00be", " 3/4"},
    {"\u2153", " 1/3"},
    {"\u2154", " 2/3"},
}};

constexpr std::array<std::string_view, 13> kNumberWords{
    "", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"};

struct PartWord {
    std::string_view name;
    std::int64_t bottom;
};

constexpr std::array<PartWord, 5> kPartWords{
    {{"half", 2}, {"third", 3}, {"thirds", 3}, {"quarter", 4}, {"quarters", 4}}};

const PartWord* part_word(std::string_view word) {
    const auto* const found = std::ranges::find(kPartWords, word, &PartWord::name);
    return found == kPartWords.end() ? nullptr : found;
}

std::size_t number_end(std::string_view text) {
    const auto end = std::min(text.find_first_not_of("0123456789.,"), text.size());
    // A point or comma that ends it belongs to the sentence.
    return text.find_last_of(kDigits, end - 1) + 1;
}

std::size_t word_end(std::string_view text) {
    std::size_t end = 0;
    while (end < text.size() && in_word(text[end])) ++end;
    const auto word = text.substr(0, end);
    if ((word == "m" || word == "cm" || word == "ft") && text.substr(end).starts_with('2')) ++end;
    return end;
}

}  // namespace

std::string plain_text(std::string_view text) {
    std::string plain;
    for (std::size_t at = 0; at < text.size();) {
        const auto* const known =
            std::ranges::find_if(kPlain, [&](const Spelling& each) { return text.substr(at).starts_with(each.from); });
        if (known != kPlain.end()) {
            plain += known->to;
            at += known->from.size();
            continue;
        }
        const char c = text[at++];
        plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c == '\t' ? ' ' : c;
    }
    return std::string{trimmed(plain)};
}

std::vector<Token> tokens_of(std::string_view plain) {
    std::vector<Token> tokens;
    while (!(plain = trimmed(plain)).empty()) {
        const bool bare_mark = plain.size() > 1 && kMarks.find(plain[0]) != std::string_view::npos && digit(plain[1]);
        std::size_t end = 1;
        TokenKind kind = TokenKind::sign;
        if (digit(plain[0]) || bare_mark) {
            kind = TokenKind::number;
            end = number_end(plain);
        } else if (in_word(plain[0])) {
            kind = TokenKind::word;
            end = word_end(plain);
        }
        const auto text = plain.substr(0, end);
        tokens.push_back({kind, std::string{kind == TokenKind::word ? in_english(text) : text}});
        plain.remove_prefix(end);
        if (kind == TokenKind::word && plain.starts_with('.')) plain.remove_prefix(1);
    }
    return tokens;
}

Read<std::string> pointed(std::string_view digits) {
    const auto marks = std::ranges::count_if(digits, [](char c) { return kMarks.find(c) != std::string_view::npos; });
    if (marks > 1) return TroubleId::which_decimal_mark;
    std::string text{digits};
    const auto comma = text.find(',');
    if (comma == std::string::npos) return text;
    const bool like_thousands = comma >= 1 && comma <= 3 && text.size() - comma == 4 && text[0] != '0';
    if (like_thousands) return TroubleId::which_decimal_mark;
    text[comma] = '.';
    return text;
}

bool TypedWords::take(std::string_view text) {
    if (done() || tokens_[at_].text != text) return false;
    ++at_;
    return true;
}

Mark TypedWords::take_mark() {
    if (take("~") || take("about")) return Mark::about;
    const auto before = at_;
    if (take("method") && take(":")) return Mark::from_method;
    at_ = before;
    return Mark::measured;
}

Read<std::int64_t> TypedWords::take_times() {
    constexpr std::int64_t kMost = 1'000'000;
    const auto before = at_;
    const auto number = take_number();
    if (!number) return *number.trouble;
    const bool whole = *number && !(*number)->part && (*number)->value.bottom == 1;
    if (!whole || !(take("x") || take("*"))) {
        at_ = before;
        return 0;
    }
    if ((*number)->value.top > kMost) return TroubleId::too_large;
    return (*number)->value.top;
}

Read<std::optional<Ratio>> TypedWords::take_digits() {
    if (!at(TokenKind::number)) return std::optional<Ratio>{};
    const auto text = pointed(tokens_[at_].text);
    if (!text) return *text.trouble;
    const auto decimal = read_decimal(*text);
    if (!decimal) return *decimal.trouble;
    ++at_;
    return std::optional<Ratio>{{(*decimal).digits, power_of_ten((*decimal).places)}};
}

Read<std::optional<TypedWords::Number>> TypedWords::take_number() {
    constexpr std::int64_t kMostInFraction = 1'000'000;
    std::optional<Number> number;
    const auto first = take_digits();
    if (!first) return *first.trouble;
    if (*first) {
        number = Number{.value = **first};
        // 1/2, 1 1/2
        const auto before = at_;
        const auto second = take_digits();
        if (!second) return *second.trouble;
        Ratio whole{};
        Ratio top = **first;
        if (*second) {
            whole = top;
            top = **second;
        }
        if (take("/") && at(TokenKind::number)) {
            const auto bottom = take_digits();
            if (!bottom) return *bottom.trouble;
            if (whole.bottom != 1 || top.bottom != 1 || (*bottom)->bottom != 1 || (*bottom)->top == 0)
                return TroubleId::not_a_number;
            if (whole.top > kMostInFraction || top.top > kMostInFraction || (*bottom)->top > kMostInFraction)
                return TroubleId::too_large;
            number->value = {whole.top * (*bottom)->top + top.top, (*bottom)->top};
        } else {
            at_ = before;
        }
    } else if (const auto* const named = std::ranges::find(kNumberWords, text());
               !text().empty() && named != kNumberWords.end()) {
        number = Number{.value = {named - kNumberWords.begin(), 1}};
        ++at_;
    } else if (take("a") || take("an")) {
        number = Number{.value = {1, 1}, .article = true};
    }

    if (const auto* const part = part_word(text()); part != nullptr) {
        ++at_;
        const Ratio of = number ? number->value : Ratio{1, 1};
        if (of.bottom != 1) return TroubleId::not_a_number;
        return std::optional<Number>{{.value = {of.top, part->bottom}, .part = true}};
    }
    const auto before = at_;
    if (number && !number->article && take("and") && take("a") && take("half"))
        number->value = {number->value.top * 2 + number->value.bottom, number->value.bottom * 2};
    else
        at_ = before;
    return number;
}

Read<std::int64_t> in_whole_base(std::int64_t count, Ratio number, Ratio base, std::int64_t largest) {
    const Wide top = static_cast<Wide>(count) * number.top * base.top;
    const Wide bottom = static_cast<Wide>(number.bottom) * base.bottom;
    const Wide rounded = (top + bottom / 2) / bottom;
    if (rounded > largest) return TroubleId::too_large;
    return narrow(rounded);
}

}  // namespace dyestead
