#!/usr/bin/python3
"""A fair out and back with a count, and one that was rained off: what was not sold is on the shelf again."""

from pathlib import Path

from _window import Window, exported, figures, sample, work_folder


def put_down(window, name):
    window.keys("ctrl+n")
    window.put("Name", name)
    window.put("On", "1 November")
    window.put("Stall", "30")
    window.put("Hours open", "5 h")
    window.label(lambda text: text.startswith("Take "), "how many bars to take")
    window.keep("Put down. Count back")
    window.select("Fairs", name)


def lines_of(files, name):
    """The code of the fair, and what was taken and came back of each kind."""
    code = next(fair["code"] for fair in files["fair"] if fair["name"] == name)
    return code, [(int(line["taken"]), int(line["back"])) for line in files["fair_line"] if line["fair"] == code]


def walk(window, shop, folder):
    window.keys("ctrl+6")
    window.tab("Fairs")
    stock = figures(shop, "stock-value")["stock.bar.cash_cost"]

    put_down(window, "Quay market")
    _, lines = lines_of(exported(shop, Path(folder) / "out"), "Quay market")
    taken = sum(line[0] for line in lines)
    assert taken > 20, lines
    assert figures(shop, "stock-value")["stock.bar.cash_cost"] < stock  # until counted back all counts as sold
    window.press("Count back...")
    window.put("Cash in the tin", "100")
    window.put("Of it taken along", "40")
    window.put("Card takings", "21.50")
    window.put("Home in all", str(taken + 1))
    window.keys("ctrl+Return")
    window.label(lambda text: "mend one of the two" in text, "that more came home than went out")
    window.put("Home in all", str(taken - 15))
    window.keep("bars sold")
    code, lines = lines_of(exported(shop, Path(folder) / "back"), "Quay market")
    assert sum(out - back for out, back in lines) == 15, lines
    assert figures(shop, "fair-result", "--fair", code)["takings"] == 81.5

    after_quay = figures(shop, "stock-value")["stock.bar.cash_cost"]
    put_down(window, "Green fair")
    window.press("Count back...")
    window.choose("The day was", "did not happen")
    window.keep("It did not happen; £30")
    _, lines = lines_of(exported(shop, Path(folder) / "rain"), "Green fair")
    assert lines and all(out == back for out, back in lines), lines
    assert abs(figures(shop, "stock-value")["stock.bar.cash_cost"] - after_quay) < 0.005


if __name__ == "__main__":
    with work_folder() as folder:
        shop = sample(folder)
        with Window(shop, "--place", "today") as window:
            walk(window, shop, folder)
