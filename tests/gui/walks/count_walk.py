#!/usr/bin/python3
"""A stock-take: one thing less than the books say, one as in the books, and what is left blank is not counted."""

from pathlib import Path

from _window import Window, exported, sample, work_folder


def count(window, thing, amount):
    window.select(LINES, thing)
    window.put("counted", amount)
    window.press("Change this line")


LINES = "Select a line, write what is there, Enter goes on. Blank is not counted, = is as in the books."

def walk(window, shop, folder):
    window.keys("ctrl+5")
    window.table("Stock")
    window.press("Stock-take")
    count(window, "Olive oil", "1 kg")
    count(window, "Coconut oil", "=")
    count(window, "Shea butter", "a heap")
    window.keys("ctrl+Return")
    window.label(lambda text: text.startswith("Nothing is kept yet: a line"), "word that a line cannot be read")
    count(window, "Shea butter", "")
    window.keep("less than the books said")
    files = exported(shop, Path(folder) / "counted")
    code = max(files["count"], key=lambda each: each["date"])["code"]
    lines = {line["material"]: line["counted"] for line in files["count_line"] if line["count"] == code}
    assert lines["olive-oil"] == "1 kg", lines
    assert lines["coconut-oil"].endswith(" g"), lines
    assert lines["shea-butter"] == "" and sum(counted != "" for counted in lines.values()) == 2, lines
    window.tab("Stock-takes")


if __name__ == "__main__":
    with work_folder() as folder:
        shop = sample(folder)
        with Window(shop, "--place", "today") as window:
            walk(window, shop, folder)
