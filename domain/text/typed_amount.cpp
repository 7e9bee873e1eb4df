#include <algorithm>

#include "domain/text/decimal.h"
#include "domain/text/typed.h"
#include "domain/text/typed_tokens.h"
#include "domain/text/typed_units.h"

namespace dyestead {

namespace {

constexpr auto kMost = kLargestStatedBase;

// What the maker calls the thing that there is some of, where it is no measure of theirs: half a packet.
constexpr std::array<std::string_view, 7> kHolders{"packet", "pack", "bag", "tub", "bottle", "jar", "tin"};

struct Sum {
    Amount amount;
    bool bare = false;  // a number without a unit
};

class AmountReader {
public:
    AmountReader(std::vector<Token> tokens, const Measuring& measuring)
        : words_{std::move(tokens)}, measuring_{measuring} {}

    Read<Amount> read() {
        const Mark mark = words_.take_mark();
        if (words_.done()) return TroubleId::blank;
        auto sum = whole_text();
        if (!sum) return *sum.trouble;
        if (!words_.done()) return TroubleId::not_an_amount;
        Amount amount = (*sum).amount;
        if (mark != Mark::measured) amount.mark = mark;
        return amount;
    }

private:
    Read<Sum> whole_text() {
        if (words_.take("all")) {
            if (words_.take("of")) words_.take("it");
            return of_there({1, 1});
        }
        const auto times = words_.take_times();
        if (!times) return *times.trouble;
        const auto sum = read_sum(std::max<std::int64_t>(*times, 1));
        if (!sum || *times != 0) return sum;
        if (words_.take("-")) return less_the_tub(*sum);
        if (words_.take("/")) return one_of_several(*sum);
        return sum;
    }

    Read<Sum> less_the_tub(const Sum& full) {
        const auto tub = read_sum(1);
        if (!tub) return *tub.trouble;
        // 3 - 4 kg may well be from three to four.
        if (full.bare || (*tub).bare) return TroubleId::unit_missing;
        if (full.amount.quantity.kind() != (*tub).amount.quantity.kind()) return TroubleId::kinds_added;
        if (full.amount.quantity < (*tub).amount.quantity) return TroubleId::takes_off_more;
        Sum left = full;
        left.amount.quantity -= (*tub).amount.quantity;
        left.amount.mark = either((*tub).amount.mark, full.amount.mark);
        return left;
    }

    Read<Sum> one_of_several(Sum sum) {
        const auto number = words_.take_number();
        if (!number) return *number.trouble;
        if (!*number || (*number)->part || (*number)->value.bottom != 1 || (*number)->value.top == 0)
            return TroubleId::not_an_amount;
        const auto base = in_whole_base(1, {sum.amount.quantity.in_base(), (*number)->value.top}, {1, 1}, kMost);
        sum.amount.quantity = Quantity{sum.amount.quantity.kind(), *base};
        return sum;
    }

    // Terms one after another: 2 lb 4 oz.
    Read<Sum> read_sum(std::int64_t times) {
        if (words_.take("-")) return words_.at(TokenKind::number) ? TroubleId::below_zero : TroubleId::not_a_number;
        auto sum = read_term(times);
        if (!sum) return *sum.trouble;
        Sum total = *sum;
        while (words_.at(TokenKind::number) || words_.text() == "and") {
            if (total.bare) return TroubleId::not_an_amount;
            words_.take("and");
            const auto next = read_term(times);
            if (!next) return *next.trouble;
            if ((*next).bare) return TroubleId::unit_missing;
            const Amount& amount = (*next).amount;
            if (amount.quantity.kind() != total.amount.quantity.kind()) return TroubleId::kinds_added;
            total.amount.quantity += amount.quantity;
            if (total.amount.quantity.in_base() > kMost) return TroubleId::too_large;
            total.amount.mark = either(total.amount.mark, amount.mark);
        }
        return total;
    }

    Read<Sum> read_term(std::int64_t times) {
        const auto number = words_.take_number();
        if (!number) return *number.trouble;
        if (!*number) return TroubleId::not_a_number;
        const Ratio value = (*number)->value;
        const bool part = (*number)->part;
        if (part) {
            words_.take("of");
            if (words_.take("it")) return of_there(value);
            if (words_.take("the")) {
                take_unit_words();
                return of_there(value);
            }
            if (!words_.take("an")) words_.take("a");
        }
        const std::string unit_words = take_unit_words();
        if (unit_words.empty()) return part ? of_there(value) : bare(times, value);
        const auto unit = read_typed_unit(unit_words, measuring_);
        if (!unit) {
            const bool holder = part && std::ranges::find(kHolders, unit_words) != kHolders.end();
            if (holder) return of_there(value);
            return *unit.trouble;
        }
        const auto base = in_whole_base(times, value, (*unit).base, kMost);
        if (!base) return *base.trouble;
        return Sum{{Quantity{(*unit).kind, *base}, (*unit).unit, (*unit).mark}};
    }

    Read<Sum> bare(std::int64_t times, Ratio value) const {
        if (measuring_.kind.value_or(Kind::count) != Kind::count) return TroubleId::unit_missing;
        const auto base = in_whole_base(times, value, info(Unit::piece).base, kMost);
        if (!base) return *base.trouble;
        return Sum{{Quantity{Kind::count, *base}, Unit::piece}, true};
    }

    Read<Sum> of_there(Ratio part) const {
        if (!measuring_.there) return TroubleId::part_of_what;
        Amount amount = *measuring_.there;
        const auto base = in_whole_base(1, part, {amount.quantity.in_base(), 1}, kMost);
        if (!base) return *base.trouble;
        amount.quantity = Quantity{amount.quantity.kind(), *base};
        return Sum{amount};
    }

    std::string take_unit_words() {
        std::string unit;
        while (words_.at(TokenKind::word) && words_.text() != "x" && words_.text() != "and") {
            if (!unit.empty()) unit += ' ';
            unit += words_.text();
            words_.skip();
        }
        return unit;
    }

    // The less sure of two marks is the mark of their sum.
    static Mark either(Mark a, Mark b) { return a == Mark::measured ? b : a; }

    TypedWords words_;
    const Measuring& measuring_;
};

}  // namespace

Read<Amount> read_typed_amount(std::string_view text, const Measuring& measuring) {
    const bool as_in_the_books = trimmed(text) == "=";
    return AmountReader{tokens_of(as_in_the_books ? std::string{"all"} : plain_text(text)), measuring}.read();
}

std::string print_typed(const Amount& amount, Spoons spoons) {
    std::string text = print(amount);
    const bool metric_spoon = amount.unit == Unit::tsp || amount.unit == Unit::tbsp;
    if (metric_spoon && spoons == Spoons::us) text.insert(text.rfind(' ') + 1, "metric ");
    return text;
}

}  // namespace dyestead
