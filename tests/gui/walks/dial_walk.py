#!/usr/bin/python3
"""A dial is turned by hand: the headline begins with If, the records come back, a mistake is said beside the field."""

import pyatspi
from _window import Window, press, sample, text_of, wait_until, work_folder

with work_folder() as folder:
    with Window(sample(folder), "--place", "verdict") as window:
        recorded = window.headline()
        field = window.named(pyatspi.ROLE_TEXT, "Extra on the price")
        before = text_of(field)

        field.queryEditableText().setTextContents("3,25")
        tried = window.label(lambda text: text.startswith("If "), "a headline that begins with If")
        window.label(lambda text: text.startswith("You are trying things out"), "the bar that says it is a trial")
        slider = window.named(pyatspi.ROLE_SLIDER, "Extra on the price, slider")
        assert slider.queryValue().currentValue > 0

        # The slider turns the same dial.
        field.queryEditableText().setTextContents("0,10")
        other = wait_until(lambda: next((t for t in window.labels() if t.startswith("If ") and t != tried), None),
                           "another headline")
        assert other != tried

        press(window.named(pyatspi.ROLE_PUSH_BUTTON, "Back to the records"))
        window.label(lambda text: text == recorded, "the headline from the records")
        assert text_of(window.named(pyatspi.ROLE_TEXT, "Extra on the price")) == before
        assert not [t for t in window.labels() if t.startswith("If ")]

        field.queryEditableText().setTextContents("a lot")
        window.label(lambda text: text.startswith("Not a number"), "the mistake in words")
        assert recorded in window.labels(), "a mistake moved the verdict"
