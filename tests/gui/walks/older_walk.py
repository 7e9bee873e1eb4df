#!/usr/bin/python3
"""A file of an earlier version is opened: the bar says that it was brought up and where it lies as it was, its records are
there, and Undo says how far it reaches."""

import os
import sqlite3
from pathlib import Path

from _window import SOURCE, Window, wait_until, work_folder

with work_folder() as folder:
    os.environ["XDG_DATA_HOME"] = str(Path(folder) / "data")
    shop = Path(folder) / "ours.dyestead"
    with sqlite3.connect(shop) as file:
        file.executescript((SOURCE / "tests" / "db" / "older" / "version_2.sql").read_text(encoding="utf-8"))
    before = shop.read_bytes()
    with Window(shop, "--place", "today") as window:
        window.label(lambda text: "earlier version" in text and "backups" in text, "that it was brought up")
        (backup,) = Path(folder, "data", "dyestead", "backups").rglob("*.dyestead")
        with sqlite3.connect(backup) as file:
            assert file.execute("PRAGMA user_version").fetchone() == (2,)
        wait_until(lambda: "The Lower Shed" in window.frame.name, "the shop's name in the title")
        window.keys("ctrl+z")
        window.label(lambda text: text.startswith("There is nothing to undo: what was entered before"), "how far Undo reaches")
        window.keys("ctrl+j")
        window.put("What", "brought up today")
        window.keep("Jotted down")
        window.keys("ctrl+z")
        window.label(lambda text: text.startswith("Undone"), "that the new entry is undone")
    assert shop.read_bytes() != before
