#include "gui/models/form/field_values.h"

#include <doctest/doctest.h>

#include "tests/reports/words/in_german.h"

namespace dyestead::gui {

namespace {

Amount kilograms(std::int64_t milligrams) {
    return {Quantity{Kind::mass, milligrams}, Unit::kg, Mark::measured};
}

// What stands in a field is what is read from it.
bool comes_back(const Amount& amount) {
    const auto read = read_typed_field<Amount>(field_text(amount), {});
    return read && *read == amount;
}

}  // namespace

TEST_CASE("a field shows a number in the reader's marks, and reads it back") {
    CHECK(field_text(kilograms(1'500'000)) == "1.5 kg");
    CHECK(field_text(kilograms(1'234'000)) == "1.234 kg");
    CHECK(comes_back(kilograms(1'234'000)));
    const test::InGerman speak;
    CHECK(field_text(kilograms(1'500'000)) == "1,5 kg");
    CHECK(field_text(kilograms(125'000)) == "0,125 kg");
    CHECK(money_text(Money::millionths(34'900'000)) == "34,90");
    CHECK(field_text(day_of(2026, 7, 3)) == "3. Juli 2026");
    CHECK(*read_typed_field<Day>("3. Juli 2026", {.writing_for = day_of(2026, 7, 1)}) == day_of(2026, 7, 3));
    // Three places behind a comma could be thousands, so a nought is put behind them.
    CHECK(field_text(kilograms(1'234'000)) == "1,2340 kg");
    for (const std::int64_t milligrams : {1, 999, 1'234'000, 12'345'678, 125'000, 1'000'000'000})
        CHECK(comes_back(kilograms(milligrams)));
}

TEST_CASE("a point that would part thousands in the reader's language is asked about, not guessed") {
    CHECK(read_typed_field<Amount>("1.500 kg", {}));
    const test::InGerman speak;
    CHECK(*read_typed_field<Amount>("1.500 kg", {}).trouble == TroubleId::which_decimal_mark);
    CHECK(*read_typed_field<Money>("2.400", {}).trouble == TroubleId::which_decimal_mark);
    CHECK(read_typed_field<Amount>("1.5 kg", {}));
    CHECK(read_typed_field<Amount>("0.918 kg", {}));
    CHECK(*read_typed_field<Amount>("1,5 kg", {}) == kilograms(1'500'000));
}

}  // namespace dyestead::gui
