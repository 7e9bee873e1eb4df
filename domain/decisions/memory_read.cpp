#include <algorithm>

#include "domain/decisions/memory_kept.h"
#include "domain/decisions/records.h"
#include "domain/text/decimal.h"
#include "domain/text/typed.h"

namespace dyestead {
namespace {

// What a blank was read as, in the unit the memory keeps it in.
using Taken = Read<double>;

Taken minutes_of(std::string_view text) {
    const auto span = read_typed_span(text);
    if (!span) return *span.trouble;
    return number((*span).time);
}

Taken money_of(std::string_view text, std::string_view currency) {
    const auto money = read_typed_money(text, currency);
    if (!money) return *money.trouble;
    return number(*money);
}

Taken grams_of(std::string_view text) {
    Measuring measuring;
    measuring.kind = Kind::mass;
    const auto amount = read_typed_amount(text, measuring);
    if (!amount) return *amount.trouble;
    if ((*amount).quantity.kind() != Kind::mass) return TroubleId::wrong_kind_of_amount;
    return static_cast<double>((*amount).quantity.in_base()) / 1e3;
}

Taken count_of(std::string_view text) {
    const auto count = read_typed_count(text);
    if (!count) return *count.trouble;
    return static_cast<double>(*count);
}

// A word of StrengthWord, or a number: 0.4, 1/3.
Taken strength_of_words(std::string_view text) {
    switch (static_cast<StrengthWord>(std::ranges::find(kWords<StrengthWord>, text) - kWords<StrengthWord>.begin())) {
        case StrengthWord::as_strong: return 1.0;
        case StrengthWord::half: return 1.0 / 2;
        case StrengthWord::third: return 1.0 / 3;
        case StrengthWord::tenth: return 1.0 / 10;
        case StrengthWord::never_tried: return 0.0;
        default: break;
    }
    const auto ratio = read_typed_ratio(text);
    if (!ratio || (*ratio).top <= 0) return TroubleId::not_one_of;
    return number(*ratio);
}

Taken taken(Recalled blank, std::string_view text, std::string_view currency) {
    switch (blank) {
        case Recalled::plant:
        case Recalled::colour: return 0.0;
        case Recalled::garden_hours:
        case Recalled::vat_time: return minutes_of(text);
        case Recalled::vats:
        case Recalled::loaf_bars: return count_of(text);
        case Recalled::powder:
        case Recalled::dose:
        case Recalled::bought_amount: return grams_of(text);
        case Recalled::strength: return strength_of_words(text);
        case Recalled::money_out:
        case Recalled::bought_price:
        case Recalled::plain_bar:
        case Recalled::bought_bar:
        case Recalled::own_bar:
        case Recalled::hour: return money_of(text, currency);
    }
    return 0.0;
}

// Nought of these is no answer: something is divided by them.
bool must_be_more_than_nothing(Recalled blank) {
    switch (blank) {
        case Recalled::vats:
        case Recalled::powder:
        case Recalled::dose:
        case Recalled::loaf_bars:
        case Recalled::bought_amount: return true;
        default: return false;
    }
}

std::string choices_of_strength() {
    std::string list;
    for (const std::string_view word : kWords<StrengthWord>) list += (list.empty() ? "" : ", ") + std::string{word};
    return list;
}

Trouble explained(TroubleId id, std::string_view answer) {
    Trouble trouble{id, {{"value", std::string{answer}}}};
    if (id == TroubleId::not_one_of) trouble.args.push_back({"choices", choices_of_strength()});
    return trouble;
}

void put(Memory& memory, Recalled blank, std::string_view text, double value) {
    switch (blank) {
        case Recalled::plant: memory.plant = text; break;
        case Recalled::colour: memory.colour = text; break;
        case Recalled::garden_hours: memory.garden_minutes = value; break;
        case Recalled::money_out: memory.money_out = value; break;
        case Recalled::vats: memory.vats = static_cast<int>(value); break;
        case Recalled::vat_time: memory.minutes_per_vat = value; break;
        case Recalled::powder: memory.powder_grams = value; break;
        case Recalled::dose: memory.dose_grams = value; break;
        case Recalled::loaf_bars: memory.loaf_bars = static_cast<int>(value); break;
        case Recalled::strength:
            if (value > 0) memory.strength = value;
            break;
        case Recalled::bought_price: memory.bought_per_gram = value; break;
        case Recalled::bought_amount: memory.bought_per_gram /= value; break;
        case Recalled::plain_bar: memory.plain_price = value; break;
        case Recalled::bought_bar: memory.bought_price = value; break;
        case Recalled::own_bar: memory.own_price = value; break;
        case Recalled::hour: memory.hour = value; break;
    }
}

}  // namespace

int question_of(Recalled blank) {
    switch (blank) {
        case Recalled::plant:
        case Recalled::colour: return 1;
        case Recalled::garden_hours: return 2;
        case Recalled::money_out: return 3;
        case Recalled::vats:
        case Recalled::vat_time: return 4;
        case Recalled::powder: return 5;
        case Recalled::dose:
        case Recalled::loaf_bars: return 6;
        case Recalled::strength: return 7;
        case Recalled::bought_price:
        case Recalled::bought_amount: return 8;
        case Recalled::plain_bar:
        case Recalled::bought_bar:
        case Recalled::own_bar: return 9;
        case Recalled::hour: return 10;
    }
    return 10;
}

bool is_needed(Recalled blank) {
    switch (blank) {
        case Recalled::colour:
        case Recalled::vats:
        case Recalled::powder:
        case Recalled::dose:
        case Recalled::loaf_bars:
        case Recalled::bought_price:
        case Recalled::bought_amount:
        case Recalled::plain_bar: return true;
        default: return false;
    }
}

std::optional<Trouble> answer_trouble(Recalled blank, std::string_view answer, std::string_view currency) {
    const std::string_view text = trimmed(answer);
    if (text.empty()) return std::nullopt;
    const Taken value = taken(blank, text, currency);
    if (!value) return explained(*value.trouble, text);
    if (must_be_more_than_nothing(blank) && *value <= 0)
        return Trouble{TroubleId::blank, {{"value", std::string{text}}}};
    return std::nullopt;
}

std::variant<Memory, std::vector<MemoryTrouble>> read_memory(const MemoryAnswers& answers, std::string_view currency) {
    Memory memory;
    std::vector<MemoryTrouble> troubles;
    for (std::size_t i = 0; i < kRecalled; ++i) {
        const auto blank = static_cast<Recalled>(i);
        const auto found = answers.find(blank);
        const std::string_view text = found == answers.end() ? std::string_view{} : trimmed(found->second);
        if (text.empty()) {
            memory.blank.push_back(blank);
            if (is_needed(blank)) troubles.push_back({blank, {TroubleId::blank}});
        } else if (auto trouble = answer_trouble(blank, text, currency)) {
            troubles.push_back({blank, std::move(*trouble)});
        } else {
            put(memory, blank, text, *taken(blank, text, currency));
        }
    }
    if (!troubles.empty()) return troubles;
    return memory;
}

std::optional<Memory> memory_on_record(const Shop& shop, Key<Colour> colour, Day as_of) {
    const MemoryAnswers answers = answers_on_record(shop, colour, as_of);
    if (answers.empty()) return std::nullopt;
    const auto& about = shop.all<About>();
    auto read = read_memory(answers, about.empty() ? std::string_view{} : about.front().currency);
    if (auto* memory = std::get_if<Memory>(&read)) return std::move(*memory);
    return std::nullopt;
}

}  // namespace dyestead
