#include "reports/recall_report.h"

#include <algorithm>
#include <array>

#include "domain/decisions/recall.h"
#include "domain/decisions/recall_start.h"
#include "domain/facts/material_amount.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/words/fact_words.h"
#include "reports/words/names.h"
#include "reports/words/recall_words.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

constexpr std::array<Heap, kHeaps> kAllHeaps{Heap::here, Heap::reachable, Heap::out_of_reach, Heap::gone};
constexpr std::array<Known, kKnown> kAllKnown{Known::named, Known::by_rule, Known::could_be};

std::uint64_t whole(std::int64_t thousandths) {
    return static_cast<std::uint64_t>(thousandths / 1'000);
}

class RecallReport {
public:
    RecallReport(const Shop& shop, const Ledger& ledger, const Recall& found, const std::string& asked)
        : shop_{shop}, ledger_{ledger}, found_{found} {
        document_ = begin_document(shop, ledger, "recall", title(asked));
    }

    Document take() {
        headline();
        for (const Heap heap : kAllHeaps) add_heap(heap);
        add_holds();
        add_is_in();
        add_notes();
        figures();
        document_.blocks.push_back(Paragraph{what_to_do(shop_, ledger_, found_), Tone::caution});
        return std::move(document_);
    }

private:
    std::string title(const std::string& asked) const {
        if (found_.of.size() > 1)
            return say_count("Where did it go: {code}, {count} lot", "Where did it go: {code}, {count} lots",
                             found_.of.size(), arg("code", asked));
        const Called one = called(shop_, ledger_, found_.of.front());
        return say("Where did it go: {what}, {code}", arg("what", one.what), arg("code", one.code));
    }

    std::int64_t bars(Heap heap, Known known) const { return found_.bars(shop_, ledger_, heap, known); }
    std::int64_t sure(Heap heap) const { return bars(heap, Known::named) + bars(heap, Known::by_rule); }

    void headline() {
        std::int64_t rule = 0;
        std::int64_t could = 0;
        for (const Heap heap : {Heap::here, Heap::reachable, Heap::out_of_reach}) {
            rule += bars(heap, Known::by_rule);
            could += bars(heap, Known::could_be);
        }
        const std::int64_t all = sure(Heap::here) + sure(Heap::reachable) + sure(Heap::out_of_reach);
        const auto here = arg("here", whole(sure(Heap::here)));
        const auto ask = arg("reachable", whole(sure(Heap::reachable)));
        const auto out = arg("out", whole(sure(Heap::out_of_reach)));
        document_.blocks.push_back(
            Headline{all == 0 ? tr("By your records no bar that is here or out holds any of it.")
                              : say_count("One bar holds some of it: {here} here, {reachable} out with somebody to "
                                          "ask, {out} out with nobody on record.",
                                          "{count} bars hold some of it: {here} here, {reachable} out with somebody to "
                                          "ask, {out} out with nobody on record.",
                                          whole(all), here, ask, out)});
        if (rule > 0)
            document_.blocks.push_back(Paragraph{say_count(
                "Of one of them the lot is named nowhere on the way: the shelf's rule says so.",
                "Of {count} of them the lot is not named all the way: the shelf's rule says so.", whole(rule))});
        if (could > 0)
            document_.blocks.push_back(Paragraph{
                say_count("One more bar could hold it: it was made while this was on the shelf too, and no record "
                          "names which lot it is of.",
                          "{count} more bars could hold it: they were made while this was on the shelf too, and no "
                          "record names which lot they are of.",
                          whole(could))});
    }

    Cell amount(Account of, std::int64_t quantity) const {
        if (ledger_.accounts.kind(of) != AccountKind::lot) return {.shown = tr("not made up yet"), .no_value = true};
        const Material* material = shop_.find(shop_.all<Lot>()[ledger_.accounts.index(of)].material);
        if (material == nullptr) return none_cell();
        return {.shown = shown_quantity({kind_of(material->held_as), quantity})};
    }

    void add_heap(Heap heap) {
        const bool here = heap == Heap::here;
        Table table{.title = name_of(heap),
                    .columns = {{tr("what")},
                                {tr("lot or batch")},
                                {tr("how much"), Align::right},
                                {here ? tr("since") : tr("on")},
                                {here ? tr("on hold") : tr("where, to whom")},
                                {tr("known how")}}};
        for (const Whereabouts& each : found_.whereabouts) {
            if (each.heap != heap) continue;
            const Called of = called(shop_, ledger_, each.of);
            const std::string held = each.held ? tr("yes") : tr("no");
            table.rows.push_back({Cell{.shown = of.what}, Cell{.shown = of.code}, amount(each.of, each.quantity),
                                  Cell{.shown = short_date(each.day)},
                                  Cell{.shown = here ? held : went_to_with_note(shop_, each)},
                                  Cell{.shown = name_of(each.known)}});
        }
        if (!table.rows.empty()) document_.blocks.push_back(std::move(table));
    }

    // Of bars nothing is made.
    bool only_bars() const {
        return std::ranges::all_of(found_.of, [&](Account each) {
            if (ledger_.accounts.kind(each) != AccountKind::lot) return false;
            const Material* material = shop_.find(shop_.all<Lot>()[ledger_.accounts.index(each)].material);
            return material != nullptr && material->kind == MaterialKind::bar;
        });
    }

    void add_holds() {
        Table table{.title = tr("What holds some of it, in the order it went"),
                    .columns = {{tr("what")}, {tr("lot or batch")}, {tr("from")}, {tr("known how")}}};
        for (const HoldsSome& each : found_.holds) {
            const Called of = called(shop_, ledger_, each.account);
            table.rows.push_back({Cell{.shown = of.what}, Cell{.shown = of.code}, Cell{.shown = short_date(each.since)},
                                  Cell{.shown = name_of(each.known)}});
        }
        if (!table.rows.empty()) return document_.blocks.push_back(std::move(table));
        if (!only_bars()) document_.blocks.push_back(Paragraph{tr("Nothing was made with it.")});
    }

    // From whom, by which delivery, and what stands on the jar.
    std::array<std::string, 4> source(const IsIn& each) const {
        const auto best = ledger_.lots[ledger_.accounts.index(each.lot)].best_before;
        std::array<std::string, 4> words;
        if (best) words[3] = short_date(*best);
        const auto* line = each.came && each.came->kind == kKindOf<DeliveryLine>
                               ? shop_.find(Key<DeliveryLine>{each.came->key})
                               : nullptr;
        if (line == nullptr) {
            words[0] = each.came ? tr("already here") : tr("made here");
            words[2] = each.came ? fact_place(shop_, *each.came) : std::string{};
            return words;
        }
        const Delivery* delivery = shop_.find(line->head);
        words[0] = called(shop_, delivery->supplier);
        words[1] = line->supplier_lot.value_or("");
        words[2] = delivery->code;
        return words;
    }

    void add_is_in() {
        // Of what was bought there is nothing but where it came from.
        const bool itself = std::ranges::all_of(
            found_.is_in, [&](const IsIn& each) { return std::ranges::find(found_.of, each.lot) != found_.of.end(); });
        Table table{.title = itself ? tr("Where it came from") : tr("What is in it"),
                    .columns = {{tr("what")},
                                {tr("lot")},
                                {tr("how much"), Align::right},
                                {tr("from")},
                                {tr("supplier's lot")},
                                {tr("delivery")},
                                {tr("best before")},
                                {tr("known how")}},
                    .note = itself ? std::string{}
                                   : tr("How much: all that went into the batches and vats on the way, at most.")};
        for (const IsIn& each : found_.is_in) {
            const Called of = called(shop_, ledger_, each.lot);
            const auto from = source(each);
            std::vector<Cell> row{Cell{.shown = of.what}, Cell{.shown = of.code},
                                  each.quantity == 0 ? Cell{} : amount(each.lot, each.quantity)};
            for (const std::string& word : from) row.push_back(word.empty() ? none_cell() : Cell{.shown = word});
            row.push_back({.shown = name_of(each.known)});
            table.rows.push_back(std::move(row));
        }
        if (!table.rows.empty()) document_.blocks.push_back(std::move(table));
    }

    void add_notes() {
        document_.blocks.push_back(
            Paragraph{tr("Named: your records name the lot at every step. By rule: somewhere on the way no lot is "
                         "named, so it is the one the shelf's order says. Could be: the shelf's order says another "
                         "lot, but this one stood beside it. Bars rejected at the cut and end pieces are not counted."),
                      Tone::small});
        if (found_.others_out > 0)
            document_.blocks.push_back(
                Paragraph{say_count("One bar of the same kind went out in those days, by the shelf's rule of another "
                                    "lot; where labels carry no lot, it may be one of these.",
                                    "{count} bars of the same kinds went out in those days, by the shelf's rule of "
                                    "other lots; where labels carry no lot, some may be of these.",
                                    whole(found_.others_out))});
        if (found_.came_back > 0)
            document_.blocks.push_back(
                Paragraph{say_count("One bar counted as out was brought back since.",
                                    "{count} bars counted as out were brought back since.", whole(found_.came_back))});
    }

    void figures() {
        for (const Heap heap : kAllHeaps)
            for (const Known known : kAllKnown)
                document_.figures.push_back({fmt::format("bars.{}.{}", key_of(heap), key_of(known)),
                                             static_cast<double>(whole(bars(heap, known)))});
        document_.figures.push_back({"bars.came_back", static_cast<double>(whole(found_.came_back))});
        document_.figures.push_back({"bars.others_out", static_cast<double>(whole(found_.others_out))});
        document_.figures.push_back({"holds", static_cast<double>(found_.holds.size())});
        document_.figures.push_back({"is_in", static_cast<double>(found_.is_in.size())});
    }

    const Shop& shop_;
    const Ledger& ledger_;
    const Recall& found_;
    Document document_;
};

}  // namespace

std::variant<Document, Trouble> recall_report(const Shop& shop, const Ledger& ledger,
                                              const std::optional<std::string>& of, std::optional<Day> from) {
    if (!of || of->empty()) return Trouble{TroubleId::nothing_to_trace, {{"kind", "recall"}}};
    const std::vector<Account> start = recall_start(shop, ledger, *of, from);
    if (start.empty()) return Trouble{TroubleId::no_such_code, {{"kind", "recall"}, {"value", *of}}};
    return RecallReport{shop, ledger, recall(shop, ledger, start), *of}.take();
}

}  // namespace dyestead::reports
