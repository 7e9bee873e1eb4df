// Where did it go: forward into three heaps, backward to every lot, and how well each is known.
#include "domain/decisions/recall.h"

#include <doctest/doctest.h>

#include "domain/decisions/recall_start.h"
#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day march(unsigned day) {
    return day_of(2026, 3, day);
}

struct Bench : ShopBuilder {
    Key<Material> oil = material("oil", Purpose::oil);
    Key<Material> bar = made("bar", MaterialKind::bar);
    Day today = march(31);

    template <class Fact>
    std::uint32_t place(Key<Fact> key) const {
        return static_cast<std::uint32_t>(shop().find(key) - shop().all<Fact>().data());
    }
    Account of(Key<Lot> key) const { return account_plan(shop()).lots + place(key); }
    Account of(Key<Batch> key) const { return account_plan(shop()).batches + place(key); }

    // Ten bars a day after it was poured.
    Key<Batch> poured(Day day, std::int64_t oil_grams, std::optional<Key<Lot>> from = {}) {
        const auto loaf = batch(day, recipe(10), bar);
        uses<BatchUse>(loaf, oil, grams(oil_grams), from);
        return loaf;
    }
    Key<Lot> bars_of(Key<Batch> loaf, Day day) { return cut(day, loaf, 10, 0, day); }

    Recall of_lot(Key<Lot> key) const { return recall(shop(), replay(shop(), today), {of(key)}); }
    Recall of_batch(Key<Batch> key) const { return recall(shop(), replay(shop(), today), {of(key)}); }
    std::int64_t bars(const Recall& found, Heap heap, Known known) const {
        return found.bars(shop(), replay(shop(), today), heap, known) / 1'000;
    }
};

std::optional<Known> holds_it(const Recall& found, Account account) {
    const auto at = std::ranges::find(found.holds, account, &HoldsSome::account);
    return at == found.holds.end() ? std::nullopt : std::optional{at->known};
}
std::optional<Known> is_in(const Recall& found, Account lot) {
    const auto at = std::ranges::find(found.is_in, lot, &IsIn::lot);
    return at == found.is_in.end() ? std::nullopt : std::optional{at->known};
}

}  // namespace

TEST_CASE("a named oil is in the batch that names it and in no other; its bars lie in three heaps") {
    Bench b;
    const auto first = b.delivery(march(1), b.oil, grams(1'000), Money::units(10));
    const auto second = b.delivery(march(2), b.oil, grams(1'000), Money::units(10));
    const auto loaf = b.poured(march(5), 500, first);
    const auto other = b.poured(march(6), 500, second);
    const auto bars = b.bars_of(loaf, march(7));
    const auto other_bars = b.bars_of(other, march(7));
    const auto known = b.sale(march(8));
    b.at(known).buyer = "The farm shop";
    b.sold(known, b.bar, 3, Money::units(5), bars);
    b.sold(b.sale(march(9)), b.bar, 2, Money::units(5), bars);
    auto& test = b.loss(march(10), b.bar, pieces(1), LossReason::test);
    test.lot = bars;

    const Recall found = b.of_lot(first);
    CHECK(holds_it(found, b.of(loaf)) == Known::named);
    CHECK(holds_it(found, b.of(bars)) == Known::named);
    CHECK_FALSE(holds_it(found, b.of(other)));
    CHECK_FALSE(holds_it(found, b.of(other_bars)));
    CHECK(b.bars(found, Heap::here, Known::named) == 4);
    CHECK(b.bars(found, Heap::reachable, Known::named) == 3);
    CHECK(b.bars(found, Heap::out_of_reach, Known::named) == 2);
    CHECK(b.bars(found, Heap::gone, Known::named) == 1);
    // The rest of the oil is here too.
    const auto oil_left = std::ranges::find(found.whereabouts, b.of(first), &Whereabouts::of);
    REQUIRE(oil_left != found.whereabouts.end());
    CHECK(oil_left->heap == Heap::here);
    CHECK(oil_left->quantity == 500'000);
}

TEST_CASE("what is only the rule is kept apart, and every batch poured while the lot was on the shelf could hold it") {
    Bench b;
    const auto first = b.delivery(march(2), b.oil, grams(500), Money::units(10));
    const auto second = b.delivery(march(4), b.oil, grams(1'000), Money::units(10));
    const auto before = b.poured(march(3), 100);
    const auto together = b.poured(march(5), 300);  // by rule of the first
    const auto named = b.poured(march(6), 100, second);
    const auto after = b.poured(march(7), 200);  // the last 100 g of the first, 100 g of the second
    const auto last = b.poured(march(8), 100);

    const Recall of_first = b.of_lot(first);
    CHECK(holds_it(of_first, b.of(before)) == Known::by_rule);
    CHECK(holds_it(of_first, b.of(together)) == Known::by_rule);
    CHECK_FALSE(holds_it(of_first, b.of(named)));
    CHECK(holds_it(of_first, b.of(after)) == Known::by_rule);
    CHECK_FALSE(holds_it(of_first, b.of(last)));  // by the books it was empty by then
    const Recall of_second = b.of_lot(second);
    CHECK_FALSE(holds_it(of_second, b.of(before)));
    CHECK(holds_it(of_second, b.of(together)) == Known::could_be);
    CHECK(holds_it(of_second, b.of(named)) == Known::named);
    CHECK(holds_it(of_second, b.of(after)) == Known::by_rule);
    CHECK(holds_it(of_second, b.of(last)) == Known::by_rule);
    // Backward says the same.
    CHECK(is_in(b.of_batch(together), b.of(second)) == Known::could_be);
    CHECK(is_in(b.of_batch(together), b.of(first)) == Known::by_rule);
    CHECK_FALSE(is_in(b.of_batch(named), b.of(first)));
}

TEST_CASE("a lot that was never used is here, all of it, and nothing holds it") {
    Bench b;
    const auto lot = b.delivery(march(1), b.oil, grams(800), Money::units(10));
    const Recall found = b.of_lot(lot);
    CHECK(found.holds.empty());
    REQUIRE(found.whereabouts.size() == 1);
    CHECK(found.whereabouts[0].heap == Heap::here);
    CHECK(found.whereabouts[0].quantity == 800'000);
    REQUIRE(found.is_in.size() == 1);  // itself, with its delivery
    CHECK(found.is_in[0].came == ref(b.shop().all<DeliveryLine>().front()));
}

TEST_CASE("a lot used twice over is in both batches, and twice in one batch it is told once") {
    Bench b;
    const auto lot = b.delivery(march(1), b.oil, grams(1'000), Money::units(10));
    const auto one = b.poured(march(3), 200, lot);
    b.uses<BatchUse>(one, b.oil, grams(100));
    const auto two = b.poured(march(4), 200);
    const Recall found = b.of_lot(lot);
    REQUIRE(found.holds.size() == 2);
    CHECK(found.holds[0].account == b.of(one));
    CHECK(found.holds[0].known == Known::named);
    CHECK(found.holds[1].account == b.of(two));
    CHECK(found.holds[1].known == Known::by_rule);
    const Recall back = b.of_batch(one);
    REQUIRE(back.is_in.size() == 1);
    CHECK(back.is_in[0].quantity == 300'000);
    CHECK(back.is_in[0].known == Known::named);
}

TEST_CASE("a batch poured off from another holds what that one took; a batch not cut is here as a batch") {
    Bench b;
    const auto lot = b.delivery(march(1), b.oil, grams(1'000), Money::units(10));
    const auto whole = b.poured(march(3), 600, lot);
    const auto part = b.batch(march(3), b.recipe(10), b.bar);
    b.at(part).split_from = whole;
    b.at(part).split_share = Ratio{1, 3};
    const auto bars = b.bars_of(part, march(4));
    const Recall found = b.of_lot(lot);
    CHECK(holds_it(found, b.of(whole)) == Known::named);
    CHECK(holds_it(found, b.of(part)) == Known::named);
    CHECK(b.bars(found, Heap::here, Known::named) == 10);
    const auto uncut = std::ranges::find(found.whereabouts, b.of(whole), &Whereabouts::of);
    REQUIRE(uncut != found.whereabouts.end());
    CHECK(uncut->heap == Heap::here);
    CHECK(uncut->quantity == 0);
    CHECK(std::ranges::find(found.whereabouts, b.of(part), &Whereabouts::of) == found.whereabouts.end());
    CHECK(is_in(recall(b.shop(), replay(b.shop(), b.today), {b.of(bars)}), b.of(lot)) == Known::named);
}

TEST_CASE("a use that ran short holds the lot that settled it, and could hold the one that had just run out") {
    Bench b;
    const auto old = b.delivery(march(1), b.oil, grams(100), Money::units(10));
    const auto emptied = b.poured(march(2), 100);
    const auto short_of = b.poured(march(5), 300);
    const auto late = b.delivery(march(9), b.oil, grams(1'000), Money::units(10));
    CHECK(holds_it(b.of_lot(late), b.of(short_of)) == Known::by_rule);
    CHECK_FALSE(holds_it(b.of_lot(late), b.of(emptied)));
    CHECK(holds_it(b.of_lot(old), b.of(emptied)) == Known::by_rule);
    CHECK(holds_it(b.of_lot(old), b.of(short_of)) == Known::could_be);
    CHECK(is_in(b.of_batch(short_of), b.of(late)) == Known::by_rule);
}

TEST_CASE("a lot named for more than the books had of it is still named") {
    Bench b;
    const auto small = b.delivery(march(1), b.oil, grams(100), Money::units(10));
    const auto first = b.poured(march(2), 100, small);
    const auto second = b.poured(march(3), 100, small);
    const Recall found = b.of_lot(small);
    CHECK(holds_it(found, b.of(first)) == Known::named);
    CHECK(holds_it(found, b.of(second)) == Known::named);
}

TEST_CASE("powder that settles a shortfall carries its leaf back to the batch poured before it was dry") {
    Bench b;
    const auto leaf = b.made("leaf", MaterialKind::harvest);
    const auto powder = b.made("powder", MaterialKind::pigment);
    const auto picked = b.already_here(march(1), leaf, grams(5'000), Money::units(1));
    const auto loaf = b.batch(march(5), b.recipe(10), b.bar);
    b.uses<BatchUse>(loaf, powder, grams(2));
    const auto dried = b.lot(powder);
    auto& vat = b.add<Vat>();
    vat.date = march(6);
    const auto pot = vat.key;
    b.uses<VatUse>(pot, leaf, grams(5'000), picked);
    auto& drying = b.add<Drying>();
    drying.date = march(9);
    drying.lot = dried;
    drying.amount = grams(10);
    const auto plate = drying.key;
    b.add<DryingVat>(plate).vat = pot;
    CHECK(holds_it(b.of_lot(picked), b.of(loaf)) == Known::by_rule);
    CHECK(is_in(b.of_batch(loaf), b.of(picked)) == Known::by_rule);
}

TEST_CASE("bars at somebody's shop can be fetched back until they are sold there; of two lots the first goes first") {
    Bench b;
    const auto lot = b.delivery(march(1), b.oil, grams(500), Money::units(10));
    const auto other = b.delivery(march(1), b.oil, grams(500), Money::units(10));
    const auto bars = b.bars_of(b.poured(march(2), 500, lot), march(3));
    b.bars_of(b.poured(march(2), 500, other), march(3));
    auto& out = b.add<OutAtShop>();
    out.date = march(5);
    out.where = "The corner shop";
    out.bar = b.bar;
    out.bars = 14;  // all ten of the first batch, four of the second
    const auto heap = out.key;
    auto& settled = b.add<OutSettled>();
    settled.date = march(10);
    settled.out = heap;
    settled.sold = 6;
    const Recall found = b.of_lot(lot);
    CHECK(b.bars(found, Heap::reachable, Known::by_rule) == 4);
    CHECK(b.bars(found, Heap::out_of_reach, Known::by_rule) == 6);
    CHECK(b.bars(found, Heap::here, Known::named) == 0);
    const Recall of_other = b.of_lot(other);
    CHECK(b.bars(of_other, Heap::reachable, Known::by_rule) == 4);
    CHECK(b.bars(of_other, Heap::out_of_reach, Known::by_rule) == 0);
    CHECK(b.bars(of_other, Heap::here, Known::named) == 6);
    // The ten of the first that went by rule could have been of the second.
    CHECK(of_other.others_out == 10'000);
    CHECK(found.came_back == 0);
    auto& back = b.add<Returned>();
    back.date = march(12);
    back.lot = bars;
    back.bars = 2;
    CHECK(b.of_lot(lot).came_back == 2'000);
}

TEST_CASE("what is on hold says so, and by an earlier day there is nothing yet") {
    Bench b;
    const auto lot = b.delivery(march(1), b.oil, grams(500), Money::units(10));
    const auto bars = b.bars_of(b.poured(march(5), 500, lot), march(6));
    auto& hold = b.add<Hold>();
    hold.date = march(20);
    hold.lot = lot;
    hold.why = "recalled";
    const Recall found = b.of_lot(lot);
    REQUIRE(found.whereabouts.size() == 1);
    CHECK(found.whereabouts[0].of == b.of(bars));
    REQUIRE(found.whereabouts[0].held);
    CHECK(found.whereabouts[0].held->fact == ref(b.shop().all<Hold>().front()));
    const Recall earlier = recall(b.shop(), replay(b.shop(), march(3)), {b.of(lot)});
    CHECK(earlier.holds.empty());
    REQUIRE(earlier.whereabouts.size() == 1);
    CHECK(earlier.whereabouts[0].of == b.of(lot));
}

TEST_CASE("a recall begins with a code, a supplier's lot number, or a material or supplier since a day") {
    Bench b;
    const auto first = b.delivery(march(1), b.oil, grams(500), Money::units(10));
    const auto second = b.delivery(march(9), b.oil, grams(500), Money::units(10));
    b.all<DeliveryLine>().front().supplier_lot = "L77";
    const auto loaf = b.poured(march(10), 100);
    const Ledger ledger = replay(b.shop(), b.today);
    const auto start = [&](std::string_view code, std::optional<Day> from = {}) {
        return recall_start(b.shop(), ledger, code, from);
    };
    using Accounts = std::vector<Account>;
    CHECK(start(b.at(first).code) == Accounts{b.of(first)});
    CHECK(start(b.at(loaf).code) == Accounts{b.of(loaf)});
    CHECK(start("L77") == Accounts{b.of(first)});
    CHECK(start(b.shop().all<Delivery>().back().code) == Accounts{b.of(second)});
    CHECK(start(b.at(b.oil).code) == Accounts{b.of(first), b.of(second)});
    CHECK(start(b.shop().all<Supplier>().front().code, march(5)) == Accounts{b.of(second)});
    CHECK(start("moon").empty());
    CHECK(start("").empty());
    // A bought lot of which nothing has come yet cannot be anywhere.
    CHECK(recall_start(b.shop(), replay(b.shop(), march(5)), b.at(b.oil).code, {}) == Accounts{b.of(first)});
}
