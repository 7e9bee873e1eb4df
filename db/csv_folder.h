// csv_folder.h - how does a whole shop go out to a folder of CSV files and come back the same?
// One file for each kind of fact, named after its table: delivery.csv, delivery_line.csv ... The
// first row names the columns: code and the fact's fields; for a line the head's code under the
// head's name, position and the fields. References are codes. A column `key` stands only where a
// key is not the hash of the code. What was written here reads back to the same shop, and what was
// read and is written again is the same to the byte, if it was in the written order before.
//
// The particulars of a trouble in the records, by name:
//   value                the cell as it stands           (every trouble with a value)
//   choices              what could stand there          (not_one_of, unknown_column, unknown_file)
//   kind                 the table the code should be in (no_such_reference)
//   first_file, first_line   where it stood first        (code_twice, position_twice, key_twice, lot_made_twice)
//   lot                  the lot's code                  (lot_nobody_made, lot_made_twice)
//   wanted               mass, volume, count, area or energy (wrong_kind_of_amount)
//   material             its code, where the amount is one of a material (wrong_kind_of_amount)
//   cells, columns       how many the row has and should have (too_few_cells, too_many_cells)
//   rows                 how many rows shop.csv has      (shop_rows)
#pragma once

#include <cstdint>
#include <filesystem>
#include <string_view>

#include "domain/facts/shop.h"

namespace dyestead::db {

// A file that is missing or has only its heading means none of that kind; files that are not .csv
// are left alone. Throws: RecordsRefused with every trouble in the folder; ShopTrouble when there is
// no such folder.
Shop read_csv_folder(const std::filesystem::path& folder);

// Makes the folder if need be. A kind without facts gets a file only where one stands already.
// Throws: ShopTrouble cannot_write; RecordsRefused when two facts of a kind share a code, so that the
// folder could not come back.
void write_csv_folder(const Shop& shop, const std::filesystem::path& folder);

// The key that a record gets from its name: of "material" and "olive", or for a line of
// "delivery_line" and "D1/2" (its head's code and its position). Never 0.
std::int64_t key_from_name(std::string_view table, std::string_view name);

}  // namespace dyestead::db
