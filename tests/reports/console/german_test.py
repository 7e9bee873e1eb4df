#!/usr/bin/python3
"""Every report of the sample shop in German: no English sentence is left in it, and no figure is another than in English.

Environment: DYESTEAD_BOOKS, the program.
"""

import csv
import io
import json
import os
import re
import subprocess
import sys
import tempfile
import unittest
from html.parser import HTMLParser
from pathlib import Path

import openpyxl

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "support"))
from sentences import GERMAN, SAMPLE, English  # noqa: E402

BOOKS = os.environ["DYESTEAD_BOOKS"]

ENGLISH = {"LC_ALL": "C.UTF-8", "LANGUAGE": ""}

# What some reports cannot do without.
MORE = {"trace": ["--of", "sold"], "recall": ["--of", "olive-2026-2"]}


class Texts(HTMLParser):
    """The pieces of text of a page, one for each element."""

    SILENT = ("style", "script")

    def __init__(self):
        super().__init__()
        self.found, self.silent = [], False

    def handle_starttag(self, tag, attributes):
        self.silent = tag in self.SILENT

    def handle_endtag(self, tag):
        self.silent = False

    def handle_data(self, data):
        if not self.silent and data.strip():
            self.found.append(" ".join(data.split()))


def texts_of(page):
    reader = Texts()
    reader.feed(page)
    return reader.found


class German(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory(prefix="the books ä ")
        cls.shop = Path(cls.folder.name) / "shop.dyestead"
        cls.books(ENGLISH, "import", SAMPLE, cls.shop)
        said = cls.books(ENGLISH, "report", "--help")
        cls.reports = re.findall(r"^  ([a-z]+(?:-[a-z]+)*)  ", said[said.index("Reports:"):], re.MULTILINE)

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    @classmethod
    def books(cls, language, *arguments, binary=False):
        environment = {**os.environ, **language, "XDG_DATA_HOME": cls.folder.name}
        run = subprocess.run([BOOKS, *map(str, arguments)], capture_output=True, env=environment, timeout=300, check=False)
        assert run.returncode == 0, f"{arguments}: {run.stderr.decode()}"
        return run.stdout if binary else run.stdout.decode()

    def report(self, language, name, how, *more, binary=False):
        return self.books(language, "report", name, self.shop, "--format", how, *MORE.get(name, []), *more, binary=binary)

    def test_there_are_reports(self):
        self.assertGreater(len(self.reports), 12, self.reports)

    def test_no_english_is_left(self):
        english = English()
        left = [f"{name}: {text}" for name in self.reports for text in texts_of(self.report(GERMAN, name, "html"))
                if english.left_in(text)]
        self.assertEqual(left, [], "\n".join(left))

    def test_the_search_finds_english(self):
        english = English()
        left = [text for text in texts_of(self.report(ENGLISH, "prices", "html")) if english.left_in(text)]
        self.assertGreater(len(left), 20)

    def test_figures_are_the_same(self):
        for name in self.reports:
            english = json.loads(self.report(ENGLISH, name, "json"))
            german = json.loads(self.report(GERMAN, name, "json"))
            self.assertEqual(english["figures"], german["figures"], name)
            for key in ("report", "as_of", "currency"):
                self.assertEqual(english[key], german[key])
            self.assertEqual([(f["code"], f["fact"]) for f in english["findings"]],
                             [(f["code"], f["fact"]) for f in german["findings"]])
            for one, other in zip(english["tables"], german["tables"], strict=True):
                self.assertEqual([[cell if not isinstance(cell, str) else "" for cell in row] for row in one["rows"]],
                                 [[cell if not isinstance(cell, str) else "" for cell in row] for row in other["rows"]], name)
            self.same_numbers(name, self.report(ENGLISH, name, "csv"), self.report(GERMAN, name, "csv"))

    def same_numbers(self, name, english, german):
        """Cells of a CSV that are numbers; an amount in words ("37.2", of what is counted) follows the language."""
        rows = zip(csv.reader(io.StringIO(english)), csv.reader(io.StringIO(german)), strict=True)
        for one, other in rows:
            for cell, same in zip(one, other, strict=True):
                if re.fullmatch(r"-?[0-9]+(\.[0-9]+)?(e-?[0-9]+)?", cell):
                    self.assertIn(same, (cell, cell.replace(".", ",")), f"{name}: {one}")

    def test_a_workbook_keeps_its_numbers_and_their_places(self):
        def cells(language):
            book = openpyxl.load_workbook(io.BytesIO(self.report(language, "prices", "xlsx", binary=True)))
            return [(cell.coordinate, cell.value, cell.number_format) for sheet in book for row in sheet for cell in row
                    if isinstance(cell.value, (int, float))]

        self.assertEqual(cells(ENGLISH), cells(GERMAN))
        self.assertTrue(any(form == "0.00" for _, _, form in cells(GERMAN)))

    def test_a_page_says_its_language_and_writes_as_it_does(self):
        page = self.report(GERMAN, "stock-value", "html")
        self.assertIn('<html lang="de">', page)
        self.assertRegex(page, "[0-9],[0-9]{2}")
        self.assertIn("1. November 2026", page)

    def test_what_the_language_is_asked_by(self):
        for asks in ({"LC_ALL": "de_DE.UTF-8", "LANGUAGE": ""}, {"LC_ALL": "C.UTF-8", "LANGUAGE": "de"},
                     {"LC_ALL": "", "LC_MESSAGES": "de_AT.UTF-8", "LANG": "C.UTF-8", "LANGUAGE": ""},
                     {"LC_ALL": "", "LC_MESSAGES": "", "LANG": "", "LANGUAGE": "de_CH:de"}):
            self.assertIn("Die Bücher einer Seifenwerkstatt", self.books(asks, "--help"), asks)
        for asks in ({"LC_ALL": "C", "LANGUAGE": "de"}, {"LC_ALL": "fr_FR.UTF-8", "LANGUAGE": ""},
                     {"LC_ALL": "", "LC_MESSAGES": "", "LANG": "", "LANGUAGE": ""}):
            self.assertIn("The books of a soap workshop", self.books(asks, "--help"), asks)

    def test_records_go_out_alike(self):
        with tempfile.TemporaryDirectory() as one, tempfile.TemporaryDirectory() as other:
            self.books(ENGLISH, "export", self.shop, f"{one}/records")
            self.books(GERMAN, "export", self.shop, f"{other}/records")
            for file in Path(one, "records").glob("*.csv"):
                self.assertEqual(file.read_bytes(), Path(other, "records", file.name).read_bytes())

    def test_answers_are_understood_in_german(self):
        answers = "Reseda\nGelb\n12 Stunden\n6,50\n6\n90 min\n20 g\n2 g\n12\nein Drittel\n6,50\n5 g\n5,50\n6,00\n6,50\n12\n"
        environment = {**os.environ, **GERMAN}
        run = subprocess.run([BOOKS, "ask"], input=answers.encode(), capture_output=True, env=environment, timeout=60, check=False)
        self.assertEqual(run.returncode, 0, run.stderr.decode())
        self.assertIn("Gelb", run.stdout.decode())


if __name__ == "__main__":
    unittest.main()
