// The settings that count from a day on.
#include <algorithm>

#include "domain/decisions/prices.h"
#include "domain/decisions/records.h"
#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/settings/settings_forms.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

// A form for a setting with a `from`; kept, it says from when it counts.
template <class Setting>
FactForm<Setting> dated_form(const Writing& writing, std::string code, std::string title,
                             std::optional<Key<Setting>> corrected) {
    FactForm<Setting> form{writing, std::move(code), std::move(title), corrected};
    if (form.is_new()) form.fact().from = writing.day;
    return form;
}

template <class Setting>
Form finished(FactForm<Setting>&& form, const std::string& title) {
    return std::move(form).done([title](Setting& setting, Form&, const Writing&, Kept& kept) {
        kept.title = reports::message("{what} from {day}");
        kept.args = {{"what", title}, {"day", reports::shown_date(setting.from)}};
        kept.consequence = [day = setting.from](const Writing&) {
            return say("It counts from {day} on; what was reckoned for earlier days stays as it was.",
                       arg("day", reports::shown_date(day)));
        };
        return true;
    });
}

}  // namespace

Form pay_form(const Writing& writing, std::optional<Key<Pay>> corrected) {
    const std::string title = say("What an hour is to bring, or costs");
    auto form = dated_form<Pay>(writing, "pay", title, corrected);
    form.add("person", say("&Who"), &Pay::person,
             {.choices = choices_of_kind<Person>(writing.shop(), {}, [](const Person& each) { return each.name; })})
        .add("standing", say("&Is"), &Pay::standing,
             {.choices = word_choices<Standing>(
                  {say("one of us: the hour is to bring this"), say("paid: the hour costs this")})})
        .add("per_hour", say("An &hour"), &Pay::per_hour,
             {.help = say("Blank when you would rather not say; hours are then counted without money.")})
        .add("from", say("Fro&m"), &Pay::from);
    return finished(std::move(form), title);
}

Form tariff_form(const Writing& writing, std::optional<Key<Tariff>> corrected) {
    const std::string title = say("The price of heat");
    auto form = dated_form<Tariff>(writing, "tariff", title, corrected);
    form.add("source", say("&Source"), &Tariff::source,
             {.choices = word_choices<HeatSource>({say("electricity"), say("gas"), say("wood"), say("sun")})})
        .add("per_kwh", say("A &kilowatt-hour"), &Tariff::per_kwh)
        .add("from", say("Fro&m"), &Tariff::from);
    return finished(std::move(form), title);
}

Form overhead_form(const Writing& writing, std::optional<Key<Overhead>> corrected) {
    const std::string title = say("Running costs of a year");
    auto form = dated_form<Overhead>(writing, "overhead", title, corrected);
    form.add(
            "per_year", say("A &year"), &Overhead::per_year,
            {.help = say("Insurance, the assessor, rent of the shed: what is paid whether you make many bars or few.")})
        .add("normal_bars", say("Spread over &bars a year"), &Overhead::normal_bars,
             {.help = say("Last year's good bars; in the first year what you plan.")})
        .add("from", say("Fro&m"), &Overhead::from);
    return finished(std::move(form), title);
}

Form normal_loss_form(const Writing& writing, std::optional<Key<NormalLoss>> corrected) {
    const std::string title = say("The usual trimmings");
    auto form = dated_form<NormalLoss>(writing, "normal-loss", title, corrected);
    form.add("of", say("&Of"), &NormalLoss::of,
             {.choices = word_choices<LossOf>({say("what is bought in"), say("seed"), say("leaf, root or herb"),
                                               say("powder"), say("bars"), say("bars at the cut")})})
        .add("rate", say("Usually &lost"), &NormalLoss::rate,
             {.help = say("A share, like 5 %. What is lost beyond it stands among the losses.")})
        .add("from", say("Fro&m"), &NormalLoss::from);
    return finished(std::move(form), title);
}

Form sales_tax_form(const Writing& writing, std::optional<Key<SalesTax>> corrected) {
    const std::string title = say("Sales tax inside shelf prices");
    auto form = dated_form<SalesTax>(writing, "sales-tax", title, corrected);
    form.add("rate", say("&Rate"), &SalesTax::rate,
             {.help = say("0 while the shop is not registered. Whether it must be is your accountant's to say.")})
        .add("from", say("Fro&m"), &SalesTax::from);
    return finished(std::move(form), title);
}

Form channel_fee_form(const Writing& writing, std::optional<Key<ChannelFee>> corrected) {
    const std::string title = say("What it costs to be paid");
    auto form = dated_form<ChannelFee>(writing, "channel-fee", title, corrected);
    form.add("channel", say("&By"), &ChannelFee::channel,
             {.choices =
                  word_choices<Channel>({say("cash"), say("card"), say("online"), say("wholesale"), say("other")})})
        .add("share", say("A &share of it"), &ChannelFee::share)
        .add("per_payment", say("A &payment"), &ChannelFee::per_payment)
        .add("per_bar", say("A b&ar"), &ChannelFee::per_bar, {.help = say("Bags, for example.")})
        .add("from", say("Fro&m"), &ChannelFee::from);
    return finished(std::move(form), title);
}

Form waiting_share_form(const Writing& writing, std::optional<Key<WaitingShare>> corrected) {
    const std::string title = say("How much of attended waiting counts as work");
    auto form = dated_form<WaitingShare>(writing, "waiting-share", title, corrected);
    form.add("share", say("&Share"), &WaitingShare::share,
             {.help = say("0 % counts hands-on time only; 100 % counts every minute you had to stay near.")})
        .add("from", say("Fro&m"), &WaitingShare::from);
    return finished(std::move(form), title);
}

Form price_rule_form(const Writing& writing, std::optional<Key<PriceRule>> corrected) {
    const std::string title = say("What a price is to bring");
    auto form = dated_form<PriceRule>(writing, "price-rule", title, corrected);
    form.add("margin", say("&Margin"), &PriceRule::margin,
             {.help = say("A share of the price without sales tax, like 40 %. A margin is on the price.")})
        .add("markup", say("Mark&up"), &PriceRule::markup,
             {.help = say("A share of what the bar costs, your hours in, like 150 %. A markup is on the cost.")})
        .add("price_step", say("Prices go up &in"), &PriceRule::price_step,
             {.help = say("The step between the prices you write on a sign, like 0.50.")})
        .add("from", say("Fro&m"), &PriceRule::from);
    return std::move(form).done([title](PriceRule& rule, Form& shown, const Writing&, Kept& kept) {
        if (!rule.margin && !rule.markup && !rule.price_step) {
            shown.field("margin").trouble = say("Say at least one of the three.");
            return false;
        }
        if (rule.margin && *rule.margin == Ratio{1, 1}) {
            shown.field("margin").trouble =
                say("No price is all margin, for the bar costs something: write less than 100 %.");
            return false;
        }
        kept.title = reports::message("{what} from {day}");
        kept.args = {{"what", title}, {"day", reports::shown_date(rule.from)}};
        kept.consequence = [](const Writing& after) {
            const Prices answer = prices(after.shop(), after.books.ledger);
            const auto under = std::ranges::count_if(answer.bars, &BarPrice::under_aim);
            return under == 0
                       ? say("Every bar with a price and a cost on record brings in what you aim at.")
                       : reports::say_count(
                             "One kind of bar sells for less than that takes; the Stall says what would reach it.",
                             "{count} kinds of bar sell for less than that takes; the Stall says what would reach it.",
                             static_cast<std::uint64_t>(under));
        };
        return true;
    });
}

Form sowing_rule_form(const Writing& writing, std::optional<Key<SowingRule>> corrected) {
    const std::string title = say("What sowing is reckoned with");
    auto form = dated_form<SowingRule>(writing, "sowing-rule", title, corrected);
    form.add("last_frost", say("&Last frost"), &SowingRule::last_frost,
             {.help = say("In spring, in a usual year: the day and the month count, like 12 May.")})
        .add("first_frost", say("F&irst frost"), &SowingRule::first_frost, {.help = say("In autumn, in a usual year.")})
        .add("germination", say("Seed that comes &up"), &SowingRule::germination,
             {.help = say("A share, like 80 %. Tries of your own count before it.")})
        .add("reserve", say("&Sown for one wanted"), &SowingRule::reserve,
             {.help = say("1.2 sows a fifth more, for slugs and gaps.")})
        .add("from", say("Fro&m"), &SowingRule::from);
    return std::move(form).done([title](SowingRule& rule, Form& shown, const Writing&, Kept& kept) {
        if (!rule.last_frost && !rule.first_frost && !rule.germination && !rule.reserve) {
            shown.field("last_frost").trouble = say("Say at least one of the four.");
            return false;
        }
        if (rule.germination && rule.germination->is_zero()) {
            shown.field("germination").trouble = say("More than none has to come up: write a share like 80 %.");
            return false;
        }
        if (rule.reserve && number(*rule.reserve) < 1) {
            shown.field("reserve").trouble = say("At least 1 is sown for each one wanted.");
            return false;
        }
        kept.title = reports::message("{what} from {day}");
        kept.args = {{"what", title}, {"day", reports::shown_date(rule.from)}};
        kept.consequence = [](const Writing&) {
            return say("The sowing plan goes by it; what a blank field says stays as an earlier entry says it.");
        };
        return true;
    });
}

Form cost_rule_form(const Writing& writing, std::optional<Key<CostRule>> corrected) {
    const std::string title = say("How stock is costed");
    auto form = dated_form<CostRule>(writing, "cost-rule", title, corrected);
    auto materials =
        material_choices(writing.shop(), [](const Material& material) { return material.kind == MaterialKind::raw; });
    materials.insert(materials.begin(), Choice{"", say("all that is bought in")});
    form.add("material", say("&Of"), &CostRule::material, {.entry = Entry::choice, .choices = std::move(materials)})
        .add("cost_by", say("&By"), &CostRule::cost_by,
             {.choices = word_choices<CostBy>({say("what each lot cost"), say("the moving average price")}),
              .help = say("Your accountant knows which of the two your books go by.")})
        .add("from", say("Fro&m"), &CostRule::from, {.help = say("The first day of a financial year.")});
    return finished(std::move(form), title);
}

}  // namespace dyestead::gui
