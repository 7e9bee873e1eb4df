// names.h - what is a recorded thing called, for people?
#pragma once

#include <string>

#include "domain/ledger/finding.h"

namespace dyestead::reports {

// Its name where its kind has one, else its code; blank when there is no such fact.
std::string called(const Shop& shop, FactRef about);

template <class Fact>
std::string called(const Shop& shop, Key<Fact> key) {
    return called(shop, FactRef{kKindOf<Fact>, key.number});
}

// The colour as it stands inside a sentence: "blue" though it is listed as "Blue"; a name of several
// words stays as it is.
std::string colour_in_a_sentence(const Shop& shop, Key<dyestead::Colour> colour);

// The shop's currency, as an ISO 4217 code; blank while none is recorded.
std::string currency_of(const Shop& shop);

}  // namespace dyestead::reports
