#!/usr/bin/python3
"""Powder is sold from the row of its lot: a pack at the price put down stands there, and what is kept says what it
earned beside what the powder had cost; the order list has it by its weight."""

from pathlib import Path

from _window import Window, added, exported, sample, work_folder

with work_folder() as folder:
    shop = sample(folder)
    before = exported(shop, Path(folder) / "before")
    with Window(shop, "--place", "vat") as window:
        window.tab("Powder")
        window.select("Powder", "powder-blue-2026-d")
        window.press("Sell some of it")
        window.label(lambda text: text.startswith("To whom powder may be sold"), "the caution")
        (line,) = window.rows("Powder sold as it is")
        assert "5 g" in line and any("by the price of powder" in cell for cell in line), line
        window.put("To whom, if it helps", "The weaver")
        window.keep("This sale earned")
        after = exported(shop, Path(folder) / "after")
        (sale,) = added(before, after, "sale")
        (powder,) = [line for line in after["sale_powder"] if line["sale"] == sale["code"]]
        assert (powder["lot"], powder["amount"], powder["price"]) == ("powder-blue-2026-d", "5 g", "14"), powder
        assert not [line for line in after["sale_line"] if line["sale"] == sale["code"]]
