#include <doctest/doctest.h>

#include "gui/models/form/field_values.h"
#include "gui/models/new_shop.h"
#include "gui/models/settings/settings_forms.h"
#include "gui/models/settings/settings_place.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

namespace {

struct Fresh : test::Desk {
    Fresh() : Desk{day_of(2026, 7, 4)} { take(first_records("Shed", "GBP", 5)); }
};

}  // namespace

TEST_CASE("a new shop has its name and currency, and a currency is three letters") {
    Fresh desk;
    Form form = about_form(desk.writing());
    CHECK(form.text("name") == "Shed");
    form.type("currency", "pounds", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("currency").trouble.empty());
    form.type("currency", "eur", desk.writing());
    form.type("name", "The shed by the sea", desk.writing());
    CHECK(desk.keep(form) == "The shop is called The shed by the sea.");
    REQUIRE(desk.shop.all<About>().size() == 1);
    CHECK(desk.shop.all<About>().front().currency == "EUR");
}

TEST_CASE("what sowing is reckoned with: at least one of the four, shares that can be, and one line in the list") {
    Fresh desk;
    Form form = sowing_rule_form(desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("last_frost").trouble.empty());
    form.type("last_frost", "12 May", desk.writing());
    form.type("germination", "0 %", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("germination").trouble.empty());
    form.type("germination", "70 %", desk.writing());
    form.type("reserve", "0.5", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("reserve").trouble.empty());
    form.type("reserve", "1.25", desk.writing());
    REQUIRE_FALSE(desk.keep(form).empty());
    REQUIRE(desk.shop.all<SowingRule>().size() == 1);
    const SowingRule& rule = desk.shop.all<SowingRule>().front();
    CHECK(rule.last_frost == day_of(2026, 5, 12));
    CHECK(rule.germination == Ratio{70, 100});
    const auto place = settings_place();
    const auto list = place->listings(desk.writing().books, "frost").front();
    REQUIRE(list.table.rows.size() == 1);
    CHECK(list.table.rows[0][1].shown == "last frost 12 May, 70 % of the seed comes up, 1.25 sown for one wanted");
    CHECK(place->correct(desk.writing(), list.rows.front()));
}

TEST_CASE("what a price is to bring: a margin below the whole, a markup, the steps of a price; one line in the list") {
    Fresh desk;
    Form form = price_rule_form(desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("margin").trouble.empty());
    for (const char* too_much : {"100 %", "140 %"}) {
        form.type("margin", too_much, desk.writing());
        CHECK(desk.keep(form).empty());
        CHECK_FALSE(form.field("margin").trouble.empty());
    }
    form.type("margin", "45 %", desk.writing());
    form.type("price_step", "0,25", desk.writing());
    CHECK(desk.keep(form) == "Every bar with a price and a cost on record brings in what you aim at.");
    REQUIRE(desk.shop.all<PriceRule>().size() == 1);
    CHECK(desk.shop.all<PriceRule>().front().margin == Ratio{45, 100});
    CHECK_FALSE(desk.shop.all<PriceRule>().front().markup);
    const auto place = settings_place();
    const auto list = place->listings(desk.writing().books, "price is to").front();
    REQUIRE(list.table.rows.size() == 1);
    CHECK(list.table.rows[0][1].shown == "45 % of the price left over, in steps of £0.25");
    CHECK(place->correct(desk.writing(), list.rows.front()));
}

TEST_CASE("people and their hours, heat, running costs, fees, tax: each kept from its day on") {
    Fresh desk;
    Form person = person_form(desk.writing());
    person.type("name", "Mia", desk.writing());
    REQUIRE_FALSE(desk.keep(person).empty());
    Form pay = pay_form(desk.writing());
    pay.type("person", KeyCodes{}.code_of(desk.shop.all<Person>().front().key), desk.writing());
    pay.type("per_hour", "12,50", desk.writing());
    CHECK(desk.keep(pay).find("4 July 2026") != std::string::npos);
    CHECK(desk.shop.all<Pay>().front().per_hour == Money::hundredths(1'250));
    Form heat = tariff_form(desk.writing());
    heat.type("per_kwh", "0.29", desk.writing());
    CHECK_FALSE(desk.keep(heat).empty());
    Form overhead = overhead_form(desk.writing());
    overhead.type("per_year", "300", desk.writing());
    overhead.type("normal_bars", "400", desk.writing());
    CHECK_FALSE(desk.keep(overhead).empty());
    Form fee = channel_fee_form(desk.writing());
    fee.type("channel", "card", desk.writing());
    fee.type("share", "1.75 %", desk.writing());
    CHECK_FALSE(desk.keep(fee).empty());
    Form tax = sales_tax_form(desk.writing());
    tax.type("rate", "twenty", desk.writing());
    CHECK(desk.keep(tax).empty());
    tax.type("rate", "20 %", desk.writing());
    CHECK_FALSE(desk.keep(tax).empty());
    Form trimmings = normal_loss_form(desk.writing());
    trimmings.type("rate", "5 %", desk.writing());
    CHECK_FALSE(desk.keep(trimmings).empty());
    Form waiting = waiting_share_form(desk.writing());
    waiting.type("share", "50 %", desk.writing());
    CHECK_FALSE(desk.keep(waiting).empty());
    Form rule = cost_rule_form(desk.writing());
    rule.type("cost_by", "average", desk.writing());
    CHECK_FALSE(desk.keep(rule).empty());

    const auto place = settings_place();
    const auto lists = place->listings({desk.shop, desk.ledger}, "");
    CHECK(lists[0].rows.size() == 10);  // the shop, Mia and eight settings
    for (const FactRef row : lists[0].rows) CHECK(place->correct(desk.writing(), row));
    CHECK(place->listings({desk.shop, desk.ledger}, "kilowatt")[0].rows.size() == 1);
}

TEST_CASE("a bill and a tool") {
    Fresh desk;
    Form bill = paid_out_form(desk.writing());
    bill.type("what", "Insurance", desk.writing());
    bill.type("amount", "£84", desk.writing());
    CHECK(desk.keep(bill).starts_with("Noted as money out"));
    Form tool = equipment_form(desk.writing());
    tool.type("name", "Large pan", desk.writing());
    tool.type("price", "60", desk.writing());
    tool.type("years", "0", desk.writing());
    CHECK(desk.keep(tool).empty());
    CHECK_FALSE(tool.field("years").trouble.empty());
    tool.type("years", "10", desk.writing());
    CHECK(desk.keep(tool) == "Large pan costs £6.00 a year while it lasts.");
}

}  // namespace dyestead::gui
