#!/usr/bin/python3
"""A shop of which nothing is on record yet: every report says in words what is missing and how to begin, and no figure
pretends to know."""

import json
import re
import unittest

from books_test import Books

ANSWERS = {
    "plants": "No vat is on record yet",
    "prices": "No bar has both a price and a cost on record yet",
    "reorder": "nothing to order",
    "sowing": "nothing to sow for",
    "earns-best": "Nothing can be said yet",
    "stock-value": "In stock £0.00",
    "cost-sheet": "No batch is on record yet",
    "margins": "No bar was sold",
    "calendar": "Nothing falls due",
    "labels": "nothing to label",
    "sheets": "Five answers are enough",
}
REFUSED = {
    ("verdict",): "no colour yet",
    ("can-make",): "No recipe makes a bar yet",
    ("can-make", "--bar", "x"): "No recipe makes a bar yet",
    ("fair-plan",): "No fair is on record yet",
    ("fair-result", "--fair", "x"): "No fair is on record yet",
    ("earns-best", "--of", "x"): "No material is on record yet",
    ("recall", "--of", "x"): "anything is on record",
}


class NoRecords(Books):
    def shop(self):
        folder = self.here / "nothing"
        folder.mkdir()
        (folder / "shop.csv").write_text("code,name,currency,shown_as_of,year_begins\nshop,New shed,GBP,2026-11-01,\n")
        path = self.here / "new.dyestead"
        self.done("import", folder, path)
        return path

    def test_what_can_be_answered_is_answered_in_words(self):
        shop = self.shop()
        for report, words in ANSWERS.items():
            text = self.done("report", report, shop)
            self.assertIn(words, " ".join(text.split()), report)
            self.assertNotRegex(text.lower(), r"\b(nan|inf)\b")
            for value in json.loads(self.done("report", report, shop, "--format", "json"))["figures"].values():
                self.assertTrue(value is None or abs(value) < 1e9)

    def test_what_cannot_says_how_to_begin(self):
        shop = self.shop()
        for asked, words in REFUSED.items():
            said = self.refused("report", asked[0], shop, *asked[1:])
            self.assertIn(words, said, asked)
            self.assertIsNone(re.search(r'""|: \.', said), said)

    def test_a_fair_that_is_past_has_to_be_named(self):
        folder = self.records()
        day = "2026-11-29"
        shop = self.here / "sample.dyestead"
        self.done("import", folder, shop)
        self.assertIn("name one with --fair", self.refused("report", "fair-plan", shop, "--as-of", day))


if __name__ == "__main__":
    unittest.main()
