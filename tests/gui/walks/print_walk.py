#!/usr/bin/python3
"""What is on screen, looked at as pages and saved as a PDF; a sheet to write on from its place's own button; and printed
by the desktop's own dialog, into a file where no printer is set up."""

import os
import subprocess
from pathlib import Path

import pyatspi
from _window import Window, dialog_of, name_of, sample, save_as, wait_until, work_folder

TABLES = (pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE_TABLE)
NAMED = (pyatspi.ROLE_PUSH_BUTTON, pyatspi.ROLE_TEXT, pyatspi.ROLE_TABLE)


def words_of(path):
    text = subprocess.run(["pdftotext", "-layout", str(path), "-"], capture_output=True, text=True, check=True).stdout
    return " ".join(text.split())


def pages_of(path):
    said = subprocess.run(["pdfinfo", str(path)], capture_output=True, text=True, check=True).stdout
    return next(int(line.split()[1]) for line in said.splitlines() if line.startswith("Pages:"))


class Preview:
    """The window with the pages; while it is looked at, the walk finds its controls instead of the main window's."""

    def __init__(self, window, title):
        self.window = window
        self.title = title

    def __enter__(self):
        self.main = self.window.frame
        self.window.frame = wait_until(
            lambda: next((w for w in self.main.parent if w is not None and w.name.startswith(self.title)), None),
            f"pages of {self.title}")
        unnamed = [c.getRole() for c in self.window.controls() if c.getRole() in NAMED and not name_of(c).strip()]
        assert not unnamed, f"controls without a name: {unnamed}"
        return self.window

    def __exit__(self, *failed):
        if not failed[0]:
            self.window.keys("Escape")
            wait_until(lambda: not any(w is not None and w.name.startswith(self.title) for w in self.main.parent),
                       "the pages to be closed")
        self.window.frame = self.main


with work_folder() as folder:
    shop = sample(folder)
    os.chdir(folder)  # where the desktop prints into a file
    with Window(shop, "--place", "cupboard") as window:
        stock = wait_until(lambda: window.rows("Stock"), "the stock")
        window.keys("ctrl+shift+p")
        paper = Path(folder) / "stock.pdf"
        with Preview(window, "Stock, 1 November 2026"):
            which = window.label(lambda text: text.startswith("1 of "), "which page it is")
            window.press("Page after")
            window.label(lambda text: text == which.replace("1", "2", 1), "the second page")
            save_as(window, paper, lambda: window.keys("alt+s"))
        words = words_of(paper)
        assert f"of {pages_of(paper)}" in which, f"the preview says {which}, the PDF has {pages_of(paper)} pages"
        for row in stock[:5] + stock[-5:]:
            assert row[0] in words, f"{row[0]} is in the list and not on paper"

        # A sheet from the button of its place.
        window.keys("ctrl+3")
        window.table("Vats")
        window.press("Print a vat sheet")
        with Preview(window, "Vat sheet"):
            sheet = Path(folder) / "sheet.pdf"
            save_as(window, sheet, lambda: window.keys("alt+s"))
        assert "Five answers are enough to type it in" in words_of(sheet)

        # By the desktop's own dialog, which prints into a file where there is no printer.
        window.keys("ctrl+7")
        headline = window.headline()
        window.keys("ctrl+p")
        dialog = wait_until(lambda: dialog_of(window), "the desktop's own print dialog")
        printers = wait_until(lambda: next((c for c in window.controls(dialog) if c.getRole() in TABLES), None), "printers")
        printers.queryComponent().grabFocus()
        window.keys("Home", "space")
        window.label(lambda text: text.startswith("Sent to the printer:"), "word that it was printed")
        assert headline in words_of(Path(folder) / "output.pdf")
