// memory.h - is growing a colour worth the hours, as far as ten questions answered from memory can say?
//
// No record is needed. Answers are kept as they were typed (fact Guess), read here, and make a verdict with the same
// formulas (model.h) as the records do; what the answers cannot tell stays empty. Never mixed with records: a colour
// with a dried vat on record is decided from records alone.
#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "domain/decisions/verdict.h"
#include "domain/text/trouble.h"

namespace dyestead {

// Ten questions; some have two or three blanks. The words are those a Guess is kept under.
enum class Recalled : std::uint8_t {
    plant,
    colour,
    garden_hours,
    money_out,  // for growing and for the vats
    vats,
    vat_time,  // hands-on, for one
    powder,    // in all, dry
    dose,      // of one's own powder, into a loaf
    loaf_bars,
    strength,  // for the same shade, so much bought powder for one gram of one's own
    bought_price,
    bought_amount,
    plain_bar,
    bought_bar,
    own_bar,
    hour,  // what one should bring; may be blank
};
template <>
inline constexpr std::array<std::string_view, 16> kWords<Recalled>{
    "plant",     "colour",   "garden hours", "money out",     "vats",      "vat time",   "powder",  "dose",
    "loaf bars", "strength", "bought price", "bought amount", "plain bar", "bought bar", "own bar", "hour"};
inline constexpr std::size_t kRecalled = kWords<Recalled>.size();

// Which of the ten questions a blank belongs to, 1 to 10.
int question_of(Recalled blank);
// Without it there is no answer at all.
bool is_needed(Recalled blank);

// How strong one's own powder is, in the words a maker would use: grams of the bought powder in one gram of it.
enum class StrengthWord : std::uint8_t { as_strong, half, third, tenth, never_tried };
template <>
inline constexpr std::array<std::string_view, 5> kWords<StrengthWord>{
    "as much", "half", "a third", "a tenth", "never tried"};

// As typed; blank or missing: not answered.
using MemoryAnswers = std::map<Recalled, std::string>;

struct MemoryTrouble {
    Recalled blank{};
    Trouble trouble;
};

// What is wrong with one answer; nothing when it can be read, a blank one too. `currency`: ISO 4217, blank for any.
std::optional<Trouble> answer_trouble(Recalled blank, std::string_view answer, std::string_view currency);

// Money in the currency typed in.
struct Memory {
    std::string plant;
    std::string colour;
    double garden_minutes = 0;
    double money_out = 0;
    int vats = 0;
    double minutes_per_vat = 0;
    double powder_grams = 0;
    double dose_grams = 0;
    int loaf_bars = 0;
    std::optional<double> strength;  // empty: never tried
    double bought_per_gram = 0;
    std::optional<double> plain_price;
    std::optional<double> bought_price;
    std::optional<double> own_price;
    std::optional<double> hour;
    std::vector<Recalled> blank;  // not answered, and taken as nought or left out
};

// All answers read; or all that is wrong, what is needed and missing too (as TroubleId::blank).
std::variant<Memory, std::vector<MemoryTrouble>> read_memory(const MemoryAnswers& answers, std::string_view currency);

// Verdict::from_memory is set.
Verdict verdict_from_memory(const Memory& memory, Key<Colour> colour, Day as_of);

// The newest answers on record by a day. Empty: none, or nothing can be made of them.
std::optional<Memory> memory_on_record(const Shop& shop, Key<Colour> colour, Day as_of);

}  // namespace dyestead
