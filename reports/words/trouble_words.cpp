#include "reports/words/trouble_words.h"

#include <algorithm>
#include <array>

#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

using std::string_view;

std::string particular(const Trouble& trouble, string_view name) {
    const auto found = std::ranges::find(trouble.args, name, &TroubleArg::first);
    if (found != trouble.args.end()) return found->second;
    if (name == "value") return trouble.column;
    if (name == "path") return trouble.file;
    return {};
}

// How an amount of this kind is written.
string_view example_of(string_view kind) {
    if (kind == "mass") return "750 g";
    if (kind == "volume") return "1.5 l";
    if (kind == "area") return "4 m2";
    if (kind == "energy") return "1.2 kWh";
    return "12";
}

string_view wrong_kind_words(const Trouble& trouble) {
    if (particular(trouble, "material").empty()) {
        return message("\"{value}\" is another kind of amount than belongs here; write it like {example}.");
    }
    return message(
        "\"{value}\" is another kind of amount than {material} is held in, and no density leads from one to the "
        "other; write it like {example}, or put the density of {material} into material.csv.");
}

// What is not a recall is a trace of a figure.
bool is_recall(const Trouble& trouble) {
    return particular(trouble, "kind") == "recall";
}

string_view nothing_to_trace_words(const Trouble& trouble) {
    if (is_recall(trouble))
        return message(
            "a recall needs to know of what; name it with --of: the code of a lot, batch, vat, planting, delivery, "
            "material or supplier, or the supplier's own lot number.");
    return message(
        "a trace needs something to trace; name it with --of: the code of a lot, batch, planting or vat, one of "
        "{choices}, or a line of a statement by the name of its figure, like stock.pigment, losses.spilled, "
        "hours.garden "
        "or "
        "out.goods.");
}

string_view no_such_code_words(const Trouble& trouble) {
    if (is_recall(trouble))
        return message(
            "no lot, batch, vat, planting, delivery, material or supplier of which anything is on record by that day "
            "has the code \"{value}\", and no delivery such a supplier's lot number; the report stock-value lists the "
            "lots that are here.");
    return message(
        "no lot, batch, planting or vat has the code \"{value}\"; besides those these can be traced: {choices}, and "
        "any line "
        "of a statement by the name of its figure, like stock.pigment, losses.spilled, hours.garden or out.goods.");
}

string_view words(const Trouble& trouble) {
    switch (trouble.id) {
        // one value
        case TroubleId::blank: return message("this is blank and is needed; write what belongs here.");
        case TroubleId::not_a_number:
            return message("\"{value}\" is not a number; write digits with a decimal point, like 12 or 4.50.");
        case TroubleId::not_a_whole_number: return message("\"{value}\" is not a whole number; write it like 12.");
        case TroubleId::no_such_unit:
            return message("\"{value}\" has no unit that is known; write it like 750 g, 1.5 l or 12.");
        case TroubleId::unit_missing:
            return message("\"{value}\" of what? Write the unit after it, like 750 g or 1.5 l.");
        case TroubleId::not_a_time:
            return message("\"{value}\" is not a length of time; write it like 90 min, 1.5 h or 1 h 30.");
        case TroubleId::not_a_date:
            return message("\"{value}\" is not a date; write year, month and day like 2026-07-03.");
        case TroubleId::no_such_day:
            return message("\"{value}\" is a day that does not exist; look it up and write it like 2026-07-03.");
        case TroubleId::not_a_ratio:
            return message("\"{value}\" is not a share or a strength; write it like 5 %, 1/3 or 0.918.");
        case TroubleId::not_yes_or_no: return message("\"{value}\" is neither yes nor no; write one of the two.");
        case TroubleId::not_one_of: return message("\"{value}\" cannot stand here; write one of: {choices}.");
        case TroubleId::too_large:
            return message("\"{value}\" is more than the books can hold; look at the digits and the unit.");
        case TroubleId::below_zero:
            return message("\"{value}\" is less than nothing; write it without the minus sign.");
        case TroubleId::more_than_whole:
            return message("\"{value}\" is more than the whole; a share of it is at most 100 %, or 1.");
        case TroubleId::not_a_moment:
            return message(
                "\"{value}\" is not a time by the clock; write it like 14:10, and in a file with the day and the "
                "distance from UTC, like 2026-07-03T14:10+01:00.");
        case TroubleId::no_such_record:
            return message(
                "\"{value}\" names no record; write its file and its code like vat/blue-2026-1, and for a line its "
                "position after that, like vat_step/blue-2026-1/3.");
        case TroubleId::not_a_code:
            return message(
                "\"{value}\" cannot be a code; write a short name on one line, with no space at either end.");
        // one value, typed into the window
        case TroubleId::which_decimal_mark:
            return message(
                "where do the decimals of \"{value}\" begin? Write one mark only, and thousands without any, like "
                "1234.5.");
        case TroubleId::time_unit_missing:
            return message("\"{value}\" minutes, or hours? Write it like 90 min, 1.5 h or 1 h 30.");
        case TroubleId::us_or_uk:
            return message(
                "the US measure or the UK one in \"{value}\"? Write us or uk before it: a us pt is 473 ml and a uk "
                "pt 568 ml, a us fl oz 29.6 ml and a uk fl oz 28.4 ml, a us gal 3.79 l and a uk gal 4.55 l.");
        case TroubleId::which_cup:
            return message(
                "the US cup of 237 ml or a cup of your own in \"{value}\"? Write us cup for the one, and how many ml "
                "it holds for the other.");
        case TroubleId::which_is_the_month:
            return message("which number is the month in \"{value}\"? Write the month as a word, like 3 July.");
        case TroubleId::not_an_amount:
            return message(
                "\"{value}\" cannot be read as one amount; write it like 750 g, 2 x 5 l, 2 lb 4 oz or 3.2 kg - 380 "
                "g.");
        case TroubleId::part_of_what:
            return message("\"{value}\" of how much? The books do not say; write the amount itself, like 750 g.");
        case TroubleId::takes_off_more:
            return message(
                "\"{value}\" takes off more than there is; write the full weight first, like 3.2 kg - 380 g.");
        case TroubleId::kinds_added:
            return message(
                "\"{value}\" puts different kinds of amount together; write weights only or volumes only, like 2 lb "
                "4 oz.");
        case TroubleId::other_currency:
            return message("\"{value}\" is in another currency than the shop's; write what it came to in yours.");
        // one record among others
        case TroubleId::unknown_column:
            return message("no column is called \"{value}\" here; the columns are: {choices}.");
        case TroubleId::column_missing:
            return message("the column \"{value}\" is missing; add it to the first line of the file.");
        case TroubleId::column_twice:
            return message("the column \"{value}\" stands there twice; take one of the two away.");
        case TroubleId::too_few_cells:
            return message("the line has {cells} cells and the first line has {columns}; add the missing commas.");
        case TroubleId::too_many_cells:
            return message(
                "the line has {cells} cells and the first line has {columns}; put a text that holds a comma "
                "between double quotes.");
        case TroubleId::quote_not_closed:
            return message("a double quote is opened here and never closed; add the closing one.");
        case TroubleId::text_after_quote:
            return message("something follows a closing double quote; write a double quote inside a text twice.");
        case TroubleId::not_utf8:
            return message("these letters are not in UTF-8; save the file again with the encoding UTF-8.");
        case TroubleId::code_twice:
            return message(
                "the code \"{value}\" already stands in {first_file}, line {first_line}; give one of the two "
                "another code.");
        case TroubleId::position_twice:
            return message(
                "position {value} of the same record already stands in {first_file}, line {first_line}; give one of "
                "the two another position.");
        case TroubleId::key_twice:
            return message(
                "the key {value} already stands in {first_file}, line {first_line}; leave one of the two blank.");
        case TroubleId::no_such_reference:
            if (particular(trouble, "kind").empty()) {
                return message(
                    "{path} holds a record that names another one which is not there; open its newest backup.");
            }
            return message(
                "no record in {kind}.csv has the code \"{value}\"; add it there, or correct the spelling here.");
        case TroubleId::lot_nobody_made:
            return message(
                "nothing says where the lot \"{lot}\" came from; record its delivery, harvest, drying or cut, or put "
                "it down as already here.");
        case TroubleId::lot_made_twice:
            return message(
                "the lot \"{lot}\" already comes from {first_file}, line {first_line}; give this one a lot of its "
                "own.");
        case TroubleId::wrong_kind_of_amount: return wrong_kind_words(trouble);
        case TroubleId::shop_rows:
            return message(
                "this file has {rows} lines below its heading and must have one; keep the line with the shop's name "
                "and currency.");
        // a file or folder
        case TroubleId::file_empty:
            return message(
                "the file is empty, without even a heading; take it away if there is nothing of this kind, or look "
                "for the right copy.");
        case TroubleId::unknown_file:
            return message("no kind of record goes by the name of this file; the files are: {choices}.");
        case TroubleId::no_such_folder:
            return message("there is no folder {path}; check the spelling, or make it first.");
        case TroubleId::no_such_file: return message("there is no file {path}; check the spelling.");
        case TroubleId::cannot_read:
            return message("{path} cannot be read; see whether the disk is there and you are allowed to open it.");
        case TroubleId::cannot_write:
            return message(
                "{path} cannot be written; see whether its folder is there and you are allowed to write in it.");
        case TroubleId::already_there: return message("{path} is already there; choose another name.");
        case TroubleId::not_a_shop:
            return message("{path} is not a shop file; choose a file that this program has made.");
        case TroubleId::shop_newer:
            return message("{path} was written by a newer version of this program; open it with that one.");
        case TroubleId::shop_too_old:
            return message(
                "{path} was written by a version of this program too old to go on from; let that one export it to a "
                "folder, and import the folder with this one.");
        case TroubleId::shop_older_unwritable:
            return message(
                "{path} was written by an earlier version of this program and has to be brought up to this one, but it "
                "cannot be written to; copy it to a folder of your own and open it there.");
        case TroubleId::shop_older_unsaved:
            return message(
                "{path} was written by an earlier version of this program and was left as it was, because no backup "
                "could be put into {folder}; see whether there is room and you are allowed to write there.");
        case TroubleId::shop_older_refused:
            return message(
                "{path} was written by an earlier version of this program and holds something in {table} that this one "
                "does not take, such as a share of more than the whole; it was left as it was: correct that with the "
                "earlier version.");
        case TroubleId::shop_damaged:
            return message("{path} is damaged and nothing in it was changed; open its newest backup instead.");
        case TroubleId::shop_foreign_table:
            return message(
                "{path} holds things that this program did not put there, so nothing in it was read; open a backup "
                "from before they were added.");
        case TroubleId::shop_busy: return message("another program is writing to {path}; wait a moment and try again.");
        case TroubleId::shop_moved:
            return message("{path} was moved or replaced while it was open; open it again where it is now.");
        case TroubleId::disk_full:
            return message("the disk is full, so {path} was not written; make room and try again.");
        // a question to the program
        case TroubleId::no_such_report:
            return message("there is no report called \"{value}\"; the reports are: {choices}.");
        case TroubleId::no_such_format:
            return message("there is no format called \"{value}\"; the formats are: {choices}.");
        case TroubleId::no_such_colour:
            return message("no colour has the code \"{value}\"; the colours of this shop are: {choices}.");
        case TroubleId::no_colour:
            return message("this shop has no colour yet, so there is nothing to compare; record a colour first.");
        case TroubleId::nothing_to_trace: return nothing_to_trace_words(trouble);
        case TroubleId::no_such_code: return no_such_code_words(trouble);
        case TroubleId::answers_ended: return message("the answers ended before the last question; nothing was kept.");
        case TroubleId::records_decide:
            return message(
                "a vat of {value} is on record, and records decide, not memory; ask for the report verdict "
                "instead.");
        case TroubleId::stand_looks_ahead:
            return message("--stand says where you stand looking ahead; put --basis replacement beside it.");
        case TroubleId::no_fair: return message("no fair is on record yet; put one down at the Stall first.");
        case TroubleId::which_fair:
            return message("no fair comes to mind by itself here; name one with --fair: {choices}.");
        case TroubleId::no_material:
            return message("no material is on record yet; put one down at the Cupboard first.");
        case TroubleId::no_bar: return message("no recipe makes a bar yet; write one down at the Bench first.");
        case TroubleId::which_bar: return message("no batch is planned; name the bar with --bar: {choices}.");
        case TroubleId::starts_after_end:
            return message("the period starts on {value}, after its last day; give a --from that is before --as-of.");
        case TroubleId::bad_argument: return message("\"{value}\" is not understood here; --help shows what is.");
    }
    return {};
}

// Standing alone it is a sentence and begins like one, unless a name comes first.
std::string as_sentence(std::string what, string_view template_text) {
    const bool begins_with_a_word = !template_text.empty() && template_text[0] >= 'a' && template_text[0] <= 'z';
    if (begins_with_a_word && !what.empty()) what[0] = static_cast<char>(what[0] - 'a' + 'A');
    return what;
}

std::string located(const Trouble& trouble, const std::string& what) {
    const auto file = arg("file", trouble.file);
    const auto line = arg("line", trouble.line);
    const auto rest = arg("what", what);
    if (trouble.line == 0) return say("{file}: {what}", file, rest);
    if (trouble.column.empty()) return say("{file}, line {line}: {what}", file, line, rest);
    return say("{file}, line {line}, column {column}: {what}", file, line, arg("column", trouble.column), rest);
}

}  // namespace

std::string trouble_sentence(const Trouble& trouble) {
    // Every particular that a sentence may name; one that was not given is blank.
    constexpr std::array<const char*, 14> kParticulars{"value", "choices", "kind",    "first_file", "first_line",
                                                       "lot",   "cells",   "columns", "material",   "rows",
                                                       "path",  "wanted",  "folder",  "table"};
    std::vector<Arg> args{arg("example", std::string{example_of(particular(trouble, "wanted"))})};
    for (const char* name : kParticulars) args.push_back(arg(name, particular(trouble, name)));
    const string_view english = words(trouble);
    const std::string what = say_with(english, args);
    return trouble.file.empty() ? as_sentence(what, tr(english)) : located(trouble, what);
}

std::string too_large_sentence() {
    return say(
        "A total here is larger than the books can hold: some price, weight or time on record is far too large; look "
        "through what does not add up and mend it.");
}

}  // namespace dyestead::reports
