#include "domain/ledger/in_force.h"
#include "domain/ledger/value.h"
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
    : books_{books},
      pots_(books.shop().all<Vat>().size()),
      heats_{books.shop()},
      steps_{books.shop()},
      joined_{books.shop()} {}

void VatBook::post(const Vat& fact) {
    const std::uint32_t place = *books_.place(fact.key);
    const Account vat = books_.vat(place);
    pots_[place].begun = true;
    books_.take_all(vat);
    for (const VatHeat* line : heats_(fact.key)) heat(*line, vat);
    const Ratio counted = waiting_share_in_force(books_.shop(), books_.day());
    for (const VatStep* step : steps_(fact.key)) {
        Minutes time = step->hands_on ? step->hands_on->time : Minutes{};
        if (step->waiting && step->watch == Watch::attended)
            time += Minutes::millionths(times(step->waiting->time.in_millionths(), counted));
        books_.work(step->who, time, vat, ref(*step));
    }
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

// Nothing weighed: what the vats held is lost. Otherwise all of it is in the powder.
void VatBook::post(const Drying& fact) {
    std::vector<Account> vats;
    for (const DryingVat* line : joined_(fact.key)) {
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
    const StockLine* line = books_.line_of(ref(fact));
    if (vats.empty()) {
        books_.find(FindingCode::drying_without_vat, ref(fact));
        if (line != nullptr) books_.receive(*line, account(Boundary::other), {});
        const Account to = line != nullptr ? books_.lot(line->lot) : account(Boundary::lost);
        return books_.work(fact.who, fact.time, to, ref(fact));
    }
    books_.work(fact.who, fact.time, vats.front(), ref(fact));
    if (line != nullptr) {
        books_.receive(*line, vats.front(), books_.balance(vats.front()));
        for (std::size_t i = 1; i < vats.size(); ++i)
            books_.move(vats[i], books_.lot(line->lot), books_.source(ref(fact)), 0, books_.balance(vats[i]));
        return;
    }
    for (const Account vat : vats)
        books_.move(vat, account(Boundary::lost), books_.source(ref(fact)), 0, books_.balance(vat));
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
