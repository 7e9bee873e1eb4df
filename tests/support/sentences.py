"""What German tests share: telling an English sentence of the program that was left standing from a name the maker gave."""

import csv
import re
import subprocess
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SAMPLE = ROOT / "sample-shop" / "shop"
GERMAN_SENTENCES = ROOT / "reports" / "words" / "languages" / "de.po"

# As a German desktop sets it; the locale itself need not be made on this machine.
GERMAN = {"LC_ALL": "de_DE.UTF-8", "LANGUAGE": ""}

# Words of English that are no words of German.
ENGLISH_WORDS = re.compile(r"\b(the|of|and|with|from|is|are|were|for|your|our|by|to|no|not|one|bar|bars|batch|vat|loaf)\b")


def translated_sentences():
    """The English of all sentences whose German is another, with their placeholders."""
    catalogue = subprocess.run(["msgcat", "--no-wrap", GERMAN_SENTENCES], capture_output=True, text=True, check=True).stdout
    found = []
    for block in catalogue.split("\n\n"):
        of_block = re.findall(r'^(msgid|msgid_plural|msgstr|msgstr\[\d\]) "(.*)"$', block, re.MULTILINE)
        german = {text for name, text in of_block if name.startswith("msgstr")}
        found += [text for name, text in of_block if name.startswith("msgid") and text and text not in german]
    return found


def names_of_the_shop():
    """All that the maker of the sample shop wrote and the program only repeats, longest first."""
    names = set()
    for file in SAMPLE.glob("*.csv"):
        with file.open(encoding="utf-8", newline="") as lines:
            for record in csv.DictReader(lines):
                names.update(value for value in record.values() if value and re.search("[A-Za-z]{2}", value))
    return sorted(names, key=len, reverse=True)


class English:
    """Finds texts in which English of ours is left."""

    def __init__(self):
        known = translated_sentences()
        assert len(known) > 2000, len(known)
        self.names = names_of_the_shop()
        self.whole = {text.replace("&", "") for text in known if "{" not in text}
        self.filled = re.compile("|".join(
            re.sub(r"\\\{\w+\\\}", ".+?", re.escape(text)) for text in known
            if "{" in text and len(re.findall("[A-Za-z]{2,}", re.sub(r"\{\w+\}", "", text))) > 2))

    def left_in(self, text):
        if text in self.names:
            return False
        rest = text
        for name in self.names:
            if name in rest:
                rest = rest.replace(name, "…")
        return text in self.whole or bool(self.filled.fullmatch(rest)) or bool(ENGLISH_WORDS.search(rest))
