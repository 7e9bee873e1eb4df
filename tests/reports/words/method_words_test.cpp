#include "reports/words/method_words.h"

#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "reports/words/finding_words.h"
#include "tests/support/shop_builder.h"

namespace dyestead::reports {
namespace {

using namespace dyestead::test;

TEST_CASE("a reading outside the band is told with what the method says") {
    ShopBuilder b;
    const auto vat = b.add<Vat>().key;
    b.at(vat).code = "vat-7";
    CHECK(outside_sentence(b.shop(), {Band::temperature, vat, 2, "steep", 82.5, 78, 82}) ==
          "vat-7, steep: 82.5 °C was read. Your method says 78 °C to 82 °C.");
    CHECK(outside_sentence(b.shop(), {Band::temperature, vat, 2, "cool", 60, std::nullopt, 50}) ==
          "vat-7, cool: 60 °C was read. Your method says no more than 50 °C.");
    CHECK(outside_sentence(b.shop(), {Band::acidity, vat, 3, "soda", 8, 9, 9}) ==
          "vat-7, soda: pH 8 was read. Your method says 9.");
    CHECK(outside_sentence(b.shop(), {Band::acidity, vat, 3, "soda", 8, 9, std::nullopt}) ==
          "vat-7, soda: pH 8 was read. Your method says 9 or more.");
    CHECK(outside_sentence(b.shop(), {Band::waiting, vat, 3, "settle", 260, 120, 180})
              .find(", settle: it stood 4 h 20 min. Your method says 2 h 00 min to 3 h 00 min.") != std::string::npos);
    CHECK(outside_sentence(b.shop(), {Band::yield, vat, 0, "", 0.6, 1, 4}) ==
          "vat-7 gave 0.6 g of powder from a kilogram of harvest. Your method says 1 g to 4 g.");
}

TEST_CASE("a vat that ends before it starts: its vat stays open, its powder has no cost, and the maker is told") {
    ShopBuilder b;
    const auto powder = b.made("powder", MaterialKind::pigment);
    const auto vat = b.add<Vat>().key;
    b.at(vat).code = "vat-7";
    b.at(vat).date = day_of(2026, 7, 5);
    b.at(vat).hands_on = minutes(30);
    const auto lot = b.lot(powder);
    auto& drying = b.add<Drying>();
    drying.code = "plate-1";
    drying.date = day_of(2026, 7, 3);
    drying.lot = lot;
    drying.amount = grams(4);
    b.add<DryingVat>(drying.key).vat = vat;
    b.person(day_of(2026, 1, 1), Money::units(12));
    const Ledger ledger = replay(b.shop(), day_of(2026, 7, 31));
    CHECK(ledger.balances[ledger.accounts.vats].hands_on == Minutes::whole(30));
    CHECK(ledger.lots[0].left == 4'000);
    CHECK(ledger.lots[0].cost.is_zero());
    const auto lines = finding_lines(b.shop(), ledger.findings);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].text ==
          "The vat vat-7 is dried on 3 July 2026, before it was begun (plate-1): check the two dates.");
    CHECK(lines[1].code == "drying-without-vat");
}

}  // namespace
}  // namespace dyestead::reports
