#include "domain/ledger/hours.h"

#include <map>

#include "domain/ledger/in_force.h"
#include "domain/ledger/sittings.h"

namespace dyestead {
namespace {

Stage stage_of(FactKind kind) {
    if (kind == kKindOf<Planting> || kind == kKindOf<Tending>) return Stage::garden;
    if (kind == kKindOf<Harvest> || kind == kKindOf<SeedKept>) return Stage::harvest;
    if (kind == kKindOf<VatStep>) return Stage::vat;
    if (kind == kKindOf<Drying>) return Stage::drying;
    if (kind == kKindOf<BatchTime> || kind == kKindOf<Cut>) return Stage::bench;
    if (kind == kKindOf<Wrapping>) return Stage::wrapping;
    if (kind == kKindOf<FairTime>) return Stage::fair;
    if (kind == kKindOf<Sale>) return Stage::packing;
    if (kind == kKindOf<Vat>) return Stage::vat;
    if (kind == kKindOf<Batch>) return Stage::bench;
    if (kind == kKindOf<Fair>) return Stage::fair;
    if (kind == kKindOf<AlreadyHere> || kind == kKindOf<StandingBed>) return Stage::before_the_books;
    return Stage::other;
}

// Who the fact says did it.
std::optional<Key<Person>> named(const Shop& shop, FactRef about) {
    std::optional<Key<Person>> who;
    std::uint8_t place = 0;
    shop.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        if (FactKind{place++} != about.kind) return;
        if constexpr (std::is_same_v<Fact, SittingAt>) {
            const SittingAt* line = shop.find(Key<SittingAt>{about.key});
            const Sitting* sitting = line == nullptr ? nullptr : shop.find(line->head);
            if (sitting != nullptr) who = sitting->who;
        }
        if constexpr (requires(const Fact& fact) { std::optional<Key<Person>>{fact.who}; })
            if (const Fact* fact = shop.find(Key<Fact>{about.key})) who = fact->who;
    });
    return who;
}

}  // namespace

std::vector<HourLine> hour_lines(const Shop& shop, const Ledger& ledger, Period period) {
    std::vector<HourLine> lines;
    for (const Movement& movement : ledger.movements) {
        const bool comes_in =
            movement.from == account(Boundary::hours) || movement.from == account(Boundary::already_here);
        if (!comes_in || movement.cost.hands_on.is_zero() || !period.contains(movement.on())) continue;
        const FactRef fact = ledger.sources[movement.source].fact;
        std::optional<Key<Person>> who = named(shop, fact);
        if (!who)
            if (const Person* usual = default_person(shop, movement.on())) who = usual->key;
        const SittingAt* sat = fact.kind == kKindOf<SittingAt> ? shop.find(Key<SittingAt>{fact.key}) : nullptr;
        const Stage stage = stage_of(sat != nullptr ? worked_at(*sat).kind : fact.kind);
        lines.push_back({fact, stage, who, movement.cost.hands_on, movement.cost.labour});
    }
    return lines;
}

std::vector<StageHours> hours(const Shop& shop, const Ledger& ledger, Period period) {
    std::map<std::pair<Stage, std::optional<Key<Person>>>, StageHours> stages;
    for (const HourLine& line : hour_lines(shop, ledger, period)) {
        StageHours& sum = stages[{line.stage, line.who}];
        sum.stage = line.stage;
        sum.who = line.who;
        sum.time += line.time;
        sum.labour += line.labour;
    }
    std::vector<StageHours> result;
    for (const auto& [key, sum] : stages) result.push_back(sum);
    return result;
}

}  // namespace dyestead
