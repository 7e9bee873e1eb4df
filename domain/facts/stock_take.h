// stock_take.h - what was counted on the shelf, in which measures, and how is stock costed?
#pragma once

#include "domain/facts/cupboard.h"

namespace dyestead {

// A stock-take; the shelf as it stands at the end of the day.
struct Count : HeadOf<Count> {
    static constexpr std::string_view kTable = "count";
    Day date;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Count> = [](auto&& visit) {
    visit(field("date", &Count::date));
    visit(field("note", &Count::note));
};

// Blank: not counted. Nought: none left. Without a lot: all of the material together.
struct CountLine : LineOf<CountLine, Count> {
    static constexpr std::string_view kTable = "count_line";
    Key<Material> material;
    std::optional<Key<Lot>> lot;
    std::optional<Amount> counted;
    std::optional<LossReason> reason;  // where there is less than the books say
};
template <>
inline constexpr auto kFields<CountLine> = [](auto&& visit) {
    visit(field("material", &CountLine::material));
    visit(field("lot", &CountLine::lot));
    visit(field("counted", &CountLine::counted));
    visit(field("reason", &CountLine::reason));
};

// A measure of the maker's own: a bucket of water, a scoop of ash.
struct OwnMeasure : HeadOf<OwnMeasure> {
    static constexpr std::string_view kTable = "own_measure";
    std::string name;
    std::optional<Key<Material>> material;  // blank: of anything
    Amount amount;
};
template <>
inline constexpr auto kFields<OwnMeasure> = [](auto&& visit) {
    visit(field("name", &OwnMeasure::name));
    visit(field("material", &OwnMeasure::material));
    visit(field("amount", &OwnMeasure::amount));
};

// Whether goods leave at the cost of their lot or at the moving average of the material. Harvests,
// pigments and bars are always costed by lot.
enum class CostBy : std::uint8_t { lot, average };
template <>
inline constexpr std::array<std::string_view, 2> kWords<CostBy>{"lot", "average"};

// From the first day of a financial year on.
struct CostRule : HeadOf<CostRule> {
    static constexpr std::string_view kTable = "cost_rule";
    Day from;
    std::optional<Key<Material>> material;  // blank: all that are bought
    CostBy cost_by = CostBy::lot;
};
template <>
inline constexpr auto kFields<CostRule> = [](auto&& visit) {
    visit(field("from", &CostRule::from));
    visit(field("material", &CostRule::material));
    visit(field("cost_by", &CostRule::cost_by));
};

}  // namespace dyestead
