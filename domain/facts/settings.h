// settings.h - what does the shop go by, and since when? Each setting that touches the books is a
// dated fact: the one in force on a fact's day counts, so that a new wage changes no earlier cost.
#pragma once

#include "domain/facts/field.h"
#include "domain/values/date.h"
#include "domain/values/money.h"
#include "domain/values/quantity.h"
#include "domain/values/ratio.h"

namespace dyestead {

struct Colour;

// The shop itself; exactly one. `shown_as_of` holds a demonstration or a closed shop at one day.
struct About : HeadOf<About> {
    static constexpr std::string_view kTable = "shop";
    std::string name;
    std::string currency;  // ISO 4217 code
    std::optional<Day> shown_as_of;
    std::optional<int> year_begins;  // month of the financial year's first day, 1 to 12; blank: January
};
template <>
inline constexpr auto kFields<About> = [](auto&& visit) {
    visit(field("name", &About::name));
    visit(field("currency", &About::currency));
    visit(field("shown_as_of", &About::shown_as_of));
    visit(field("year_begins", &About::year_begins));
};

struct Person : HeadOf<Person> {
    static constexpr std::string_view kTable = "person";
    std::string name;
};
template <>
inline constexpr auto kFields<Person> = [](auto&& visit) { visit(field("name", &Person::name)); };

// One of the shop's own people, whose hours are labour, or a paid one, whose wage is a material cost.
enum class Standing : std::uint8_t { own, paid };
template <>
inline constexpr std::array<std::string_view, 2> kWords<Standing>{"own", "paid"};

// What an hour of this person is to bring (own; may be blank) or costs (paid), from a day on.
struct Pay : HeadOf<Pay> {
    static constexpr std::string_view kTable = "pay";
    Day from;
    Key<Person> person;
    Standing standing = Standing::own;
    std::optional<Money> per_hour;
};
template <>
inline constexpr auto kFields<Pay> = [](auto&& visit) {
    visit(field("from", &Pay::from));
    visit(field("person", &Pay::person));
    visit(field("standing", &Pay::standing));
    visit(field("per_hour", &Pay::per_hour));
};

enum class HeatSource : std::uint8_t { electricity, gas, wood, sun };
template <>
inline constexpr std::array<std::string_view, 4> kWords<HeatSource>{"electricity", "gas", "wood", "sun"};

// What a kilowatt-hour of a heat source costs.
struct Tariff : HeadOf<Tariff> {
    static constexpr std::string_view kTable = "tariff";
    Day from;
    HeatSource source = HeatSource::electricity;
    Money per_kwh;
};
template <>
inline constexpr auto kFields<Tariff> = [](auto&& visit) {
    visit(field("from", &Tariff::from));
    visit(field("source", &Tariff::source));
    visit(field("per_kwh", &Tariff::per_kwh));
};

// General running costs of a year, and how many good bars a year they are spread over.
struct Overhead : HeadOf<Overhead> {
    static constexpr std::string_view kTable = "overhead";
    Day from;
    Money per_year;
    int normal_bars = 0;
};
template <>
inline constexpr auto kFields<Overhead> = [](auto&& visit) {
    visit(field("from", &Overhead::from));
    visit(field("per_year", &Overhead::per_year));
    visit(field("normal_bars", &Overhead::normal_bars));
};

enum class LossOf : std::uint8_t { raw, seed, harvest, pigment, bar, batch };
template <>
inline constexpr std::array<std::string_view, 6> kWords<LossOf>{"raw", "seed", "harvest", "pigment", "bar", "batch"};

// The share of what was received (or, for a batch, of the bars cut) whose loss is usual.
struct NormalLoss : HeadOf<NormalLoss> {
    static constexpr std::string_view kTable = "normal_loss";
    Day from;
    LossOf of = LossOf::raw;
    Ratio rate;
};
template <>
inline constexpr auto kFields<NormalLoss> = [](auto&& visit) {
    visit(field("from", &NormalLoss::from));
    visit(field("of", &NormalLoss::of));
    visit(part("rate", &NormalLoss::rate));
};

// The sales tax inside shelf prices; 0 while the shop is not registered.
struct SalesTax : HeadOf<SalesTax> {
    static constexpr std::string_view kTable = "sales_tax";
    Day from;
    Ratio rate;
};
template <>
inline constexpr auto kFields<SalesTax> = [](auto&& visit) {
    visit(field("from", &SalesTax::from));
    visit(field("rate", &SalesTax::rate));
};

enum class Channel : std::uint8_t { cash, card, online, wholesale, other };
template <>
inline constexpr std::array<std::string_view, 5> kWords<Channel>{"cash", "card", "online", "wholesale", "other"};

// What it costs to be paid through a channel: a share of the takings, so much a payment, so much a bar (bags).
struct ChannelFee : HeadOf<ChannelFee> {
    static constexpr std::string_view kTable = "channel_fee";
    Day from;
    Channel channel = Channel::cash;
    std::optional<Ratio> share;
    std::optional<Money> per_payment;
    std::optional<Money> per_bar;
};
template <>
inline constexpr auto kFields<ChannelFee> = [](auto&& visit) {
    visit(field("from", &ChannelFee::from));
    visit(field("channel", &ChannelFee::channel));
    visit(part("share", &ChannelFee::share));
    visit(field("per_payment", &ChannelFee::per_payment));
    visit(field("per_bar", &ChannelFee::per_bar));
};

// The share of attended waiting that counts as work; none until set.
struct WaitingShare : HeadOf<WaitingShare> {
    static constexpr std::string_view kTable = "waiting_share";
    Day from;
    Ratio share;
};
template <>
inline constexpr auto kFields<WaitingShare> = [](auto&& visit) {
    visit(field("from", &WaitingShare::from));
    visit(part("share", &WaitingShare::share));
};

// What sowing is reckoned with, from a day on. What is left blank is as an earlier one says it. Of the frosts only day
// and month count, as they fall in a usual year.
struct SowingRule : HeadOf<SowingRule> {
    static constexpr std::string_view kTable = "sowing_rule";
    Day from;
    std::optional<Day> last_frost;     // of spring
    std::optional<Day> first_frost;    // of autumn
    std::optional<Ratio> germination;  // the share of seed that comes up where no try says it
    std::optional<Ratio> reserve;      // sown for one wanted
};
template <>
inline constexpr auto kFields<SowingRule> = [](auto&& visit) {
    visit(field("from", &SowingRule::from));
    visit(field("last_frost", &SowingRule::last_frost));
    visit(field("first_frost", &SowingRule::first_frost));
    visit(part("germination", &SowingRule::germination));
    visit(field("reserve", &SowingRule::reserve));
};

// What a price is to bring, from a day on. What is left blank is as an earlier one says it.
struct PriceRule : HeadOf<PriceRule> {
    static constexpr std::string_view kTable = "price_rule";
    Day from;
    std::optional<Ratio> margin;      // of the price without sales tax
    std::optional<Ratio> markup;      // on the full cost
    std::optional<Money> price_step;  // shelf prices go up in these
};
template <>
inline constexpr auto kFields<PriceRule> = [](auto&& visit) {
    visit(field("from", &PriceRule::from));
    visit(part("margin", &PriceRule::margin));
    visit(field("markup", &PriceRule::markup));
    visit(field("price_step", &PriceRule::price_step));
};

enum class DyeOnly : std::uint8_t { no, garden, vat };
template <>
inline constexpr std::array<std::string_view, 3> kWords<DyeOnly>{"no", "garden", "vat"};

// Money that went out for no delivery. A general bill is money out only, for general running costs
// accrue from Overhead. A bill for the dye alone goes to the beds or vats in hand that day as far as
// it could have been avoided by not growing.
struct PaidOut : HeadOf<PaidOut> {
    static constexpr std::string_view kTable = "paid_out";
    Day date;
    std::string what;
    Money amount;
    DyeOnly dye_only = DyeOnly::no;
    std::optional<Key<Colour>> colour;  // blank: the dye work in general
    std::optional<Ratio> avoidable;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<PaidOut> = [](auto&& visit) {
    visit(field("date", &PaidOut::date));
    visit(field("what", &PaidOut::what));
    visit(field("amount", &PaidOut::amount));
    visit(field("dye_only", &PaidOut::dye_only));
    visit(field("colour", &PaidOut::colour));
    visit(part("avoidable", &PaidOut::avoidable));
    visit(field("note", &PaidOut::note));
};

}  // namespace dyestead
