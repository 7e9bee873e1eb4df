#!/usr/bin/python3
"""A file that cannot be shown: one sentence says why, nothing has to be answered, and the file is as it was."""

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

    letter = Path(folder) / "letter.dyestead"
    letter.write_text("Dear both, the soap was lovely.\n" * 40, encoding="utf-8")
    refused(letter, "letter.dyestead")

    refused(Path(folder) / "nowhere.dyestead", "nowhere.dyestead")
