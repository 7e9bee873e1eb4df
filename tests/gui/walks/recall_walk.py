#!/usr/bin/python3
"""A recalled delivery in the Books: one button puts what is here on hold, the console sees it, and Undo takes it back."""

from pathlib import Path

import pyatspi
from _window import Window, exported, press, sample, wait_until, work_folder


def buttons(window):
    return [c.name for c in window.controls() if c.getRole() == pyatspi.ROLE_PUSH_BUTTON]


with work_folder() as folder:
    shop = sample(folder)
    at_first = exported(shop, Path(folder) / "at first")
    with Window(shop, "--place", "books") as window:
        questions = wait_until(
            lambda: next((c for c in window.controls()
                          if c.getRole() in (pyatspi.ROLE_LIST_BOX, pyatspi.ROLE_LIST, pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE_TABLE)
                          and c.name == "Question"), None), "the list of questions")
        questions.queryComponent().grabFocus()
        window.keys("Home")
        window.choose("Of what", "every lot of Olive oil")
        hold = window.named(pyatspi.ROLE_PUSH_BUTTON, "Hold what is here")
        press(hold)
        window.label(lambda text: "on hold now" in text, "word of what was put by")
        wait_until(lambda: "Hold what is here" not in buttons(window), "the button to be gone: all of it is held")
        held = exported(shop, Path(folder) / "held")
        assert held["hold"] != at_first["hold"]
        assert {name for name in held if held[name] != at_first[name]} == {"hold"}
        window.keys("ctrl+z")
        window.label(lambda text: text.startswith("Undone: what is here of"), "word of what was undone")
        window.named(pyatspi.ROLE_PUSH_BUTTON, "Hold what is here")
    assert exported(shop, Path(folder) / "at last") == at_first
