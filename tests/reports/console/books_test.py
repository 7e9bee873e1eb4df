#!/usr/bin/python3
"""The console program from outside: what it says, what the shell sees, and that nothing is left half-written.

Environment: DYESTEAD_BOOKS, the program; DYESTEAD_SOURCE_DIR, the checkout (found from this file without it).
"""

import fcntl
import json
import os
import shutil
import subprocess
import tempfile
import unittest
from pathlib import Path

BOOKS = os.environ["DYESTEAD_BOOKS"]
ROOT = Path(os.environ.get("DYESTEAD_SOURCE_DIR", Path(__file__).resolve().parents[3]))
SAMPLE = ROOT / "sample-shop" / "shop"

PER_BAR = (
    "shelf_price_per_bar price_per_bar fees_per_bar materials_per_bar labour_per_bar energy_per_bar overhead_per_bar "
    "cash_cost_per_bar full_cost_per_bar cash_margin_per_bar full_margin_per_bar hands_on_minutes_per_bar "
    "earnings_per_hour selling_cost_per_bar selling_minutes_per_bar earnings_per_hour_with_selling"
).split()
KEYS = [f"{who}.{key}" for who in ("home", "bought", "plain") for key in PER_BAR] + (
    "pigment.full_cost_per_gram pigment.cash_cost_per_gram pigment.hands_on_minutes_per_gram pigment.strength "
    "pigment.yield_g_per_kg pigment.harvest_kg_per_vat pigment.hands_on_minutes_per_vat "
    "season.dye_hours season.bars season.cash_difference season.full_difference hourly_target "
    "extra_dye_hour.earned extra_dye_hour.hurdle extra_dye_hour.soap_hour "
    "breakeven.premium_per_bar breakeven.hourly_target breakeven.pigment_g_per_kg_harvest "
    "breakeven.harvest_kg_per_vat breakeven.hands_on_minutes_per_vat breakeven.bought_price_per_gram "
    "breakeven.premium_per_bar_cash breakeven.pigment_g_per_kg_harvest_cash breakeven.harvest_kg_per_vat_cash "
    "breakeven.bought_price_per_gram_cash "
    "chance.home_beats_bought chance.home_beats_plain chance.home_beats_bought_cash chance.home_beats_plain_cash "
    "doubt.home_cash_margin_per_bar_p10 doubt.home_cash_margin_per_bar_p50 doubt.home_cash_margin_per_bar_p90 "
    "doubt.home_full_margin_per_bar_p10 doubt.home_full_margin_per_bar_p50 doubt.home_full_margin_per_bar_p90 "
    "doubt.extra_dye_hour_earned_p10 doubt.extra_dye_hour_earned_p50 doubt.extra_dye_hour_earned_p90 "
    "powder.price_per_gram powder.left_per_gram powder.left_per_dye_hour powder.soap_left_per_gram "
    "powder.soap_left_per_dye_hour powder.even_price_per_gram"
).split()


class Books(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory(prefix="the books ä ")
        self.addCleanup(self.folder.cleanup)
        self.here = Path(self.folder.name)
        # Backups lie in the user's data; a test keeps its own.
        self.environment = {**os.environ, "XDG_DATA_HOME": str(self.here / "data")}

    def books(self, *arguments):
        return subprocess.run(
            [BOOKS, *map(str, arguments)], capture_output=True, env=self.environment, cwd=self.here, timeout=120
        )

    def done(self, *arguments):
        result = self.books(*arguments)
        self.assertEqual(result.returncode, 0, result.stderr.decode())
        self.assertEqual(result.stderr, b"")
        return result.stdout.decode()

    def refused(self, *arguments, status=2):
        result = self.books(*arguments)
        said = result.stderr.decode()
        self.assertEqual(result.returncode, status, said)
        self.assertTrue(said.endswith("\n") and said.strip(), "something went wrong and nothing was said")
        self.assertNotRegex(said, "[{}]")
        return said

    def records(self):
        copy = self.here / "records"
        shutil.copytree(SAMPLE, copy)
        return copy

    def shop(self):
        path = self.here / "shop.dyestead"
        if not path.exists():
            self.done("import", SAMPLE, path)
        return path

    def names(self):
        return sorted(str(p.relative_to(self.here)) for p in self.here.rglob("*") if "data" not in p.parts)


class BadRecords(Books):
    """One thing wrong in a folder of records: one line that says what and where, and no shop file."""

    def refuse(self, change, *words):
        records = self.records()
        change(records)
        before = self.names()
        said = self.refused("import", records, self.here / "shop.dyestead")
        self.assertEqual(said.count("\n"), 1, said)
        for word in words:
            self.assertIn(word, said)
        self.assertEqual(self.names(), before)

    def cell(self, file, column, value, row=0):
        """Puts a value into a cell of a file without quotes in that row; gives its line, counted from 1."""

        def change(records):
            path = records / file
            lines = path.read_text(encoding="utf-8").split("\n")
            at = lines[0].split(",").index(column)
            cells = lines[row + 1].split(",")
            self.assertEqual(len(cells), len(lines[0].split(",")), "choose a row without commas in its cells")
            cells[at] = value
            lines[row + 1] = ",".join(cells)
            path.write_text("\n".join(lines), encoding="utf-8")

        return change

    def test_a_unit_nobody_knows(self):
        self.refuse(self.cell("loss.csv", "amount", "3 flurbs", 1), "loss.csv, line 3, column amount", '"3 flurbs"')

    def test_a_day_that_does_not_exist(self):
        self.refuse(self.cell("vat.csv", "date", "2025-02-30"), "vat.csv, line 2, column date", '"2025-02-30"')

    def test_a_weight_below_zero(self):
        self.refuse(self.cell("loss.csv", "amount", "-3 g", 3), "loss.csv, line 5, column amount", '"-3 g"', "minus")

    def test_a_unit_of_the_wrong_kind(self):
        self.refuse(self.cell("bed.csv", "area", "3 kg"), "bed.csv, line 2, column area", '"3 kg"')

    def test_a_reference_to_nothing(self):
        self.refuse(self.cell("vat.csv", "colour", "mauve"), "vat.csv, line 2, column colour", '"mauve"', "colour.csv")

    def test_a_number_that_is_none(self):
        self.refuse(self.cell("delivery_line.csv", "price", "3;3"), "delivery_line.csv, line 2", "price")

    def test_a_column_nobody_knows(self):
        def change(records):
            path = records / "vat.csv"
            path.write_text(path.read_text(encoding="utf-8").replace("date", "dat", 1), encoding="utf-8")

        records = self.records()
        change(records)
        said = self.refused("import", records, self.here / "shop.dyestead")
        self.assertIn("vat.csv, line 1", said)
        self.assertIn('"dat"', said)
        self.assertFalse((self.here / "shop.dyestead").exists())

    def test_a_lot_that_nobody_made(self):
        def change(records):
            with (records / "lot.csv").open("a", encoding="utf-8") as file:
                file.write("zz-from-nowhere,olive-oil\n")

        self.refuse(change, "lot.csv, line ", '"zz-from-nowhere"')

    def test_a_file_of_no_bytes(self):
        records = self.records()
        (records / "price_belief.csv").write_bytes(b"")
        said = self.refused("import", records, self.here / "shop.dyestead")
        self.assertIn("price_belief.csv: the file is empty", said)
        self.assertFalse((self.here / "shop.dyestead").exists())

    def test_a_file_nobody_knows(self):
        self.refuse(lambda records: (records / "sheep.csv").write_text("code\n"), "sheep.csv")

    def test_no_such_folder(self):
        said = self.refused("import", self.here / "nowhere", self.here / "shop.dyestead")
        self.assertIn("nowhere", said)

    def test_what_spreadsheets_write_is_read(self):
        records = self.records()
        for path in records.glob("*.csv"):
            unix = path.read_bytes().replace(b"\r\n", b"\n")
            path.write_bytes(b"\xef\xbb\xbf" + (unix if path.name < "m" else unix.replace(b"\n", b"\r\n")))
        self.assertIn(b'"Natural indigo powder, bought"', (records / "material.csv").read_bytes())
        self.done("import", records, self.here / "both.dyestead")
        self.assertEqual(
            self.done("report", "verdict", self.here / "both.dyestead", "--format", "json"),
            self.done("report", "verdict", self.shop(), "--format", "json"),
        )


class RoundTrip(Books):
    def test_out_and_in_again_is_the_same_to_the_byte(self):
        self.done("export", self.shop(), self.here / "out")
        for path in SAMPLE.glob("*.csv"):
            self.assertEqual((self.here / "out" / path.name).read_bytes(), path.read_bytes(), path.name)

    def test_an_existing_shop_is_replaced_only_when_told(self):
        shop = self.shop()
        before = shop.read_bytes()
        self.assertIn("already there", self.refused("import", SAMPLE, shop))
        self.assertEqual(shop.read_bytes(), before)
        self.done("import", SAMPLE, shop, "--replace")

    def test_a_shop_that_is_open_in_a_window_is_not_written_to(self):
        shop = self.shop()
        before = shop.read_bytes()
        claim = shop.parent / f".{shop.name}.claim"
        with claim.open("w", encoding="utf-8") as held:
            fcntl.flock(held, fcntl.LOCK_EX)  # as a window does
            said = self.refused("import", SAMPLE, shop, "--replace")
            self.assertIn("Another window has", said)
            self.assertIn("close it there", said)
            self.assertIn("close it there", self.refused("ask", shop))
            self.assertEqual(shop.read_bytes(), before)
            self.assertIn("Stock", self.done("report", "stock-value", shop))  # to be read it may be open anywhere
        self.done("import", SAMPLE, shop, "--replace")  # the window is gone, however it ended
        self.assertFalse(claim.exists())

    def test_a_bad_folder_does_not_replace_a_good_shop(self):
        shop = self.shop()
        before = shop.read_bytes()
        records = self.records()
        (records / "vat.csv").write_text("code,date,colour,note\nv1,never,blue,\n", encoding="utf-8")
        self.refused("import", records, shop, "--replace")
        self.assertEqual(shop.read_bytes(), before)


class Check(Books):
    def test_a_good_shop(self):
        self.assertIn("seals match", self.done("check", self.shop()))

    def test_findings_are_counted_and_no_failure(self):
        records = self.records()
        with (records / "loss.csv").open("a", encoding="utf-8") as file:
            file.write("zz-spilled,2026-10-01,shea-butter,,900 kg,spilled,\n")
        self.done("import", records, self.here / "odd.dyestead")
        said = self.done("check", self.here / "odd.dyestead")
        self.assertRegex(said, "(One thing does|[0-9]+ things do) not add up:")
        self.assertIn("more Shea butter was used than there was", said)

    def test_a_changed_byte(self):
        shop = self.shop()
        data = bytearray(shop.read_bytes())
        at = data.find(b"shopLarkmoor") + 6  # in the row itself, not in the log of changes
        self.assertGreater(at, 6)
        data[at] ^= 1
        shop.write_bytes(data)
        self.assertIn("damaged", self.refused("check", shop, status=1))
        self.refused("report", "verdict", shop)

    def test_what_is_no_shop_file(self):
        self.assertIn("no file", self.refused("check", self.here / "nothing.dyestead"))
        (self.here / "text.dyestead").write_text("This is a letter to the oil merchant. " * 40)
        self.assertIn("not a shop file", self.refused("check", self.here / "text.dyestead"))


class Report(Books):
    def verdict(self, shop, *more):
        return json.loads(self.done("report", "verdict", shop, "--format", "json", *more))

    def test_json_has_every_key_of_the_contract(self):
        verdict = self.verdict(self.shop())
        self.assertEqual(list(verdict)[:5], ["report", "as_of", "currency", "title", "figures"])
        self.assertEqual(verdict["report"], "verdict")
        self.assertEqual(verdict["as_of"], "2026-11-01")
        self.assertEqual(verdict["currency"], "GBP")
        self.assertEqual(list(verdict["figures"]), KEYS)
        self.assertEqual(verdict["figures"]["extra_dye_hour.earned"], verdict["figures"]["breakeven.hourly_target"])

    def test_the_margins_follow_from_their_parts(self):
        figures = self.verdict(self.shop())["figures"]
        for who in ("home", "bought", "plain"):
            cost = sum(figures[f"{who}.{part}_per_bar"] for part in ("materials", "energy", "overhead"))
            self.assertAlmostEqual(figures[f"{who}.cash_cost_per_bar"], cost)
            left = figures[f"{who}.price_per_bar"] - figures[f"{who}.fees_per_bar"] - cost
            self.assertAlmostEqual(figures[f"{who}.cash_margin_per_bar"], left)
            self.assertAlmostEqual(
                figures[f"{who}.full_margin_per_bar"], left - figures[f"{who}.labour_per_bar"]
            )

    def test_a_changed_delivery_price_moves_the_verdict(self):
        records = self.records()
        path = records / "delivery_line.csv"
        lines = path.read_text(encoding="utf-8").split("\n")
        changed = 0
        for at, line in enumerate(lines):
            cells = line.split(",")
            if len(cells) == 8 and cells[2].startswith("bought-indigo"):
                cells[4] = "99"
                lines[at] = ",".join(cells)
                changed += 1
        self.assertGreater(changed, 0)
        path.write_text("\n".join(lines), encoding="utf-8")
        self.done("import", records, self.here / "dear.dyestead")
        before = self.verdict(self.shop(), "--colour", "blue")["figures"]
        after = self.verdict(self.here / "dear.dyestead", "--colour", "blue")["figures"]
        self.assertGreater(after["bought.materials_per_bar"], before["bought.materials_per_bar"])
        self.assertGreater(after["extra_dye_hour.earned"], before["extra_dye_hour.earned"])
        self.assertEqual(after["home.materials_per_bar"], before["home.materials_per_bar"])

    def test_a_report_looks_no_further_than_its_day(self):
        early = self.verdict(self.shop(), "--as-of", "2025-06-30")
        self.assertEqual(early["as_of"], "2025-06-30")
        self.assertNotEqual(early["figures"], self.verdict(self.shop())["figures"])

    def test_every_format_of_every_report(self):
        starts = {"text": b"", "html": b"<!DOCTYPE html>", "pdf": b"%PDF-", "csv": b"report,", "json": b"{", "xlsx": b"pk"}
        for report in (
            "verdict", "stock-value", "year", "hours", "money", "losses", "trace", "prices", "plants", "reorder", "sowing",
            "earns-best", "recall",
        ):
            more = {"trace": ("--of", "sold"), "recall": ("--of", "L7749")}.get(report, ())
            for name, start in starts.items():
                out = self.here / f"{report}.{name}"
                self.assertEqual(self.done("report", report, self.shop(), "--format", name, "--out", out, *more), "")
                self.assertTrue(out.read_bytes().lower().startswith(start.lower()), (report, name))
                self.assertGreater(out.stat().st_size, 200)

    def test_the_text_answers_first(self):
        text = self.done("report", "verdict", self.shop(), "--colour", "blue")
        self.assertIn("Each bar:", text)
        self.assertIn("Your hours:", text)
        self.assertIn("not advice", text)
        self.assertNotIn("nan", text)
        self.assertNotRegex(text, "[{}]")

    def test_stock_ties_to_its_lines(self):
        stock = json.loads(self.done("report", "stock-value", self.shop(), "--format", "json"))
        self.assertIn("without your own hours", stock["title"])
        figures = stock["figures"]
        kinds = ("raw", "seed", "harvest", "pigment", "bar", "bar_out")
        self.assertAlmostEqual(figures["stock.cash_cost"], sum(figures[f"stock.{kind}.cash_cost"] for kind in kinds))
        self.assertAlmostEqual(
            figures["total.full_cost"], figures["stock.full_cost"] + figures["in_progress.full_cost"]
        )

    def figures(self, report, *more):
        return json.loads(self.done("report", report, self.shop(), "--format", "json", *more))["figures"]

    def test_stock_is_worth_no_more_than_it_cost(self):
        stock = self.figures("stock-value")
        self.assertGreaterEqual(stock["write_down"], 0)
        self.assertAlmostEqual(stock["net"], stock["total.cash_cost"] - stock["write_down"])

    def test_the_year_ties_to_its_lines_and_to_the_other_pages(self):
        for more in ((), ("--from", "2024-01-01"), ("--from", "2025-01-01", "--as-of", "2025-12-31")):
            year = self.figures("year", *more)
            for cost in ("cash_cost", "full_cost"):
                spent = sum(figure for key, figure in year.items() if key.startswith("period.") and key.endswith(cost))
                spent += sum(year[f"{key}.{cost}"] for key in ("cost_of_sales", "lost", "given", "selling"))
                spent += year["overhead.under_absorbed"] - year["overhead.over_absorbed_in_sales"]
                self.assertAlmostEqual(year[f"earned.{cost}"], year["takings.net"] - spent)
            self.assertAlmostEqual(year["takings.gross"], self.figures("money", *more)["in.total"])
            losses = self.figures("losses", *more)
            self.assertAlmostEqual(year["lost.cash_cost"], losses["lost.cash_cost"])
            self.assertAlmostEqual(year["given.full_cost"], losses["gifts.full_cost"])
            self.assertAlmostEqual(
                self.figures("trace", "--of", "sold", *more)["total.full_cost"], year["cost_of_sales.full_cost"]
            )
            for report in ("year", "stock-value", "hours", "money", "losses"):
                self.assertIn("Checked to the last unit", self.done("report", report, self.shop(), *more))

    def test_every_hour_of_the_records_is_in_the_hours(self):
        hours = self.figures("hours", "--from", "2000-01-01")
        stages = sum(figure for key, figure in hours.items() if key.startswith("hours.") and key != "hours.total")
        self.assertAlmostEqual(hours["hours.total"], stages)
        came_in = self.figures("trace", "--of", "in", "--from", "2000-01-01")
        self.assertAlmostEqual(hours["hours.total"], came_in["total.hours"])

    def test_a_lot_is_traced_back_and_forward(self):
        text = self.done("report", "trace", self.shop(), "--of", "leaf-2024-08-10", "--format", "csv")
        self.assertIn("indigo-2024", text)
        self.assertIn("powder-blue-2024-a", text)
        self.assertIn("by rule", text)
        self.assertNotRegex(text, "[{}]")

    def test_a_supplier_s_lot_is_recalled_into_three_heaps(self):
        text = self.done("report", "recall", self.shop(), "--of", "L7749")
        for words in ("olive-2024-1", "batch-2024-", "by rule", "assessor"):
            self.assertIn(words, text)
        self.assertNotRegex(text, "[{}]")
        figures = self.figures("recall", "--of", "L7749")
        self.assertGreater(figures["bars.reachable.by_rule"], 0)
        self.assertIn('"moon"', self.refused("report", "recall", self.shop(), "--of", "moon"))
        self.assertIn("--of", self.refused("report", "recall", self.shop()))

    def test_a_period_or_a_trace_asked_wrongly(self):
        shop = self.shop()
        self.assertIn("2027-01-01", self.refused("report", "year", shop, "--from", "2027-01-01"))
        self.assertIn("--from", self.refused("report", "year", shop, "--from", "2026-02-30"))
        self.assertIn("in-progress", self.refused("report", "trace", shop))
        self.assertIn('"moon"', self.refused("report", "trace", shop, "--of", "moon"))

    def test_a_fair_says_whether_to_go_again_and_prices_what_changed(self):
        shop = self.shop()
        result = json.loads(self.done("report", "fair-result", shop, "--format", "json"))
        worth = result["figures"]["earned_per_stall_hour"] >= 12.71  # what an hour is to bring on that day
        said = " ".join(self.done("report", "fair-result", shop).split())
        self.assertIn("Go again: with" if worth else "Think twice before going again", said)
        self.assertIn("What changed since 1 August 2026", self.done("report", "prices", shop))
        changed = self.done("report", "prices", shop, "--from", "2026-01-01")
        self.assertIn("What changed since 1 January 2026", changed)
        self.assertNotIn("What changed", self.done("report", "prices", shop, "--from", "2026-11-01"))
        self.refused("report", "prices", shop, "--from", "2027-01-01")

    def test_what_is_asked_wrongly_names_what_there_is(self):
        shop = self.shop()
        self.assertIn(
            "calendar, can-make, cost-sheet, earns-best, fair-plan, fair-result, hours, labels, losses, margins, money, "
            "plants, prices, recall, reorder, sheets, sowing, stock-value, trace, verdict, year",
            self.refused("report", "weather", shop),
        )
        self.assertIn("csv, html, ics, json, pdf, text, xlsx", self.refused("report", "verdict", shop, "--format", "doc"))
        self.assertIn("blue, pink, yellow", self.refused("report", "verdict", shop, "--colour", "mauve"))
        self.assertIn("--as-of", self.refused("report", "verdict", shop, "--as-of", "2026-02-30"))
        self.assertIn("2026-07-03", self.refused("report", "verdict", shop, "--as-of", "yesterday"))
        self.assertIn("no file", self.refused("report", "verdict", self.here / "none.dyestead"))

    def test_questions_before_and_after(self):
        prices = json.loads(self.done("report", "prices", self.shop(), "--format", "json"))["figures"]
        self.assertGreaterEqual(prices["garden-plain.advised"], prices["garden-plain.for_hour"])
        self.assertLess(prices["garden-plain.floor"], prices["garden-plain.shelf"])
        loaves = self.done("report", "can-make", self.shop(), "--bar", "garden-plain", "--loaves", "400")
        self.assertIn("Only", loaves)
        self.assertIn("Lye burns", loaves)
        plan = json.loads(self.done("report", "fair-plan", self.shop(), "--format", "json"))["figures"]
        self.assertLess(plan["break_even"], plan["break_even_full"])
        self.assertLessEqual(plan["expected_bars"], plan["take"])
        went = json.loads(
            self.done("report", "fair-result", self.shop(), "--fair", "fair-2025-05-24", "--format", "json")
        )["figures"]
        self.assertAlmostEqual(went["tin.difference"], went["tin.counted"] - went["tin.expected"])
        self.assertIn("Order", self.done("report", "reorder", self.shop()))
        for asked in (["can-make", "--bar", "soap"], ["fair-plan", "--fair", "soap"], ["can-make", "--loaves", "0"]):
            self.refused("report", asked[0], self.shop(), *asked[1:])

    def test_nothing_is_half_written(self):
        shop = self.shop()
        out = self.here / "kept.json"
        out.write_text("kept")
        self.refused("report", "verdict", shop, "--colour", "mauve", "--out", out)
        self.assertEqual(out.read_text(), "kept")
        self.refused("report", "verdict", shop, "--out", self.here / "no folder" / "v.txt")
        self.assertEqual(self.names(), ["kept.json", "shop.dyestead"])


class CommandLine(Books):
    def test_help_names_the_commands_and_the_reports(self):
        text = self.done("--help")
        for word in ("import", "export", "check", "report"):
            self.assertIn(word, text)
        self.assertIn("stock-value", self.done("report", "--help"))

    def test_nonsense_is_one_line_and_points_to_the_help(self):
        for arguments in ([], ["dance"], ["import"], ["report", "verdict"], ["check", "a", "b"], ["report", "--fast"]):
            said = self.refused(*arguments)
            self.assertEqual(said.count("\n"), 1, said)
            self.assertIn("--help", said)


if __name__ == "__main__":
    unittest.main()
