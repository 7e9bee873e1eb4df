#include "db/csv_sheet.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <charconv>
#include <fstream>
#include <iterator>
#include <optional>

namespace dyestead::db {
namespace {

std::optional<std::string> text_of(const std::filesystem::path& path) {
    std::ifstream file{path, std::ios::binary};
    std::string text{std::istreambuf_iterator<char>{file}, std::istreambuf_iterator<char>{}};
    if (!file || file.bad() || std::filesystem::is_directory(path)) return std::nullopt;
    return text;
}

class SheetReader {
public:
    SheetReader(Sheet& sheet, const std::vector<std::string>& may_be_missing, std::vector<Trouble>& troubles)
        : sheet_{sheet}, may_be_missing_{may_be_missing}, troubles_{troubles} {}

    void read(std::string_view text) {
        if (text.empty()) return trouble(TroubleId::file_empty, 0, {});
        CsvText csv = read_csv(text);
        for (auto& each : csv.troubles) {
            name_column(each, csv.rows);
            each.file = sheet_.file;
            troubles_.push_back(std::move(each));
            sheet_.sound = false;
        }
        if (csv.rows.empty()) {
            if (sheet_.sound) trouble(TroubleId::file_empty, 0, {});
            return;
        }
        read_heading(csv.rows.front());
        for (std::size_t i = 1; i < csv.rows.size(); ++i) add(std::move(csv.rows[i]), csv.rows.front().size());
    }

    void trouble(TroubleId id, int line, std::string column, std::vector<TroubleArg> args = {}) {
        troubles_.push_back({id, std::move(args), sheet_.file, line, std::move(column)});
        sheet_.sound = false;
    }

private:
    // From the place of a column to its name, when the heading tells it.
    static void name_column(Trouble& trouble, const std::vector<CsvRow>& rows) {
        std::size_t place = 0;
        std::from_chars(trouble.column.data(), trouble.column.data() + trouble.column.size(), place);
        if (!rows.empty() && trouble.line > 1 && place >= 1 && place <= rows.front().size())
            trouble.column = rows.front()[place - 1].text;
    }

    void read_heading(const CsvRow& heading) {
        for (std::size_t i = 0; i < heading.size(); ++i) {
            const auto& [name, line] = heading[i];
            const auto known = std::ranges::find(sheet_.columns, name);
            if (known == sheet_.columns.end()) {
                trouble(TroubleId::unknown_column, line, name,
                        {{"value", name}, {"choices", fmt::format("{}", fmt::join(sheet_.columns, ", "))}});
                continue;
            }
            int& place = sheet_.places[static_cast<std::size_t>(known - sheet_.columns.begin())];
            if (place >= 0) trouble(TroubleId::column_twice, line, name, {{"value", name}});
            place = static_cast<int>(i);
        }
        for (std::size_t i = 0; i < sheet_.columns.size(); ++i)
            if (sheet_.places[i] < 0 && std::ranges::find(may_be_missing_, sheet_.columns[i]) == may_be_missing_.end())
                trouble(TroubleId::column_missing, 1, sheet_.columns[i], {{"value", sheet_.columns[i]}});
    }

    void add(CsvRow row, std::size_t width) {
        if (std::ranges::all_of(row, &std::string::empty, &CsvCell::text)) return;
        if (row.size() == width) {
            sheet_.rows.push_back(std::move(row));
            return;
        }
        trouble(row.size() < width ? TroubleId::too_few_cells : TroubleId::too_many_cells, row.front().line, {},
                {{"cells", fmt::format("{}", row.size())}, {"columns", fmt::format("{}", width)}});
    }

    Sheet& sheet_;
    const std::vector<std::string>& may_be_missing_;
    std::vector<Trouble>& troubles_;
};

}  // namespace

std::string_view Sheet::cell(const CsvRow& row, std::size_t column) const {
    const int place = places[column];
    return place < 0 ? std::string_view{} : std::string_view{row[static_cast<std::size_t>(place)].text};
}

int Sheet::line(const CsvRow& row, std::size_t column) const {
    const int place = places[column];
    return row[place < 0 ? 0 : static_cast<std::size_t>(place)].line;
}

Sheet read_sheet(const std::filesystem::path& path, std::vector<std::string> columns,
                 const std::vector<std::string>& may_be_missing, std::vector<Trouble>& troubles) {
    Sheet sheet;
    sheet.file = path.string();
    sheet.places.assign(columns.size(), -1);
    sheet.columns = std::move(columns);
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored)) return sheet;
    SheetReader reader{sheet, may_be_missing, troubles};
    if (const auto text = text_of(path))
        reader.read(*text);
    else
        reader.trouble(TroubleId::cannot_read, 0, {}, {{"path", sheet.file}});
    return sheet;
}

}  // namespace dyestead::db
