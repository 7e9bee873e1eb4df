// csv_sheet.h - one file of a folder of records: its rows under known columns, whatever their order.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "domain/text/csv.h"
#include "domain/text/trouble.h"

namespace dyestead::db {

struct Sheet {
    std::string file;                  // as the folder was named, with the file's name
    bool sound = true;                 // false: something is wrong with its text or heading, and rows may be missing
    std::vector<std::string> columns;  // as known; `key` is the last
    std::vector<int> places;           // of each known column in the rows; -1: not there
    std::vector<CsvRow> rows;          // without the heading; all of the heading's width

    // The cell of a known column; blank when the file has no such column.
    std::string_view cell(const CsvRow& row, std::size_t column) const;
    int line(const CsvRow& row, std::size_t column) const;
};

// A file that is not there is a sheet without rows. What is wrong is added to `troubles`.
Sheet read_sheet(const std::filesystem::path& path, std::vector<std::string> columns,
                 const std::vector<std::string>& may_be_missing, std::vector<Trouble>& troubles);

}  // namespace dyestead::db
