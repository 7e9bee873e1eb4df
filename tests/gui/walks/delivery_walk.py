#!/usr/bin/python3
"""A delivery typed by keyboard alone: what was understood is said back, a mistake is named beside its field, keeping it
saves at once and says what it means; undone after the program was started again."""

import json

import pyatspi
from _window import Window, books, sample, wait_until, work_folder


def stock_worth(shop):
    figures = json.loads(books("report", "stock-value", shop, "--format", "json"))["figures"]
    return next(value for key, value in figures.items() if key.startswith("stock") and value is not None)


def put(window, name, text):
    window.named(pyatspi.ROLE_TEXT, name).queryEditableText().setTextContents(text)


with work_folder() as folder:
    shop = sample(folder)
    before = stock_worth(shop)
    with Window(shop, "--place", "cupboard") as window:
        window.named(pyatspi.ROLE_TABLE, "Stock")
        window.keys("ctrl+n")
        wait_until(lambda: window.focused() is not None and window.focused().getRole() == pyatspi.ROLE_TEXT, "the first field")
        put(window, "From", "The oil merchant")
        put(window, "Postage and delivery", "six")
        window.label(lambda text: '"six" is not' in text, "why the postage cannot be read")
        put(window, "Postage and delivery", "6,90")
        window.label(lambda text: text == "£6.90", "the postage said back, comma and all")
        put(window, "what", "Olive oil")
        put(window, "how much", "2 x 2,5 l")
        put(window, "price", "38.40")
        # What is typed into a line but not yet added is not lost.
        window.keys("ctrl+Return")
        window.label(lambda text: text.startswith("Entered. With delivery Olive oil is"), "what the delivery means")
        after = stock_worth(shop)
        assert abs(after - before - 45.30) < 0.01, (before, after)

    with Window(shop, "--place", "cupboard") as window:
        window.named(pyatspi.ROLE_TABLE, "Stock").queryComponent().grabFocus()
        window.keys("ctrl+z")
        window.label(lambda text: text.startswith("Undone: delivery of"), "word that the delivery is undone")
        assert stock_worth(shop) == before
        window.keys("ctrl+shift+z")
        window.label(lambda text: text.startswith("Done again"), "word that it is done again")
        assert stock_worth(shop) == after
