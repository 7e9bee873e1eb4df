// typed_tokens.h - which words, numbers and signs is a typed text made of? For the readers of typed.h alone.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/text/trouble.h"
#include "domain/values/ratio.h"
#include "domain/values/unit.h"

namespace dyestead {

// ASCII small letters; signs that word processors put for plain ones made plain: a multiplication cross is x, a dash -,
// a half 1/2, a fixed blank a blank.
std::string plain_text(std::string_view text);

enum class TokenKind : std::uint8_t { number, word, sign };

struct Token {
    TokenKind kind;
    std::string text;
};

// A number holds its decimal marks as typed. `m2` and the like are one word; a point after a word is dropped.
std::vector<Token> tokens_of(std::string_view plain);

// Digits with at most one decimal mark, comma or point. Trouble which_decimal_mark where two marks stand, or where one
// comma could as well part off thousands.
Read<std::string> pointed(std::string_view digits);

// Walks over the tokens of one text.
class TypedWords {
public:
    explicit TypedWords(std::vector<Token> tokens) : tokens_{std::move(tokens)} {}

    bool done() const { return at_ == tokens_.size(); }
    bool at(TokenKind kind) const { return !done() && tokens_[at_].kind == kind; }
    std::string_view text() const { return done() ? std::string_view{} : std::string_view{tokens_[at_].text}; }
    void skip() { ++at_; }
    // Steps over it if it stands here.
    bool take(std::string_view text);
    std::size_t place() const { return at_; }
    void back_to(std::size_t place) { at_ = place; }

    // `~` or `about`, or `method:` as it is printed.
    Mark take_mark();
    // `3 x` before something; nothing if none stands here. Trouble too_large beyond a million.
    Read<std::int64_t> take_times();
    // 1.5, 1/2, 1 1/2, two, a, half, two thirds. `part`: a word for a fraction was in it. Nothing where no number
    // stands here.
    struct Number {
        Ratio value;
        bool part = false;
        bool article = false;  // a or an alone
    };
    Read<std::optional<Number>> take_number();

private:
    Read<std::optional<Ratio>> take_digits();
    std::vector<Token> tokens_;
    std::size_t at_ = 0;
};

// count * number * base, rounded half away from zero; too_large beyond `largest`.
Read<std::int64_t> in_whole_base(std::int64_t count, Ratio number, Ratio base, std::int64_t largest);

}  // namespace dyestead
