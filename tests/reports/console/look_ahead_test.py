#!/usr/bin/python3
"""The verdict looking ahead, from the console: an offer moves it, a delivery does not; and how sure it is."""

import csv
import json
import unittest

from books_test import Books


class LookingAhead(Books):
    def verdict(self, *more, shop=None):
        text = self.done("report", "verdict", shop or self.shop(), "--colour", "blue", "--format", "json", *more)
        return json.loads(text)

    def test_each_stand_has_its_question_and_spends_less(self):
        titles = set()
        spent = []
        for stand in ("before-sowing", "leaf-standing", "pigment-dry"):
            answer = self.verdict("--basis", "replacement", "--stand", stand)
            titles.add(answer["title"])
            spent.append(answer["figures"]["home.full_cost_per_bar"])
        self.assertEqual(len(titles), 3)
        self.assertEqual(spent, sorted(spent, reverse=True))
        self.assertIsNone(answer["figures"]["extra_dye_hour.earned"])
        self.assertEqual(self.verdict("--basis", "replacement")["figures"],
                         self.verdict("--basis", "replacement", "--stand", "before-sowing")["figures"])

    def test_a_supplier_s_new_price_moves_the_look_ahead_only(self):
        folder = self.records()
        with open(folder / "colour.csv", newline="") as file:
            match = next(row["bought_match"] for row in csv.DictReader(file) if row["code"] == "blue")
        with open(folder / "offer.csv", newline="") as file:
            rows = list(csv.DictReader(file))
        mine = [row for row in rows if row["material"] == match]
        self.assertTrue(mine, "the sample has an offer for the bought blue")
        newest = max(mine, key=lambda row: row["from"])
        newest["price"] = str(float(newest["price"]) * 3)
        with open(folder / "offer.csv", "w", newline="") as file:
            writer = csv.DictWriter(file, rows[0].keys(), lineterminator="\n")
            writer.writeheader()
            writer.writerows(rows)
        dearer = self.here / "dearer.dyestead"
        self.done("import", folder, dearer)
        gap = "extra_dye_hour.earned"
        self.assertEqual(self.verdict(shop=dearer)["figures"][gap], self.verdict()["figures"][gap])
        self.assertGreater(self.verdict("--basis", "replacement", shop=dearer)["figures"][gap],
                           self.verdict("--basis", "replacement")["figures"][gap])

    def test_a_stand_without_looking_ahead_is_refused(self):
        self.assertIn("--basis", self.refused("report", "verdict", self.shop(), "--stand", "leaf-standing"))
        self.assertIn("booked", self.refused("report", "verdict", self.shop(), "--basis", "guessed"))
        self.assertIn("pigment-dry", self.refused("report", "verdict", self.shop(), "--basis", "replacement", "--stand", "x"))

    def test_chances_are_chances(self):
        figures = self.verdict()["figures"]
        chances = [value for key, value in figures.items() if key.startswith("chance.")]
        self.assertEqual(len(chances), 4)
        for chance in chances:
            self.assertGreaterEqual(chance, 0)
            self.assertLessEqual(chance, 1)
        self.assertLess(figures["doubt.home_full_margin_per_bar_p10"], figures["doubt.home_full_margin_per_bar_p90"])
        self.assertEqual(figures, self.verdict()["figures"])


if __name__ == "__main__":
    unittest.main()
