#!/usr/bin/python3
"""A second window on the same shop: it says who has it and only shows it, until it is asked to write anyway; what it then
keeps is seen in the first. When the first is closed the second writes without asking."""

import pyatspi
from _window import Window, exported, sample, wait_until, work_folder

HELD = "has had this shop open since"


def is_on(window, role, name):
    return window.named(role, name).getState().contains(pyatspi.STATE_SENSITIVE)


def menu_item(window, name):
    """Of the menus, whether they are open or not."""
    todo = [control for control in window.controls() if control.getRole() == pyatspi.ROLE_MENU_BAR]
    while todo:
        control = todo.pop()
        if control.getRole() == pyatspi.ROLE_MENU_ITEM and control.name == name:
            return control
        todo += [child for child in control if child is not None]
    raise AssertionError(f"no command called {name}")


def can_be_chosen(window, name):
    return menu_item(window, name).getState().contains(pyatspi.STATE_SENSITIVE)


def only_to_be_looked_at(window, shop):
    window.label(lambda text: text.startswith("Dyestead on ") and HELD in text, "who has the shop open")
    wait_until(lambda: "only to be looked at" in window.frame.name, "a title that says so")
    window.table("To see to")
    assert not is_on(window, pyatspi.ROLE_PUSH_BUTTON, "Jot something down")
    for name in ("New here", "Jot something down", "Undo", "Something lost"):
        assert not can_be_chosen(window, name), name
    assert can_be_chosen(window, "Open for writing anyway")
    # By key too; and it is said why nothing happens.
    window.keys("ctrl+2")
    window.table("Plantings")
    assert HELD not in " ".join(window.labels())
    window.keys("ctrl+n")
    window.label(lambda text: HELD in text, "why nothing can be recorded")
    assert shop.read_bytes() == before


def jot(window, what):
    window.keys("ctrl+j")
    window.put("What", what)
    window.keep("Jotted down")


with work_folder() as folder:
    shop = sample(folder)
    claim = shop.parent / f".{shop.name}.claim"
    before = shop.read_bytes()
    with Window(shop, "--place", "today") as first:
        wait_until(claim.exists, "the claim beside the shop")
        assert not can_be_chosen(first, "Open for writing anyway")
        with Window(shop, "--place", "today") as second:
            only_to_be_looked_at(second, shop)
            second.press("Open for writing anyway")
            second.label(lambda text: text.startswith("Here this shop can be written to now"), "that it can be written to")
            second.keys("ctrl+1")
            wait_until(lambda: is_on(second, pyatspi.ROLE_PUSH_BUTTON, "Jot something down"), "a button that can be pressed")
            jot(second, "the second window was here")
        assert claim.exists(), "the claim of the first went with the second"
        # The keyboard comes back to the first, which looks whether anything has changed.
        first.label(lambda text: text.startswith("The shop file had changed"), "word of the change")
    # Ended, not closed: what it left behind holds nobody up.
    assert claim.exists()
    with Window(shop, "--place", "today") as third:
        third.table("To see to")
        wait_until(lambda: is_on(third, pyatspi.ROLE_PUSH_BUTTON, "Jot something down"), "a button that can be pressed")
        with Window(shop, "--place", "today") as fourth:
            fourth.label(lambda text: HELD in text, "who has the shop open")
            third.frame.queryComponent().grabFocus()
            third.process.terminate()
            third.process.wait(10)
            fourth.keys("F5")
            fourth.label(lambda text: text.startswith("No other window has this shop open"), "that it is free")
            jot(fourth, "the fourth too")
            fourth.keys("ctrl+q")
            fourth.process.wait(30)
    assert not claim.exists(), "a window that is closed takes its claim along"
    texts = [record["text"] for record in exported(shop, f"{folder}/out")["jotting"]]
    assert "the second window was here" in texts and "the fourth too" in texts, texts
