// say.h - the one door every sentence of the program goes through.
//
// A sentence is written once, whole, in English; that English is also the id a translation is looked
// up by. What differs goes in by name, already made readable (shown.h), so that a translator can put
// it where the language wants it:
//
//   say("Buy the {colour} in: it would have left you {money} better off.",
//       arg("colour", colour), arg("money", shown_money(money, currency)));
//
// Never glue a sentence from parts, and put no unit or currency into the text.
// For xgettext: --keyword=tr:1 --keyword=message:1 --keyword=say:1 --keyword=say_count:1,2
#pragma once

#include <fmt/format.h>

#include <concepts>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace dyestead::reports {

// How an English sentence becomes one in the reader's language. Left alone, it stays English.
struct Translation {
    std::string (*sentence)(std::string_view english) = nullptr;
    // The form that goes with a number; English has two.
    std::string (*counted)(std::string_view one, std::string_view many, std::uint64_t count) = nullptr;
};

// For the whole process, once, before the first sentence.
void set_translation(Translation translation);

std::string tr(std::string_view english);
// Marks a sentence that stands in a table and is translated when it is said.
constexpr std::string_view message(std::string_view english) {
    return english;
}

// What goes into a sentence at {name}.
struct Arg {
    const char* name;
    std::string value;
};

inline Arg arg(const char* name, std::string value) {
    return {name, std::move(value)};
}
template <std::integral Number>
Arg arg(const char* name, Number value) {
    return {name, fmt::to_string(value)};
}

// A translation whose placeholders are wrong falls back to the English.
std::string say_with(std::string_view english, const std::vector<Arg>& args);
// {count} is put in by itself.
std::string say_count_with(std::string_view one, std::string_view many, std::uint64_t count, std::vector<Arg> args);

template <std::same_as<Arg>... Args>
std::string say(std::string_view english, const Args&... args) {
    return say_with(english, std::vector<Arg>{args...});
}

template <std::same_as<Arg>... Args>
std::string say_count(std::string_view one, std::string_view many, std::uint64_t count, const Args&... args) {
    return say_count_with(one, many, count, std::vector<Arg>{args...});
}

}  // namespace dyestead::reports
