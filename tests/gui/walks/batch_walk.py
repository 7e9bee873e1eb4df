#!/usr/bin/python3
"""A batch by keyboard: filled in from its recipe, poured, cut, put on hold and set free again. Bars on hold are counted
as ready nowhere."""

from pathlib import Path

from _window import Window, added, books, exported, sample, work_folder

BAR = "Garden bar, plain"


def ready(window, bar):
    """The bars the Stall counts as ready."""
    window.keys("ctrl+6")
    window.tab("Bars and prices")
    return next(int(row[1]) for row in window.rows("Bars and prices") if row[0] == bar)


def on_the_shelf(window, lot):
    window.keys("ctrl+4")
    window.tab("Curing shelf")
    window.select("Curing shelf", lot)


def walk(window, shop, folder):
    before = exported(shop, Path(folder) / "before")
    at_first = ready(window, BAR)

    window.keys("ctrl+4")
    window.table("Batches")
    window.keys("ctrl+n")
    window.choose("Recipe", "Garden bar")
    window.choose("Which bar", BAR)
    window.put("Loaves", "1")
    window.put("Poured on", "1 September")
    window.put("Time", "~1 h")
    window.label(lambda text: "12 bars." in text and "Lye" in text, "what the recipe comes to")
    filled = [row[0] for row in window.rows("What goes in")]
    window.keep("12 bars, about")

    window.select("Batches", "not cut")
    window.press("Cut it...")
    window.put("Of them odd ones", "one")
    window.label(lambda text: text.startswith('"one" is'), "why the odd ones cannot be read")
    window.put("Of them odd ones", "1")
    window.put("Cut on", "2 September")
    window.keep("11 bars,")
    assert ready(window, BAR) == at_first + 11

    kept = exported(shop, Path(folder) / "kept")
    (batch,) = added(before, kept, "batch")
    poured = [use["material"] for use in kept["batch_use"] if use["batch"] == batch["code"]]
    assert len(poured) == len(filled) >= 6, (poured, filled)
    (cut,) = added(before, kept, "cut")
    assert (cut["date"], cut["bars"], cut["rejected"]) == ("2026-09-02", "12", "1"), cut
    lot = cut["lot"]

    on_the_shelf(window, lot)
    window.press("Put on hold...")
    window.put("Why", "Zaps on the tongue")
    window.keep("on hold now")
    assert ready(window, BAR) == at_first
    (hold,) = added(before, exported(shop, Path(folder) / "held"), "hold")
    assert (hold["lot"], hold["why"]) == (lot, "Zaps on the tongue"), hold
    recall = books("report", "recall", shop, "--of", lot, "--format", "csv")
    assert f"{lot},11," in recall and ",yes,named" in recall, recall

    on_the_shelf(window, lot)
    window.press("Set free...")
    window.put("Why", "pH 9 after a week, no zap")
    window.keep("11 bars are free again")
    assert ready(window, BAR) == at_first + 11
    (release,) = added(before, exported(shop, Path(folder) / "free"), "release")
    assert release["lot"] == lot, release


if __name__ == "__main__":
    with work_folder() as folder:
        shop = sample(folder)
        with Window(shop, "--place", "today") as window:
            walk(window, shop, folder)
