// trouble.h - what is wrong with something that was handed to the program, as a code and its
// particulars. reports/words turns it into one plain sentence, in the user's language.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace dyestead {

enum class TroubleId : std::uint8_t {
    // one value
    blank,
    not_a_number,
    not_a_whole_number,
    no_such_unit,
    unit_missing,
    not_a_time,
    not_a_date,
    no_such_day,
    not_a_ratio,
    not_yes_or_no,
    not_one_of,
    too_large,
    below_zero,
    more_than_whole,
    not_a_moment,
    no_such_record,
    not_a_code,
    // one value, typed into the window: what can be read in two ways is asked back
    which_decimal_mark,
    time_unit_missing,
    us_or_uk,
    which_cup,
    which_is_the_month,
    not_an_amount,
    part_of_what,
    takes_off_more,
    kinds_added,
    other_currency,
    // one record among others
    unknown_column,
    column_missing,
    column_twice,
    too_few_cells,
    too_many_cells,
    quote_not_closed,
    text_after_quote,
    not_utf8,
    code_twice,
    position_twice,
    key_twice,
    no_such_reference,
    lot_nobody_made,
    lot_made_twice,
    wrong_kind_of_amount,
    shop_rows,
    // a file or folder
    file_empty,
    unknown_file,
    no_such_folder,
    no_such_file,
    cannot_read,
    cannot_write,
    already_there,
    not_a_shop,
    shop_newer,
    shop_too_old,           // from before files could be brought up
    shop_older_unwritable,  // has to be brought up, and cannot be written to
    shop_older_unsaved,     // has to be brought up, and no backup can be taken
    shop_older_refused,     // holds something that today's tables do not take
    shop_damaged,
    shop_foreign_table,
    shop_busy,
    shop_moved,
    disk_full,
    // a question to the program
    no_such_report,
    no_such_format,
    no_such_colour,
    no_colour,
    nothing_to_trace,   // --of is missing
    no_such_code,       // --of names nothing that can be traced
    no_fair,            // none is on record
    which_fair,         // none is to come, or none was stood: one has to be named
    no_material,        // nothing to be scarce is on record
    no_bar,             // no recipe makes one
    which_bar,          // no batch is planned: one has to be named
    starts_after_end,   // --from is after --as-of
    answers_ended,      // of the ten questions, before the last
    records_decide,     // a vat of the colour is on record
    stand_looks_ahead,  // --stand goes with --basis replacement only
    bad_argument,
};

// A particular of the sentence, by name: {"unit", "spoons"}.
using TroubleArg = std::pair<std::string, std::string>;

struct Trouble {
    TroubleId id{};
    std::vector<TroubleArg> args{};
    // Where in a table of records: the file as the user named it, line and column counted from 1.
    std::string file{};
    int line = 0;
    std::string column{};
};

// A value read from text, or what is wrong with the text.
template <class T>
struct Read {
    std::optional<T> value{};
    std::optional<TroubleId> trouble{};

    Read(T read) : value{std::move(read)} {}
    Read(TroubleId id) : trouble{id} {}
    explicit operator bool() const { return value.has_value(); }
    const T& operator*() const { return *value; }
};

}  // namespace dyestead
