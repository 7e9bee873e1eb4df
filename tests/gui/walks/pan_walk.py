#!/usr/bin/python3
"""A vat worked live: one key a step, a reading outside the method's band, the program killed in the middle, a step put
right afterwards."""

import signal
from pathlib import Path

import pyatspi
from _window import Window, added, exported, sample, wait_until, work_folder


def steps_of(shop, folder, before):
    after = exported(shop, Path(folder) / "now")
    (vat,) = added(before, after, "vat")
    return sorted((s for s in after["vat_step"] if s["vat"] == vat["code"]), key=lambda s: int(s["position"]))


with work_folder() as folder:
    shop = sample(folder)
    before = exported(shop, Path(folder) / "before")
    with Window(shop, "--place", "vat") as window:
        window.table("Vats")
        window.keys("F11")
        window.label(lambda text: text.startswith("No vat stands"), "that there is no vat to work")
        window.keys("ctrl+n")
        window.choose("Colour", "Pink")
        window.keep("The vat stands")

        window.keys("F11")
        window.label(lambda text: "pink: step 1 of 7" in text, "the first step")
        window.label(lambda text: text.startswith("Break up and rinse"), "what is to be done")
        window.keys("space")
        window.label(lambda text: "step 2 of 7" in text, "the second step")
        window.label(lambda text: text.startswith("Your method says: at 60 to 70"), "the method's band")
        window.put("Temperature, °C", "75,5")
        window.keys("s")
        window.named(pyatspi.ROLE_PUSH_BUTTON, "Let the clock run on (S)")
        window.process.send_signal(signal.SIGKILL)
        window.process.wait()

    # What was not yet kept is there again: the step, the reading, the clock that was stopped.
    with Window(shop, "--place", "today") as window:
        window.table("To see to")
        window.keys("F11")
        window.label(lambda text: "step 2 of 7" in text, "the second step")
        window.named(pyatspi.ROLE_PUSH_BUTTON, "Let the clock run on (S)")
        assert window.text("Temperature, °C") == "75,5", window.text("Temperature, °C")
        window.put("Temperature, °C", "warm")
        window.keys("space")
        window.label(lambda text: "warm" in text and "write" in text.lower(), "that the reading cannot be read")
        window.put("Temperature, °C", "75,5")
        window.keys("space")
        # Out of the band: said once, kept all the same.
        window.label(lambda text: "75.5" in text and "method says" in text, "that it was too hot")
        window.label(lambda text: "step 3 of 7" in text, "the third step")
        noted = steps_of(shop, folder, before)
        assert [(s["method_step"], s["temperature"]) for s in noted] == [("1", ""), ("2", "75.5")], noted

        window.keys("b")
        window.table("Vats")
        window.label(lambda text: text.startswith("Steps of the vat"), "the form of its steps")
        window.keys("Escape")
        window.keys("ctrl+z")
        window.label(lambda text: text.startswith("Undone:"), "that the last step is undone")
        assert len(steps_of(shop, folder, before)) == 1
        window.keys("F11")
        window.label(lambda text: "step 2 of 7" in text, "the second step again")
        window.keys("Escape")
        window.table("Vats")

        # The clock was left running: Today says so, and leads to that vat, wherever its line stands.
        window.select("Vats", "Blue")
        window.keys("ctrl+1")
        window.select("To see to", "Clock still running: vat of 1 November 2026, pink, since ")
        window.label(lambda text: "S stops the clock" in text, "how it is stopped")
        window.keys("Return")
        window.label(lambda text: text == "Vat", "the Vat")
        wait_until(lambda: window.table("Vats").queryTable().getSelectedRows() == [0], "the vat that was begun last")
        window.keys("F11")
        window.keys("s")
        window.named(pyatspi.ROLE_PUSH_BUTTON, "Let the clock run on (S)")
        window.keys("Escape")
        window.keys("ctrl+1")
        window.select("To see to", "Vat of 1 November 2026, pink, is standing")
