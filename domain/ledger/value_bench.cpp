#include <algorithm>

#include "domain/ledger/in_force.h"
#include "domain/ledger/value.h"

namespace dyestead {

BenchBook::BenchBook(Bookkeeper& books)
    : books_{books},
      loaves_(books.shop().all<Batch>().size()),
      batches_{books.shop()},
      lots_{books.shop()},
      times_{books.shop()} {}

void BenchBook::post(const Batch& fact) {
    const std::uint32_t place = books_.place(fact);
    loaves_[place].poured = true;
    books_.take_all(books_.batch(place));
    if (fact.split_from) pour_off(fact, books_.batch(place));
    for (const BatchTime* line : times_(fact)) books_.work(line->who, line->time, books_.batch(place), ref(*line));
}

// The share of all that the other batch took goes along, part by part.
void BenchBook::pour_off(const Batch& fact, Account to) {
    const auto from = books_.place(*fact.split_from);
    const bool poured = from && loaves_[*from].poured && books_.batch(*from) != to;
    const std::string code = from ? books_.shop().all<Batch>()[*from].code : std::string{};
    if (!poured) return books_.find(FindingCode::split_before_pouring, ref(fact), {code});
    if (loaves_[*from].cut) return books_.find(FindingCode::split_after_cut, ref(fact), {code});
    if (!fact.split_share || fact.split_share->top <= 0)
        return books_.find(FindingCode::split_without_share, ref(fact), {code});
    const Ratio share = *fact.split_share;
    const Account other = books_.batch(*from);
    books_.move(other, to, books_.source(ref(fact)), 0, share_of(books_.balance(other), share.top, share.bottom));
}

// Of n bars cut j are rejected and p n of that is usual. A good bar carries cost / (n - usual); what
// is rejected beyond the usual is expensed (IAS 2, paragraph 16). General overhead is absorbed by the
// good bars alone, so that it is the same for every colour of bar.
void BenchBook::post(const Cut& fact) {
    const Batch* poured = batches_.find(fact.batch);
    if (poured == nullptr) {
        // Not in a whole shop; but bars that were cut must be there to be sold.
        if (const StockLine* line = books_.line_of(ref(fact))) books_.receive(*line, account(Boundary::other), {});
        return;
    }
    const std::uint32_t place = books_.place(*poured);
    Loaf& loaf = loaves_[place];
    const Account batch = books_.batch(place);
    const std::string& code = poured->code;
    if (!loaf.poured) books_.find(FindingCode::cut_before_pouring, ref(fact), {code});
    if (loaf.cut) books_.find(FindingCode::batch_cut_twice, ref(fact), {code});
    loaf.cut = true;
    if (!loaf.lot) loaf.lot = fact.lot;
    books_.work(fact.who, fact.time, batch, ref(fact));

    const std::int64_t cut = std::int64_t{std::max(fact.bars, 0)} * 1'000;
    std::int64_t rejected = std::int64_t{std::max(fact.rejected, 0)} * 1'000;
    if (rejected > cut) books_.find(FindingCode::rejected_more_than_cut, ref(fact), {code});
    rejected = std::min(rejected, cut);
    const std::int64_t good = cut - rejected;
    const StockLine* line = books_.line_of(ref(fact));
    if (good == 0 || line == nullptr) {
        books_.find(FindingCode::no_good_bars, ref(fact), {code});
        return books_.move(batch, account(Boundary::lost), books_.source(ref(fact)), 0, books_.balance(batch));
    }
    const Ratio rate = normal_loss_in_force(books_.shop(), LossOf::batch, books_.day());
    const std::int64_t usual = std::min(rejected, times(cut, rate));
    if (rejected > usual) {
        const Cost lost = share_of(books_.balance(batch), rejected - usual, cut - usual);
        books_.move(batch, account(Boundary::lost), books_.source(ref(fact)), 0, lost);
    }
    books_.receive(*line, batch, books_.balance(batch));

    const Overhead* overhead = overhead_in_force(books_.shop(), books_.day());
    if (overhead == nullptr || overhead->normal_bars <= 0) return;
    const Money per_year = overhead->per_year + wear_per_year(books_.shop(), books_.day());
    const Wide absorbed =
        static_cast<Wide>(per_year.in_millionths()) * good / (std::int64_t{overhead->normal_bars} * 1'000);
    if (absorbed > kLargestStatedMoney.in_millionths()) return books_.find(FindingCode::too_large, ref(fact));
    Cost cost;
    cost.overhead = Rate{per_year, Quantity::pieces(overhead->normal_bars)} * Quantity{Kind::count, good};
    books_.enter(Boundary::overhead, books_.lot(line->lot), ref(fact), cost);
}

void BenchBook::post(const Wrapping& fact) {
    const Lot* wrapped = lots_.find(fact.lot);
    if (wrapped == nullptr) return;
    const std::uint32_t lot = books_.place(*wrapped);
    const bool gone = books_.ledger().lots[lot].left == 0;
    if (gone) books_.find(FindingCode::wrapped_when_gone, ref(fact), {wrapped->code});
    const Account to = gone ? account(Boundary::other) : books_.lot(lot);
    books_.take_all(to);
    books_.work(fact.who, fact.time, to, ref(fact));
}

}  // namespace dyestead
