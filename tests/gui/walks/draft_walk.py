#!/usr/bin/python3
"""A form half typed survives the program being killed; put back, it is gone."""

import signal

import pyatspi
from _window import Window, press, sample, wait_until, work_folder


def field(window, name):
    return window.named(pyatspi.ROLE_TEXT, name)


with work_folder() as folder:
    shop = sample(folder)
    with Window(shop, "--place", "today") as window:
        window.named(pyatspi.ROLE_TABLE, "To see to")
        window.keys("ctrl+j")
        field(window, "What").queryEditableText().setTextContents("two jars of soda left")
        window.label(lambda text: text == "What", "the form")
        import time

        time.sleep(2.5)  # a second after the last key it is kept
        window.process.send_signal(signal.SIGKILL)
        window.process.wait()

    with Window(shop, "--place", "today") as window:
        window.named(pyatspi.ROLE_TABLE, "To see to")
        window.keys("ctrl+j")
        window.label(lambda text: text.startswith("What you had typed"), "word of the draft")
        wait_until(lambda: field(window, "What").queryText().getText(0, -1) == "two jars of soda left", "the words typed")
        press(window.named(pyatspi.ROLE_PUSH_BUTTON, "Put back"))
        window.keys("ctrl+j")
        wait_until(lambda: field(window, "What").queryText().getText(0, -1) == "", "an empty form")
