#include "domain/decisions/memory_kept.h"

#include <algorithm>

#include "domain/decisions/pigment_pool.h"
#include "domain/facts/free_code.h"
#include "domain/text/decimal.h"
#include "domain/text/same_name.h"

namespace dyestead {
namespace {

// Answered again on one day, an answer is corrected.
const Guess* answered_that_day(const Shop& shop, Key<Colour> colour, std::string_view question, Day day) {
    const auto& all = shop.all<Guess>();
    const auto found = std::ranges::find_if(
        all, [&](const Guess& each) { return each.colour == colour && each.question == question && each.date == day; });
    return found == all.end() ? nullptr : &*found;
}

}  // namespace

std::optional<Key<Colour>> colour_named(const Shop& shop, std::string_view name) {
    const auto& colours = shop.all<Colour>();
    const auto known =
        std::ranges::find_if(colours, [&](const Colour& each) { return same_name(each.name, trimmed(name)); });
    return known == colours.end() ? std::nullopt : std::optional{known->key};
}

bool records_decide(const Shop& shop, const Ledger& ledger, Key<Colour> colour) {
    return !finished_vats({shop, ledger}, colour).empty();
}

MemoryKept memory_kept(const Shop& shop, const MemoryAnswers& answers, Day day,
                       const std::function<std::int64_t()>& new_key) {
    MemoryKept kept;
    const std::string_view name = trimmed(answers.at(Recalled::colour));
    if (const auto known = colour_named(shop, name)) {
        kept.colour = *known;
    } else {
        Colour colour;
        colour.key = {new_key()};
        colour.code = free_code<Colour>(shop, code_from(name));
        colour.name = name;
        kept.colour = colour.key;
        kept.change.put.all<Colour>().push_back(std::move(colour));
    }
    std::vector<std::string> codes;
    for (const auto& [blank, answer] : answers) {
        const std::string_view text = trimmed(answer);
        if (text.empty() || blank == Recalled::colour) continue;
        Guess guess;
        const std::string_view question = kWords<Recalled>[static_cast<std::size_t>(blank)];
        if (const Guess* earlier = answered_that_day(shop, kept.colour, question, day)) {
            guess = *earlier;
        } else {
            guess.key = {new_key()};
            guess.code = free_code<Guess>(shop, code_from(fmt::format("{} {}", name, question)), codes);
        }
        guess.date = day;
        guess.colour = kept.colour;
        guess.question = question;
        guess.answer = text;
        codes.push_back(guess.code);
        kept.change.put.all<Guess>().push_back(std::move(guess));
    }
    std::ranges::sort(kept.change.put.all<Guess>(), {}, &Guess::key);
    return kept;
}

MemoryAnswers answers_on_record(const Shop& shop, Key<Colour> colour, Day as_of) {
    std::map<Recalled, const Guess*> newest;
    for (const Guess& guess : shop.all<Guess>()) {
        if (guess.colour != colour || guess.date > as_of) continue;
        const auto at = std::ranges::find(kWords<Recalled>, guess.question);
        if (at == kWords<Recalled>.end()) continue;
        const Guess*& kept = newest[static_cast<Recalled>(at - kWords<Recalled>.begin())];
        if (kept == nullptr || guess.date >= kept->date) kept = &guess;
    }
    MemoryAnswers answers;
    for (const auto& [blank, guess] : newest) answers[blank] = guess->answer;
    const Colour* of = shop.find(colour);
    if (!answers.empty() && of != nullptr) answers[Recalled::colour] = of->name;
    return answers;
}

}  // namespace dyestead
