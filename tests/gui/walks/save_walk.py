#!/usr/bin/python3
"""The verdict saved from the window: the page says what the window says, also while something is being tried out."""

import subprocess
from pathlib import Path

import pyatspi
from _window import Window, sample, save_as, work_folder

with work_folder() as folder:
    with Window(sample(folder), "--place", "verdict") as window:
        headline = window.headline()
        page = Path(folder) / "verdict.html"
        save_as(window, page)
        assert headline.replace("&", "&amp;") in page.read_text(encoding="utf-8")

        # What is tried out is not put on paper.
        window.named(pyatspi.ROLE_TEXT, "Extra on the price").queryEditableText().setTextContents("4")
        window.label(lambda text: text.startswith("If "), "a headline that begins with If")
        paper = Path(folder) / "verdict.pdf"
        save_as(window, paper)
        assert paper.read_bytes().startswith(b"%PDF-")
        text = subprocess.run(["pdftotext", str(paper), "-"], capture_output=True, text=True, check=True).stdout
        assert headline in " ".join(text.split())
