#!/usr/bin/python3
"""A new shop from nothing: what is already here is put down, an oil gets its saponification value, and a bed is sown, cut
and told by the bucket."""

from pathlib import Path

from _window import Window, books, exported, figures, work_folder

EMPTY = {"shop.csv": "code,name,currency,shown_as_of,year_begins\nours,Ours,GBP,2026-07-20,\n", "person.csv": "code,name\nada,Ada\n"}


def already_here(window, folder, shop):
    window.keys("ctrl+5")
    window.label(lambda text: "bare" in text, "what to do in an empty cupboard")
    for what, amount, cost, said in [("Olive oil", "~2 kg", "16", "Olive oil: 2 kg in hand."),
                                     ("Spring water", "2 x 5 l", "", "Spring water: 10 l in hand.")]:
        window.press("Already here")
        window.put("What", what)
        window.put("How much", amount)
        window.put("What it cost", cost)
        window.keep(said)
    stock = {row[0]: row for row in window.rows("Stock")}
    assert "Olive oil" in stock and "Spring water" in stock, stock
    assert figures(shop, "stock-value")["stock.raw.cash_cost"] == 16
    files = exported(shop, Path(folder) / "here")
    amounts = sorted(record["amount"] for record in files["already_here"])
    assert amounts == ["10 l", "~2 kg"], amounts

    # Of an oil, what is published stands in the form until the supplier's own value is typed over it; it is said.
    window.press("New thing")
    window.put("Name", "Coconut oil")
    window.choose("What for", "oil or butter")
    window.label(lambda text: "248 to 265" in text, "the published saponification values")
    window.keep("Coconut oil is put down")
    oil = next(m for m in exported(shop, Path(folder) / "oil")["material"] if m["name"] == "Coconut oil")
    assert oil["saponification"] == "248", oil


def sow_to_harvest(window, folder, shop):
    window.keys("ctrl+2")
    window.keys("ctrl+n")
    window.put("When", "2 April")
    window.put("Which plant", "Japanese indigo")
    window.put("Which bed", "By the wall")
    window.keys("ctrl+Return")
    window.label(lambda text: "How large is the new bed" in text, "that a new bed needs its size")
    window.put("How much of the bed", "5 m2")
    window.keep("Sown. First cut about")

    window.press("Cut")
    window.put("Cut on", "3 July")
    window.put("How much", "2 buckets")
    window.keys("ctrl+Return")
    window.label(lambda text: "bucket" in text and "?" not in text, "that the bucket is not known")
    window.put("How much", "3.2 kg - 380 g")
    window.keep("Cut: 2.82 kg")
    files = exported(shop, Path(folder) / "cut")
    assert [cut["amount"] for cut in files["harvest"]] == ["2.82 kg"], files["harvest"]
    assert files["planting"][0]["sown"] == "2026-04-02", files["planting"]


with work_folder() as folder:
    records = Path(folder) / "records"
    records.mkdir()
    for name, text in EMPTY.items():
        (records / name).write_text(text, encoding="utf-8")
    shop = Path(folder) / "ours.dyestead"
    books("import", records, shop)
    with Window(shop, "--place", "today") as window:
        already_here(window, folder, shop)
        sow_to_harvest(window, folder, shop)
