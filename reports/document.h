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

// A heading; what follows belongs to it until the next one. On paper it may begin a page of its own: a sheet that goes
// to the pan does not lie on the one for the garden.
struct Section {
    std::string text;
    bool new_page = false;
};

enum class Align { left, right };

// The heading carries the unit: "price, GBP a kg". A column with `room` is written into by hand: at least so wide on
// paper, in millimetres, and the rows of its table high enough for a pencil.
struct Column {
    std::string heading;
    Align align = Align::left;
    int room = 0;
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
    // On paper each row is a label to cut out: its first cell large, below it every cell that says something, with its
    // column's heading.
    bool as_labels = false;
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

// A day on which something falls due, for a calendar. `id` stays the same when the report is made again.
struct DueDay {
    std::string id;
    std::string day;  // ISO 8601 date
    std::string what;
    std::string note{};
    std::string kind{};
};

struct Document {
    std::string report;    // its name: "verdict", "cost-sheet"
    std::string as_of;     // ISO 8601 date: "2026-07-04"
    std::string currency;  // ISO 4217 code: "GBP"
    std::string title;
    std::vector<Block> blocks{};
    std::vector<Figure> figures{};
    std::vector<FindingLine> findings{};
    std::optional<std::vector<DueDay>> days{};  // of a report that can go into a calendar
    bool larger = false;                        // on paper: to be read at arm's length, at the pan
};

}  // namespace dyestead::reports
