#!/usr/bin/python3
"""All places by keyboard alone: Ctrl and a number, the list with the arrows, F6 from part to part."""

import pyatspi
from _window import PLACES, Window, sample, wait_until, work_folder


def selected_place(window):
    places = window.named(pyatspi.ROLE_TABLE, "Places")
    return [i for i in range(places.queryTable().nRows) if places.queryTable().isRowSelected(i)]


with work_folder() as folder:
    with Window(sample(folder), "--place", "verdict") as window:
        window.headline()
        for number, place in enumerate(PLACES, start=1):
            window.keys(f"ctrl+{number}")
            wait_until(lambda: place in window.labels(), f"the heading {place}")
            wait_until(lambda: selected_place(window) == [number - 1], f"{place} selected in the list")

        window.keys("ctrl+5")
        first = wait_until(window.focused, "something with the keyboard")
        window.keys("F6")
        wait_until(lambda: window.focused() is not None and window.focused() != first, "F6 to move on")
        seen = set()
        for _ in range(8):
            seen.add(window.focused().name)
            window.keys("F6")
            wait_until(window.focused, "something with the keyboard")
        assert {"Places", "Stock", "About what is selected"} <= seen, f"F6 came past {seen} only"

        window.keys("F1")
        keys = window.named(pyatspi.ROLE_TABLE, "Keys")
        assert keys.queryTable().nRows >= 10

        # In the list the arrows go on from the place that is shown.
        window.keys("ctrl+6")
        wait_until(lambda: "Stall" in window.labels(), "the heading Stall")
        window.named(pyatspi.ROLE_TABLE, "Places").queryComponent().grabFocus()
        wait_until(lambda: window.focused() is not None and window.focused().name == "Places", "the list with the keyboard")
        window.keys("Down")
        wait_until(lambda: "Verdict" in window.labels(), "the heading Verdict")
