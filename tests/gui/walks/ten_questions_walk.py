#!/usr/bin/python3
"""Ten questions answered at the Verdict with one slip, the answer seen at once and kept; then a look ahead."""

from pathlib import Path

from _window import Window, exported, sample, work_folder

ANSWERS = (
    ("1. Plant", "alkanet"), ("1. Colour", "purple"), ("2. Hours at the bed, all together", "15 h"),
    ("3. Money out for bed and vats", "24"), ("4. Vats worked", "4"), ("4. Your time at one vat", "~2 h"),
    ("5. Dry powder in all", "lots"), ("6. Powder in a loaf", "6 g"), ("6. Bars in a loaf", "12"),
    ("8. Price of the bought colour", "9,50"), ("8. Weight for that price", "50 g"),
    ("9. Price of a plain bar", "5"), ("9. With bought colour", "5.50"), ("9. With your own", "6.50"),
    ("10. An hour should bring", "12"),
)
SAID = "Buy the purple in: growing it brought £38 more than buying, too little for the 23 hours it took."

with work_folder() as folder:
    shop = sample(folder)
    with Window(shop, "--place", "verdict") as window:
        window.headline()
        window.keys("alt+q")
        for field, text in ANSWERS:
            window.put(field, text)
        window.choose("7. Bought powder for the same shade", "a third")
        window.label(lambda text: "lots" in text, "what is wrong with the powder")
        window.put("5. Dry powder in all", "30 g")
        window.label(lambda text: text == SAID, "the answer while it is being typed")
        window.keep(SAID)
        # Of the colour just answered for.
        assert window.headline() == SAID
        window.label(lambda text: text.startswith("From memory"), "what it stands on")
        guesses = exported(shop, Path(folder) / "kept")["guess"]
        assert len(guesses) == 15 and {guess["colour"] for guess in guesses} == {"purple"}, guesses

        window.choose("Colour", "Blue")
        window.label(lambda text: text.startswith("Buy the blue in: growing it"), "the look back at the blue")
        window.choose("Looking", "before sowing")
        window.label(lambda text: text.startswith("Buy the blue in for next season"), "the look ahead before sowing")
        window.choose("Looking", "leaf standing")
        window.label(lambda text: text.startswith("Leave the blue in the bed"), "the look ahead with leaf standing")
        # Undone, the colour of a name is gone again.
        window.keys("ctrl+z")
        window.label(lambda text: text.startswith("Undone: ten questions answered"), "word of what was undone")
        assert not exported(shop, Path(folder) / "undone").get("guess")
