#include "reports/words/statement_words.h"

#include "reports/words/say.h"

namespace dyestead::reports {

std::string name_of(StockKind kind) {
    switch (kind) {
        case StockKind::raw: return tr("Bought in");
        case StockKind::seed: return tr("Seed");
        case StockKind::harvest: return tr("Harvest");
        case StockKind::pigment: return tr("Powder");
        case StockKind::bars_ready: return tr("Bars ready");
        case StockKind::bars_out: return tr("Bars out at shops");
        case StockKind::plantings: return tr("Standing beds");
        case StockKind::vats: return tr("Vats not dry");
        case StockKind::batches: return tr("Batches not cut");
        case StockKind::bars_in_cure: return tr("Bars in cure");
    }
    return {};
}

std::string name_of(LossKind kind) {
    switch (kind) {
        case LossKind::spoiled: return tr("spoiled");
        case LossKind::spilled: return tr("spilled");
        case LossKind::expired: return tr("past its date");
        case LossKind::other: return tr("lost otherwise");
        case LossKind::failed_crop: return tr("crop failed, or part of a bed lost");
        case LossKind::failed_vat: return tr("vat that gave nothing");
        case LossKind::rejected_bars: return tr("bars rejected beyond the usual");
        case LossKind::nothing_for_it: return tr("paid for, and nothing came");
        case LossKind::found_or_missed: return tr("missed or found at a stock-take");
        case LossKind::given: return tr("given away");
        case LossKind::sample: return tr("samples");
        case LossKind::own_use: return tr("own use");
        case LossKind::test: return tr("tests");
    }
    return {};
}

std::string name_of(Stage stage) {
    switch (stage) {
        case Stage::garden: return tr("garden");
        case Stage::harvest: return tr("harvest");
        case Stage::vat: return tr("vat");
        case Stage::drying: return tr("drying");
        case Stage::bench: return tr("bench");
        case Stage::wrapping: return tr("wrapping");
        case Stage::fair: return tr("fair");
        case Stage::packing: return tr("packing");
        case Stage::before_the_books: return tr("before the books began");
        case Stage::other: return tr("other work");
    }
    return {};
}

std::string name_of(TakenAt at) {
    switch (at) {
        case TakenAt::fair_cash: return tr("cash at fairs, as counted");
        case TakenAt::fair_card: return tr("cards at fairs");
        case TakenAt::fair_not_counted: return tr("fairs not counted: bars at their prices");
        case TakenAt::cash: return tr("sold elsewhere for cash");
        case TakenAt::card: return tr("sold elsewhere by card");
        case TakenAt::online: return tr("online");
        case TakenAt::wholesale: return tr("wholesale");
        case TakenAt::other: return tr("other sales");
        case TakenAt::at_shop: return tr("at other people's shops");
        case TakenAt::refunded: return tr("given back to customers");
    }
    return {};
}

std::string name_of(PaidFor what) {
    switch (what) {
        case PaidFor::goods: return tr("goods from suppliers");
        case PaidFor::carriage: return tr("carriage on them");
        case PaidFor::wages: return tr("wages of paid people");
        case PaidFor::stalls: return tr("stall fees");
        case PaidFor::travel: return tr("travel to fairs");
        case PaidFor::postage: return tr("postage");
        case PaidFor::payment_fees: return tr("fees of being paid, and bags");
        case PaidFor::bills: return tr("bills paid");
        case PaidFor::energy: return tr("energy used, at the tariff");
    }
    return {};
}

std::string name_of(Tie tie) {
    switch (tie) {
        case Tie::opening_to_closing: return tr("opening, what came in, what went out and closing");
        case Tie::stock: return tr("stock item by item");
        case Tie::cost_of_sales: return tr("cost of sales fact by fact");
        case Tie::losses: return tr("losses and gifts by reason");
        case Tie::earned: return tr("what was earned, and what left the shop");
        case Tie::hours: return tr("hours by stage and person");
        case Tie::money_goods: return tr("what suppliers were paid");
        case Tie::money_bills: return tr("stalls, postage, fees and dye-only bills");
    }
    return {};
}

std::string name_of(Boundary boundary) {
    switch (boundary) {
        case Boundary::already_here: return tr("already here");
        case Boundary::delivered: return tr("delivered");
        case Boundary::wages: return tr("wages");
        case Boundary::energy: return tr("energy");
        case Boundary::hours: return tr("own hours");
        case Boundary::bills: return tr("bills");
        case Boundary::provisional: return tr("not yet come in, at the last known cost");
        case Boundary::sold: return tr("brought back");
        case Boundary::lost: return tr("found again");
        case Boundary::given: return tr("brought back from a gift");
        case Boundary::selling: return tr("selling");
        case Boundary::garden: return tr("crop difference");
        case Boundary::overhead: return tr("general running costs");
        case Boundary::dye_avoidable: return tr("dye-only bills with no bed or vat in hand");
        case Boundary::dye_sunk: return tr("dye-only bills spent either way");
        case Boundary::shortfall: return tr("settled at another cost than it was taken at");
        case Boundary::corrections: return tr("later words on what goods cost that are gone");
        case Boundary::office: return tr("hours for the shop as a whole");
        case Boundary::other: return tr("other");
    }
    return {};
}

std::string_view key_of(StockKind kind) {
    switch (kind) {
        case StockKind::raw: return "raw";
        case StockKind::seed: return "seed";
        case StockKind::harvest: return "harvest";
        case StockKind::pigment: return "pigment";
        case StockKind::bars_ready: return "bar";
        case StockKind::bars_out: return "bar_out";
        case StockKind::plantings: return "planting";
        case StockKind::vats: return "vat";
        case StockKind::batches: return "batch";
        case StockKind::bars_in_cure: return "bar_in_cure";
    }
    return {};
}

std::string_view key_of(LossKind kind) {
    switch (kind) {
        case LossKind::spoiled: return "spoiled";
        case LossKind::spilled: return "spilled";
        case LossKind::expired: return "expired";
        case LossKind::other: return "other";
        case LossKind::failed_crop: return "failed_crop";
        case LossKind::failed_vat: return "failed_vat";
        case LossKind::rejected_bars: return "rejected_bars";
        case LossKind::nothing_for_it: return "nothing_for_it";
        case LossKind::found_or_missed: return "found_or_missed";
        case LossKind::given: return "given";
        case LossKind::sample: return "sample";
        case LossKind::own_use: return "own_use";
        case LossKind::test: return "test";
    }
    return {};
}

std::string_view key_of(Stage stage) {
    switch (stage) {
        case Stage::garden: return "garden";
        case Stage::harvest: return "harvest";
        case Stage::vat: return "vat";
        case Stage::drying: return "drying";
        case Stage::bench: return "bench";
        case Stage::wrapping: return "wrapping";
        case Stage::fair: return "fair";
        case Stage::packing: return "packing";
        case Stage::before_the_books: return "before_the_books";
        case Stage::other: return "other";
    }
    return {};
}

std::string_view key_of(TakenAt at) {
    switch (at) {
        case TakenAt::fair_cash: return "fair_cash";
        case TakenAt::fair_card: return "fair_card";
        case TakenAt::fair_not_counted: return "fair_not_counted";
        case TakenAt::cash: return "cash";
        case TakenAt::card: return "card";
        case TakenAt::online: return "online";
        case TakenAt::wholesale: return "wholesale";
        case TakenAt::other: return "other";
        case TakenAt::at_shop: return "at_shop";
        case TakenAt::refunded: return "refunded";
    }
    return {};
}

std::string_view key_of(PaidFor what) {
    switch (what) {
        case PaidFor::goods: return "goods";
        case PaidFor::carriage: return "carriage";
        case PaidFor::wages: return "wages";
        case PaidFor::stalls: return "stalls";
        case PaidFor::travel: return "travel";
        case PaidFor::postage: return "postage";
        case PaidFor::payment_fees: return "payment_fees";
        case PaidFor::bills: return "bills";
        case PaidFor::energy: return "energy";
    }
    return {};
}

std::string_view key_of(Boundary boundary) {
    switch (boundary) {
        case Boundary::already_here: return "already_here";
        case Boundary::delivered: return "delivered";
        case Boundary::wages: return "wages";
        case Boundary::energy: return "energy";
        case Boundary::hours: return "hours";
        case Boundary::bills: return "bills";
        case Boundary::provisional: return "provisional";
        case Boundary::sold: return "sold";
        case Boundary::lost: return "lost";
        case Boundary::given: return "given";
        case Boundary::selling: return "selling";
        case Boundary::garden: return "garden";
        case Boundary::overhead: return "overhead";
        case Boundary::dye_avoidable: return "dye_avoidable";
        case Boundary::dye_sunk: return "dye_sunk";
        case Boundary::shortfall: return "shortfall";
        case Boundary::corrections: return "corrections";
        case Boundary::office: return "office";
        case Boundary::other: return "other";
    }
    return {};
}

}  // namespace dyestead::reports
