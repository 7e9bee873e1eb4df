// recall_words.h - where recalled goods are, how well that is known, and what to do about it.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/recall.h"

namespace dyestead::reports {

// "named", "by rule", "could be"
std::string name_of(Known known);
// The heading of a heap: "Still here: put it by".
std::string name_of(Heap heap);
// "here", "reachable": the last part of a figure's key, the same in every language.
std::string_view key_of(Known known);
std::string_view key_of(Heap heap);

// What a lot, bed, vat or batch is called: "Olive oil" and "olive-2026-1".
struct Called {
    std::string what;
    std::string code;
};
Called called(const Shop& shop, const Ledger& ledger, Account account);

// To whom or where it went: "The farm shop at the crossroads", "order W240211", "May green market".
std::string went_to(const Shop& shop, const Whereabouts& there);
// "given away: Christmas presents."
std::string went_to_with_note(const Shop& shop, const Whereabouts& there);

// The last sentence: what to put by, whom to write to, where to put up a notice.
std::string what_to_do(const Shop& shop, const Ledger& ledger, const Recall& found);

}  // namespace dyestead::reports
