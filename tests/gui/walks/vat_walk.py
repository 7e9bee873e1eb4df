#!/usr/bin/python3
"""A vat typed in from its sheet, dried and weighed with a slip of the pen that is put right, and its powder in the
Cupboard."""

from pathlib import Path

from _window import Window, added, exported, sample, work_folder

def walk(window, shop, folder):
    before = exported(shop, Path(folder) / "before")
    window.keys("ctrl+3")
    window.table("Vats")
    window.keys("ctrl+n")
    window.choose("Colour", "Blue")
    window.put("Hands-on, in all", "~90 min")
    window.put("Washes", "3")
    window.put("Note", "Warm pan, quick froth")
    window.choose("What was used", "leaf")
    window.put("Amount", "1.5 kg")
    window.press("Add this line")
    window.choose("What was used", "Spring water")
    window.put("Amount", "12 l")
    window.keep("1.5 kg of harvest in it")
    after = exported(shop, Path(folder) / "vat")
    (vat,) = added(before, after, "vat")
    assert (vat["colour"], vat["hands_on"], vat["washes"]) == ("blue", "~90 min", "3"), vat
    uses = [(use["material"], use["amount"]) for use in after["vat_use"] if use["vat"] == vat["code"]]
    assert uses == [("indigo-leaf", "1.5 kg"), ("spring-water", "12 l")], uses

    window.press("Dry and weigh")
    window.put("Powder", "35 g")
    window.put("Hands-on", "20 min")
    window.put("Note", "Two plates")
    # The vat that stands is on the plate already.
    window.choose("vat", "1 November 2026, blue")
    window.keys("ctrl+Return")
    window.label(lambda text: text.startswith("One vat stands twice"), "that no vat can be dried twice")
    window.select("The vats on this plate", "1 November 2026, blue")
    window.press("Take the line away")
    window.keep("35 g of powder from one vat: 23.3 g from a kilo. That is your best so far.")
    window.tab("Drying")
    window.select("Drying", "35 g")
    window.press("Correct it...")
    window.put("Powder", "3.5 g")
    window.keep("3.5 g of powder from one vat")
    dried = exported(shop, Path(folder) / "dried")
    (drying,) = added(before, dried, "drying")
    assert (drying["amount"], drying["time"]) == ("3.5 g", "20 min"), drying
    (lot,) = added(before, dried, "lot")
    assert lot["code"] == drying["lot"], (lot, drying)

    window.keys("ctrl+5")
    window.table("Stock")
    window.keys("ctrl+f")
    window.put("Find", "indigo powder")
    window.select("Stock", "ndigo powder")
    told = window.rows("About what is selected")
    assert any(lot["code"] in cell for row in told for cell in row), told


if __name__ == "__main__":
    with work_folder() as folder:
        shop = sample(folder)
        with Window(shop, "--place", "today") as window:
            walk(window, shop, folder)
