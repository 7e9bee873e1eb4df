// field.h - what columns does a fact have? One constexpr list per fact, from which the shop file's
// insert and select, both directions of CSV and the seal are built.
//
// A *head* is a fact that can be named by its code; a *line* belongs to a head and has a position.
// What both share (key, code or head and position) stands outside the list. A field that may be
// blank is a std::optional. A reference to another fact is a Key of its kind.
#pragma once

#include <array>
#include <concepts>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

#include "domain/values/key.h"

namespace dyestead {

template <class Fact, class Member>
struct Field {
    std::string_view name;
    Member Fact::*member;
    bool part = false;  // of a whole: never more than 1
};

template <class Fact, class Member>
constexpr Field<Fact, Member> field(std::string_view name, Member Fact::*member) {
    return {name, member, false};
}

// A share of something: the gate lets in no more than the whole of it.
template <class Fact, class Member>
constexpr Field<Fact, Member> part(std::string_view name, Member Fact::*member) {
    return {name, member, true};
}

// Specialised beside each fact: a function that shows a visitor each Field in turn. (A std::tuple of
// them would say the same, and cost every file that includes the facts seconds to compile.)
template <class Fact>
inline constexpr auto kFields = nullptr;

// Specialised beside each enumeration that is stored: its words, in order.
template <class Enum>
inline constexpr auto kWords = nullptr;

template <class Enum>
constexpr std::string_view word(Enum value) {
    return kWords<Enum>[static_cast<std::size_t>(value)];
}

template <class Fact>
concept Line = requires {
    typename Fact::Head;
};

template <class Fact>
concept Head = !Line<Fact>;

// What every head starts with. Self is the fact itself.
template <class Self>
struct HeadOf {
    Key<Self> key{};
    std::string code{};
};

template <class Self, class Of>
struct LineOf {
    using Head = Of;
    Key<Self> key{};
    Key<Of> head{};
    int position = 0;  // 1, 2, 3 ... within the head
};

template <class Fact, class Visit>
constexpr void for_each_field(Visit&& visit) {
    kFields<Fact>(visit);
}

template <class Fact, class Member>
constexpr bool is_part(Member Fact::*member) {
    bool found = false;
    for_each_field<Fact>([&](const auto& each) {
        if constexpr (std::is_same_v<decltype(each.member), Member Fact::*>)
            found = found || (each.part && each.member == member);
    });
    return found;
}

}  // namespace dyestead
