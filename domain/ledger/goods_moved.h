// goods_moved.h - which goods went from where into what, and how well is that known?
//
// Every step of goods out of a lot, bed, vat or batch. A use that ran short and was settled from a lot
// later is a step out of that lot on the day of the use. Each step is named by the maker, or only taken
// by the shelf's rule; possible_moves() adds those the records do not exclude. Followed forward or
// backward through all steps in the order in which they happened.
#pragma once

#include <array>

#include "domain/ledger/ledger.h"

namespace dyestead {

// From the surest to the least sure.
enum class Known : std::uint8_t { named, by_rule, could_be };
inline constexpr std::size_t kKnown = 3;

struct GoodsMove {
    std::uint32_t movement = 0;  // place in ledger.movements
    std::uint32_t settled = 0;   // the movement by which it is known: a later one where the use ran short
    Account from = 0;            // of a settled shortfall: the lot; of one still open: provisional
    Account of = 0;              // whose goods they are: `from`, or of bars that leave a shop, their lot
    Account to = 0;
    std::int64_t quantity = 0;  // base units of the material of the movement's source
    Known known{};              // this step alone
};

// In the order of the books, named or by rule. Made of what went in, and so as sure as that, is all that
// comes out of a bed, vat or batch.
std::vector<GoodsMove> goods_moved(const Ledger& ledger);

// Uses in a bed, vat, batch or wrapping that could have been of another lot than the books say: every
// lot of the material that was on the shelf that day, where no lot is named; where the shelf was empty
// by the books, the lot that ran out last. Also the lot that was named though the books had no more of it.
std::vector<GoodsMove> possible_moves(const Shop& shop, const Ledger& ledger, const std::vector<GoodsMove>& moves);

// How well it is known that an account holds goods of those one began with (forward), or that its goods
// are in those one began with (backward).
class Followed {
public:
    static Followed forward(const Ledger& ledger, const std::vector<GoodsMove>& moves,
                            const std::vector<Account>& begin);
    static Followed backward(const Ledger& ledger, const std::vector<GoodsMove>& moves,
                             const std::vector<Account>& begin);

    std::optional<Known> at(Account account) const;
    // The surest way on which this step carries such goods.
    std::optional<Known> step(const GoodsMove& move) const;

private:
    // For each account and each sureness: forward, from which movement on it holds such goods; backward,
    // the last movement from which on they still count. In 64 bits, so that "never" fits at both ends.
    using Marks = std::vector<std::array<std::int64_t, kKnown>>;
    Followed(std::size_t accounts, bool is_forward);
    bool carries(const GoodsMove& move, std::size_t sureness) const;
    void follow(const std::vector<GoodsMove>& moves, const std::vector<Account>& begin);

    Marks marks_;
    bool is_forward_ = true;
};

}  // namespace dyestead
