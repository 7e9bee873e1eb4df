#!/usr/bin/python3
"""What goes on paper and into a calendar, from the sample shop: sheets, labels, days, the cost of a batch and the margins
of bars; each read back with a program that is not ours, or held against a figure another report gives."""

import datetime
import json
import re
import shutil
import subprocess
import unittest

import icalendar

from books_test import Books

SHEETS = ["vat", "garden", "count", "fair"]


class Paper(Books):
    def figures(self, report, *more):
        return json.loads(self.done("report", report, self.shop(), "--format", "json", *more))["figures"]

    def tables(self, report, *more):
        return json.loads(self.done("report", report, self.shop(), "--format", "json", *more))["tables"]

    def pdf_text(self, report, *more):
        if shutil.which("pdftotext") is None:
            self.skipTest("poppler-utils is not installed")
        path = self.here / "page.pdf"
        self.done("report", report, self.shop(), "--format", "pdf", "--out", path, *more)
        said = subprocess.run(["pdftotext", "-layout", path, "-"], capture_output=True, check=True).stdout.decode()
        return said.split("\f")[:-1]

    def calendar(self):
        path = self.here / "days.ics"
        self.done("report", "calendar", self.shop(), "--format", "ics", "--out", path)
        return path.read_bytes()

    def test_every_sheet_in_every_format(self):
        for sheet in SHEETS:
            for form in ["text", "html", "csv", "xlsx", "json", "pdf"]:
                path = self.here / f"{sheet}.{form}"
                self.done("report", "sheets", self.shop(), "--of", sheet, "--format", form, "--out", path)
                self.assertGreater(path.stat().st_size, 300, f"{sheet} {form}")

    def test_no_page_of_the_sheets_is_empty_and_each_sheet_begins_one(self):
        pages = self.pdf_text("sheets")
        for page in pages:
            self.assertGreater(len(page.split()), 8, page)
        begun = [name for name in ("Vat sheet: Warm leaf vat", "Garden card: Madder", "Count sheet", "Fair sheet")
                 if any(line.startswith(name) for page in pages for line in page.strip().splitlines()[:4])]
        self.assertEqual(len(begun), 4, begun)

    def test_the_fair_sheet_suggests_what_the_plan_says(self):
        plan = self.figures("fair-plan") if "next" in self.done("report", "fair-plan", self.shop()) else None
        text = " ".join(self.done("report", "sheets", self.shop(), "--of", "fair").split())
        if plan is not None:
            self.assertIn(f"{plan['take']:.0f} bars are suggested", text)
        self.assertIn("Count back", text)

    def test_another_library_reads_the_same_days(self):
        read = icalendar.Calendar.from_ical(self.calendar())
        self.assertEqual(str(read["version"]), "2.0")
        events = {str(event["uid"]): event for event in read.walk("VEVENT")}
        rows = self.tables("calendar")[0]["rows"]
        self.assertEqual(len(events), len(rows))
        self.assertEqual(len(events), len(list(read.walk("VEVENT"))), "two events have one name")
        shown = sorted((e["dtstart"].dt, str(e["summary"])) for e in events.values())
        months = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split()

        def day(words):
            d, m, y = words.split()
            return datetime.date(int(y), months.index(m) + 1, int(d))

        self.assertEqual(shown, sorted((day(row[0]), row[2]) for row in rows))
        for event in events.values():
            self.assertNotIsInstance(event["dtstart"].dt, datetime.datetime)  # a whole day
            self.assertEqual(event["dtstamp"].dt.date(), datetime.date(2026, 11, 1))
        kinds = {row[1] for row in rows}
        self.assertLessEqual({"out of cure", "order", "batch planned", "sowing", "frost"}, kinds)

    def test_a_calendar_keeps_to_its_lines(self):
        written = self.calendar()
        self.assertEqual(written, self.calendar())
        for line in written.split(b"\r\n"):
            self.assertLessEqual(len(line), 75)  # RFC 5545, 3.1
            self.assertNotIn(b"\n", line)

    def test_what_has_no_days_goes_into_no_calendar(self):
        said = self.refused("report", "hours", self.shop(), "--format", "ics")
        self.assertIn("ics", said)
        self.assertIn("pdf", said)

    def test_margins_add_up_to_what_the_year_earned(self):
        for day in ([], ["--from", "2024-01-01"]):
            margins = self.figures("margins", *day)
            year = self.figures("year", *day)
            self.assertEqual(margins["all.taken"], year["takings.net"])
            self.assertEqual(margins["all.bars"], year["bars_sold"])
            self.assertEqual(margins["all.made.cash_cost"], year["cost_of_sales.cash_cost"])
            self.assertEqual(margins["all.made.full_cost"], year["cost_of_sales.full_cost"])
            kinds = {key.split(".")[1] for key in margins if key.startswith("bar.")}
            self.assertGreater(len(kinds), 5)
            self.assertAlmostEqual(sum(margins[f"bar.{kind}.bars"] for kind in kinds), margins["all.bars"], 6)

    def test_a_cost_sheet_ties_to_the_books(self):
        sheet = self.figures("cost-sheet", "--of", "batch-2024-03")
        parts = [value for key, value in sheet.items()
                 if key.endswith("_per_bar") and "cost" not in key and "minutes" not in key]
        costs = sum(v for k, v in sheet.items() if k.endswith("_per_bar") and "minutes" not in k
                    and k not in ("cash_cost_per_bar", "full_cost_per_bar"))
        self.assertGreater(len(parts), 5)
        self.assertAlmostEqual(costs, sheet["full_cost_per_bar"], 6)
        self.assertAlmostEqual(sheet["full_cost"], sheet["bars"] * sheet["full_cost_per_bar"], 6)
        # The leaves of the lot's trace, where all of its bars are still here.
        here = [row for row in self.tables("labels")[0]["rows"] if row[1] in ("in cure", "ready")]
        codes = {row[3]: row for row in here}
        stock = {row[1]: row for table in self.tables("stock-value") for row in table["rows"] if len(row) > 2}
        checked = 0
        for batch, label in codes.items():
            sheet = self.figures("cost-sheet", "--of", batch)
            if sheet["bars"] != label[8] or label[4] not in stock:
                continue
            self.assertIn(round(sheet["cash_cost"], 6), [round(v, 6) for v in stock[label[4]] if isinstance(v, float)])
            checked += 1
        self.assertGreater(checked, 0, "no lot of which every bar is here")

    def test_a_batch_nobody_poured(self):
        self.assertIn("batch-2024-01", self.refused("report", "cost-sheet", self.shop(), "--of", "batch-0"))

    def test_labels_say_what_is_on_record_and_whose_rules_count(self):
        text = " ".join(self.done("report", "labels", self.shop()).replace("!", " ").split())
        self.assertIn("differs from place to place", text)
        self.assertRegex(text, r"weight: 95 g")
        self.assertRegex(text, r"ready from: \d+ \w+ 20\d\d")
        self.assertRegex(text, r"what went in, heaviest first: Olive oil")
        pages = self.pdf_text("labels")
        one = re.findall(r"lot: (bars-[\d-]+)", " ".join(pages))
        self.assertEqual(len(one), self.figures("labels")["labels"])
        only = self.figures("labels", "--of", one[0])
        self.assertEqual(only["labels"], 1)


if __name__ == "__main__":
    unittest.main()
