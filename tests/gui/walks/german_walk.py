#!/usr/bin/python3
"""The window in German: its places, a delivery typed with decimal commas and a German date, what it means in German
figures, and its undoing; the books it leaves are those an English window would have left."""

import pyatspi
from _window import GERMAN, PLACES_IN_GERMAN, English, Window, added, exported, name_of, one_line, sample, text_of, wait_until, work_folder

SPEAKING = (pyatspi.ROLE_LABEL, pyatspi.ROLE_PUSH_BUTTON, pyatspi.ROLE_PAGE_TAB, pyatspi.ROLE_TABLE_COLUMN_HEADER)


def texts(window):
    """What the controls of a page say and are called."""
    found = set()
    for control in window.controls():
        if control.getRole() in SPEAKING:
            found.add(one_line(text_of(control) or name_of(control) or ""))
        if control.getRole() in (pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE_TABLE):
            face = control.queryTable()
            found.update(one_line(face.getColumnDescription(column) or "") for column in range(face.nColumns))
    return found - {""}


with work_folder() as folder:
    shop = sample(folder)
    english = English()
    before = exported(shop, f"{folder}/before")
    with Window(shop, environment=GERMAN) as window:
        for number, place in enumerate(PLACES_IN_GERMAN, start=1):
            window.keys(f"ctrl+{number}")
            window.label(lambda text, place=place: text == place, f"the heading {place}")
            # The heading stands a moment before what is below it.
            said = wait_until(lambda: len(found := texts(window)) > 10 and found, f"what {place} says")
            left = [text for text in said if english.left_in(text)]
            assert not left, f"{place} still says {left}"

        window.keys("ctrl+5")
        window.named(pyatspi.ROLE_TABLE, "Vorrat")
        window.keys("ctrl+n")
        window.named(pyatspi.ROLE_TEXT, "Von")
        window.put("Von", "The oil merchant")
        window.put("Am", "31. Okt. 2026")
        window.put("Versand", "1.500")
        window.label(lambda text: 'beginnen die Dezimalstellen von „1.500“' in text, "the question whether 1.500 is thousands")
        window.put("Versand", "6,90")
        window.label(lambda text: text == "6,90 £", "the postage said back in German")
        window.put("was", "Olive oil")
        window.put("wie viel", "2 mal 2,5 Liter")
        window.put("Preis", "38,40")
        window.keep("Eingetragen. Mit Versand kostet Olive oil")

        after = exported(shop, f"{folder}/after")
        (delivery,) = added(before, after, "delivery")
        (line,) = [each for each in after["delivery_line"] if each["delivery"] == delivery["code"]]
        assert (delivery["date"], delivery["carriage"]) == ("2026-10-31", "6.9"), delivery
        assert (line["amount"], line["price"]) == ("5 l", "38.4"), line

        window.keys("ctrl+z")
        window.label(lambda text: text.startswith("Rückgängig gemacht: Lieferung vom 31. Oktober 2026"), "word that it is undone")
