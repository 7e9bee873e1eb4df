#include "reports/write/text.h"

#include <doctest/doctest.h>

#include <sstream>

#include "reports/write/text_wrap.h"
#include "tests/reports/write/sample_document.h"

using namespace dyestead::reports;

TEST_CASE("the verdict as text, whole") {
    CHECK(write_text(sample_document()) ==
          R"(Is growing the blue worth the hours?
====================================
As of 4 July 2026; amounts in GBP.

  Buy the blue in: growing it took 18 hours and left you £15 worse off than
  buying it.

Each bar: with your own blue it leaves 1.06 after your time, with bought-in blue
2.69.

Your hour: each extra hour at bed and vat cost you 0.83; an hour of plain soap
brings 9.40.

What would turn it: people giving 0.83 more for your own blue than for bought-in
blue.

Stands on 8 vats and 2 summers; six hours in ten from memory; strength from one
test bar. A sum from your records, not advice to stop or start a trade.

A bar with our own blue costs 4.44 with our time, one with bought-in blue 2.81,
a plain one 2.77; the blue sells at 5.50, the plain at 5.00.

Side by side: one bar at the same blue
GBP a bar                      our own  bought in  plain
----------------------------  --------  ---------  -----
price on the shelf                5.50       5.50   5.00
out of pocket                     1.64       1.54   1.50
our time                          2.80       1.27   1.27
left over before our time         3.86       3.96   3.50
strength, against the bought      0.53          1
sold of taken                 14 of 18  not known   none
----------------------------  --------  ---------  -----
left over after our time          1.06       2.69   2.23
Fees taken off; general running costs are the same for all three.

What would help most
--------------------

One large vat instead of five would save 4 hours; rain water instead of bottled
£75.

! Caution
! Colour may not be allowed where you sell: ask the safety assessor before
! sowing. Home powder differs from vat to vat, and plants and pigments can
! sensitise skin.

Does not add up
---------------
- 6 batches used shea butter before any is on record.
- The clock of the vat of 3 July is still running since 09:10.
)");
}

TEST_CASE("no line of text passes 80 columns, whatever the words") {
    Document document = sample_document();
    document.title = std::string(200, 'T');
    document.blocks.push_back(Paragraph{std::string(300, 'w') + " and more", Tone::caution});
    document.blocks.push_back(
        Table{.title = "wide",
              .columns = {{"first"}, {std::string(120, 'h')}, {"n", Align::right}},
              .rows = {{{std::string(90, 'x')}, {"a few words here"}, {"1.00", 1.0}}, {{"short row"}}}});
    document.findings.push_back({"x", std::string(170, 'f')});
    std::istringstream lines{write_text(document)};
    int widest = 0;
    for (std::string line; std::getline(lines, line);) widest = std::max(widest, text_width(line));
    CHECK(widest == 80);
}

TEST_CASE("findings stand one by one under their heading, and the heading only with them") {
    const std::string text = write_text(sample_document());
    CHECK(text.find("Does not add up\n---------------\n- 6 batches used shea butter before any is on record.\n- The "
                    "clock of the vat") != std::string::npos);
    CHECK(write_text(empty_document()).find("Does not add up") == std::string::npos);
}

TEST_CASE("a caution is marked on every line") {
    Document document = empty_document();
    document.blocks.push_back(Paragraph{"Lye into water.", Tone::caution});
    CHECK(write_text(document) ==
          "Hours\n=====\nAs of 31 January 2026; amounts in EUR.\n\n! Caution\n! Lye into water.\n");
}

TEST_CASE("columns line up where letters carry marks") {
    Document document = empty_document();
    document.blocks.push_back(Table{.title = "",
                                    .columns = {{"what"}, {"g", Align::right}},
                                    .rows = {{{"Tōkyō"}, {"5"}}, {{"To\u0304kyo\u0304"}, {"12"}}}});
    CHECK(write_text(document).ends_with("what    g\n-----  --\nTōkyō   5\nTo\u0304kyo\u0304  12\n"));
}
