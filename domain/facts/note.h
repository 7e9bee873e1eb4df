// note.h - what did the maker want to remember of a record, and which photograph or bill belongs to it?
#pragma once

#include "domain/facts/field.h"
#include "domain/values/date.h"

namespace dyestead {

// Words, the name of a file, or both. The file itself lies beside the shop file, or where its name says.
struct Note : HeadOf<Note> {
    static constexpr std::string_view kTable = "note";
    Day date;
    AnyKey about;  // a record of any kind, a line included
    std::optional<std::string> text;
    std::optional<std::string> file;
};
template <>
inline constexpr auto kFields<Note> = [](auto&& visit) {
    visit(field("date", &Note::date));
    visit(field("about", &Note::about));
    visit(field("text", &Note::text));
    visit(field("file", &Note::file));
};

}  // namespace dyestead
