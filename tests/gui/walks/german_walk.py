#!/usr/bin/python3
"""The window in German: its places, a delivery typed with decimal commas and a German date, what it means in German
figures, and its undoing; the books it leaves are those an English window would have left."""

import pyatspi
from _window import GERMAN, PLACES_IN_GERMAN, Window, added, exported, sample, work_folder

with work_folder() as folder:
    shop = sample(folder)
    before = exported(shop, f"{folder}/before")
    with Window(shop, environment=GERMAN) as window:
        for number, place in enumerate(PLACES_IN_GERMAN, start=1):
            window.keys(f"ctrl+{number}")
            window.label(lambda text, place=place: text == place, f"the heading {place}")

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
