#!/usr/bin/python3
"""An order with its postage: a line without bars is refused beside it, and what is kept says what the order earned."""

from pathlib import Path

from _window import Window, added, exported, sample, work_folder

with work_folder() as folder:
    shop = sample(folder)
    before = exported(shop, Path(folder) / "before")
    with Window(shop, "--place", "stall") as window:
        window.tab("Orders and shops")
        window.press("An order...")
        window.put("Number", "1077")
        window.put("Postage they paid", "3.50")
        window.put("Post and box", "4.20")
        window.choose("Bar", "Garden bar, plain")
        window.put("How many", "0")
        window.press("Add this line")
        window.keys("ctrl+Return")
        window.label(lambda text: text.startswith("Nothing is kept yet"), "that a line cannot be read")
        assert any("one at least" in cell for row in window.rows("Bars") for cell in row), window.rows("Bars")
        window.select("Bars", "Garden bar, plain")
        window.press("Take the line away")
        window.choose("Bar", "Garden bar, plain")
        window.put("How many", "3")
        window.press("Add this line")
        window.keep("This order earned")
        after = exported(shop, Path(folder) / "after")
        (order,) = added(before, after, "sale")
        assert (order["order_number"], order["postage_paid"], order["postage"]) == ("1077", "3.5", "4.2"), order
        assert [line["bars"] for line in after["sale_line"] if line["sale"] == order["code"]] == ["3"]
