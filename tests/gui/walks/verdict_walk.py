#!/usr/bin/python3
"""The sample opens at the Verdict, and window and paper say the same sentence and the same figures."""

import pyatspi
from _window import Window, books, cells, one_line, sample, wait_until, work_folder

with work_folder() as folder:
    shop = sample(folder)
    paper = one_line(books("report", "verdict", shop, "--format", "text"))
    with Window(shop, "--place", "verdict") as window:
        headline = window.headline()
        assert headline in paper, f"the paper does not say: {headline}"
        table = window.named(pyatspi.ROLE_TABLE, "Side by side")
        wait_until(lambda: table.queryTable().nRows > 5, "rows side by side")
        for row in range(table.queryTable().nRows):
            line = one_line(" ".join(cells(table, row)))
            assert line in paper, f"the paper has no line: {line}"
        assert any(label.startswith("Each bar:") for label in window.labels())
        assert any("not advice" in label for label in window.labels()), "the small line is missing"
        # Why? leads to lines that add up.
        window.keys("alt+w")
        sums = window.named(pyatspi.ROLE_TABLE, "How it adds up")
        rows = [cells(sums, row) for row in range(sums.queryTable().nRows)]
        for column in (1, 2, 3):
            parts = sum(float(row[column]) for row in rows[:-1])
            assert abs(parts - float(rows[-1][column])) < 0.005 * len(rows), f"column {column} does not add up: {rows}"
        # The picture's figures as a list, and back.
        window.keys("ctrl+g")
        figures = window.named(pyatspi.ROLE_TABLE, "The figures of the picture")
        assert figures.queryTable().nRows > 3
