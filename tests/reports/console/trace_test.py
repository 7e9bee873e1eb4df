#!/usr/bin/python3
"""Any figure on any statement of the sample shop can be followed down: the trace that is asked for by the figure's own
name comes to the same."""

import json
import os
import subprocess
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
BOOKS = os.environ["DYESTEAD_BOOKS"]
PERIOD = ["--from", "2025-01-01"]


def books(*args):
    return subprocess.run([BOOKS, *map(str, args)], capture_output=True, text=True, check=True).stdout


def figures(shop, report, *more):
    return json.loads(books("report", report, shop, "--format", "json", *more))["figures"]


def same(a, b, what):
    assert abs(a - b) < 0.0000015, (what, a, b)


def costs(shop, report, *more):
    """Every figure that is a cost, with and without the shop's own hours."""
    all_of_them = figures(shop, report, *more)
    for key, value in all_of_them.items():
        if not key.endswith(".cash_cost"):
            continue
        name = key.removesuffix(".cash_cost")
        if name in ("total", "earned_after_write_down"):
            continue  # sums of others; a valuation beside the books
        traced = figures(shop, "trace", "--of", "in-progress" if name == "in_progress" else name, *PERIOD)
        same(traced["total.cash_cost"], value, key)
        same(traced["total.full_cost"], all_of_them[f"{name}.full_cost"], key)
        yield name


def year(shop):
    for key, value in figures(shop, "year", *PERIOD).items():
        if key.split(".")[0] not in ("takings", "overhead"):
            continue
        same(figures(shop, "trace", "--of", key, *PERIOD)["total.cash_cost"], value, key)
        yield key


def money(shop):
    for key, value in figures(shop, "money", *PERIOD).items():
        if key == "left" or key.endswith(".total"):
            continue
        same(figures(shop, "trace", "--of", key, *PERIOD)["total.cash_cost"], value, key)
        yield key


def hours(shop):
    for key, value in figures(shop, "hours", *PERIOD).items():
        if not key.startswith("hours.") or key == "hours.total":
            continue
        same(figures(shop, "trace", "--of", key, *PERIOD)["total.hours"], value, key)
        yield key


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as folder:
        os.environ["XDG_DATA_HOME"] = folder  # backups lie in the user's data; a test keeps its own
        shop = Path(folder) / "sample.dyestead"
        books("import", ROOT / "sample-shop" / "shop", shop)
        followed = [
            *costs(shop, "stock-value"),
            *costs(shop, "year", *PERIOD),
            *year(shop),
            *costs(shop, "losses", *PERIOD),
            *money(shop),
            *hours(shop),
        ]
        assert len(followed) > 60, followed
