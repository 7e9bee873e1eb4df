#!/usr/bin/python3
"""A file that cannot be shown: one sentence says why, nothing has to be answered, and the file is as it was."""

import os
import shutil
import sqlite3
from pathlib import Path

import pyatspi
from _window import Window, sample, work_folder


def refused(path, says):
    before = path.read_bytes() if path.exists() else None
    with Window(path) as window:
        sentence = window.label(lambda text: says in text, f"a sentence with: {says}")
        assert sentence.endswith("."), f"not a sentence: {sentence}"
        window.named(pyatspi.ROLE_PUSH_BUTTON, "Open a shop file...")
        assert "Verdict" in window.labels()
        assert window.runs()
    assert (path.read_bytes() if path.exists() else None) == before, "the file was touched"


with work_folder() as folder:
    shop = sample(folder)
    pages = shop.read_bytes()
    assert b"Knocked the jug over" in pages
    pages = pages.replace(b"Knocked the jug over", b"Knocked the mug over")  # as a failing disk might
    damaged = Path(folder) / "damaged.dyestead"
    damaged.write_bytes(pages)
    refused(damaged, "damaged")

    # With a backup taken before: that is offered, and opened beside the damaged file.
    backups = Path(folder) / "data"
    os.environ["XDG_DATA_HOME"] = str(backups)
    with sqlite3.connect(f"file:{shop}?mode=ro", uri=True) as file:
        (identity,) = file.execute("SELECT id FROM file").fetchone()
    kept = backups / "dyestead" / "backups" / identity
    kept.mkdir(parents=True)
    shutil.copy(shop, kept / "2026-10-30.dyestead")
    with Window(damaged) as window:
        window.label(lambda text: "damaged" in text, "that it is damaged")
        window.press("Open the backup of 30 October 2026")
        window.label(lambda text: text.startswith("This is the backup of 30 October 2026"), "what was opened")
        window.headline()
    beside = Path(folder) / "damaged, backup of 2026-10-30.dyestead"
    assert beside.read_bytes() == shop.read_bytes()
    assert damaged.read_bytes() == pages

    letter = Path(folder) / "letter.dyestead"
    letter.write_text("Dear both, the soap was lovely.\n" * 40, encoding="utf-8")
    refused(letter, "letter.dyestead")

    refused(Path(folder) / "nowhere.dyestead", "nowhere.dyestead")
