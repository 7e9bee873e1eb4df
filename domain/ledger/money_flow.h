// money_flow.h - what money came in and went out in a period, by kind? The plain year of money that many
// small traders are taxed on: no stock, no hours, no overhead spread over bars.
#pragma once

#include <array>
#include <variant>
#include <vector>

#include "domain/ledger/takings.h"

namespace dyestead {

enum class PaidFor : std::uint8_t {
    goods,     // suppliers' lines
    carriage,  // on them
    wages,     // of paid people
    stalls,
    travel,
    postage,
    payment_fees,  // shares of takings, fees a payment, bags
    bills,
    energy,  // at the tariff, as it was used: stands in for the power bill
};
inline constexpr std::size_t kPaidFor = static_cast<std::size_t>(PaidFor::energy) + 1;

// What one record brought in or took out.
struct MoneyLine {
    FactRef fact;
    std::variant<TakenAt, PaidFor> what;
    Money amount;
};

// Requires: period.last <= ledger.as_of.
std::vector<MoneyLine> money_lines(const Shop& shop, const Ledger& ledger, Period period);

struct MoneyFlow {
    Period period{};
    std::array<Money, kTakenAt> in{};   // by TakenAt, as customers paid; fair_cash and fair_card apart
    std::array<Money, kPaidFor> out{};  // by PaidFor

    Money total_in() const;
    Money total_out() const;
};

// Requires: period.last <= ledger.as_of.
MoneyFlow money_flow(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead
