#!/usr/bin/python3
"""The console program writes into the file the window shows; F5 shows what it holds now."""

import shutil
from pathlib import Path

from _window import SOURCE, Window, books, sample, wait_until, work_folder

with work_folder() as folder:
    shop = sample(folder)
    records = Path(folder) / "records"
    shutil.copytree(SOURCE / "sample-shop" / "shop", records)
    about = records / "shop.csv"
    lines = about.read_text(encoding="utf-8").split("\n")
    name = lines[1].split(",")[1]
    about.write_text("\n".join(lines).replace(name, "Another Name"), encoding="utf-8")
    with Window(shop, "--place", "cupboard") as window:
        wait_until(lambda: name in window.frame.name, "the shop's name in the title")
        window.keys("F5")
        window.label(lambda text: text.startswith("Read again"), "word that nothing had changed")
        # A machine that shares the folder need not see who has the shop open.
        (shop.parent / f".{shop.name}.claim").unlink()
        books("import", records, shop, "--replace")
        window.keys("F5")
        wait_until(lambda: "Another Name" in window.frame.name, "the new name in the title")
        window.label(lambda text: text.startswith("The shop file had changed"), "word of the change")
