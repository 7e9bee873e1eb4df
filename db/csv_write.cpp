// The way out: rows in order of day and code, written under another name and renamed when whole.
#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <stdexcept>
#include <system_error>
#include <unordered_map>
#include <utility>

#include "db/csv_folder.h"
#include "db/csv_names.h"
#include "db/hash.h"
#include "db/trouble.h"
#include "domain/facts/field_text.h"
#include "domain/text/csv.h"

namespace dyestead::db {
namespace {

std::string numbered(std::int64_t number) {
    return fmt::format("{}", number);
}

struct ShopCodes {
    const Shop& shop;
    template <class Fact>
    std::string code_of(Key<Fact> key) const {
        const Fact* fact = shop.find(key);
        if (!fact) throw std::logic_error("a reference leads nowhere");
        return fact->code;
    }
    template <class Fact>
    std::string name_in(const Fact& fact) const {
        if constexpr (Line<Fact>)
            return code_of(fact.head) + "/" + numbered(fact.position);
        else
            return fact.code;
    }
    // What a note hangs on may be gone; its key is then all that is left of it.
    std::string name_of(const AnyKey& any) const {
        std::string name = std::string{kBareKey} + numbered(any.number);
        shop.for_each_list([&]<class Fact>(const std::vector<Fact>&) {
            if (Fact::kTable != any.table) return;
            if (const Fact* fact = shop.find(Key<Fact>{any.number})) name = name_in(*fact);
        });
        return any.table + "/" + name;
    }
};

// What a row is sorted by: heads by day, code and key; lines by their head's place, position and key.
struct Place {
    std::int64_t first;
    std::string_view code;
    std::int64_t position;
    std::int64_t key;
    std::size_t at;  // in the shop's list
    friend auto operator<=>(const Place&, const Place&) = default;
};

std::vector<std::size_t> sorted(std::vector<Place> places) {
    std::sort(places.begin(), places.end());
    std::vector<std::size_t> order;
    for (const Place& place : places) order.push_back(place.at);
    return order;
}

template <class Fact>
std::int64_t day_number(const Fact& fact) {
    std::optional<Day> day;
    for_each_field<Fact>([&](const auto& each) {
        if constexpr (std::is_same_v<std::remove_cvref_t<decltype(fact.*each.member)>, Day>)
            if (!day) day = fact.*each.member;
    });
    return day.value_or(Day{}).time_since_epoch().count();
}

template <class Fact>
std::vector<std::size_t> written_order(const Shop& shop) {
    const auto& list = shop.all<Fact>();
    std::vector<Place> places;
    if constexpr (Line<Fact>) {
        const auto& heads = shop.all<typename Fact::Head>();
        std::unordered_map<std::int64_t, std::int64_t> rank;
        for (const std::size_t head : written_order<typename Fact::Head>(shop))
            rank.emplace(heads[head].key.number, static_cast<std::int64_t>(rank.size()));
        for (std::size_t i = 0; i < list.size(); ++i)
            places.push_back({rank.at(list[i].head.number), {}, list[i].position, list[i].key.number, i});
    } else {
        for (std::size_t i = 0; i < list.size(); ++i)
            places.push_back({day_number(list[i]), list[i].code, 0, list[i].key.number, i});
    }
    return sorted(std::move(places));
}

// Not inlined: there are hundreds of fields, and of types a tenth of it.
template <class Member>
[[gnu::noinline]] void add_cell(std::vector<std::string>& cells, const Member& member, const ShopCodes& codes) {
    cells.push_back(print_field(member, codes));
}

template <class Fact>
std::string csv_text(const Shop& shop) {
    const ShopCodes codes{shop};
    const auto& list = shop.all<Fact>();
    const auto key_is_plain = [&](const Fact& fact) {
        return fact.key.number == key_from_name(Fact::kTable, codes.name_in(fact));
    };
    bool keys = false;
    for (const Fact& fact : list) keys = keys || !key_is_plain(fact);
    auto heading = csv_columns<Fact>();
    if (keys) heading.emplace_back("key");
    std::string text;
    add_csv_row(text, heading);
    for (const std::size_t i : written_order<Fact>(shop)) {
        const Fact& fact = list[i];
        std::vector<std::string> cells;
        if constexpr (Line<Fact>)
            cells = {codes.code_of(fact.head), numbered(fact.position)};
        else
            cells = {fact.code};
        for_each_field<Fact>([&](const auto& each) { add_cell(cells, fact.*each.member, codes); });
        if (keys) cells.push_back(key_is_plain(fact) ? std::string{} : numbered(fact.key.number));
        add_csv_row(text, cells);
    }
    return text;
}

// Two facts of a kind under one name: references to them could not be told apart.
void find_twins(std::vector<std::string> names, TroubleId id, const std::filesystem::path& file,
                std::vector<Trouble>& troubles) {
    std::sort(names.begin(), names.end());
    for (std::size_t i = 1; i < names.size(); ++i)
        if (names[i] == names[i - 1]) troubles.push_back({id, {{"value", names[i]}}, file.string(), 0, {}});
}

// Files that are all written under other names first, and take their own names together.
class NewFiles {
public:
    NewFiles() = default;
    ~NewFiles() {
        std::error_code ignored;
        for (const auto& [part, target] : files_) std::filesystem::remove(part, ignored);
    }
    NewFiles(const NewFiles&) = delete;
    NewFiles& operator=(const NewFiles&) = delete;

    void add(const std::filesystem::path& target, std::string_view text) {
        std::error_code ignored;
        const auto standing = std::filesystem::status(target, ignored);
        if (std::filesystem::exists(standing) && !std::filesystem::is_regular_file(standing))
            throw ShopTrouble{TroubleId::cannot_write, target};
        auto part = target;
        part += ".part";
        files_.emplace_back(part, target);
        std::ofstream file{part, std::ios::binary | std::ios::trunc};
        file.write(text.data(), static_cast<std::streamsize>(text.size()));
        file.close();
        if (!file) throw ShopTrouble{TroubleId::cannot_write, target};
    }
    void finish() {
        for (const auto& [part, target] : files_) {
            std::error_code error;
            std::filesystem::rename(part, target, error);
            if (error) throw ShopTrouble{TroubleId::cannot_write, target};
        }
        files_.clear();
    }

private:
    std::vector<std::pair<std::filesystem::path, std::filesystem::path>> files_;
};

}  // namespace

std::int64_t key_from_name(std::string_view table, std::string_view name) {
    const auto key = static_cast<std::int64_t>(hash_of(fmt::format("{}/{}", table, name)) & 0x7FFF'FFFF'FFFF'FFFF);
    return key == 0 ? 1 : key;
}

std::string csv_file_name(std::string_view table) {
    return fmt::format("{}.csv", table);
}

void write_csv_folder(const Shop& shop, const std::filesystem::path& folder) {
    std::vector<Trouble> twins;
    shop.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        std::vector<std::string> names;
        for (const Fact& fact : list) names.push_back(ShopCodes{shop}.name_in(fact));
        find_twins(std::move(names), Line<Fact> ? TroubleId::position_twice : TroubleId::code_twice,
                   folder / csv_file_name(Fact::kTable), twins);
    });
    if (!twins.empty()) throw RecordsRefused{std::move(twins)};
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (!std::filesystem::is_directory(folder, error)) throw ShopTrouble{TroubleId::cannot_write, folder};
    NewFiles files;
    shop.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        const auto path = folder / csv_file_name(Fact::kTable);
        if (!list.empty() || std::filesystem::exists(path, error)) files.add(path, csv_text<Fact>(shop));
    });
    files.finish();
}

}  // namespace dyestead::db
