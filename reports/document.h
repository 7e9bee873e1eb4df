// document.h - what a report says, before it is text, HTML, PDF, CSV or JSON.
//
// A report fills one Document; every writer in reports/write/ reads it, so the same words and
// the same numbers stand in all of them. Plain structs, no behaviour. Sentences come from
// reports/words/ already finished; amounts are already rounded in `shown`, unrounded in `number`.
//
//   Document d{.report = "verdict", .as_of = "2026-07-04", .currency = "GBP", .title = "..."};
//   d.blocks.push_back(Headline{"Buy the blue in: ..."});
//   d.figures.push_back({"season.bars", 118.0});
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "reports/chart/drawing.h"

namespace dyestead::reports {

// The one sentence that answers the question.
struct Headline {
    std::string text;
};

// A caution is set apart on screen and paper by a frame and the word, not by colour alone.
enum class Tone { plain, small, caution };

struct Paragraph {
    std::string text;
    Tone tone = Tone::plain;
};

// A heading; what follows belongs to it until the next one.
struct Section {
    std::string text;
};

enum class Align { left, right };

// The heading carries the unit: "price, GBP a kg".
struct Column {
    std::string heading;
    Align align = Align::left;
};

// `shown` is for people. JSON gives `number` where there is one, else `shown`; an empty `shown`,
// or one that only stands for a missing value ("not tested"), is null there.
struct Cell {
    std::string shown{};
    std::optional<double> number{};
    bool no_value = false;
};

// Every row has as many cells as there are columns; a shorter one ends in empty cells.
struct Table {
    std::string title;
    std::vector<Column> columns{};
    std::vector<std::vector<Cell>> rows{};
    bool emphasise_last_row = false;  // a total
    std::string note{};               // printed small below, empty for none
};

// `sentence` says in words what the picture shows; it is printed under it, and stands alone
// where no picture can be.
struct Chart {
    std::string title;
    std::string sentence;
    Drawing data{};
};

using Block = std::variant<Headline, Paragraph, Section, Table, Chart>;

// A number for other programs. Every key of the report is always there, in the report's order;
// a figure without a value is there too, and empty (null in JSON).
struct Figure {
    std::string key;
    std::optional<double> value{};
};

// One line under 'Does not add up': the finding's code, its sentence, the code of the fact.
struct FindingLine {
    std::string code;
    std::string text;
    std::string fact{};
};

struct Document {
    std::string report;    // its name: "verdict", "cost-sheet"
    std::string as_of;     // ISO 8601 date: "2026-07-04"
    std::string currency;  // ISO 4217 code: "GBP"
    std::string title;
    std::vector<Block> blocks{};
    std::vector<Figure> figures{};
    std::vector<FindingLine> findings{};
};

}  // namespace dyestead::reports
