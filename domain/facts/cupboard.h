// cupboard.h - what is bought, from whom, for how much, and what is lost of it?
#pragma once

#include "domain/facts/field.h"
#include "domain/facts/settings.h"
#include "domain/values/date.h"
#include "domain/values/money.h"
#include "domain/values/ratio.h"
#include "domain/values/span.h"
#include "domain/values/unit.h"

namespace dyestead {

struct Colour;

enum class MaterialKind : std::uint8_t { raw, seed, harvest, pigment, bar };
template <>
inline constexpr std::array<std::string_view, 5> kWords<MaterialKind>{"raw", "seed", "harvest", "pigment", "bar"};

// What a raw material is for.
enum class Purpose : std::uint8_t { oil, lye, water, alkali, mordant, acid, colourant, scent, wrapping, feed, other };
template <>
inline constexpr std::array<std::string_view, 11> kWords<Purpose>{
    "oil", "lye", "water", "alkali", "mordant", "acid", "colourant", "scent", "wrapping", "feed", "other"};

enum class Alkali : std::uint8_t { sodium, potassium };
template <>
inline constexpr std::array<std::string_view, 2> kWords<Alkali>{"sodium", "potassium"};

enum class HeldAs : std::uint8_t { mass, volume, count };
template <>
inline constexpr std::array<std::string_view, 3> kWords<HeldAs>{"mass", "volume", "count"};

enum class Caution : std::uint8_t { none, lye, dust, hot, sensitising, invasive };
template <>
inline constexpr std::array<std::string_view, 6> kWords<Caution>{
    "none", "lye", "dust", "hot", "sensitising", "invasive"};

// Everything a lot can hold.
struct Material : HeadOf<Material> {
    static constexpr std::string_view kTable = "material";
    std::string name;
    MaterialKind kind = MaterialKind::raw;
    std::optional<Purpose> purpose;
    HeldAs held_as = HeldAs::mass;
    std::optional<Ratio> density;         // g per ml, as poured
    std::optional<Ratio> spoon_density;   // g per ml, loose in a spoon
    std::optional<Ratio> saponification;  // mg KOH per g of oil
    std::optional<Key<Colour>> colour;    // pigments, bought colourants
    Caution caution = Caution::none;
    std::optional<Alkali> alkali;        // of a lye: which hydroxide; blank: sodium
    std::optional<Ratio> purity;         // of a lye: hydroxide in one gram as sold; blank: all of it
    std::optional<int> shelf_life_days;  // from delivery, where no best before is known
    std::optional<Amount> shelf_room;    // the most there is room for
};
template <>
inline constexpr auto kFields<Material> = [](auto&& visit) {
    visit(field("name", &Material::name));
    visit(field("kind", &Material::kind));
    visit(field("purpose", &Material::purpose));
    visit(field("held_as", &Material::held_as));
    visit(field("density", &Material::density));
    visit(field("spoon_density", &Material::spoon_density));
    visit(field("saponification", &Material::saponification));
    visit(field("colour", &Material::colour));
    visit(field("caution", &Material::caution));
    visit(field("alkali", &Material::alkali));
    visit(part("purity", &Material::purity));
    visit(field("shelf_life_days", &Material::shelf_life_days));
    visit(field("shelf_room", &Material::shelf_room));
};

// The label on the jar. What is in it and what it cost is derived.
struct Lot : HeadOf<Lot> {
    static constexpr std::string_view kTable = "lot";
    Key<Material> material;
};
template <>
inline constexpr auto kFields<Lot> = [](auto&& visit) { visit(field("material", &Lot::material)); };

struct Supplier : HeadOf<Supplier> {
    static constexpr std::string_view kTable = "supplier";
    std::string name;
    std::optional<Money> carriage;            // on an order
    std::optional<Money> carriage_free_from;  // goods of one order
    std::optional<Span> order_time;           // what placing an order takes
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Supplier> = [](auto&& visit) {
    visit(field("name", &Supplier::name));
    visit(field("carriage", &Supplier::carriage));
    visit(field("carriage_free_from", &Supplier::carriage_free_from));
    visit(field("order_time", &Supplier::order_time));
    visit(field("note", &Supplier::note));
};

// A supplier's price for a pack, from a day on. `noted`: the day the maker learned of it.
struct Offer : HeadOf<Offer> {
    static constexpr std::string_view kTable = "offer";
    Day noted;
    Day from;
    Key<Supplier> supplier;
    Key<Material> material;
    Amount pack;
    Money price;
    std::optional<int> lead_days;
    std::optional<std::string> how_known;  // letter, web page, by word
};
template <>
inline constexpr auto kFields<Offer> = [](auto&& visit) {
    visit(field("noted", &Offer::noted));
    visit(field("from", &Offer::from));
    visit(field("supplier", &Offer::supplier));
    visit(field("material", &Offer::material));
    visit(field("pack", &Offer::pack));
    visit(field("price", &Offer::price));
    visit(field("lead_days", &Offer::lead_days));
    visit(field("how_known", &Offer::how_known));
};

// A lower price from so many packs on.
struct OfferBreak : LineOf<OfferBreak, Offer> {
    static constexpr std::string_view kTable = "offer_break";
    int from_packs = 1;
    Money price;  // a pack
};
template <>
inline constexpr auto kFields<OfferBreak> = [](auto&& visit) {
    visit(field("from_packs", &OfferBreak::from_packs));
    visit(field("price", &OfferBreak::price));
};

// Stock that was there before the books began.
struct AlreadyHere : HeadOf<AlreadyHere> {
    static constexpr std::string_view kTable = "already_here";
    Day date;
    Key<Lot> lot;
    Amount amount;
    std::optional<Money> cost;
    std::optional<Span> time;  // hours of the shop's own people that are in it
    std::optional<Key<Person>> who;
    std::optional<Day> best_before;
};
template <>
inline constexpr auto kFields<AlreadyHere> = [](auto&& visit) {
    visit(field("date", &AlreadyHere::date));
    visit(field("lot", &AlreadyHere::lot));
    visit(field("amount", &AlreadyHere::amount));
    visit(field("cost", &AlreadyHere::cost));
    visit(field("time", &AlreadyHere::time));
    visit(field("who", &AlreadyHere::who));
    visit(field("best_before", &AlreadyHere::best_before));
};

// How postage and delivery are shared over the lines.
enum class ShareBy : std::uint8_t { value, weight };
template <>
inline constexpr std::array<std::string_view, 2> kWords<ShareBy>{"value", "weight"};

struct Delivery : HeadOf<Delivery> {
    static constexpr std::string_view kTable = "delivery";
    Day date;
    Key<Supplier> supplier;
    Money carriage;
    ShareBy share_by = ShareBy::value;
    std::optional<Money> duty;            // on the whole
    std::optional<Money> discount;        // on the whole order
    std::optional<std::string> currency;  // of the bill, ISO 4217; blank: the shop's
    std::optional<Ratio> rate;            // the shop's currency for one of the bill's, as on the bill
    std::optional<Day> ordered;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Delivery> = [](auto&& visit) {
    visit(field("date", &Delivery::date));
    visit(field("supplier", &Delivery::supplier));
    visit(field("carriage", &Delivery::carriage));
    visit(field("share_by", &Delivery::share_by));
    visit(field("duty", &Delivery::duty));
    visit(field("discount", &Delivery::discount));
    visit(field("currency", &Delivery::currency));
    visit(field("rate", &Delivery::rate));
    visit(field("ordered", &Delivery::ordered));
    visit(field("note", &Delivery::note));
};

struct DeliveryLine : LineOf<DeliveryLine, Delivery> {
    static constexpr std::string_view kTable = "delivery_line";
    Key<Lot> lot;
    Amount amount;
    Money price;  // for the whole line, without what `tax` adds to it
    std::optional<Ratio> tax;
    std::optional<std::string> supplier_lot;
    std::optional<Day> best_before;
};
template <>
inline constexpr auto kFields<DeliveryLine> = [](auto&& visit) {
    visit(field("lot", &DeliveryLine::lot));
    visit(field("amount", &DeliveryLine::amount));
    visit(field("price", &DeliveryLine::price));
    visit(field("tax", &DeliveryLine::tax));
    visit(field("supplier_lot", &DeliveryLine::supplier_lot));
    visit(field("best_before", &DeliveryLine::best_before));
};

enum class LossReason : std::uint8_t { spoiled, spilled, expired, other, given, sample, own_use, test };
template <>
inline constexpr std::array<std::string_view, 8> kWords<LossReason>{
    "spoiled", "spilled", "expired", "other", "given", "sample", "own use", "test"};
constexpr bool is_gift(LossReason reason) {
    return reason >= LossReason::given;
}

// A later word on what a delivery cost: late carriage, or a credit note.
enum class Correction : std::uint8_t { more, less };
template <>
inline constexpr std::array<std::string_view, 2> kWords<Correction>{"more", "less"};

struct CostCorrection : HeadOf<CostCorrection> {
    static constexpr std::string_view kTable = "cost_correction";
    Day date;
    Key<Delivery> delivery;
    Correction correction = Correction::more;
    Money amount;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<CostCorrection> = [](auto&& visit) {
    visit(field("date", &CostCorrection::date));
    visit(field("delivery", &CostCorrection::delivery));
    visit(field("correction", &CostCorrection::correction));
    visit(field("amount", &CostCorrection::amount));
    visit(field("note", &CostCorrection::note));
};

struct Loss : HeadOf<Loss> {
    static constexpr std::string_view kTable = "loss";
    Day date;
    Key<Material> material;
    std::optional<Key<Lot>> lot;
    Amount amount;
    LossReason reason = LossReason::other;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Loss> = [](auto&& visit) {
    visit(field("date", &Loss::date));
    visit(field("material", &Loss::material));
    visit(field("lot", &Loss::lot));
    visit(field("amount", &Loss::amount));
    visit(field("reason", &Loss::reason));
    visit(field("note", &Loss::note));
};

// A line that uses up some of a material: in a bed, a vat, a batch or a wrapping.
// Of::kUses names its table.
template <class Of>
struct UseIn : LineOf<UseIn<Of>, Of> {
    static constexpr std::string_view kTable = Of::kUses;
    Key<Material> material;
    std::optional<Key<Lot>> lot;  // blank: by rule
    Amount amount;
};
template <class Of>
inline constexpr auto kFields<UseIn<Of>> = [](auto&& visit) {
    visit(field("material", &UseIn<Of>::material));
    visit(field("lot", &UseIn<Of>::lot));
    visit(field("amount", &UseIn<Of>::amount));
};

}  // namespace dyestead
