#!/usr/bin/python3
"""Workbooks, read with a library that is not ours (openpyxl): the same numbers as in the JSON, and numbers as numbers."""

import unittest
import json

import openpyxl
from books_test import Books


class Workbooks(Books):
    def workbook(self, report, *more):
        out = self.here / f"{report}.xlsx"
        self.done("report", report, self.shop(), "--format", "xlsx", "--out", out, *more)
        return openpyxl.load_workbook(out)

    def test_figures_are_those_of_the_json(self):
        book = self.workbook("verdict", "--colour", "blue")
        figures = json.loads(self.done("report", "verdict", self.shop(), "--colour", "blue", "--format", "json"))["figures"]
        found = {row[0].value: row[1].value for row in book["Figures"].iter_rows(max_col=2)}
        self.assertEqual(set(found), set(figures))
        for key, value in figures.items():
            if value is None:
                self.assertIsNone(found[key], key)
            else:
                self.assertAlmostEqual(found[key], value, 9, key)

    def test_the_answer_comes_first_and_each_table_has_its_sheet(self):
        book = self.workbook("prices")
        first = [cell.value for cell in book.worksheets[0]["A"] if cell.value]
        self.assertTrue(first[0].startswith("Prices on"))
        self.assertTrue(any("under your aim" in words for words in first))
        sheet = next(s for s in book.worksheets if s["A2"].value == "bar" and s["B2"].value == "today")
        self.assertTrue(all(isinstance(sheet.cell(row, 2).value, (int, float)) for row in range(3, 8)))
        self.assertEqual(sheet.cell(3, 2).number_format, "0.00")
        for name in book.sheetnames:
            self.assertLessEqual(len(name), 31)

    def test_the_same_question_gives_the_same_bytes(self):
        self.workbook("year")
        once = (self.here / "year.xlsx").read_bytes()
        self.workbook("year")
        self.assertEqual((self.here / "year.xlsx").read_bytes(), once)


if __name__ == "__main__":
    unittest.main()
