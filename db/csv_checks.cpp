// What the maker would find out much later if it came in: lots that nobody made, amounts that are
// not amounts of their material, a shop that is none or two.
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "db/csv_records.h"
#include "domain/facts/material_amount.h"
#include "domain/facts/stated_amounts.h"

namespace dyestead::db {
namespace {

std::string_view name_of(Kind kind) {
    switch (kind) {
        case Kind::mass: return "mass";
        case Kind::volume: return "volume";
        case Kind::count: return "count";
        case Kind::area: return "area";
        case Kind::energy: return "energy";
    }
    return "";
}

std::size_t column_of(const Records& kind, std::string_view name) {
    return static_cast<std::size_t>(std::ranges::find(kind.sheet.columns, name) - kind.sheet.columns.begin());
}

class Checks {
public:
    Checks(FolderRecords& records, const std::filesystem::path& folder) : records_{records}, folder_{folder} {}

    void run() {
        shop_itself();
        index_materials();
        made_by<AlreadyHere>();
        made_by<DeliveryLine>();
        made_by<Harvest>();
        made_by<SeedKept>();
        made_by<Drying>();
        made_by<DryingLot>();
        made_by<Cut>();
        lots_without_maker();
        records_.for_each_kind([&](auto& kind) { amounts(kind); });
    }

private:
    void shop_itself() {
        const auto& about = records_.of<About>();
        if (about.facts.size() != 1 && about.sheet.sound)
            records_.troubles.push_back({TroubleId::shop_rows,
                                         {{"rows", fmt::format("{}", about.facts.size())}},
                                         (folder_ / csv_file_name(About::kTable)).string(),
                                         0,
                                         {}});
        for (std::size_t row = 0; row < about.facts.size(); ++row) {
            const std::string& currency = about.facts[row].currency;
            const bool capitals = std::ranges::all_of(currency, [](char c) { return c >= 'A' && c <= 'Z'; });
            if (about.whole[row] && (!capitals || currency.size() != 3))
                records_.trouble(TroubleId::not_one_of, about, row, column_of(about, "currency"),
                                 {{"choices", "EUR, GBP, USD ... (ISO 4217)"}});
        }
    }

    void index_materials() {
        const auto& materials = records_.of<Material>();
        for (std::size_t row = 0; row < materials.facts.size(); ++row)
            if (materials.whole[row]) materials_.emplace(materials.facts[row].key, &materials.facts[row]);
        const auto& lots = records_.of<Lot>();
        for (std::size_t row = 0; row < lots.facts.size(); ++row)
            if (lots.whole[row]) material_of_lot_.emplace(lots.facts[row].key, lots.facts[row].material);
    }

    static std::optional<Key<Lot>> lot_made(Key<Lot> lot) {
        return lot.number == 0 ? std::nullopt : std::optional{lot};
    }
    static std::optional<Key<Lot>> lot_made(std::optional<Key<Lot>> lot) { return lot; }

    template <class Fact>
    void made_by() {
        const auto& kind = records_.of<Fact>();
        if (!kind.sheet.sound) makers_unknown_ = true;
        for (std::size_t row = 0; row < kind.facts.size(); ++row) {
            const auto lot = lot_made(kind.facts[row].lot);
            if (!lot) {
                if (!kind.whole[row]) makers_unknown_ = true;
                continue;
            }
            maker(kind, row, *lot);
        }
    }

    void maker(const Records& kind, std::size_t row, Key<Lot> lot) {
        const std::size_t column = column_of(kind, "lot");
        const CsvRow& cells = kind.sheet.rows[row];
        const auto [first, fresh] = makers_.emplace(lot, std::pair{kind.sheet.file, kind.sheet.line(cells, column)});
        if (fresh) return;
        records_.trouble(TroubleId::lot_made_twice, kind, row, column,
                         {{"lot", std::string{kind.sheet.cell(cells, column)}},
                          {"first_file", first->second.first},
                          {"first_line", fmt::format("{}", first->second.second)}});
    }

    // Not asked while the maker of some lot could not be read: that has been said already.
    void lots_without_maker() {
        const auto& lots = records_.of<Lot>();
        if (makers_unknown_) return;
        for (std::size_t row = 0; row < lots.facts.size(); ++row)
            if (lots.whole[row] && !makers_.contains(lots.facts[row].key))
                records_.trouble(TroubleId::lot_nobody_made, lots, row, 0, {{"lot", lots.facts[row].code}});
    }

    template <class Fact>
    void amounts(const RecordsOf<Fact>& kind) {
        for (std::size_t row = 0; row < kind.facts.size(); ++row)
            if (kind.whole[row])
                for (const auto& stated : stated_amounts(kind.facts[row])) amount(kind, row, stated);
    }

    void amount(const Records& kind, std::size_t row, const StatedAmount& stated) {
        std::vector<TroubleArg> args;
        if (const auto* wanted = std::get_if<Kind>(&stated.of)) {
            if (stated.amount.quantity.kind() == *wanted) return;
            args = {{"wanted", std::string{name_of(*wanted)}}};
        } else {
            const Material* material = material_of(stated);
            if (!material || as_held(*material, stated.amount)) return;
            args = {{"wanted", std::string{name_of(kind_of(material->held_as))}}, {"material", material->code}};
        }
        records_.trouble(TroubleId::wrong_kind_of_amount, kind, row, column_of(kind, stated.field), std::move(args));
    }

    // Null when it could not be read.
    const Material* material_of(const StatedAmount& stated) const {
        Key<Material> key;
        if (const auto* lot = std::get_if<Key<Lot>>(&stated.of)) {
            const auto at = material_of_lot_.find(*lot);
            if (at == material_of_lot_.end()) return nullptr;
            key = at->second;
        } else {
            key = std::get<Key<Material>>(stated.of);
        }
        const auto at = materials_.find(key);
        return at == materials_.end() ? nullptr : at->second;
    }

    FolderRecords& records_;
    const std::filesystem::path& folder_;
    std::map<Key<Material>, const Material*> materials_;
    std::map<Key<Lot>, Key<Material>> material_of_lot_;
    std::map<Key<Lot>, std::pair<std::string, int>> makers_;
    bool makers_unknown_ = false;
};

}  // namespace

void check_records(FolderRecords& records, const std::filesystem::path& folder) {
    Checks{records, folder}.run();
}

}  // namespace dyestead::db
