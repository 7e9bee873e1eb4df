#!/usr/bin/python3
"""Every question asked of too few records, and of records that leave it little to go by: each answers in words, and no
figure is none, without end or longer than its records bear."""

import json
import os
import re
import tempfile
from pathlib import Path

from bad_input_test import SAMPLE, all_rows, figures_are_numbers, no_such, rows_of, run, with_mistake, write

REPORTS = ("verdict plants prices reorder sowing earns-best can-make fair-plan fair-result cost-sheet margins calendar "
           "labels sheets stock-value year hours money losses").split()
# The sample as it stood: before anything but a bed, with a first delivery and batch, after its first vat, after one season.
EARLY = ["2021-05-01", "2024-01-15", "2024-08-14", "2024-12-31"]
# What may be asked that early and needs a name: which, is said.
NEEDS_A_NAME = {"can-make": "--bar", "fair-result": "--fair"}


def headings_only(*names):
    def change(folder):
        for name in names:
            heading = ",".join(rows_of(folder, name)[0])
            (folder / f"{name}.csv").write_text(heading + "\n", encoding="utf-8")

    return change


def no_time_took_any(folder):
    for file in sorted(folder.glob("*.csv")):
        rows = rows_of(folder, file.stem)
        if file.stem == "method_step" or not rows:
            continue
        timed = [column for column in ("time", "hands_on") if column in rows[0]]
        for row in rows:
            row.update({column: "0 min" for column in timed if row[column]})
        if timed:
            write(folder, file.stem, rows)


def all_margin(folder):
    rows = rows_of(folder, "price_rule")
    rows[0]["margin"] = "100 %"
    write(folder, "price_rule", rows)


# What is asked, of which records, and what the answer says.
ODD = [
    ("a bar with no price", headings_only("price", "price_belief"),
     {"prices": "No bar has both a price and a cost on record yet", "fair-plan": "would earn its place on the table",
      "fair-result": "not known", "verdict": "price"}),
    ("hours of nought", no_time_took_any,
     {"earns-best": "Nothing can be said yet", "hours": "0 min in all", "verdict": "each extra hour"}),
    ("all yields equal", all_rows("drying", amount="20 g"), {"verdict": "growing", "plants": "earned most"}),
    ("a fair of nought hours", all_rows("fair", open="0 h"), {"fair-plan": "Take", "fair-result": "bars sold for"}),
    ("a delivery that takes years", all_rows("offer", lead_days="1100"), {"reorder": "reckoned as one year"}),
    ("a margin of the whole", all_margin, {"prices": "No price leaves 100 % of itself over"}),
    ("an hour that is to bring nothing", all_rows("pay", per_hour="0"), {"verdict": "for an hour", "prices": "bar"}),
]


def words(*arguments):
    reply = run("report", *arguments)
    assert reply.returncode == 0, (arguments, reply.stderr)
    assert not re.search(r"\b(nan|inf|infinity)\b", reply.stdout, re.IGNORECASE), (arguments, reply.stdout)
    long_figure = re.search(r"\d\.\d{5,}", reply.stdout)
    assert not long_figure, (arguments, long_figure)
    return " ".join(reply.stdout.split())


def figures(*arguments):
    reply = run("report", *arguments, "--format", "json")
    assert reply.returncode == 0, (arguments, reply.stderr)
    told = json.loads(reply.stdout, parse_constant=no_such)
    assert figures_are_numbers(told), arguments


def early(shop, day):
    for name in REPORTS:
        reply = run("report", name, shop, "--as-of", day)
        if reply.returncode == 2 and name in NEEDS_A_NAME:
            assert NEEDS_A_NAME[name] in reply.stderr and len(reply.stderr.splitlines()) == 1, (day, name, reply.stderr)
            continue
        assert words(name, shop, "--as-of", day), (day, name)
        figures(name, shop, "--as-of", day)


def odd(what, change, answers):
    with tempfile.TemporaryDirectory() as folder:
        shop, imported = with_mistake(folder, change)
        assert imported.returncode == 0, (what, imported.stderr)
        for name in REPORTS:
            figures(name, shop)
        for name, answer in answers.items():
            said = words(name, shop)
            assert answer in said, (what, name, said)


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as data:
        os.environ["XDG_DATA_HOME"] = data  # backups lie in the user's data; a test keeps its own
        sample = Path(data) / "sample.dyestead"
        assert run("import", SAMPLE, sample).returncode == 0
        for each in EARLY:
            early(sample, each)
        for each in ODD:
            odd(*each)
