#include "reports/write/xlsx.h"

#include <fmt/format.h>
#include <unistd.h>
#include <xlsxwriter.h>

#include <cmath>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <stdexcept>

#include "domain/text/amounts.h"
#include "reports/words/language.h"
#include "reports/words/say.h"
#include "reports/write/labels.h"

namespace dyestead::reports {
namespace {

constexpr std::size_t kLongestSheetName = 31;  // ECMA-376 and every spreadsheet
constexpr double kWide = 100;                  // columns of the sentences' sheet, in digits
constexpr double kNarrow = 14;
constexpr double kNames = 34;

// A file of our own for as long as the library writes it: it knows no other way out.
class PassingFile {
public:
    PassingFile() : path_{std::filesystem::temp_directory_path() / "dyestead-XXXXXX"} {
        std::string name = path_.string();
        const int handle = mkstemp(name.data());
        if (handle < 0) throw std::runtime_error("no passing file could be made for the workbook");
        close(handle);
        path_ = name;
    }
    PassingFile(const PassingFile&) = delete;
    PassingFile& operator=(const PassingFile&) = delete;
    ~PassingFile() {
        std::error_code ignored;
        std::filesystem::remove(path_, ignored);
    }
    const std::filesystem::path& path() const { return path_; }
    std::string bytes() const {
        std::ifstream file{path_, std::ios::binary};
        return {std::istreambuf_iterator<char>{file}, {}};
    }

private:
    std::filesystem::path path_;
};

// "0.00" for 12.50, "0%" for 36 %: as many places as on paper.
std::string number_format(const std::string& shown) {
    const bool percent = shown.find('%') != std::string::npos;
    std::size_t places = 0;
    const std::string mark = marks_here().decimal;
    if (const auto point = shown.rfind(mark); point != std::string::npos)
        for (std::size_t i = point + mark.size(); i < shown.size() && shown[i] >= '0' && shown[i] <= '9'; ++i) ++places;
    std::string format = "0";
    if (places > 0) format += "." + std::string(places, '0');
    return percent ? format + "%" : format;
}

class Workbook {
public:
    explicit Workbook(const Document& document) : document_{document} {
        workbook_ = workbook_new(file_.path().c_str());
        if (workbook_ == nullptr) throw std::runtime_error("the workbook could not be begun");
        bold_ = workbook_add_format(workbook_);
        format_set_bold(bold_);
        wrapped_ = workbook_add_format(workbook_);
        format_set_text_wrap(wrapped_);
        // Else the moment of writing stands in it, and no two are alike.
        lxw_doc_properties properties{};
        std::string title = document.title;
        properties.title = title.data();
        if (const auto day = read_day(document.as_of)) {
            properties.created = static_cast<time_t>((*day).time_since_epoch().count()) * 86'400;
        }
        workbook_set_properties(workbook_, &properties);
    }
    Workbook(const Workbook&) = delete;
    Workbook& operator=(const Workbook&) = delete;
    ~Workbook() {
        if (workbook_ != nullptr) workbook_close(workbook_);
    }

    std::string write() {
        sentences();
        for (const Block& block : document_.blocks)
            if (const auto* table = std::get_if<Table>(&block)) add(*table);
        figures();
        findings();
        lxw_workbook* done = workbook_;
        workbook_ = nullptr;
        if (workbook_close(done) != LXW_NO_ERROR) throw std::runtime_error("the workbook could not be written");
        return file_.bytes();
    }

private:
    lxw_worksheet* sheet(std::string wanted) {
        for (char& letter : wanted)
            if (std::string_view{"[]:*?/\\'"}.find(letter) != std::string_view::npos) letter = ' ';
        const auto cut = [](std::string name, std::size_t most) {
            if (name.size() <= most) return name;
            while (most > 0 && (static_cast<unsigned char>(name[most]) & 0xC0U) == 0x80U) --most;
            name.resize(most);
            return name;
        };
        std::string name = cut(wanted, kLongestSheetName);
        for (int n = 2; !names_.insert(name).second; ++n)
            name = cut(wanted, kLongestSheetName - 3) + " " + fmt::to_string(n);
        auto* made = workbook_add_worksheet(workbook_, name.c_str());
        if (made == nullptr) throw std::runtime_error("a sheet of the workbook could not be made");
        return made;
    }

    static void text(lxw_worksheet* sheet, lxw_row_t row, lxw_col_t column, const std::string& words,
                     lxw_format* format = nullptr) {
        if (!words.empty()) worksheet_write_string(sheet, row, column, words.c_str(), format);
    }

    static void number(lxw_worksheet* sheet, lxw_row_t row, lxw_col_t column, double value, std::string_view where,
                       lxw_format* format = nullptr) {
        if (!std::isfinite(value)) throw std::logic_error(fmt::format("{} is not a finite number", where));
        worksheet_write_number(sheet, row, column, value, format);
    }

    lxw_format* shown_as(const std::string& shown) {
        const std::string places = number_format(shown);
        const auto [at, is_new] = formats_.try_emplace(places, nullptr);
        if (is_new) {
            at->second = workbook_add_format(workbook_);
            format_set_num_format(at->second, places.c_str());
        }
        return at->second;
    }

    void sentences() {
        auto* page = sheet(document_.title);
        worksheet_set_column(page, 0, 0, kWide, wrapped_);
        lxw_row_t row = 0;
        text(page, row++, 0, document_.title, bold_);
        text(page, row++, 0, standing_line(document_));
        for (const Block& block : document_.blocks) {
            if (const auto* headline = std::get_if<Headline>(&block)) text(page, row++, 0, headline->text, bold_);
            if (const auto* section = std::get_if<Section>(&block)) text(page, row++, 0, section->text, bold_);
            if (const auto* paragraph = std::get_if<Paragraph>(&block)) text(page, row++, 0, paragraph->text, wrapped_);
            if (const auto* chart = std::get_if<Chart>(&block)) text(page, row++, 0, chart->sentence, wrapped_);
        }
    }

    void add(const Table& table) {
        auto* page = sheet(table.title.empty() ? document_.report : table.title);
        lxw_row_t row = 0;
        text(page, row++, 0, table.title, bold_);
        const auto columns = static_cast<lxw_col_t>(table.columns.size());
        for (lxw_col_t column = 0; column < columns; ++column) {
            text(page, row, column, table.columns[column].heading, bold_);
            worksheet_set_column(page, column, column, column == 0 ? kNames : kNarrow, nullptr);
        }
        ++row;
        for (const auto& cells : table.rows) {
            for (lxw_col_t column = 0; column < columns && column < cells.size(); ++column) {
                const Cell& cell = cells[column];
                if (cell.number)
                    number(page, row, column, *cell.number, table.title, shown_as(cell.shown));
                else if (!cell.no_value)
                    text(page, row, column, cell.shown);
            }
            ++row;
        }
        text(page, row, 0, table.note);
    }

    void figures() {
        if (document_.figures.empty()) return;
        auto* page = sheet(tr("Figures"));
        worksheet_set_column(page, 0, 0, kNames, nullptr);
        lxw_row_t row = 0;
        for (const Figure& figure : document_.figures) {
            text(page, row, 0, figure.key);
            if (figure.value) number(page, row, 1, *figure.value, figure.key);
            ++row;
        }
    }

    void findings() {
        if (document_.findings.empty()) return;
        auto* page = sheet(findings_heading());
        worksheet_set_column(page, 0, 0, kWide, wrapped_);
        lxw_row_t row = 0;
        for (const FindingLine& finding : document_.findings) {
            text(page, row, 0, finding.text, wrapped_);
            text(page, row++, 1, finding.fact);
        }
    }

    const Document& document_;
    PassingFile file_;
    lxw_workbook* workbook_ = nullptr;
    lxw_format* bold_ = nullptr;
    lxw_format* wrapped_ = nullptr;
    std::map<std::string, lxw_format*> formats_;
    std::set<std::string> names_;
};

}  // namespace

std::string write_xlsx(const Document& document) {
    return Workbook{document}.write();
}

}  // namespace dyestead::reports
