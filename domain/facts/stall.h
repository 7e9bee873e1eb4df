// stall.h - what was taken to be sold, what came back, what was paid for it?
#pragma once

#include "domain/facts/bench.h"

namespace dyestead {

enum class FairEnded : std::uint8_t { as_usual, cut_short, did_not_happen };
template <>
inline constexpr std::array<std::string_view, 3> kWords<FairEnded>{"as usual", "cut short", "did not happen"};

struct Fair : HeadOf<Fair> {
    static constexpr std::string_view kTable = "fair";
    Day date;
    std::string name;
    Money fee;
    std::optional<Money> travel;
    std::optional<Money> change_float;
    std::optional<Money> cash_in_tin;  // counted at the end, float included
    std::optional<Money> card_takings;
    std::optional<int> card_payments;
    FairEnded ended = FairEnded::as_usual;
    std::optional<Day> noted;         // the day a coming fair was put down
    std::optional<Day> fee_paid;      // blank: on the day
    std::optional<Span> open;         // how long there were customers
    std::optional<Money> reductions;  // let off the list prices, bundles aside
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Fair> = [](auto&& visit) {
    visit(field("date", &Fair::date));
    visit(field("name", &Fair::name));
    visit(field("fee", &Fair::fee));
    visit(field("travel", &Fair::travel));
    visit(field("change_float", &Fair::change_float));
    visit(field("cash_in_tin", &Fair::cash_in_tin));
    visit(field("card_takings", &Fair::card_takings));
    visit(field("card_payments", &Fair::card_payments));
    visit(field("ended", &Fair::ended));
    visit(field("noted", &Fair::noted));
    visit(field("fee_paid", &Fair::fee_paid));
    visit(field("open", &Fair::open));
    visit(field("reductions", &Fair::reductions));
    visit(field("note", &Fair::note));
};

struct FairLine : LineOf<FairLine, Fair> {
    static constexpr std::string_view kTable = "fair_line";
    Key<Material> bar;
    std::optional<Key<Lot>> lot;
    int taken = 0;
    int back = 0;
    std::optional<Money> price;  // a bar, as the customer pays; blank: the price list
};
template <>
inline constexpr auto kFields<FairLine> = [](auto&& visit) {
    visit(field("bar", &FairLine::bar));
    visit(field("lot", &FairLine::lot));
    visit(field("taken", &FairLine::taken));
    visit(field("back", &FairLine::back));
    visit(field("price", &FairLine::price));
};

// So many bars for one price: how many such bundles went.
struct FairBundle : LineOf<FairBundle, Fair> {
    static constexpr std::string_view kTable = "fair_bundle";
    std::string what;
    int bars = 0;
    Money price;
    int sold = 0;
};
template <>
inline constexpr auto kFields<FairBundle> = [](auto&& visit) {
    visit(field("what", &FairBundle::what));
    visit(field("bars", &FairBundle::bars));
    visit(field("price", &FairBundle::price));
    visit(field("sold", &FairBundle::sold));
};

struct FairTime : LineOf<FairTime, Fair> {
    static constexpr std::string_view kTable = "fair_time";
    std::optional<Key<Person>> who;
    Span time;
};
template <>
inline constexpr auto kFields<FairTime> = [](auto&& visit) {
    visit(field("who", &FairTime::who));
    visit(field("time", &FairTime::time));
};

// Bars or powder sold anywhere but at a fair.
struct Sale : HeadOf<Sale> {
    static constexpr std::string_view kTable = "sale";
    Day date;
    Channel channel = Channel::other;
    std::optional<std::string> order_number;
    std::optional<std::string> buyer;
    std::optional<Money> postage;       // paid by the shop
    std::optional<Money> postage_paid;  // by the buyer, beside the goods
    std::optional<Span> time;           // packing
    std::optional<Key<Person>> who;
};
template <>
inline constexpr auto kFields<Sale> = [](auto&& visit) {
    visit(field("date", &Sale::date));
    visit(field("channel", &Sale::channel));
    visit(field("order_number", &Sale::order_number));
    visit(field("buyer", &Sale::buyer));
    visit(field("postage", &Sale::postage));
    visit(field("postage_paid", &Sale::postage_paid));
    visit(field("time", &Sale::time));
    visit(field("who", &Sale::who));
};

struct SaleLine : LineOf<SaleLine, Sale> {
    static constexpr std::string_view kTable = "sale_line";
    Key<Material> bar;
    std::optional<Key<Lot>> lot;
    int bars = 0;
    Money price;  // a bar, as the customer pays
};
template <>
inline constexpr auto kFields<SaleLine> = [](auto&& visit) {
    visit(field("bar", &SaleLine::bar));
    visit(field("lot", &SaleLine::lot));
    visit(field("bars", &SaleLine::bars));
    visit(field("price", &SaleLine::price));
};

// Powder made here that was sold as it is, weighed out.
struct PowderLine : LineOf<PowderLine, Sale> {
    static constexpr std::string_view kTable = "sale_powder";
    Key<Material> pigment;
    std::optional<Key<Lot>> lot;
    Amount amount;
    Money price;  // for all of it, as the customer pays
};
template <>
inline constexpr auto kFields<PowderLine> = [](auto&& visit) {
    visit(field("pigment", &PowderLine::pigment));
    visit(field("lot", &PowderLine::lot));
    visit(field("amount", &PowderLine::amount));
    visit(field("price", &PowderLine::price));
};

// Bars left at somebody's shop: out, not sold; the shop keeps a share of what they fetch.
struct OutAtShop : HeadOf<OutAtShop> {
    static constexpr std::string_view kTable = "out_at_shop";
    Day date;
    std::string where;
    Key<Material> bar;
    std::optional<Key<Lot>> lot;
    int bars = 0;
    Money price;                 // a bar, as the customer pays there
    std::optional<Ratio> share;  // the shop's
};
template <>
inline constexpr auto kFields<OutAtShop> = [](auto&& visit) {
    visit(field("date", &OutAtShop::date));
    visit(field("where", &OutAtShop::where));
    visit(field("bar", &OutAtShop::bar));
    visit(field("lot", &OutAtShop::lot));
    visit(field("bars", &OutAtShop::bars));
    visit(field("price", &OutAtShop::price));
    visit(part("share", &OutAtShop::share));
};

// What became of bars that were out: sold there, or come back.
struct OutSettled : HeadOf<OutSettled> {
    static constexpr std::string_view kTable = "out_settled";
    Day date;
    Key<OutAtShop> out;
    int sold = 0;
    int back = 0;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<OutSettled> = [](auto&& visit) {
    visit(field("date", &OutSettled::date));
    visit(field("out", &OutSettled::out));
    visit(field("sold", &OutSettled::sold));
    visit(field("back", &OutSettled::back));
    visit(field("note", &OutSettled::note));
};

enum class Fit : std::uint8_t { to_sell, spoiled };
template <>
inline constexpr std::array<std::string_view, 2> kWords<Fit>{"to sell", "spoiled"};

// Bars a customer brought or sent back.
struct Returned : HeadOf<Returned> {
    static constexpr std::string_view kTable = "returned";
    Day date;
    Key<Lot> lot;  // of the bars
    int bars = 0;
    Money refund;  // for all of them
    Fit fit = Fit::to_sell;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Returned> = [](auto&& visit) {
    visit(field("date", &Returned::date));
    visit(field("lot", &Returned::lot));
    visit(field("bars", &Returned::bars));
    visit(field("refund", &Returned::refund));
    visit(field("fit", &Returned::fit));
    visit(field("note", &Returned::note));
};

// The price list: the shelf price of a bar from a day on.
struct Price : HeadOf<Price> {
    static constexpr std::string_view kTable = "price";
    Day from;
    Key<Material> bar;
    Money shelf;
};
template <>
inline constexpr auto kFields<Price> = [](auto&& visit) {
    visit(field("from", &Price::from));
    visit(field("bar", &Price::bar));
    visit(field("shelf", &Price::shelf));
};

// What a shop that sells on is asked for a bar, from a day on.
struct WholesalePrice : HeadOf<WholesalePrice> {
    static constexpr std::string_view kTable = "wholesale_price";
    Day from;
    Key<Material> bar;
    Money price;  // a bar, any sales tax in
};
template <>
inline constexpr auto kFields<WholesalePrice> = [](auto&& visit) {
    visit(field("from", &WholesalePrice::from));
    visit(field("bar", &WholesalePrice::bar));
    visit(field("price", &WholesalePrice::price));
};

// What a colour's own powder would sell for as powder, from a day on.
struct PowderPrice : HeadOf<PowderPrice> {
    static constexpr std::string_view kTable = "powder_price";
    Day from;
    Key<Colour> colour;
    Amount pack;
    Money price;  // a pack, as the customer pays
};
template <>
inline constexpr auto kFields<PowderPrice> = [](auto&& visit) {
    visit(field("from", &PowderPrice::from));
    visit(field("colour", &PowderPrice::colour));
    visit(field("pack", &PowderPrice::pack));
    visit(field("price", &PowderPrice::price));
};

// What the maker believes people would pay for a bar of this colour, where no price says so.
struct PriceBelief : HeadOf<PriceBelief> {
    static constexpr std::string_view kTable = "price_belief";
    Day date;
    Key<Colour> colour;
    std::optional<Money> plain;
    std::optional<Money> bought;
    std::optional<Money> own;
};
template <>
inline constexpr auto kFields<PriceBelief> = [](auto&& visit) {
    visit(field("date", &PriceBelief::date));
    visit(field("colour", &PriceBelief::colour));
    visit(field("plain", &PriceBelief::plain));
    visit(field("bought", &PriceBelief::bought));
    visit(field("own", &PriceBelief::own));
};

}  // namespace dyestead
