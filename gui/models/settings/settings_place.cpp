#include "gui/models/settings/settings_place.h"

#include <algorithm>
#include <tuple>

#include "domain/text/amounts.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/cupboard/cupboard_lists.h"
#include "gui/models/cupboard/shelf_forms.h"
#include "gui/models/cupboard/supply_forms.h"
#include "gui/models/settings/settings_forms.h"
#include "reports/words/language.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::called;
using reports::say;

namespace {

using Selected = std::optional<FactRef>;

enum List : std::size_t { kGoesBy, kBills, kTools, kSuppliers, kHere, kMeasures };

double amount(Money money) {
    return static_cast<double>(money.in_millionths()) / 1e6;
}

// One setting in one line.
struct Row {
    Day from{};
    std::string what;
    std::string value;
    FactRef fact;
};

std::string by_words(Channel channel) {
    switch (channel) {
        case Channel::cash: return say("cash");
        case Channel::card: return say("card");
        case Channel::online: return say("online");
        case Channel::wholesale: return say("wholesale");
        case Channel::other: return say("other");
    }
    return {};
}

std::string heat_words(HeatSource source) {
    switch (source) {
        case HeatSource::electricity: return say("electricity");
        case HeatSource::gas: return say("gas");
        case HeatSource::wood: return say("wood");
        case HeatSource::sun: return say("sun");
    }
    return {};
}

std::string fee_words(const ChannelFee& fee, const std::string& currency) {
    std::string words;
    const auto add = [&](const std::string& more) { words += (words.empty() ? "" : ", ") + more; };
    if (fee.share) add(reports::in_marks_here(print(*fee.share)));
    if (fee.per_payment) add(say("{money} a payment", arg("money", reports::shown_money(*fee.per_payment, currency))));
    if (fee.per_bar) add(say("{money} a bar", arg("money", reports::shown_money(*fee.per_bar, currency))));
    return words.empty() ? say("nothing") : words;
}

// Of a frost the year means nothing.
std::string day_and_month(Day day) {
    const std::chrono::year_month_day ymd{day};
    return say("{day} {month}", arg("day", static_cast<unsigned>(ymd.day())),
               arg("month", reports::short_month(static_cast<unsigned>(ymd.month()))));
}

std::string sowing_rule_words(const SowingRule& rule) {
    std::string words;
    const auto add = [&](const std::string& more) { words += (words.empty() ? "" : ", ") + more; };
    if (rule.last_frost) add(say("last frost {day}", arg("day", day_and_month(*rule.last_frost))));
    if (rule.first_frost) add(say("first frost {day}", arg("day", day_and_month(*rule.first_frost))));
    if (rule.germination) add(say("{share} of the seed comes up", arg("share", print(*rule.germination))));
    if (rule.reserve)
        add(say("{number} sown for one wanted", arg("number", reports::shown_number(number(*rule.reserve)))));
    return words;
}

std::string price_rule_words(const PriceRule& rule, const std::string& currency) {
    std::string words;
    const auto add = [&](const std::string& more) { words += (words.empty() ? "" : ", ") + more; };
    if (rule.margin)
        add(say("{share} of the price left over", arg("share", reports::in_marks_here(print(*rule.margin)))));
    if (rule.markup) add(say("{share} on what it costs", arg("share", reports::in_marks_here(print(*rule.markup)))));
    if (rule.price_step)
        add(say("in steps of {money}", arg("money", reports::shown_money(*rule.price_step, currency))));
    return words;
}

std::vector<Row> settings(const Books& books) {
    const Shop& shop = books.shop;
    const std::string currency = reports::currency_of(shop);
    std::vector<Row> rows;
    for (const About& about : shop.all<About>())
        rows.push_back({.from = {},
                        .what = say("The shop itself"),
                        .value = say("{name}, {currency}", arg("name", about.name), arg("currency", about.currency)),
                        .fact = ref(about)});
    for (const Person& person : shop.all<Person>())
        rows.push_back({.from = {}, .what = say("Works here"), .value = person.name, .fact = ref(person)});
    for (const Pay& pay : shop.all<Pay>())
        rows.push_back({.from = pay.from,
                        .what = say("An hour of {who}", arg("who", called(shop, pay.person))),
                        .value = pay.per_hour
                                     ? say(pay.standing == Standing::own ? reports::message("is to bring {money}")
                                                                         : reports::message("costs {money}"),
                                           arg("money", reports::shown_money(*pay.per_hour, currency)))
                                     : say("not said"),
                        .fact = ref(pay)});
    for (const Tariff& tariff : shop.all<Tariff>())
        rows.push_back({.from = tariff.from,
                        .what = say("A kilowatt-hour, {source}", arg("source", heat_words(tariff.source))),
                        .value = reports::fine_money(amount(tariff.per_kwh), currency),
                        .fact = ref(tariff)});
    for (const Overhead& overhead : shop.all<Overhead>())
        rows.push_back({.from = overhead.from,
                        .what = say("Running costs"),
                        .value = say("{money} a year over {bars} bars",
                                     arg("money", reports::shown_money(overhead.per_year, currency)),
                                     arg("bars", overhead.normal_bars)),
                        .fact = ref(overhead)});
    for (const NormalLoss& loss : shop.all<NormalLoss>())
        rows.push_back({.from = loss.from,
                        .what = say("Usual trimmings"),
                        .value = say("{rate} of {what}", arg("rate", reports::in_marks_here(print(loss.rate))),
                                     arg("what", std::string{word(loss.of)})),
                        .fact = ref(loss)});
    for (const SalesTax& tax : shop.all<SalesTax>())
        rows.push_back({.from = tax.from,
                        .what = say("Sales tax inside prices"),
                        .value = reports::in_marks_here(print(tax.rate)),
                        .fact = ref(tax)});
    for (const ChannelFee& fee : shop.all<ChannelFee>())
        rows.push_back({.from = fee.from,
                        .what = say("To be paid by {channel}", arg("channel", by_words(fee.channel))),
                        .value = fee_words(fee, currency),
                        .fact = ref(fee)});
    for (const WaitingShare& share : shop.all<WaitingShare>())
        rows.push_back({.from = share.from,
                        .what = say("Attended waiting that counts"),
                        .value = reports::in_marks_here(print(share.share)),
                        .fact = ref(share)});
    for (const SowingRule& rule : shop.all<SowingRule>())
        rows.push_back({.from = rule.from,
                        .what = say("Sowing is reckoned with"),
                        .value = sowing_rule_words(rule),
                        .fact = ref(rule)});
    for (const PriceRule& rule : shop.all<PriceRule>())
        rows.push_back({.from = rule.from,
                        .what = say("A price is to bring"),
                        .value = price_rule_words(rule, currency),
                        .fact = ref(rule)});
    for (const CostRule& rule : shop.all<CostRule>())
        rows.push_back({.from = rule.from,
                        .what = say("How stock is costed"),
                        .value = rule.cost_by == CostBy::average ? say("by the moving average price")
                                                                 : say("by what each lot cost"),
                        .fact = ref(rule)});
    // Kind by kind as above, and of each thing the newest first.
    std::ranges::stable_sort(rows, [](const Row& one, const Row& other) {
        return std::tie(one.fact.kind, one.what, other.from) < std::tie(other.fact.kind, other.what, one.from);
    });
    return rows;
}

Listing settings_list(const Books& books, std::string_view find) {
    Listing list{.name = say("Goes by"),
                 .table = {.title = say("What the shop goes by"),
                           .columns = {{say("what")}, {say("is")}, {say("from"), Align::right}}},
                 .empty = say("Nothing said yet. Begin with the shop itself: its name and its currency.")};
    for (const Row& row : settings(books)) {
        if (!holds({row.what, row.value}, find)) continue;
        list.table.rows.push_back(
            {words_cell(row.what), words_cell(row.value), row.from == Day{} ? no_cell() : day_cell(row.from)});
        list.rows.push_back(row.fact);
    }
    return list;
}

Listing bill_list(const Books& books, std::string_view find) {
    const std::string currency = reports::currency_of(books.shop);
    Listing list{
        .name = say("Bills"),
        .table = {.title = say("Bills paid, for no delivery"),
                  .columns = {{say("on")}, {say("what for")}, {currency, Align::right}}},
        .empty = say("No bill yet. Insurance, the assessor, a market licence: what went out for no delivery.")};
    std::vector<const PaidOut*> all;
    for (const PaidOut& paid : books.shop.all<PaidOut>())
        if (holds({paid.what}, find)) all.push_back(&paid);
    std::ranges::stable_sort(all, [](const auto* one, const auto* other) { return one->date > other->date; });
    for (const PaidOut* paid : all) {
        list.table.rows.push_back(
            {day_cell(paid->date), words_cell(paid->what), money_cell(amount(paid->amount), currency)});
        list.rows.push_back(ref(*paid));
    }
    return list;
}

Listing tool_list(const Books& books, std::string_view find) {
    const std::string currency = reports::currency_of(books.shop);
    Listing list{.name = say("Tools"),
                 .table = {.title = say("Tools that wear out"),
                           .columns = {{say("what")},
                                       {say("bought"), Align::right},
                                       {say("price, {currency}", arg("currency", currency)), Align::right},
                                       {say("years"), Align::right}}},
                 .empty = say("No tool yet. A pan, a scale, a drying plate: what is bought once and wears out.")};
    for (const Equipment& tool : books.shop.all<Equipment>()) {
        if (!holds({tool.name}, find)) continue;
        list.table.rows.push_back({words_cell(tool.name), day_cell(tool.bought),
                                   money_cell(amount(tool.price), currency),
                                   count_cell(static_cast<std::size_t>(std::max(0, tool.years)))});
        list.rows.push_back(ref(tool));
    }
    return list;
}

template <Form (*kForm)(const Writing&)>
std::optional<Form> opened(const Writing& writing, Selected) {
    return kForm(writing);
}

template <class Fact, Form (*kForm)(const Writing&, std::optional<Key<Fact>>)>
Doing new_one(const std::string& label) {
    return {.label = label, .begin = [](const Writing& writing, Selected) -> std::optional<Form> {
                return kForm(writing, std::nullopt);
            }};
}

template <class Fact, Form (*kForm)(const Writing&, std::optional<Key<Fact>>)>
std::optional<Form> corrected(const Writing& writing, FactRef row) {
    if (row.kind != kKindOf<Fact>) return std::nullopt;
    return kForm(writing, Key<Fact>{row.key});
}

class SettingsPlace : public PlaceModel {
public:
    std::string state(const Books&) const override { return {}; }

    std::vector<Listing> listings(const Books& books, std::string_view find) const override {
        return {settings_list(books, find), bill_list(books, find),         tool_list(books, find),
                supplier_list(books, find), already_here_list(books, find), measure_list(books, find)};
    }

    std::vector<Doing> doings(std::size_t listing) const override {
        switch (listing) {
            case kBills: return {new_one<PaidOut, paid_out_form>(say("New &bill"))};
            case kTools: return {new_one<Equipment, equipment_form>(say("New &tool"))};
            case kSuppliers: return {new_one<Supplier, supplier_form>(say("New &supplier"))};
            case kHere: return {new_one<AlreadyHere, already_here_form>(say("&Already here"))};
            case kMeasures: return {new_one<OwnMeasure, own_measure_form>(say("New &measure"))};
            default:
                return {{.label = say("The &shop itself"), .begin = opened<about_form>},
                        new_one<Person, person_form>(say("&Person")),
                        new_one<Pay, pay_form>(say("An &hour")),
                        new_one<Tariff, tariff_form>(say("Heat")),
                        new_one<Overhead, overhead_form>(say("Running costs")),
                        new_one<ChannelFee, channel_fee_form>(say("Fees")),
                        new_one<SalesTax, sales_tax_form>(say("Sales &tax")),
                        new_one<NormalLoss, normal_loss_form>(say("Trimmings")),
                        new_one<WaitingShare, waiting_share_form>(say("&Waiting")),
                        new_one<CostRule, cost_rule_form>(say("Cost by")),
                        new_one<PriceRule, price_rule_form>(say("Prices")),
                        new_one<SowingRule, sowing_rule_form>(say("Sowing"))};
        }
    }

    std::optional<Form> correct(const Writing& writing, FactRef row) const override {
        if (row.kind == kKindOf<About>) return about_form(writing);
        for (const auto form : {corrected<Person, person_form>, corrected<Pay, pay_form>,
                                corrected<Tariff, tariff_form>, corrected<Overhead, overhead_form>,
                                corrected<NormalLoss, normal_loss_form>, corrected<SalesTax, sales_tax_form>,
                                corrected<ChannelFee, channel_fee_form>, corrected<WaitingShare, waiting_share_form>,
                                corrected<CostRule, cost_rule_form>, corrected<SowingRule, sowing_rule_form>,
                                corrected<PriceRule, price_rule_form>, corrected<PaidOut, paid_out_form>,
                                corrected<Equipment, equipment_form>, corrected<Supplier, supplier_form>,
                                corrected<AlreadyHere, already_here_form>, corrected<OwnMeasure, own_measure_form>})
            if (auto found = form(writing, row)) return found;
        return std::nullopt;
    }
};

}  // namespace

std::unique_ptr<PlaceModel> settings_place() {
    return std::make_unique<SettingsPlace>();
}

}  // namespace dyestead::gui
