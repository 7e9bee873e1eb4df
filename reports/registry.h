// registry.h - which reports are there, and in which formats can they be written?
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>

#include "domain/decisions/stand.h"
#include "domain/ledger/ledger.h"
#include "domain/text/trouble.h"
#include "reports/document.h"

namespace dyestead::reports {

// Requires: ledger == replay(shop, ledger.as_of).
struct Question {
    const Shop& shop;
    const Ledger& ledger;
    std::optional<std::string> colour{};  // its code; the verdict takes the most worked one without it
    std::optional<std::string> bar{};     // code of the kind of bar to make; the next planned batch without it
    int loaves = 1;
    std::optional<std::string> fair{};  // its code; the next one, or the last one stood, without it
    std::optional<Day> from{};          // first day of the period; else the start of the financial year
    std::optional<std::string> of{};    // what to trace: a code, or a term of the books; the material that is scarce;
                                        // the batch of a cost sheet or label; which sheets
    std::optional<int> bars{};          // of the colour, to sow for; else as many as were sold in 12 months
    std::optional<double> hours{};      // of one's own, to make bars in; else as many as usual
    std::optional<int> months{};        // to make bars for
    std::optional<Stand> ahead{};       // the verdict looks ahead from there; without it, back
};

using Reply = std::variant<Document, Trouble>;

struct Report {
    std::string_view name;
    std::string_view about;  // one line for --help
    Reply (*make)(const Question&);
};

struct Format {
    std::string_view name;
    std::string (*write)(const Document&);  // the bytes of the file
};

std::span<const Report> all_reports();
std::span<const Format> all_formats();

// The one of that name, or what is wrong and which there are.
std::variant<Report, Trouble> report_named(std::string_view name);
std::variant<Format, Trouble> format_named(std::string_view name);

// Only what has days goes into a calendar; every report into any other format. And why not, with the formats it can.
bool can_be_written(const Format& format, const Document& document);
std::optional<Trouble> not_to_be_written(const Format& format, const Document& document);

}  // namespace dyestead::reports
