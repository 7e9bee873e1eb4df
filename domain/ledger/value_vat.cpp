#include <algorithm>

#include "domain/facts/material_amount.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/value.h"
#include "domain/text/amounts.h"
#include "domain/values/heat.h"

namespace dyestead {
namespace {

// As metered, or reckoned from the water; nothing where neither can be said.
std::optional<Quantity> energy_of(const VatHeat& line) {
    if (line.energy && line.energy->quantity.kind() == Kind::energy) return line.energy->quantity;
    if (!line.water || !line.heated_from || !line.heated_to) return std::nullopt;
    const Kind kind = line.water->quantity.kind();
    const Ratio efficiency = line.efficiency.value_or(Ratio{1, 1});
    if (efficiency.is_zero() || (kind != Kind::mass && kind != Kind::volume)) return std::nullopt;
    return energy_to_heat(line.water->quantity, *line.heated_from, *line.heated_to, efficiency);
}

}  // namespace

VatBook::VatBook(Bookkeeper& books)
    : books_{books}, pots_(books.shop().all<Vat>().size()), heats_{books.shop()}, joined_{books.shop()} {}

void VatBook::post(const Vat& fact) {
    const std::uint32_t place = books_.place(fact);
    const Account vat = books_.vat(place);
    pots_[place].begun = true;
    books_.take_all(vat);
    for (const VatHeat* line : heats_(fact)) heat(*line, vat);
    const Ratio share = waiting_share_in_force(books_.shop(), books_.day());
    bool told = false;
    for (const VatStep* step : books_.shop_lines().steps(fact)) {
        told = told || step->hands_on || step->waiting;
        const bool watched = step->watch == Watch::attended;
        books_.work(step->who, counted(step->hands_on, watched ? step->waiting : std::nullopt, share), vat, ref(*step));
    }
    if (!fact.hands_on && !fact.waiting) return;
    // The steps as they were noted stand; what was told of all of them at the end would count them twice.
    if (told) return books_.find(FindingCode::vat_told_twice, ref(fact));
    books_.work(fact.who, counted(fact.hands_on, fact.waiting, share), vat, ref(fact));
}

Minutes VatBook::counted(const std::optional<Span>& hands_on, const std::optional<Span>& watched, Ratio share) {
    Minutes time = hands_on ? hands_on->time : Minutes{};
    if (watched) time += Minutes::millionths(times(watched->time.in_millionths(), share));
    return time;
}

void VatBook::heat(const VatHeat& line, Account vat) {
    try {
        const auto energy = energy_of(line);
        if (!energy) return books_.find(FindingCode::heat_not_complete, ref(line));
        const auto tariff = tariff_in_force(books_.shop(), line.source, books_.day());
        if (!tariff) {
            // Wood and sun cost nothing until the maker says what they cost.
            const bool free = line.source == HeatSource::wood || line.source == HeatSource::sun;
            if (!free) books_.find(FindingCode::tariff_unknown, ref(line), {std::string{word(line.source)}});
            return;
        }
        Cost cost;
        cost.energy = *tariff * *energy;
        books_.enter(Boundary::energy, vat, ref(line), cost);
    } catch (const Overflow&) {
        books_.find(FindingCode::too_large, ref(line));
    }
}

// As the powder is held; 0 where nothing was seen lost, or it cannot be said so.
std::int64_t VatBook::lost_at_plate(const Drying& fact, const StockLine& powder) {
    if (!fact.lost) return 0;
    const Material& material = books_.shop().all<Material>()[powder.material];
    try {
        if (const auto lost = as_held(material, *fact.lost)) return std::max<std::int64_t>(0, lost->in_base());
        books_.find(FindingCode::amount_not_convertible, ref(fact), {print(*fact.lost), material.name});
    } catch (const Overflow&) {
        books_.find(FindingCode::too_large, ref(fact));
    }
    return 0;
}

// What came off the plate, by weight times worth; by weight alone where nothing is worth anything. What was
// seen and lost stands first, so that the last lot takes what the others leave.
std::vector<VatBook::Part> VatBook::parts(const Drying& fact) {
    constexpr std::int64_t kOne = 1'000;  // so that a share of a base unit still weighs something
    constexpr Wide kHeaviest = Wide{kLargestStatedBase} * kOne;
    std::vector<Part> parts;
    const auto add = [&](const StockLine* line, std::int64_t quantity, Ratio worth) {
        const Wide weight = Wide{std::min(quantity, kLargestStatedBase)} * kOne * worth.top / worth.bottom;
        parts.push_back({line, narrow(std::min(weight, kHeaviest))});
    };
    const Ratio one{1, 1};
    std::vector<std::pair<const StockLine*, Ratio>> lots;
    if (const StockLine* own = books_.line_of(ref(fact))) lots.emplace_back(own, one);
    for (const DryingLot* further : books_.shop_lines().dried_further(fact))
        if (const StockLine* line = books_.line_of(ref(*further)))
            lots.emplace_back(line, further->worth.value_or(one));
    if (lots.empty()) return parts;
    if (const std::int64_t lost = lost_at_plate(fact, *lots.front().first); lost > 0) add(nullptr, lost, one);
    for (const auto& [line, worth] : lots) add(line, line->quantity, worth);
    if (std::ranges::all_of(parts, [](const Part& part) { return part.weight == 0; }))
        for (Part& part : parts) part.weight = part.line->quantity;
    return parts;
}

// Nothing weighed: what the vats held is lost. Otherwise all of it is in the powder, but for what was seen
// and lost at the plate.
void VatBook::post(const Drying& fact) {
    std::vector<Account> vats;
    for (const DryingVat* line : joined_(fact)) {
        const auto place = books_.place(line->vat);
        if (!place) continue;
        Pot& pot = pots_[*place];
        const std::string& code = books_.shop().all<Vat>()[*place].code;
        if (!pot.begun) {
            books_.find(FindingCode::vat_dried_before_begun, ref(fact), {code});
        } else if (pot.dried) {
            books_.find(FindingCode::vat_dried_twice, ref(fact), {code});
        } else {
            pot.dried = true;
            vats.push_back(books_.vat(*place));
        }
    }
    const std::vector<Part> parts = this->parts(fact);
    if (vats.empty()) {
        books_.find(FindingCode::drying_without_vat, ref(fact));
        for (const Part& part : parts)
            if (part.line != nullptr) books_.receive(*part.line, account(Boundary::other), {});
        const Account to = parts.empty() ? account(Boundary::lost) : books_.lot(parts.back().line->lot);
        return books_.work(fact.who, fact.time, to, ref(fact));
    }
    books_.work(fact.who, fact.time, vats.front(), ref(fact));
    for (const Account vat : vats) {
        if (parts.empty()) {
            books_.move(vat, account(Boundary::lost), books_.source(ref(fact)), 0, books_.balance(vat));
            continue;
        }
        std::int64_t left = 0;
        for (const Part& part : parts) left += part.weight;
        for (const Part& part : parts) {
            const Cost cost = left == 0 ? Cost{} : share_of(books_.balance(vat), part.weight, left);
            left -= part.weight;
            if (part.line == nullptr)
                books_.move(vat, account(Boundary::lost), books_.source(ref(fact)), 0, cost);
            else if (vat == vats.front())
                books_.receive(*part.line, vat, cost);
            else
                books_.move(vat, books_.lot(part.line->lot), books_.source(part.line->fact), 0, cost);
        }
    }
}

bool VatBook::share_bill(const PaidOut& bill, Money amount) {
    std::vector<Account> in_hand;
    for (std::uint32_t i = 0; i < pots_.size(); ++i) {
        const bool of_colour = !bill.colour || books_.shop().all<Vat>()[i].colour == *bill.colour;
        if (pots_[i].begun && !pots_[i].dried && of_colour) in_hand.push_back(books_.vat(i));
    }
    std::int64_t rest = amount.in_millionths();
    auto left = static_cast<std::int64_t>(in_hand.size());
    for (const Account vat : in_hand) {
        Cost cost;
        cost.overhead = Money::millionths(share_of(rest, 1, left));
        rest -= cost.overhead.in_millionths();
        --left;
        books_.enter(Boundary::bills, vat, ref(bill), cost);
    }
    return !in_hand.empty();
}

}  // namespace dyestead
