#!/usr/bin/python3
"""A vat, a batch, a fair and a stock-take entered, the program started again, and all of it undone until there is nothing
left to undo: the shop is what it was."""

from pathlib import Path

import batch_walk
import count_walk
import fair_walk
import vat_walk
from _window import Window, exported, sample, wait_until, work_folder

with work_folder() as folder:
    shop = sample(folder)
    at_first = exported(shop, Path(folder) / "at first")
    with Window(shop, "--place", "today") as window:
        for each in (vat_walk, batch_walk, fair_walk, count_walk):
            each.walk(window, shop, folder)
    assert exported(shop, Path(folder) / "entered") != at_first

    with Window(shop, "--place", "today") as window:
        window.table("To see to")
        undone = 0
        while True:
            written = shop.stat().st_mtime_ns
            window.keys("ctrl+z")
            # Two entries may have the same words, so it is the file that tells that one more is undone.
            nothing = wait_until(
                lambda: "no more" if "There is nothing to undo." in window.labels()
                else shop.stat().st_mtime_ns != written and "one more", "one more to be undone")
            if nothing == "no more":
                break
            window.label(lambda text: text.startswith("Undone: "), "word of what was undone")
            undone += 1
            assert undone < 40
        assert undone >= 12, undone
    assert exported(shop, Path(folder) / "at last") == at_first
