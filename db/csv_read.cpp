// The way in: every file is read, every cell, and every trouble is gathered before anything is refused.
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <charconv>
#include <map>
#include <system_error>
#include <tuple>

#include "db/csv_folder.h"
#include "db/csv_records.h"
#include "db/trouble.h"
#include "domain/facts/field_text.h"
#include "domain/text/decimal.h"

namespace dyestead::db {
namespace {

std::string lower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

template <class T>
bool is_over_whole(const T& value) {
    if constexpr (std::is_same_v<T, Ratio>)
        return value > Ratio{1, 1};
    else if constexpr (std::is_same_v<T, std::optional<Ratio>>)
        return value && is_over_whole(*value);
    else
        return false;
}

class FolderReader {
public:
    explicit FolderReader(const std::filesystem::path& folder) : folder_{folder} {}

    Shop read() {
        records_.for_each_kind([&]<class Fact>(RecordsOf<Fact>& kind) {
            kind.table = Fact::kTable;
            open(kind, csv_columns<Fact>(), csv_columns_that_may_be_missing<Fact>());
            kind.facts = std::vector<Fact>(kind.whole.size());
            if constexpr (Head<Fact>) read_codes(kind);
        });
        look_for_unknown_files();
        records_.for_each_kind([&](auto& kind) { read_rows(kind); });
        check_records(records_, folder_);
        auto& troubles = records_.troubles;
        std::stable_sort(troubles.begin(), troubles.end(), [](const Trouble& a, const Trouble& b) {
            return std::tie(a.file, a.line) < std::tie(b.file, b.line);
        });
        if (!troubles.empty()) throw RecordsRefused{std::move(troubles)};
        Shop shop;
        records_.for_each_kind([&]<class Fact>(RecordsOf<Fact>& kind) { shop.all<Fact>() = std::move(kind.facts); });
        shop.sort();
        return shop;
    }

private:
    using Firsts = std::map<std::pair<std::int64_t, std::int64_t>, std::size_t>;  // a name, and its first row

    void look_for_unknown_files() {
        std::error_code error;
        std::filesystem::directory_iterator files{folder_, error};
        if (error) throw ShopTrouble{TroubleId::no_such_folder, folder_};
        std::vector<std::string> known;
        records_.for_each_kind([&](const Records& kind) { known.push_back(csv_file_name(kind.table)); });
        for (const auto& entry : files) {
            const std::string name = entry.path().filename().string();
            if (lower(entry.path().extension().string()) != ".csv" || std::ranges::find(known, name) != known.end())
                continue;
            records_.troubles.push_back({TroubleId::unknown_file,
                                         {{"value", name}, {"choices", fmt::format("{}", fmt::join(known, ", "))}},
                                         (folder_ / name).string(),
                                         0,
                                         {}});
        }
    }

    void open(Records& kind, std::vector<std::string> columns, const std::vector<std::string>& may_be_missing) {
        columns.emplace_back("key");
        kind.sheet =
            read_sheet(folder_ / csv_file_name(kind.table), std::move(columns), may_be_missing, records_.troubles);
        kind.whole.assign(kind.sheet.rows.size(), 1);
    }

    void mistaken(Records& kind, std::size_t row, std::size_t column, TroubleId id, std::vector<TroubleArg> args = {}) {
        kind.whole[row] = 0;
        records_.trouble(id, kind, row, column, std::move(args));
    }

    void twice(Records& kind, std::size_t row, std::size_t column, TroubleId id, std::size_t first) {
        const int line = kind.sheet.line(kind.sheet.rows[first], column);
        mistaken(kind, row, column, id, {{"first_file", kind.sheet.file}, {"first_line", fmt::format("{}", line)}});
    }

    // The key column's number, or the one that the name gives; 0 when the cell is no key.
    std::int64_t read_key(Records& kind, std::size_t row, std::string_view name) {
        const std::size_t column = kind.sheet.columns.size() - 1;
        const std::string_view text = trimmed(kind.sheet.cell(kind.sheet.rows[row], column));
        if (text.empty()) return key_from_name(kind.table, name);
        std::int64_t key = 0;
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), key);
        std::optional<TroubleId> trouble;
        if (error == std::errc::result_out_of_range)
            trouble = TroubleId::too_large;
        else if (error != std::errc{} || end != text.data() + text.size())
            trouble = TroubleId::not_a_whole_number;
        else if (key <= 0)
            trouble = TroubleId::below_zero;
        if (trouble) mistaken(kind, row, column, *trouble);
        return trouble ? 0 : key;
    }

    // Before any other cell, for they refer to codes.
    template <class Fact>
    void read_codes(RecordsOf<Fact>& kind) {
        std::unordered_map<std::string, std::size_t> first;
        for (std::size_t row = 0; row < kind.facts.size(); ++row) {
            kind.facts[row].code = read_code(kind, row, first);
            kind.facts[row].key.number = kind.keys[kind.facts[row].code];
        }
    }

    std::string read_code(Records& kind, std::size_t row, std::unordered_map<std::string, std::size_t>& first) {
        std::string code{kind.sheet.cell(kind.sheet.rows[row], 0)};
        if (kind.sheet.places[0] < 0) {
            kind.whole[row] = 0;
        } else if (!is_code(code)) {
            mistaken(kind, row, 0, trimmed(code).empty() ? TroubleId::blank : TroubleId::not_a_code);
        } else if (const auto [at, fresh] = first.emplace(code, row); !fresh) {
            twice(kind, row, 0, TroubleId::code_twice, at->second);
        } else {
            kind.keys.emplace(code, read_key(kind, row, code));
        }
        return code;
    }

    template <class Fact>
    void read_rows(RecordsOf<Fact>& kind) {
        Firsts positions;
        Firsts keys;
        for (std::size_t row = 0; row < kind.facts.size(); ++row) {
            Fact& fact = kind.facts[row];
            std::size_t column = 1;
            if constexpr (Line<Fact>) {
                read_cell(kind, row, 0, fact.head);
                read_cell(kind, row, 1, fact.position);
                column = 2;
                fact.key.number = read_place(kind, row, fact.head.number, fact.position, positions);
            }
            for_each_field<Fact>(
                [&](const auto& each) { read_cell(kind, row, column++, fact.*each.member, each.part); });
            check_key(kind, row, fact.key.number, keys);
        }
    }

    // The key of a line.
    std::int64_t read_place(Records& kind, std::size_t row, std::int64_t head, int position, Firsts& taken) {
        if (!kind.whole[row]) return 0;
        if (position == 0) {
            mistaken(kind, row, 1, TroubleId::not_one_of, {{"choices", "1, 2, 3 ..."}});
            return 0;
        }
        const auto [at, fresh] = taken.emplace(std::pair{head, std::int64_t{position}}, row);
        if (!fresh) twice(kind, row, 1, TroubleId::position_twice, at->second);
        const auto name = fmt::format("{}/{}", trimmed(kind.sheet.cell(kind.sheet.rows[row], 0)), position);
        const std::int64_t key = read_key(kind, row, name);
        kind.keys.emplace(name, key);
        return key;
    }

    void check_key(Records& kind, std::size_t row, std::int64_t key, Firsts& taken) {
        if (!kind.whole[row]) return;
        const auto [at, fresh] = taken.emplace(std::pair{key, std::int64_t{0}}, row);
        if (!fresh) twice(kind, row, kind.sheet.columns.size() - 1, TroubleId::key_twice, at->second);
    }

    // Not inlined: there are hundreds of fields, and of types a tenth of it.
    template <class Member>
    [[gnu::noinline]] void read_cell(Records& kind, std::size_t row, std::size_t column, Member& member,
                                     bool part = false) {
        // A column that is missing has been said once, for the heading.
        if (kind.sheet.places[column] < 0) {
            if constexpr (!requires { member.has_value(); }) kind.whole[row] = 0;
            return;
        }
        const auto read = read_field<Member>(kind.sheet.cell(kind.sheet.rows[row], column), records_);
        if (read) {
            member = *read;
            if (part && is_over_whole(member)) mistaken(kind, row, column, TroubleId::more_than_whole);
            return;
        }
        // Records that could not be read have been said once, for their own file.
        const bool leads_nowhere =
            *read.trouble == TroubleId::no_such_reference || *read.trouble == TroubleId::no_such_record;
        if (leads_nowhere && !target_is_sound(member)) {
            kind.whole[row] = 0;
            return;
        }
        std::vector<TroubleArg> args;
        if (*read.trouble == TroubleId::not_one_of) args = {{"choices", choices_of<Member>()}};
        if (*read.trouble == TroubleId::no_such_reference) args = {{"kind", std::string{table_of(member)}}};
        mistaken(kind, row, column, *read.trouble, std::move(args));
    }

    template <class Fact>
    bool target_is_sound(Key<Fact>) const {
        return records_.template of<Fact>().sheet.sound;
    }
    template <class Fact>
    bool target_is_sound(std::optional<Key<Fact>>) const {
        return records_.template of<Fact>().sheet.sound;
    }
    // Which records it would lead to cannot be told from what was not read.
    bool target_is_sound(const AnyKey&) {
        bool sound = true;
        records_.for_each_kind([&](const Records& kind) { sound = sound && kind.sheet.sound; });
        return sound;
    }
    template <class T>
    bool target_is_sound(const T&) const {
        return true;
    }

    template <class Fact>
    static std::string_view table_of(Key<Fact>) {
        return Fact::kTable;
    }
    template <class Fact>
    static std::string_view table_of(std::optional<Key<Fact>>) {
        return Fact::kTable;
    }
    template <class T>
    static std::string_view table_of(const T&) {
        return {};
    }

    const std::filesystem::path& folder_;
    FolderRecords records_;
};

}  // namespace

std::optional<AnyKey> FolderRecords::any_key_of(std::string_view name) const {
    const std::size_t slash = name.find('/');
    if (slash == std::string_view::npos) return std::nullopt;
    const std::string_view table = name.substr(0, slash);
    const std::string within{name.substr(slash + 1)};
    std::optional<AnyKey> found;
    kinds.for_each([&](const Records& kind) {
        if (kind.table != table) return;
        if (const auto at = kind.keys.find(within); at != kind.keys.end())
            found = AnyKey{std::string{table}, at->second};
    });
    if (found || !within.starts_with(kBareKey)) return found;
    const auto number = read_decimal(std::string_view{within}.substr(1));
    if (!number || (*number).places != 0 || (*number).digits <= 0) return std::nullopt;
    return AnyKey{std::string{table}, (*number).digits};
}

void FolderRecords::trouble(TroubleId id, const Records& kind, std::size_t row, std::size_t column,
                            std::vector<TroubleArg> args) {
    const Sheet& sheet = kind.sheet;
    args.insert(args.begin(), {"value", std::string{sheet.cell(sheet.rows[row], column)}});
    troubles.push_back({id, std::move(args), sheet.file, sheet.line(sheet.rows[row], column), sheet.columns[column]});
}

Shop read_csv_folder(const std::filesystem::path& folder) {
    return FolderReader{folder}.read();
}

}  // namespace dyestead::db
