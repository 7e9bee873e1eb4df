#include "gui/models/note_form.h"

#include <doctest/doctest.h>

#include "gui/models/removal.h"
#include "gui/models/today/today_place.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

namespace {

struct Shed : test::Desk {
    FactRef delivery;
    FactRef line;
    Shed() : Desk{day_of(2026, 7, 4)} {
        const auto oil = builder.material("Olive oil", Purpose::oil);
        builder.delivery(day_of(2026, 5, 1), oil, test::grams(5'000), Money::units(40));
        open();
        delivery = ref(shop.all<Delivery>()[0]);
        line = ref(shop.all<DeliveryLine>()[0]);
    }
    Books books() { return {shop, ledger}; }
};

}  // namespace

TEST_CASE("a note needs words or the name of a file, and stands beside its record") {
    Shed desk;
    Form form = note_form(desk.writing(), desk.delivery);
    CHECK(form.text("date") == "4 July 2026");
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("text").trouble.empty());
    form.type("text", "The lid was loose.", desk.writing());
    CHECK(desk.keep(form).starts_with("Noted."));
    REQUIRE(desk.shop.all<Note>().size() == 1);
    CHECK(desk.shop.all<Note>()[0].about == AnyKey{"delivery", desk.delivery.key});
    CHECK(notes_told(desk.books(), desk.delivery) ==
          std::vector<std::string>{"Noted on 4 July 2026: The lid was loose."});

    Form bill = note_form(desk.writing(), desk.line);
    bill.type("file", "bills/may.pdf", desk.writing());
    REQUIRE_FALSE(desk.keep(bill).empty());
    // A note on a line is told with its head as well.
    CHECK(notes_told(desk.books(), desk.delivery).size() == 2);
    CHECK(notes_told(desk.books(), desk.line) == std::vector<std::string>{"File of 4 July 2026: bills/may.pdf"});
    CHECK(desk.ledger.findings.empty());
}

TEST_CASE("notes are listed on Today, corrected there, and go with what they hang on") {
    Shed desk;
    Form form = note_form(desk.writing(), desk.line);
    form.type("text", "two dents", desk.writing());
    REQUIRE_FALSE(desk.keep(form).empty());
    const auto place = today_place();
    const Listing list = place->listings(desk.books(), "dent").back();
    REQUIRE(list.rows.size() == 1);
    CHECK(list.table.rows[0][1].shown == "Olive oil");
    CHECK(place->listings(desk.books(), "scratch").back().rows.empty());
    auto corrected = place->correct(desk.writing(), list.rows[0]);
    REQUIRE(corrected);
    CHECK(corrected->text("text") == "two dents");
    corrected->type("text", "three dents", desk.writing());
    REQUIRE_FALSE(desk.keep(*corrected).empty());
    REQUIRE(desk.shop.all<Note>().size() == 1);
    CHECK(desk.shop.all<Note>()[0].text == "three dents");
    CHECK(desk.shop.all<Note>()[0].about == AnyKey{"delivery_line", desk.line.key});

    std::string why_not;
    const Shop before = desk.shop;
    const auto kept = delete_fact(desk.writing(), desk.delivery, why_not);
    REQUIRE(kept);
    desk.take(applied(desk.shop, kept->change));
    CHECK(desk.shop.all<Note>().empty());
    CHECK(desk.ledger.findings.empty());
    // The removal as one entry: its reverse brings record and note again.
    desk.take(applied(desk.shop, difference(desk.shop, before)));
    CHECK(same_shop(desk.shop, before));
}

TEST_CASE("a note on a record that is gone says so in the list, and among what does not add up") {
    Shed desk;
    Shop shop = desk.shop;
    Note note;
    note.key = {77};
    note.code = "note-77";
    note.date = desk.day;
    note.about = AnyKey{"vat", 12};
    note.text = "green";
    shop.all<Note>().push_back(note);
    desk.take(shop);
    CHECK(today_place()->listings(desk.books(), "").back().table.rows[0][1].shown == "a record that is gone");
    REQUIRE(desk.ledger.findings.size() == 1);
    CHECK(desk.ledger.findings[0].code == FindingCode::note_on_nothing);
}

}  // namespace dyestead::gui
