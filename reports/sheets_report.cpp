#include "reports/sheets_report.h"

#include <algorithm>

#include "domain/decisions/fair_plan.h"
#include "domain/decisions/plant_record.h"
#include "reports/begin_document.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

using Sheets = std::vector<Sheet>;

Document on_paper(const Shop& shop, const Ledger& ledger, Sheets sheets) {
    const bool one = sheets.size() == 1;
    Document document =
        begin_document(shop, ledger, "sheets", one ? sheets.front().title : tr("Sheets to write on by hand"));
    document.larger = true;
    // What does not add up is for the desk.
    document.findings.clear();
    document.figures = {{"sheets", static_cast<double>(sheets.size())}};
    for (Sheet& sheet : sheets) {
        if (!one) document.blocks.push_back(Section{sheet.title, true});
        std::ranges::move(sheet.blocks, std::back_inserter(document.blocks));
    }
    return document;
}

void add_vats(Sheets& to, const Shop& shop, std::optional<Key<Method>> one) {
    const std::size_t before = to.size();
    for (const Method& method : shop.all<Method>())
        if (!one || method.key == *one) to.push_back(vat_sheet(shop, &method));
    if (to.size() == before) to.push_back(vat_sheet(shop, nullptr));
}

void add_garden(Sheets& to, const Shop& shop, const Ledger& ledger, std::optional<Key<Planting>> one) {
    const std::size_t before = to.size();
    for (const Planting& planting : shop.all<Planting>()) {
        const bool stands = planting.sown <= ledger.as_of && !ended_by(shop, planting, ledger.as_of);
        if (one ? planting.key == *one : stands) to.push_back(garden_card(shop, ledger, &planting));
    }
    if (to.size() == before) to.push_back(garden_card(shop, ledger, nullptr));
}

void add_fair(Sheets& to, const Shop& shop, const Ledger& ledger, std::optional<Key<Fair>> one) {
    if (!one) one = next_fair(shop, ledger.as_of);
    to.push_back(fair_sheet(shop, ledger, one ? shop.find(*one) : nullptr));
}

template <class Fact>
std::optional<Key<Fact>> by_code(const Shop& shop, const std::string& code) {
    const auto found = std::ranges::find(shop.all<Fact>(), code, &Fact::code);
    return found == shop.all<Fact>().end() ? std::nullopt : std::optional{found->key};
}

}  // namespace

Document vat_sheets(const Shop& shop, const Ledger& ledger, std::optional<Key<Method>> method) {
    Sheets sheets;
    add_vats(sheets, shop, method);
    return on_paper(shop, ledger, std::move(sheets));
}

Document garden_cards(const Shop& shop, const Ledger& ledger, std::optional<Key<Planting>> planting) {
    Sheets sheets;
    add_garden(sheets, shop, ledger, planting);
    return on_paper(shop, ledger, std::move(sheets));
}

Document count_sheets(const Shop& shop, const Ledger& ledger) {
    return on_paper(shop, ledger, {count_sheet(shop, ledger)});
}

Document fair_sheets(const Shop& shop, const Ledger& ledger, std::optional<Key<Fair>> fair) {
    Sheets sheets;
    add_fair(sheets, shop, ledger, fair);
    return on_paper(shop, ledger, std::move(sheets));
}

std::variant<Document, Trouble> sheets_report(const Shop& shop, const Ledger& ledger,
                                              const std::optional<std::string>& of) {
    if (!of) {
        Sheets sheets;
        add_vats(sheets, shop, std::nullopt);
        add_garden(sheets, shop, ledger, std::nullopt);
        sheets.push_back(count_sheet(shop, ledger));
        add_fair(sheets, shop, ledger, std::nullopt);
        return on_paper(shop, ledger, std::move(sheets));
    }
    if (*of == "vat") return vat_sheets(shop, ledger);
    if (*of == "garden") return garden_cards(shop, ledger);
    if (*of == "count") return count_sheets(shop, ledger);
    if (*of == "fair") return fair_sheets(shop, ledger);
    if (const auto method = by_code<Method>(shop, *of)) return vat_sheets(shop, ledger, method);
    if (const auto planting = by_code<Planting>(shop, *of)) return garden_cards(shop, ledger, planting);
    if (const auto fair = by_code<Fair>(shop, *of)) return fair_sheets(shop, ledger, fair);
    std::string choices = "vat, garden, count, fair";
    const auto add = [&](const auto& all) {
        for (const auto& each : all) choices += ", " + each.code;
    };
    add(shop.all<Method>());
    add(shop.all<Planting>());
    add(shop.all<Fair>());
    return Trouble{TroubleId::not_one_of, {{"value", *of}, {"choices", choices}}};
}

}  // namespace dyestead::reports
