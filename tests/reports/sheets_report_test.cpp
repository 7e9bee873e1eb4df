// The sheets to write on: what is known stands there, what is to be written has room, and a shop without records gets
// them too.
#include "reports/sheets_report.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "domain/ledger/replay.h"
#include "reports/write/html.h"
#include "reports/write/paper_pages.h"
#include "reports/write/text.h"
#include "tests/support/shop_builder.h"

namespace dyestead::reports {
namespace {

using namespace dyestead::test;

constexpr Day kToday = day_of(2026, 7, 4);

struct Workshop : ShopBuilder {
    Key<Method> method;
    Key<Planting> planting;
    Key<Fair> fair;

    Workshop() {
        add<About>().currency = "GBP";
        auto& warm = add<Method>();
        warm.name = "Warm vat";
        warm.code = "warm";
        method = warm.key;
        auto& heat = add<MethodStep>(method);
        heat.what = "Heat slowly";
        heat.temperature_low = Temperature{680};
        heat.temperature_high = Temperature{780};
        heat.waiting = minutes(45);
        heat.caution = Caution::hot;
        auto& wash = add<MethodStep>(method);
        wash.what = "Pour off and wash";
        wash.times = 3;
        wash.acidity_low = Acidity{700};
        const auto ash = material("Soda ash", Purpose::alkali);
        auto& use = add<MethodUse>(method);
        use.material = ash;
        use.amount = grams(5);
        use.per = Per::kg;
        delivery(day_of(2026, 3, 1), ash, grams(812), Money::units(3));
        delivery(day_of(2026, 3, 1), material("Coconut oil", Purpose::oil), grams(5'000), Money::units(40));
        material("Nothing of it", Purpose::oil);
        auto& plant = add<Plant>();
        plant.name = "Madder";
        plant.latin = "Rubia tinctorum";
        plant.part = "root";
        plant.caution = Caution::sensitising;
        const auto root = plant.key;
        auto& bed = add<Bed>();
        bed.name = "long bed";
        bed.area = square_metres(4);
        auto& sown = add<Planting>();
        sown.sown = day_of(2025, 4, 19);
        sown.plant = root;
        sown.bed = bed.key;
        planting = sown.key;
        auto& market = add<Fair>();
        market.date = day_of(2026, 7, 18);
        market.name = "Summer market";
        fair = market.key;
    }
    Ledger ledger() const { return replay(shop(), kToday); }
};

std::string flat(const Document& document) {
    std::string text = write_text(document);
    std::ranges::replace(text, '\n', ' ');
    std::string one;
    for (const char c : text)
        if ((c != ' ' && c != '!') || (!one.empty() && one.back() != ' ')) one += c == '!' ? ' ' : c;
    return one;
}

bool has(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

const Table& table_with(const Document& document, std::string_view heading) {
    for (const Block& block : document.blocks)
        if (const auto* table = std::get_if<Table>(&block))
            for (const Column& column : table->columns)
                if (column.heading == heading) return *table;
    FAIL("no table has the column " << heading);
    return std::get<Table>(document.blocks.front());
}

}  // namespace

TEST_CASE("a vat sheet has the method's steps with their bands, its cautions, and five answers") {
    const Workshop s;
    const Document sheet = vat_sheets(s.shop(), s.ledger());
    CHECK(sheet.title == "Vat sheet: Warm vat");
    CHECK(sheet.larger);
    const Table& steps = table_with(sheet, "step");
    REQUIRE(steps.rows.size() == 3);  // one more to add to
    CHECK(steps.rows[0][1].shown == "at 68 to 78 \u00b0C, 45 min waiting");
    CHECK(steps.rows[1][1].shown == "3 times, each pH 7 or more");
    for (std::size_t c = 2; c < steps.columns.size(); ++c) CHECK(steps.columns[c].room > 0);
    CHECK(table_with(sheet, "question").rows.size() == 5);
    CHECK(table_with(sheet, "from which lot").rows[0][1].shown == "5 g for each kg of harvest");
    const std::string text = flat(sheet);
    CHECK(has(text, "Heat slowly: worked hot, and scalds."));
    CHECK(has(text, "Plenty of water at once, then a doctor."));
    CHECK(has(text, "______"));
    CHECK(PaperPages{sheet}.count() <= 2);  // both sides of one sheet of paper
}

TEST_CASE("a count sheet lists what is there by name, and not how much the books say") {
    const Workshop s;
    const Document sheet = count_sheets(s.shop(), s.ledger());
    const Table& table = table_with(sheet, "counted");
    REQUIRE(table.rows.size() > 2);
    CHECK(table.rows[0][0].shown == "Coconut oil");
    CHECK(table.rows[1][0].shown == "Soda ash");
    CHECK(table.rows[2][0].shown.empty());
    const std::string text = flat(sheet);
    CHECK_FALSE(has(text, "812"));
    CHECK_FALSE(has(text, "Nothing of it"));
}

TEST_CASE("a garden card says which planting it is and what to mind; one that ended has none") {
    Workshop s;
    const std::string card = flat(garden_cards(s.shop(), s.ledger()));
    CHECK(has(card, "Madder (Rubia tinctorum), for its root; 4 m2 in long bed, sown on 19 April 2025."));
    CHECK(has(card, "Madder: can make skin sensitive."));
    auto& end = s.add<PlantingEnd>();
    end.planting = s.planting;
    end.date = day_of(2026, 6, 1);
    const Document blank = garden_cards(s.shop(), s.ledger());
    CHECK(blank.title == "Garden card");
    CHECK(table_with(blank, "bed").columns.size() == 4);
}

TEST_CASE("a fair sheet has room for what was taken, what came back, and the tin") {
    const Workshop s;
    const Document sheet = fair_sheets(s.shop(), s.ledger());
    CHECK(sheet.title == "Fair sheet: Summer market, 18 July 2026");
    CHECK(table_with(sheet, "back home").columns.back().room > 0);
    CHECK(has(flat(sheet), "Cash in the tin at the end, the change included"));
    CHECK(has(flat(sheet), "Bars on hold are not to be sold"));
}

TEST_CASE("all sheets together begin a page each; one is asked for by its kind or its code") {
    const Workshop s;
    const auto of = [&](const char* what) { return sheets_report(s.shop(), s.ledger(), what); };
    const auto all = sheets_report(s.shop(), s.ledger(), std::nullopt);
    REQUIRE(std::holds_alternative<Document>(all));
    const auto& document = std::get<Document>(all);
    const auto sheets = std::ranges::count_if(document.blocks, [](const Block& block) {
        const auto* section = std::get_if<Section>(&block);
        return section != nullptr && section->new_page;
    });
    CHECK(sheets == 4);
    CHECK(PaperPages{document}.count() >= 4);
    CHECK(has(write_html(document), "<h2 class=\"sheet\">Garden card: Madder, long bed</h2>"));
    CHECK(std::get<Document>(of("warm")).title == "Vat sheet: Warm vat");
    CHECK(std::get<Document>(of("count")).title == "Count sheet, 4 July 2026");
    const auto wrong = of("vats");
    REQUIRE(std::holds_alternative<Trouble>(wrong));
    CHECK(std::get<Trouble>(wrong).args[1].second.starts_with("vat, garden, count, fair, warm"));
}

TEST_CASE("a shop without records gets sheets with more to write on") {
    const ShopBuilder empty;
    const Ledger ledger = replay(empty.shop(), kToday);
    const auto all = sheets_report(empty.shop(), ledger, std::nullopt);
    REQUIRE(std::holds_alternative<Document>(all));
    for (const Block& block : std::get<Document>(all).blocks)
        if (const auto* table = std::get_if<Table>(&block)) {
            CHECK_FALSE(table->rows.empty());
            for (const auto& row : table->rows) CHECK(row.size() <= table->columns.size());
        }
    CHECK(table_with(vat_sheets(empty.shop(), ledger), "step").rows.size() == 10);
}

}  // namespace dyestead::reports
