#include "domain/text/typed_words.h"

#include <algorithm>
#include <array>

namespace dyestead {

namespace {

struct Meaning {
    std::string_view word;
    std::string_view english;
};

constexpr auto kGerman = std::to_array<Meaning>({
    {"etwa", "about"},
    {"ungefähr", "about"},
    {"rund", "about"},
    {"ca", "about"},
    {"ein", "a"},
    {"eine", "a"},
    {"einen", "a"},
    {"einer", "a"},
    {"zwei", "two"},
    {"drei", "three"},
    {"vier", "four"},
    {"fünf", "five"},
    {"sechs", "six"},
    {"sieben", "seven"},
    {"acht", "eight"},
    {"neun", "nine"},
    {"zehn", "ten"},
    {"elf", "eleven"},
    {"zwölf", "twelve"},
    {"halb", "half"},
    {"halbe", "half"},
    {"halber", "half"},
    {"halbes", "half"},
    {"halben", "half"},
    {"hälfte", "half"},
    {"drittel", "third"},
    {"viertel", "quarter"},
    {"alles", "all"},
    {"alle", "all"},
    {"und", "and"},
    {"mal", "x"},
    {"gramm", "gram"},
    {"stück", "piece"},
    {"stücke", "piece"},
    {"stk", "piece"},
    {"korn", "seed"},
    {"körner", "seed"},
    {"dutzend", "dozen"},
    {"tl", "tsp"},
    {"teelöffel", "tsp"},
    {"el", "tbsp"},
    {"esslöffel", "tbsp"},
    {"tasse", "cup"},
    {"tassen", "cup"},
    {"qm", "sqm"},
    {"quadratmeter", "sqm"},
    {"packung", "packet"},
    {"std", "h"},
    {"stunde", "hour"},
    {"stunden", "hours"},
    {"minuten", "minutes"},
    {"heute", "today"},
    {"gestern", "yesterday"},
    {"glas", "jar"},
});

}  // namespace

std::string_view in_english(std::string_view word) {
    const auto* const found = std::ranges::find(kGerman, word, &Meaning::word);
    return found == kGerman.end() ? word : found->english;
}

}  // namespace dyestead
