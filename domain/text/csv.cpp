#include "domain/text/csv.h"

#include <fmt/format.h>

#include <algorithm>

namespace dyestead {
namespace {

// How many bytes the letter at the front takes; 0 when they are not UTF-8 (RFC 3629) or are NUL.
std::size_t letter_size(std::string_view text) {
    const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
    const auto follows = [&](std::size_t i, unsigned low, unsigned high) { return byte(i) >= low && byte(i) <= high; };
    const unsigned first = byte(0);
    if (first == 0) return 0;
    if (first < 0x80) return 1;
    if (first >= 0xC2 && first <= 0xDF) return follows(1, 0x80, 0xBF) ? 2 : 0;
    if (first >= 0xE0 && first <= 0xEF) {
        const unsigned low = first == 0xE0 ? 0xA0 : 0x80;
        const unsigned high = first == 0xED ? 0x9F : 0xBF;
        return follows(1, low, high) && follows(2, 0x80, 0xBF) ? 3 : 0;
    }
    if (first >= 0xF0 && first <= 0xF4) {
        const unsigned low = first == 0xF0 ? 0x90 : 0x80;
        const unsigned high = first == 0xF4 ? 0x8F : 0xBF;
        return follows(1, low, high) && follows(2, 0x80, 0xBF) && follows(3, 0x80, 0xBF) ? 4 : 0;
    }
    return 0;
}

class Reader {
public:
    explicit Reader(std::string_view text) : rest_{text} {
        constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
        if (rest_.starts_with(kByteOrderMark)) rest_.remove_prefix(kByteOrderMark.size());
    }

    CsvText read() {
        while (!rest_.empty() && !stopped_) read_row();
        return std::move(result_);
    }

private:
    bool at_row_end() const { return rest_.empty() || rest_.front() == '\n' || rest_.starts_with("\r\n"); }

    void trouble(TroubleId id, int line) {
        result_.troubles.push_back({id, {}, {}, line, fmt::format("{}", row_.size() + 1)});
    }

    // Moves one letter into the cell; false when it is none.
    bool take(std::string& cell) {
        const std::size_t size = letter_size(rest_);
        if (size == 0) {
            trouble(TroubleId::not_utf8, line_);
            stopped_ = true;
            return false;
        }
        if (rest_.front() == '\n') ++line_;
        cell.append(rest_.substr(0, size));
        rest_.remove_prefix(size);
        return true;
    }

    void read_row() {
        row_.clear();
        do {
            read_cell();
        } while (!stopped_ && take_comma());
        if (stopped_) return;
        rest_.remove_prefix(std::min<std::size_t>(rest_.size(), rest_.starts_with('\r') ? 2 : 1));
        ++line_;
        if (row_.size() > 1 || !row_.front().text.empty()) result_.rows.push_back(row_);
    }

    bool take_comma() {
        if (!rest_.starts_with(',')) return false;
        rest_.remove_prefix(1);
        return true;
    }

    void read_cell() {
        CsvCell cell{{}, line_};
        if (rest_.starts_with('"')) {
            read_quoted(cell);
        } else {
            while (!at_row_end() && rest_.front() != ',')
                if (!take(cell.text)) return;
        }
        if (!stopped_) row_.push_back(std::move(cell));
    }

    void read_quoted(CsvCell& cell) {
        rest_.remove_prefix(1);
        while (true) {
            if (rest_.empty()) {
                trouble(TroubleId::quote_not_closed, cell.line);
                stopped_ = true;
                return;
            }
            if (rest_.front() == '"') {
                rest_.remove_prefix(1);
                if (!rest_.starts_with('"')) break;
            }
            if (!take(cell.text)) return;
        }
        if (at_row_end() || rest_.front() == ',') return;
        trouble(TroubleId::text_after_quote, line_);
        std::string dropped;
        while (!at_row_end() && rest_.front() != ',')
            if (!take(dropped)) return;
    }

    std::string_view rest_;
    int line_ = 1;
    bool stopped_ = false;
    CsvRow row_;
    CsvText result_;
};

}  // namespace

CsvText read_csv(std::string_view text) {
    return Reader{text}.read();
}

void add_csv_row(std::string& out, const std::vector<std::string>& cells) {
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) out += ',';
        const bool quote = cells[i].find_first_of(",\"\r\n") != std::string::npos;
        if (quote) out += '"';
        for (const char c : cells[i]) {
            if (c == '"') out += '"';
            out += c;
        }
        if (quote) out += '"';
    }
    out += "\r\n";
}

}  // namespace dyestead
