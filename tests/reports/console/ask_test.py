#!/usr/bin/python3
"""Ten questions at the console: what a maker without one record is told, and what is kept of it."""

import json
import subprocess
import unittest

from books_test import BOOKS, Books

WELD = ["weld", "yellow", "15 h", "24", "4", "~2 h", "30 g", "6 g", "12", "a third", "9.50", "50 g", "5", "5.50", "6.50", "12"]


class Ask(Books):
    def ask(self, answers, *arguments, status=0):
        result = subprocess.run(
            [BOOKS, "ask", *map(str, arguments)], input="\n".join(answers) + "\n", text=True, capture_output=True,
            env=self.environment, cwd=self.here, timeout=60,
        )
        self.assertEqual(result.returncode, status, result.stderr)
        return result

    def test_a_first_answer_without_a_shop_keeps_nothing(self):
        answer = self.ask(WELD)
        self.assertTrue(answer.stdout.startswith("From memory"))
        self.assertIn("Buy the yellow in: growing it brought £38 more than buying", answer.stdout)
        self.assertEqual(self.names(), [])
        figures = json.loads(self.ask(WELD, "--format", "json").stdout)["figures"]
        self.assertAlmostEqual(figures["season.dye_hours"], 23)
        self.assertEqual(figures["extra_dye_hour.earned"], figures["breakeven.hourly_target"])
        for unknown in ("home.cash_margin_per_bar", "extra_dye_hour.hurdle", "breakeven.harvest_kg_per_vat"):
            self.assertIsNone(figures[unknown])

    def test_what_cannot_be_read_is_asked_again(self):
        answer = self.ask(WELD[:6] + ["lots", "30 l", ""] + WELD[6:])
        self.assertIn('"lots"', answer.stderr)
        self.assertIn("£38", answer.stdout)

    def test_the_answers_are_kept_in_a_shop_and_stand_there(self):
        shop = self.shop()
        self.ask(["alkanet", "purple"] + WELD[2:], shop)
        self.assertIn("From memory", self.done("report", "verdict", shop, "--colour", "purple"))
        self.done("export", shop, self.here / "out")
        self.assertEqual((self.here / "out" / "guess.csv").read_text().count("\n"), 16)
        # A second time: the newer answers count, under the same colour.
        self.ask(["alkanet", "Purple", "15 h", "24", "4", "~2 h", "60 g"] + WELD[7:], shop)
        figures = json.loads(self.done("report", "verdict", shop, "--colour", "purple", "--format", "json"))["figures"]
        self.assertAlmostEqual(figures["season.bars"], 120)

    def test_records_decide_where_there_are_some(self):
        shop = self.shop()
        before = shop.read_bytes()
        answer = self.ask(["weld", "Yellow"], shop, status=2)
        self.assertIn("records decide", answer.stderr)
        self.assertEqual(shop.read_bytes(), before)

    def test_answers_that_end_early_leave_nothing(self):
        shop = self.shop()
        before = shop.read_bytes()
        self.assertIn("ended", self.ask(["alkanet", "purple", "15 h"], shop, status=2).stderr)
        self.assertEqual(shop.read_bytes(), before)


if __name__ == "__main__":
    unittest.main()
