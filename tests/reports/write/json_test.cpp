#include "reports/write/json.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <stdexcept>

#include "tests/reports/write/sample_document.h"

using namespace dyestead::reports;

TEST_CASE("the contract: keys, their order, nulls and unrounded numbers") {
    Document document = empty_document();
    document.figures = {{"b.second", 0.1}, {"a.first", 118.0}, {"c.none", std::nullopt}};
    document.blocks = {Headline{"Not in it."}, Table{.title = "T",
                                                     .columns = {{"what"}, {"GBP", Align::right}},
                                                     .rows = {{{"blue"}, {"0.33", 1.0 / 3}},
                                                              {{"pink"}, {.shown = "not tested", .no_value = true}},
                                                              {{"plain"}}},
                                                     .emphasise_last_row = false,
                                                     .note = "Not in it."}};
    document.findings = {{"code", "A \"sentence\".", "V-1"}};
    CHECK(write_json(document) == R"({
  "report": "hours",
  "as_of": "2026-01-31",
  "currency": "EUR",
  "title": "Hours",
  "figures": {
    "b.second": 0.1,
    "a.first": 118.0,
    "c.none": null
  },
  "tables": [
    {
      "title": "T",
      "columns": [
        "what",
        "GBP"
      ],
      "rows": [
        [
          "blue",
          0.3333333333333333
        ],
        [
          "pink",
          null
        ],
        [
          "plain",
          null
        ]
      ]
    }
  ],
  "findings": [
    {
      "code": "code",
      "text": "A \"sentence\".",
      "fact": "V-1"
    }
  ]
}
)");
}

TEST_CASE("an empty document has every key still") {
    CHECK(write_json(empty_document()) ==
          "{\n  \"report\": \"hours\",\n  \"as_of\": \"2026-01-31\",\n  \"currency\": \"EUR\",\n  \"title\": "
          "\"Hours\",\n  \"figures\": {},\n  \"tables\": [],\n  \"findings\": []\n}\n");
}

TEST_CASE("a number that is none is never written: it is our bug") {
    for (const double bad : {std::nan(""), std::numeric_limits<double>::infinity()}) {
        Document figure = empty_document();
        figure.figures = {{"x", bad}};
        CHECK_THROWS_AS(write_json(figure), std::logic_error);
        Document cell = empty_document();
        cell.blocks = {Table{.title = "T", .columns = {{"n"}}, .rows = {{{"?", bad}}}}};
        CHECK_THROWS_AS(write_json(cell), std::logic_error);
    }
}

TEST_CASE("a key that comes twice is our bug, never one lost in silence") {
    Document document = empty_document();
    document.figures = {{"x", 1.0}, {"x", 2.0}};
    CHECK_THROWS_AS(write_json(document), std::logic_error);
}

TEST_CASE("a stray byte does not cost the report") {
    Document document = empty_document();
    document.title =
        "a\xff"
        "b";
    CHECK(write_json(document).find("a\uFFFD"
                                    "b") != std::string::npos);
}
